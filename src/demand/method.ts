import type { Gap, Known, Sheet, Source } from '../core/index.js';
import type { Line, Purpose } from '../installation/index.js';
import type { Amperes, Ratio, WattHours } from '../units/index.js';
import type { DemandCase, DemandLoad } from './loads.js';
import type { DwellingGroup } from './many/group.js';

/** What premises a demand is for; guide tables differ by it. @inline */
export type Premises = 'dwelling' | 'small-shop' | 'small-hotel' | 'other';

/** One half-hour reading of the supply meter. @inline */
export interface HalfHourReading {
  /** Start of the half-hour, ISO 8601 with its offset: `2026-01-05T17:30:00Z`. */
  readonly start: string;
  /** Energy imported in it, Wh. */
  readonly energy: WattHours;
}

/** Half-hour readings and what has to be stated with them. */
export interface MeterReadings {
  /** The readings, in order of time, without gaps. */
  readonly readings: readonly HalfHourReading[];
  /** The season that they cover, in words. */
  readonly season: string;
  /** Margin for what half-hour means hide and the season did not show, as a ratio: 0.2 is 20 %. */
  readonly margin: Ratio;
}

/** Constants of the user's own for the demand of many dwellings. @inline */
export interface DwellingConstants extends Pick<DwellingGroup, 'afterDiversity' | 'coincidence'> {
  /** Energy of one dwelling in a year, Wh, and both coefficients of a peak from energy. */
  readonly energy?: {
    readonly each: WattHours;
    readonly linear: Ratio;
    readonly root: Ratio;
  };
}

/** Choices that change a demand; none of them has a default that lowers it. */
export interface DemandOptions {
  readonly premises: Premises;
  /** Name of the method that shall govern, instead of the stated rule. */
  readonly governing?: string;
  /** Half-hour readings of the supply meter. */
  readonly readings?: MeterReadings;
  /** Margin on the metered peak that the survey of the supply states, as a ratio. */
  readonly meteredMargin?: Ratio;
  /** Who says so of that margin; the user when absent. */
  readonly marginBy?: string;
  /** Standard of the board, where its rated diversity is to be used. */
  readonly assembly?: 'IEC 61439-2' | 'IEC 61439-3';
  /** Constants of the user's own for many dwellings, all of one kind; there are no built-in ones. */
  readonly dwellings?: DwellingConstants;
  /** Factors of the user's own: k_u by purpose, k_s by name of board. There are no built-in ones. */
  readonly factors?: {
    /** Utilisation factors k_u by purpose, 0 to 1. */
    readonly utilisation: { readonly [P in Purpose]?: Ratio };
    /** Simultaneity factors k_s by name of board, 0 to 1. */
    readonly simultaneity: Readonly<Record<string, Ratio>>;
  };
}

/** Whether a method may be used here, and why. @inline */
export type Applicability =
  | { readonly verdict: 'applicable' }
  | { readonly verdict: 'not-applicable'; readonly because: string }
  | { readonly verdict: 'not-determined'; readonly because: string; readonly gaps: readonly Gap[] };

/** A method of finding a maximum demand: a value, so that all can be asked in turn. */
export interface DemandMethod {
  /** Stable identifier, kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly source: Source;
  /** What it assumes, printed beside its number. */
  readonly assumption: string;
  /** Whether its factors step with a count, so that one more load can lower the demand. */
  readonly countBands: boolean;
  /** Whether it can be asked for a part of the installation, which a load control at a board needs. */
  readonly divisible: boolean;
  /** Whether a meter has seen what is there; every other method needs a list of loads that is complete. */
  readonly metered?: true;
  /** Whether it may be used for these loads. */
  applies(c: DemandCase, options: DemandOptions): Applicability;
  /** Demand on one line of these loads, without charge points; it stands on the sheet as `existingDemand`. */
  existing(
    loads: readonly DemandLoad[],
    line: Line,
    c: DemandCase,
    options: DemandOptions,
    sheet: Sheet,
  ): Known<Amperes>;
}

/** The method may be used. */
export const applicable: Applicability = { verdict: 'applicable' };
/** The method may not be used, with the reason. */
export const notApplicable = (because: string): Applicability => ({ verdict: 'not-applicable', because });

/** Loads that use a line. */
export const onLine = (loads: readonly DemandLoad[], line: Line): readonly DemandLoad[] =>
  loads.filter((l) => l.lines.includes(line));

/** Takes the current of each load down in full on a part of its own. */
export const inFull = (
  loads: readonly DemandLoad[],
  as: 'connectedCurrent' | 'demand' | 'existingDemand',
  why: string,
  sheet: Sheet,
): readonly Sheet[] =>
  loads.map((load) => {
    const part = sheet.part(`${load.id}${why}`);
    part.given(as, load.current);
    return part;
  });
