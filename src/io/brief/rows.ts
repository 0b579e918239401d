import { type Question, questionnaire } from '../../installation/index.js';
import { hasCode, invalidInput, type Problem } from '../../units/index.js';
import { parseCsv } from '../csv.js';
import { nearChoice } from '../near-miss.js';
import type { FirmDefaults } from './defaults.js';
import { type BriefSurvey, readBrief } from './expand.js';

/** A row of a spreadsheet of brief surveys. @inline */
export interface BriefRow {
  /** Number of the row as the spreadsheet shows it; the headings are row 1. */
  readonly row: number;
  /** Reference of the job, or the number of the row. */
  readonly reference: string;
  /** What it was read as; absent where something is wrong with it. */
  readonly brief?: BriefSurvey;
  /** What is wrong with it, each with the id of its question. */
  readonly problems: readonly Problem[];
}

/** A spreadsheet of brief surveys. @inline */
export interface BriefRows {
  readonly rows: readonly BriefRow[];
  /** Columns that are no question of the questionnaire: nothing is read from them. */
  readonly ignored: readonly string[];
}

const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '');

/** The question of a heading: its id or title, with a unit in brackets or without. */
function questionOfHeading(heading: string): { readonly question: Question; readonly unit?: string } | undefined {
  const [, name = heading, unit] = /^(.*?)\s*[([]([^()[\]]+)[)\]]\s*$/.exec(heading) ?? [];
  for (const text of [heading, name]) {
    const question = questionnaire().find((q) => plain(q.id) === plain(text) || plain(q.title) === plain(text));
    if (question) return { question, ...(text === name && unit !== undefined ? { unit } : {}) };
  }
  return undefined;
}

/** The headings of a spreadsheet of brief surveys: titles, with the unit in which a bare number is read. */
const headingOf = (q: Question): string => (q.unit ? `${q.title} (${q.unit})` : q.title);

/**
 * The headings and an example row of a spreadsheet of brief surveys.
 * @param which the questions that are asked first, or all
 * @returns two rows, for `csvText`
 * @example
 * ```ts
 * import { briefColumns } from 'ohmwright/io';
 *
 * briefColumns('first')[0]?.slice(0, 5); // => ['Reference', 'Day of the survey', 'Special location', 'Earthing arrangement', 'Phases']
 * ```
 */
export function briefColumns(which: 'first' | 'all'): readonly (readonly string[])[] {
  const asked = questionnaire().filter((q) => which === 'all' || q.first);
  const example = (q: Question) => (q.answer === 'yes' ? (q.example === 'true' ? 'yes' : 'no') : (q.example ?? ''));
  return [asked.map(headingOf), asked.map(example)];
}

/**
 * Reads a spreadsheet of brief surveys, saved as comma-separated values: one row for each job, one column for each
 * question, under its id or its title. An empty cell is not known; a bare number is in the unit of its heading.
 * @param text the text of the file
 * @param defaults the firm's, such as `readDefaults` gives, or `usualDefaults`
 * @param same answers that are the same for every row and stand in no column, such as the edition
 * @returns the rows in their order; what is wrong with a row stands beside it and keeps none of the others back
 * @throws CalculationError `invalid-input` where no column is a question of the questionnaire
 * @example
 * ```ts
 * import { readBriefRows, usualDefaults } from 'ohmwright/io';
 *
 * const text = 'Reference,Date,Earthing arrangement,Main fuse (A),indoors (m)\r\nA1,21/09/2026,PME,80,12\r\nA2,21/09/2026,PMX,80,2500';
 * const { rows, ignored } = readBriefRows(text.replace('Date', 'Day of the survey'), usualDefaults, { edition: '2018+A2:2022' });
 * rows[0]?.problems; // => []
 * rows[1]?.problems[0]?.path; // => ['earthing']
 * ignored; // => []
 * ```
 */
export function readBriefRows(
  text: string,
  defaults: FirmDefaults,
  same: Readonly<Record<string, unknown>> = {},
): BriefRows {
  const [headings = [], ...rows] = parseCsv(text);
  const columns = headings.map(questionOfHeading);
  if (columns.every((c) => c === undefined)) {
    const ids = questionnaire().map((q) => q.id);
    throw invalidInput(
      'the spreadsheet',
      headings.slice(0, 20).map((heading) => {
        const near = nearChoice(ids, heading);
        return {
          path: [heading],
          id: 'unknown-key',
          message: `is no question of the questionnaire${near === undefined ? '' : `; write '${near}'`}`,
        };
      }),
    );
  }
  return {
    ignored: headings.filter((h, i) => h !== '' && columns[i] === undefined),
    rows: rows.map((cells, i) => {
      const given: Record<string, unknown> = { ...same };
      for (const [j, cell] of cells.entries()) {
        const column = columns[j];
        if (!column || cell === '') continue;
        const { question, unit } = column;
        // a unit in the heading is that of the bare numbers below it
        given[question.id] = unit !== undefined && question.unit && /^[\d.,]+$/.test(cell) ? `${cell} ${unit}` : cell;
      }
      const row = i + 2;
      const reference = typeof given.reference === 'string' ? given.reference : `row ${row}`;
      try {
        return { row, reference, brief: readBrief({ ...given, format: 'brief/1' }, defaults), problems: [] };
      } catch (error) {
        if (hasCode(error, 'invalid-input')) return { row, reference, problems: error.detail.problems };
        if (hasCode(error, 'not-covered'))
          return { row, reference, problems: [{ path: [], id: 'not-covered', message: error.message }] };
        throw error;
      }
    }),
  };
}
