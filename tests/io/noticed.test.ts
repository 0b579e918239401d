/** What a small change of the readers went unnoticed by, once. */
import { describe, expect, it, test } from 'vitest';
import { bs7671Tables } from '../../src/codes/bs7671/index.js';
import { pathsOf } from '../../src/index.js';
import {
  briefColumns,
  csvText,
  parseCsv,
  readBrief,
  readDefaults,
  readSurvey,
  readTicks,
  usualDefaults,
} from '../../src/io/index.js';
import { ticksFor } from '../../src/report/index.js';
import { problemsOf } from '../support/problems.js';
import { type Json, surveyDocument } from '../support/surveys.js';

/** Ten answers or so, with others in their place. */
const brief = (change: Readonly<Record<string, unknown>> = {}) =>
  readBrief(
    {
      format: 'brief/1',
      date: '2026-09-21',
      edition: '2018+A2:2022',
      earthing: 'PME',
      phases: 1,
      mainFuse: '100 A',
      ringCircuits: 2,
      lightingCircuits: 1,
      allListed: 'yes',
      chargeCurrent: '32 A',
      outdoors: 'yes',
      indoors: '4 m',
      ...change,
    },
    usualDefaults,
  );
const home = (change: (document: { [key: string]: Json }) => void): Json => {
  const document = structuredClone(surveyDocument('easy-home')) as { [key: string]: Json };
  change(document);
  return document;
};

test('a negative figure stays a figure in a spreadsheet; what would be run as a formula does not', () => {
  const cells = ['-1', '-1.5', '-1.x', '=1+1', '-cmd', '+44'];
  expect(parseCsv(csvText([cells]))[0]).toEqual(['-1', '-1.5', "'-1.x", "'=1+1", "'-cmd", "'+44"]);
});

test('a sheet of the first questions is shorter than one of all', () => {
  const [first, all] = [briefColumns('first'), briefColumns('all')].map((rows) => rows[0] ?? []);
  expect(first?.length).toBeLessThan(all?.length ?? 0);
  for (const heading of first ?? []) expect(all).toContain(heading);
});

describe('an answer', () => {
  it('may have 300 characters, and no more', () => {
    expect(brief({ reference: 'x'.repeat(300) }).survey.about.reference).toHaveLength(300);
    expect(problemsOf(() => brief({ reference: 'x'.repeat(301) }))).toMatchObject([{ id: 'too-long' }]);
  });

  it('that is lacking keeps how it is to be had', () => {
    const fuse = brief({ mainFuse: { unknown: 'look at the cut-out on Monday' } }).survey.installation.supply.cutOut;
    expect(fuse.rating).toMatchObject({ state: 'unknown', obtain: 'look at the cut-out on Monday' });
  });

  it('with a decimal comma is told to have a point', () => {
    const [told] = problemsOf(() => brief({ indoors: '4,5 m' }));
    expect(told?.message).toContain("a decimal has a point here: write '4.5 m'");
  });

  it('of half a metre is a section of its route, and none of nothing', () => {
    const lengths = (wallsOutside: string) =>
      brief({ wallsOutside }).survey.wanted[0]?.run.stretches.map((s) =>
        s.length.state === 'known' ? s.length.value : -1,
      );
    expect(lengths('0.5 m')).toContain(0.5);
    expect(lengths('0 m')).toHaveLength((lengths('0.5 m')?.length ?? 0) - 1);
  });
});

test('rings and lighting of a brief survey are standard circuits, of which the allowances of the guide may be taken', () => {
  const { installation } = brief().survey;
  const said = pathsOf(installation).flatMap(({ run }) =>
    run.feeds.flatMap((o) => (o.kind === 'load' ? [[o.purpose, o.standardCircuit === true]] : [])),
  );
  expect(said).toContainEqual(['socket-outlets', true]);
  expect(said.filter(([purpose]) => purpose === 'socket-outlets')).toHaveLength(2);
});

test('points of a group in turn take the line conductors one after the other, from the one that is named', () => {
  const { wanted } = readSurvey(
    home((d) => {
      const [point] = d.wanted as { [key: string]: Json }[];
      Object.assign(point ?? {}, { count: 4, inTurn: true, lines: ['L2'] });
      (d.supply as { [key: string]: Json }).phases = 3;
    }),
  );
  expect(wanted.map((w) => w.run.lines)).toEqual([['L2'], ['L3'], ['L1'], ['L2']]);
});

test('a choice cannot lie between two', () => {
  const between = { between: ['TN-S', 'TT'], by: 'somebody' };
  const told = problemsOf(() => readSurvey(home((d) => Object.assign(d.supply as object, { system: between }))));
  expect(told.map((p) => p.message)).toContainEqual(expect.stringContaining('only a quantity can lie between'));
});

test('what is no plain data is refused by its kind', () => {
  for (const value of [() => 1, Symbol('x'), 10n])
    expect(
      problemsOf(() => readSurvey({ ...(surveyDocument('easy-home') as object), about: value })).map((p) => p.message),
    ).toContain(`is a ${typeof value}, not plain data`);
  expect(problemsOf(() => readDefaults(3))).toMatchObject([{ id: 'wrong-kind' }]);
});

test('ticks need a name and a day as soon as a table was compared, and none before', () => {
  const blank = ticksFor([bs7671Tables['4D5']]);
  const document = (compared: boolean) => ({
    ...blank,
    copies: { 'BS 7671': '2018+A2:2022' },
    tables: blank.tables.map((t) => ({ ...t, compared })),
  });
  const missing = (compared: boolean) =>
    problemsOf(() => readTicks(document(compared))).flatMap((p) => (p.id === 'missing' ? [p.path[0]] : []));
  expect(missing(true)).toEqual(['by', 'on']);
  expect(missing(false)).toEqual([]);
});
