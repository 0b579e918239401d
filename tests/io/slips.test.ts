/** Slips in documents: where each stands, what it is called, and what would be right. */
import { describe, expect, it, test } from 'vitest';
import {
  migrate,
  readBrief,
  readBriefRows,
  readDefaults,
  readSurvey,
  surveyJsonSchema,
  usualDefaults,
} from '../../src/io/index.js';
import { problemsOf } from '../support/problems.js';
import { type Json, surveyDocument } from '../support/surveys.js';

type Tree = { [key: string]: Json };
/** The invented easy home with what stands at a path replaced. */
function home(path: string, value: Json): Json {
  const document = structuredClone(surveyDocument('easy-home')) as Tree;
  const keys = path.split('.');
  const last = keys.pop() as string;
  const at = keys.reduce<Tree>((node, key) => node[key] as Tree, document);
  at[last] = value;
  return document;
}

describe('the kind of a device', () => {
  const kind = (value: Json) => problemsOf(() => readSurvey(home('supply.cutOut.kind', value)))[0];
  it('is told with the standard that was probably meant, whether it stands alone or in its object', () => {
    expect(kind({ known: { standard: 'bs 88-3' } })).toMatchObject({ id: 'not-allowed', write: 'BS 88-3' });
    expect(kind({ known: { standard: 'bs 88-3' } })?.message).toContain("write the standard 'BS 88-3'");
  });
  it('is told without one where none is near', () => {
    const told = kind({ known: { standard: 'a fuse' } });
    expect(told?.id).toBe('not-allowed');
    expect(told && 'write' in told).toBe(false);
    expect(told?.message).not.toContain('write the standard');
  });
});

test('what is yes or no says so, with both', () => {
  const [told] = problemsOf(() => readSurvey(home('supply.looped', { known: 'perhaps' })));
  expect(told?.allowed).toEqual([true, false]);
});

test('a fact that nobody knows keeps how it is to be had, where that is said', () => {
  const looped = (value: Json) => readSurvey(home('supply.looped', value)).installation.supply.looped;
  expect(looped({ unknown: 'ask the network operator' })).toEqual({
    state: 'unknown',
    obtain: 'ask the network operator',
  });
  expect(looped({ unknown: true })).toEqual({ state: 'unknown' });
});

test('a path has numbers where it goes into a list', () => {
  const [told] = problemsOf(() => readSurvey(home('board.runs.0.id', 7)));
  expect(told?.path).toEqual(['board', 'runs', 0, 'id']);
});

test('a document that is none, or has no format, is handed on as it is; one of another format is refused', () => {
  expect([migrate(null), migrate(7), migrate({})]).toEqual([null, 7, {}]);
  expect(() => migrate({ format: 'survey/0' })).toThrow(/no survey format 'survey\/0'/);
});

describe('defaults of a firm', () => {
  const defaults = (change: object) =>
    problemsOf(() => readDefaults({ format: 'defaults/1', name: 'van', answers: {}, ...change })).map((p) => [
      p.path.join('.'),
      p.id,
      p.message,
    ]);
  it('have an object for the device that is fitted, and lists for all else', () => {
    expect(defaults({ fits: { device: [] } })).toEqual([
      ['fits.device', 'wrong-kind', 'has to be an object in braces'],
    ]);
    expect(defaults({ fits: { cablesIndoors: {} } })).toEqual([
      ['fits.cablesIndoors', 'wrong-kind', 'has to be a list'],
    ]);
  });
  it('are searched for what no document may hold', () => {
    expect(
      defaults({ fits: { device: { rating: Number.POSITIVE_INFINITY } } }).map(([path, id]) => [path, id]),
    ).toEqual([['fits.device.rating', 'not-plain-data']]);
  });
});

describe('an answer', () => {
  it('without its unit is taken in that of its question, and one out of reach is told as it was meant', () => {
    const brief = { format: 'brief/1', date: '2026-09-21', edition: '2018+A2:2022' };
    const indoors = (value: Json) =>
      problemsOf(() =>
        readBrief({ ...brief, earthing: 'PME', mainFuse: '80 A', indoors: value }, usualDefaults),
      ).filter((p) => p.path[0] === 'indoors');
    expect([indoors('12'), indoors('12 m')]).toEqual([[], []]);
    expect(indoors('12 bananas')[0]?.message).toContain('12 bananas');
  });
});

test('a row with a slip is told by its number, and those beside it are read', () => {
  const text = 'Main fuse,Earthing\nnonsense,PME\n80 A,PME\n';
  const { rows } = readBriefRows(text, usualDefaults, { edition: '2018+A2:2022', date: '2026-09-21' } as never);
  expect(rows.map((r) => [r.row, r.problems.length > 0])).toEqual([
    [2, true],
    [3, false],
  ]);
});

test('the schema of a survey names the unit of a question only where it has one', () => {
  const found: Tree[] = [];
  const walk = (at: unknown): void => {
    if (typeof at !== 'object' || at === null) return;
    const question = (at as Tree)['x-question'];
    if (question) found.push(question as Tree);
    for (const inner of Object.values(at)) walk(inner);
  };
  walk(surveyJsonSchema());
  expect(found.filter((q) => typeof q.unit === 'string').length).toBeGreaterThan(20);
  expect(found.filter((q) => 'unit' in q && typeof q.unit !== 'string')).toEqual([]);
  expect(found.some((q) => !('unit' in q))).toBe(true);
});

test('twin and earth in the loft is rated by method 100, every other cable clipped direct: BS 7671 Table 4A2', () => {
  const brief = { format: 'brief/1', date: '2026-09-21', edition: '2018+A2:2022', loft: '6 m' };
  const method = (more: object) => {
    const { survey } = readBrief({ ...brief, ...more }, usualDefaults);
    return survey.wanted[0]?.run.stretches[0]?.method;
  };
  expect(method({})).toMatchObject({ value: '100' });
  expect(method({ chargePhases: 3 })).toMatchObject({ value: 'C' });
});
