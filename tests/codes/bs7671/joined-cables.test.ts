/** A circuit whose cable changes along its route: each length with its own cable, the circuit with all of them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { iec60364 } from '../../../src/codes/iec60364/index.js';
import { upToTaps } from '../../../src/design/up-to-tap.js';
import {
  assess,
  type Board,
  between,
  type Cable,
  type Installation,
  isMissing,
  known,
  metres,
  type Run,
  recorder,
  type Stretch,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../../src/index.js';
import { installationProblems } from '../../../src/installation/index.js';
import { arbitraryInstallation } from '../../../src/testing/index.js';
import { verifySheet } from '../../../src/verify/index.js';
import { premises, soundCircuit, soundHouse, soundStretch } from '../../hazards/sound.js';
import { figures } from '../../support/figures.js';
import { caseOf, load } from '../../support/house.js';

const code = bs7671('2018+A2:2022');
const flat = (area: number): Cable => ({ ...soundCircuit().cable, area: known(squareMillimetres(area)) });
const armoured = (area: number): Cable => ({
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 3,
  area: known(squareMillimetres(area)),
  protective: 'core',
});
const house = (length = 12): Stretch => soundStretch({ name: 'house', length: known(metres(length)), cable: flat(6) });
const drive = (change: Partial<Stretch> = {}): Stretch =>
  soundStretch({ name: 'drive', length: known(metres(18)), jointAccessible: known(true), ...change });
const joined = (change: Partial<Run> = {}): Installation =>
  soundHouse([soundCircuit({ cable: armoured(10), stretches: [house(), drive()], ...change })]);
const number = (of: Installation, name: string): number => figures(caseOf(of, 'ev'), name)[0] as number;

describe('12 m of 6 mm² flat cable, then 18 m of 10 mm² armoured cable', () => {
  // Table 4D5: 47 A clipped; Table 4E4A, two-core column: 85 A
  test('carries what the weaker length carries', () => {
    const { figures: of, overall } = assess(code, joined(), 'ev', premises);
    expect(of.capacity).toBe(47);
    expect(of.governingStretch).toBe('house');
    expect(overall.verdict).toBe('pass');
  });
  // Table 4D5: 7.3 mV/A/m; Table 4E4B: 4.7 mV/A/m. 12 x 7.3 x 32 + 18 x 4.7 x 32 = 5510 mV
  test('drops the sum of both', () => {
    const { totalDrop, dropAlong } = assess(code, joined(), 'ev', premises).figures;
    expect(totalDrop).toBeCloseTo(5.5104, 4);
    expect(dropAlong).toEqual([{ run: 'ev', drop: totalDrop }]);
  });
  // IEC 60228: 6 mm² 3.08, 2.5 mm² 7.41, 10 mm² 1.83 mΩ/m. 12 x 10.49 + 18 x 3.66 = 191.8 mΩ
  test('has R_1+R_2 of both, and warm each by its own insulation', () => {
    expect(number(joined(), 'lineAndProtectiveCold')).toBeCloseTo(0.19176, 5);
    // 70 °C: 1.2 times, 90 °C: 1.28 times; Z_e 0.28
    expect(number(joined(), 'loopImpedance')).toBeCloseTo(0.28 + 1.2 * 0.12588 + 1.28 * 0.06588, 3);
  });
  // Tables 43.1: k 115 and 143
  test('each length withstands by its own k and area', () => {
    const all = figures(caseOf(joined(), 'ev'), 'cables/withstandEnergy') as number[];
    expect(all[0]).toBeCloseTo((115 * 6) ** 2, -4);
    expect(all[1]).toBeCloseTo((143 * 10) ** 2, -4);
    const protective = figures(caseOf(joined(), 'ev'), 'cables/protectiveArea');
    expect(protective).toEqual([2.5, 10]);
    expect(assess(code, joined(), 'ev', premises).figures.protectiveArea).toBe(2.5);
  });
  // 12 m of 6 mm² between live conductors cold: 2 x 12 x 3.08 = 73.9 mΩ; the supply behind 860 A at 230 V: 0.2674 Ω
  test('the largest current at the change is what the first length lets through', () => {
    const all = figures(caseOf(joined(), 'ev'), 'faults/faultCurrent') as number[];
    expect(all[0]).toBe(860);
    const change = all[4] as number;
    // an upper bound: the impedances at right angles to each other
    expect(change).toBeGreaterThan(230 / (0.2674 + 0.0739));
    expect(change).toBeLessThan(860);
  });
  test('its sheet holds', () => {
    const sheet = recorder('joined');
    assess(code, joined(), 'ev', premises, sheet);
    expect(verifySheet(JSON.parse(JSON.stringify(writeSheet(sheet)))).problems).toEqual([]);
  });
});

test('the same cable said of a section is the cable of the run', () => {
  const one = soundHouse([soundCircuit({ stretches: [soundStretch({ name: 'a' }), soundStretch({ name: 'b' })] })]);
  const said = soundHouse([
    soundCircuit({ stretches: [soundStretch({ name: 'a' }), soundStretch({ name: 'b', cable: flat(6) })] }),
  ]);
  const results = (of: Installation) => assess(code, of, 'ev', premises).results.map((r) => [r.check, r.verdict]);
  expect(results(said)).toEqual(results(one));
});

// loads at 6 m and at 30 m, joint at 12 m: 6 m carry both, 6 m of flat and 18 m of armoured cable carry the far one
test('loads that are tapped along both cables', () => {
  const of = soundHouse([
    soundCircuit({
      cable: armoured(10),
      stretches: [house(), drive()],
      feeds: [load(10, { id: 'near', at: metres(6) }), load(16, { id: 'far' })],
    }),
  ]);
  const { totalDrop, voltageAtLowestSupply } = assess(code, of, 'ev', premises).figures;
  expect(totalDrop).toBeCloseTo((6 * 7.3 * 26 + 6 * 7.3 * 16 + 18 * 4.7 * 16) / 1000, 6);
  expect(isMissing(voltageAtLowestSupply)).toBe(false);
});

test('what is not known of one of the cables stays open', () => {
  const open = joined({ stretches: [house(), drive({ cable: { ...armoured(10), area: unknown() } }), drive()] });
  expect(assess(code, open, 'ev', premises).overall.verdict).toBe('not-determined');
});

describe('what cannot be', () => {
  const messages = (run: Partial<Run>) =>
    installationProblems(joined(run)).map((p) => [p.path.slice(3).join('.'), p.id]);
  test('is refused by name', () => {
    expect(messages({ ring: true })).toEqual([['ring', 'not-covered']]);
    expect(messages({ stretches: [house(), { ...drive(), cable: flat(4) }] })).toEqual([['cable', 'does-not-fit']]);
    expect(messages({ stretches: [{ ...house(), jointAccessible: known(true) }, drive()] })).toEqual([
      ['stretches.0.jointAccessible', 'does-not-fit'],
    ]);
    expect(messages({ stretches: [house(), drive({ cable: { ...armoured(10), cores: 2 } }), drive()] })).toEqual([
      ['stretches.1.cable.cores', 'does-not-fit'],
    ]);
  });
});

// IEC 60364-5-52 Table B.52.2, method C: 63 A for 10 mm², 46 A for 6 mm²
test('by IEC 60364 the weaker cable decides as well', () => {
  const multicore = (area: number): Cable => ({
    ...flat(area),
    construction: 'multicore',
    cores: 3,
    protective: 'core',
  });
  const stretches = [house(), drive()].map((s, i) => ({ ...s, ...(i > 0 ? {} : { cable: multicore(10) }) }));
  const of = joined({ cable: multicore(6), stretches });
  expect(assess(iec60364('2009'), of, 'ev').figures.capacity).toBe(46);
});

describe('a board that is tapped along a feeder of two cables', () => {
  const upTo = (stretches: readonly Stretch[], at: number) => {
    const board: Board = { kind: 'board', id: 'garage', at: metres(at), runs: [] };
    const feeder = soundCircuit({
      id: 'feeder',
      cable: armoured(10),
      stretches,
      feeds: [board, load(10, { id: 'end' })],
    });
    const path = {
      boards: [{ kind: 'board', id: 'db', runs: [feeder] } as Board, board],
      feeders: [feeder],
      run: soundCircuit(),
    };
    return upToTaps(path).feeders[0]?.stretches.map((s) => s.length);
  };
  test('counts the first whole and the second up to the tap', () => {
    expect(upTo([house(), drive()], 15)).toEqual([known(12), known(3, 'to where garage is tapped')]);
    expect(upTo([house(), drive()], 9)).toEqual([known(9, 'to where garage is tapped')]);
  });
  test('of a first length that is not known neither counts for less than it may', () => {
    const found = upTo([{ ...house(), length: unknown('measure it') }, drive()], 15);
    expect(found).toEqual([
      between(metres(0), metres(15), 'to where garage is tapped'),
      between(metres(0), metres(15), 'to where garage is tapped'),
    ]);
  });
});

test('sheets of drawn circuits whose cables change hold', () => {
  fc.assert(
    fc.property(arbitraryInstallation({ joined: true }), (installation) => {
      fc.pre(installationProblems(installation).length === 0);
      const sheet = recorder('drawn');
      assess(code, installation, 'ev', { acceptMemoryFigures: true }, sheet);
      expect(verifySheet(JSON.parse(JSON.stringify(writeSheet(sheet)))).problems).toEqual([]);
    }),
    { numRuns: 25 },
  );
});
