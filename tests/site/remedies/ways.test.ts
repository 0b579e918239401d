/** Each remedy by itself: what it changes in the survey, and where there is nothing for it to change. */
import { describe, expect, it, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { amperes, type Board, type CheckResult, known, squareMillimetres } from '../../../src/index.js';
import { readSurvey } from '../../../src/io/index.js';
import { allRemedies } from '../../../src/site/remedies/all.js';
import { changesBetween, withChanges } from '../../../src/site/remedies/changes.js';
import { lowerSettings } from '../../../src/site/remedies/point.js';
import type { Situation } from '../../../src/site/remedies/remedy.js';
import type { Survey } from '../../../src/site/survey.js';
import { surveyDocument } from '../../support/surveys.js';

const home = readSurvey(surveyDocument('easy-home'));
const garage = readSurvey(surveyDocument('garage-submain'));
const amount = (value: number, unit = 'A') => ({ name: 'x', value, unit });
const failed = (check: string, change: Partial<CheckResult> = {}): CheckResult => ({
  check,
  title: check,
  verdict: 'fail',
  weight: 'rule',
  source: { document: 'invented', provenance: 'definition' },
  ...change,
});
/** What a remedy does to a survey, with a plan in which nothing stands that it does not look at. */
const ways = (id: string, survey: Survey, result: CheckResult, plan: object = {}) =>
  allRemedies
    .find((r) => r.id === id)
    ?.ways({
      survey,
      result,
      plan: { feeders: [], points: [], supply: { lines: [], changes: [] }, ...plan },
      code: bs7671('2018+A2:2022'),
      words: { tails: 'tails' },
    } as unknown as Situation) ?? [];

describe('what differs between two surveys', () => {
  it('is nothing between a survey and a copy of it', () => {
    expect(changesBetween(home, structuredClone(home))).toEqual([]);
  });
  it('is named at its place, in a list as in a record, and makes the one into the other', () => {
    const runs = garage.installation.board.runs.map((r, i) => (i === 1 ? { ...r, existing: false } : r));
    const then: Survey = {
      ...garage,
      installation: { ...garage.installation, board: { ...garage.installation.board, runs } },
    };
    const changes = changesBetween(garage, then);
    expect(changes).toEqual([{ path: ['installation', 'board', 'runs', 1, 'existing'], value: false }]);
    expect(withChanges(garage, changes)).toEqual(then);
  });
  it('is the whole of a list where its length differs', () => {
    const then = { ...garage, wanted: [] };
    expect(changesBetween(garage, then)).toEqual([{ path: ['wanted'], value: [] }]);
  });
});

test('a setting is lowered, never raised, and not below the 6 A at which a vehicle still charges: IEC 61851-1', () => {
  expect(lowerSettings(amperes(16), failed('x'))).toEqual([13, 10, 6]);
  // 20 A where 25 A flow: 32 × 20/25 = 25.6
  expect(lowerSettings(amperes(32), failed('x', { value: amount(25), limit: amount(20) }))).toEqual([
    25, 20, 16, 13, 10, 6,
  ]);
  expect(lowerSettings(amperes(6), failed('x'))).toEqual([]);
});

describe('a limiter at the figure for notice', () => {
  const limited = (limit: number | undefined): Survey => ({
    ...home,
    installation: {
      ...home.installation,
      board: {
        ...home.installation.board,
        control: { name: 'limiter', limit: known(amperes(limit ?? 0)), controls: ['point'] } as never,
      },
    },
  });
  const notice = failed('demand-for-notice', { limit: amount(60) });
  it('is set to it, lower than one that is there', () => {
    const [way] = ways('limiter-for-notice', limited(80), notice);
    expect(way?.survey.installation.board.control?.limit).toMatchObject({ value: 60 });
  });
  it('is no remedy where one holds that much already, nor without a figure', () => {
    expect(ways('limiter-for-notice', limited(60), notice)).toEqual([]);
    expect(ways('limiter-for-notice', limited(50), notice)).toEqual([]);
    expect(ways('limiter-for-notice', limited(80), failed('demand-for-notice'))).toEqual([]);
  });
});

test('the bond of another building is made as large as is asked, there and nowhere else', () => {
  const remedy = allRemedies.find((r) => r.checks.includes('outbuilding-bonding'));
  const thin = withBond(garage, 4);
  const [way] = ways(remedy?.id ?? '', thin, failed('outbuilding-bonding', { limit: amount(10, 'mm²') }));
  expect(way?.survey).toEqual(withBond(garage, 10, 'to be installed so'));
  expect(way?.what).toBe('bonding conductor of 10 mm² to the building of garage board');
  expect(
    ways(remedy?.id ?? '', withBond(garage, 10), failed('outbuilding-bonding', { limit: amount(10, 'mm²') })),
  ).toEqual([]);
});

/** The survey of the garage with a bond of this size there. */
function withBond(survey: Survey, size: number, by?: string): Survey {
  return inGarage(survey, {
    bonding: by === undefined ? known(squareMillimetres(size)) : known(squareMillimetres(size), by),
  });
}

/** The survey with the board of the garage changed. */
function inGarage(survey: Survey, change: Partial<Board>): Survey {
  const { board } = survey.installation;
  return {
    ...survey,
    installation: {
      ...survey.installation,
      board: {
        ...board,
        runs: board.runs.map((r) => ({
          ...r,
          feeds: r.feeds.map((o) => (o.kind === 'board' && o.id === 'garage board' ? { ...o, ...change } : o)),
        })),
      },
    },
  };
}

test('a feeder whose demand is not known is not designed anew', () => {
  const [feeder] = garage.installation.board.runs.filter((r) => r.feeds.some((o) => o.kind === 'board'));
  const plan = (worst: unknown) => ({
    feeders: [{ run: feeder?.id, overall: { verdict: 'fail' }, demand: { run: feeder?.id, worst }, beside: [] }],
  });
  const larger = allRemedies.find((r) => r.id === 'larger-feeder');
  expect(larger?.id).toBeDefined();
  const [way] = ways(larger?.id ?? '', garage, failed('x'), plan(amperes(70)));
  expect(way?.what).toMatch(new RegExp(`feeder ${feeder?.id} replaced: .*\\d+ mm² behind (80|100) A`));
  const small = inGarage(garage, { mainSwitch: { rating: known(amperes(40)), noFuseAhead: known(true) } });
  const [raised] = ways(larger?.id ?? '', small, failed('x'), plan(amperes(70)));
  const run = raised?.survey.installation.board.runs.find((r) => r.id === feeder?.id);
  const below = run?.feeds.find((o) => o.kind === 'board');
  expect(below?.kind === 'board' && below.mainSwitch?.rating).toEqual(run?.device.rating);
  expect(ways(larger?.id ?? '', garage, failed('x'), plan({ missing: [] }))).toEqual([]);
  expect(ways(larger?.id ?? '', garage, failed('x'), { feeders: [] })).toEqual([]);
});
