import { labourTable } from './tables/labour.js';

/** Tasks of the labour table. */
export type Task = (typeof labourTable.axes)[1]['labels'][number];

/** What is known of hours: a range, and the likely value within it. @inline */
export interface Estimate {
  /** Least, h. */
  readonly low: number;
  /** Likely, h. */
  readonly typical: number;
  /** Most, h. */
  readonly high: number;
}

/** Rules that quantities and hours are taken from; plain data, so that a firm can replace any of them. */
export interface WorkRules {
  /** Who says so, for the quotation. */
  readonly source: string;
  /** Share added to the route for waste. */
  readonly wasteShare: number;
  /** Cable added at each end for the termination, m. */
  readonly terminationLength: number;
  /** Spacing of fixings by containment, m; no fixings where absent. */
  readonly fixingSpacing: Readonly<Record<string, number>>;
  readonly glandsPerArmouredCable: number;
  /** Sand for the bedding of a cable, m³ for each metre of trench. */
  readonly sandPerMetre: number;
  /** Smallest conductors that are bought for the circuit of a charge point, mm², by the rating of its device, A, the smaller first. */
  readonly smallestSizes: readonly { readonly upTo: number; readonly area: number }[];
  /** Smallest device that is bought for a circuit that is loaded in full for hours, A. */
  readonly smallestRating: number;
  /** Hours by task: least, likely, most. */
  readonly hours: { readonly [T in Task]: Estimate };
  /** Factor on the hours of a run by containment, relative to clipped cable; in the ground the tasks of a trench count. */
  readonly containmentFactor: Readonly<Record<string, number>>;
}

/** The labour table as hours by task. */
const tabulatedHours = () =>
  Object.fromEntries(
    labourTable.axes[1].labels.map((task) => [
      task,
      {
        low: labourTable.get({ estimate: 'low', task }) / 3600,
        typical: labourTable.get({ estimate: 'typical', task }) / 3600,
        high: labourTable.get({ estimate: 'high', task }) / 3600,
      },
    ]),
  ) as WorkRules['hours'];

/**
 * The built-in rules: common practice from memory, without a published source, to be replaced by a firm's own.
 */
export const commonPractice: WorkRules = {
  source: 'common practice, no source',
  wasteShare: 0.1,
  terminationLength: 1,
  fixingSpacing: { clipped: 0.3, conduit: 1, trunking: 0.5, tray: 1, catenary: 1 },
  glandsPerArmouredCable: 2,
  sandPerMetre: 0.045,
  smallestSizes: [
    { upTo: 20, area: 2.5 },
    { upTo: 63, area: 4 },
  ],
  smallestRating: 16,
  hours: /* @__PURE__ */ tabulatedHours(),
  containmentFactor: {
    clipped: 1,
    conduit: 1.6,
    trunking: 1.3,
    tray: 1,
    duct: 0.8,
    catenary: 1.5,
    free: 0.5,
  },
};
