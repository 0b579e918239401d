import type { HalfHourProfile } from '../../site/half-hour-profile.js';
import type { OptionPlan } from '../../site/index.js';
import { formatIn } from '../../units/index.js';
import { type Block, grid, heading, paragraph } from '../block.js';
import { clock } from '../svg/night-load.js';
import type { ReportWords } from '../words/pages.js';

/** Vehicles from which on the day of the site is of interest to the network operator. */
const SEVERAL = 4;
/** Half hours in a row. */
const ROW = 6;

function blocks({ mean, capacity }: HalfHourProfile, words: ReportWords): readonly Block[] {
  const { operator: w } = words;
  const rows = Array.from({ length: mean.length / ROW }, (_, r) => [
    clock(r * ROW * 30),
    ...mean.slice(r * ROW, (r + 1) * ROW).map((va) => (va / 1000).toFixed(1)),
  ]);
  const head = ['', ...Array.from({ length: ROW }, (_, k) => `+${clock(k * 30)}`)];
  return [
    heading(2, w.halfHours),
    ...grid(
      w.halfHoursNote,
      head,
      rows,
      head.map((_, k) => k).filter((k) => k > 0),
    ),
    paragraph(w.capacity(formatIn(capacity, 'VA'))),
  ];
}

/** The day of a site half hour by half hour, where the operator is asked for more than a few vehicles. */
export const halfHourBlocks = ({ night, notification }: OptionPlan, words: ReportWords): readonly Block[] =>
  night?.halfHours && night.vehicles.length >= SEVERAL && notification.decision.route === 'apply-first'
    ? blocks(night.halfHours, words)
    : [];
