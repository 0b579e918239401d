import { isCalendarDay } from '../../core/calendar.js';
import type { Gap, Provenance } from '../../core/index.js';
import { writtenDay } from '../../units/text.js';

/** Editions of BS 7671 that this library tells apart, by year and latest amendment. */
export type Edition = '2018' | '2018+A1:2020' | '2018+A2:2022' | '2018+A3:2024' | '2018+A4:2026';

/** What is known of an edition. @inline */
export interface EditionDates {
  /** Year and latest amendment, as cited after `BS 7671:`. */
  readonly edition: Edition;
  /** Date of publication, from which it may be used; ISO. */
  readonly published: string;
  /** Date from which new work has to follow it; ISO. */
  readonly applies: string;
  /** Date on which it was withdrawn; ISO. */
  readonly withdrawn?: string;
  /** Whether figures of its text could be had for this library. */
  readonly text: 'available' | 'not-available';
  /** How well the dates are known. */
  readonly provenance: Provenance;
  /** What a reader has to know. */
  readonly note?: string;
}

/** The editions in the order of their publication. */
export const editions: readonly EditionDates[] = [
  {
    edition: '2018',
    published: '2018-07-02',
    applies: '2019-01-01',
    withdrawn: '2020-08-01',
    text: 'available',
    provenance: 'memory',
    note: 'Withdrawn here on the date from which A1 had to be followed; A1 altered Section 722 alone.',
  },
  {
    edition: '2018+A1:2020',
    published: '2020-02-03',
    applies: '2020-08-01',
    withdrawn: '2022-09-27',
    text: 'available',
    provenance: 'one-source',
    note: 'Publication: two sources. Section 722: open-PEN detection by touch voltage redrafted, two arrangements added.',
  },
  {
    edition: '2018+A2:2022',
    published: '2022-03-28',
    applies: '2022-09-27',
    withdrawn: '2026-10-15',
    text: 'available',
    provenance: 'one-source',
    note: 'Withdrawal: two sources; dates of 2022: one source and memory. Each charge point on a residual current device of its own.',
  },
  {
    edition: '2018+A3:2024',
    published: '2024-07-31',
    applies: '2024-07-31',
    withdrawn: '2026-10-15',
    text: 'available',
    provenance: 'two-sources',
    note: 'Devices through which power can flow both ways (530.3.201).',
  },
  {
    edition: '2018+A4:2026',
    published: '2026-04-15',
    applies: '2026-10-15',
    text: 'not-available',
    provenance: 'two-sources',
    note: 'The text was not available; nothing here follows it, and what it alters is not known.',
  },
];

/**
 * What is known of an edition.
 * @param edition year and latest amendment
 * @returns when it was published and withdrawn, and whether its text was available
 * @example
 * ```ts
 * import { datesOf } from 'ohmwright/bs7671';
 *
 * datesOf('2018+A2:2022').withdrawn; // => '2026-10-15'
 * ```
 */
export function datesOf(edition: Edition): EditionDates {
  return editions.find((e) => e.edition === edition) as EditionDates;
}

/**
 * Whether an edition may be followed on a date. Between the publication of an edition and the withdrawal of the one
 * before, both are in force.
 * @param edition year and latest amendment
 * @param date ISO date, yyyy-mm-dd; anything else gives `unknown`
 * @returns `in-force`, `withdrawn`, `not-yet`, or `unknown` where a date is not known
 * @example
 * ```ts
 * import { editionInForce } from 'ohmwright/bs7671';
 *
 * editionInForce('2018+A2:2022', '2026-10-14'); // => 'in-force'
 * editionInForce('2018+A2:2022', '2026-10-15'); // => 'withdrawn'
 * editionInForce('2018+A4:2026', '2026-04-14'); // => 'not-yet'
 * ```
 */
export function editionInForce(edition: Edition, date: string): 'in-force' | 'withdrawn' | 'not-yet' | 'unknown' {
  if (!isCalendarDay(date)) return 'unknown';
  const { published, withdrawn } = datesOf(edition);
  if (date < published) return 'not-yet';
  return withdrawn !== undefined && date >= withdrawn ? 'withdrawn' : 'in-force';
}

/**
 * What has to be said of an edition wherever a verdict is printed.
 * @param edition year and latest amendment
 * @returns a sentence for a person
 * @example
 * ```ts
 * import { standingOf } from 'ohmwright/bs7671';
 *
 * standingOf('2018+A1:2020'); // => 'BS 7671:2018+A1:2020 was withdrawn on 27 September 2022. The edition in force since 15 October 2026 is BS 7671:2018+A4:2026; its text was not available, so what it alters is not known. The edition in force, local codes and licensed practice decide.'
 * ```
 */
export function standingOf(edition: Edition): string {
  const { withdrawn } = datesOf(edition);
  const own = withdrawn === undefined ? '' : `BS 7671:${edition} was withdrawn on ${written(withdrawn)}. `;
  return `${own}The edition in force since 15 October 2026 is BS 7671:2018+A4:2026; its text was not available, so what it alters is not known. The edition in force, local codes and licensed practice decide.`;
}

/** The gap that stands in the way of a verdict by an edition whose text could not be had, or undefined. */
export function editionGap(edition: Edition): Gap | undefined {
  if (datesOf(edition).text === 'available') return undefined;
  return {
    kind: 'edition',
    edition: `BS 7671:${edition}`,
    explain: 'the text was not available; consult the standard itself',
  };
}

function written(date: string): string {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  return writtenDay(year, month, day);
}
