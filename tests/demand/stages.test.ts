import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/index.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { type Dwellings, demandOf, dwellingsAtOnce } from '../../src/demand/index.js';
import {
  amperes,
  type Board,
  type Installation,
  type Known,
  kilowattHours,
  known,
  type Line,
  type Load,
  type Run,
  ratio,
  recorder,
  unknown,
  watts,
  writeSheet,
} from '../../src/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { circuit, load, supply } from '../support/house.js';

const all: readonly Line[] = ['L1', 'L2', 'L3'];
/** Dwellings of 39.13 A a line, which are 9 kVA at 230 V. */
const flats = (count: number, change: Partial<Dwellings> = {}, lines: readonly Line[] = all, id = 'flats'): Load => {
  const dwellings: Dwellings = {
    count,
    each: known(amperes(9000 / 230)),
    heating: known('not-electric'),
    electricWater: known(false),
    ...change,
  };
  return {
    kind: 'load',
    id,
    purpose: 'dwellings',
    current: dwellingsAtOnce(dwellings, lines.length as 1 | 3),
    lines,
    dwellings,
  };
};
const feeding = (id: string, feeds: Run['feeds'], rating = 250): Run => ({
  ...circuit({ id, lines: all, existing: true, feeds }),
  cable: { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' },
  device: { kind: known({ standard: 'BS 88-2' }), rating: known(amperes(rating)) },
});
const board = (id: string, runs: readonly Run[], rating = 250): Board => ({
  kind: 'board',
  id,
  complete: known(true),
  mainSwitch: { rating: known(amperes(rating)), noFuseAhead: known(true) },
  runs,
});
const block = (...runs: readonly Run[]): Installation => ({
  supply: supply({ phases: known(3) }),
  board: board('intake', runs),
});
const other = { premises: 'other' as const };
const by = (installation: Installation, method: string, options = {}) =>
  demandOf(bs7671Demand, installation, { ...other, ...options, governing: method }).governing;
const worst = (lines: readonly { readonly demand: Known<number> }[]) =>
  Math.max(...lines.map((l) => l.demand as number));

describe('dwellings of a whole supply', () => {
  // 20 flats of 9 kVA: 180 kVA at once, 88.2 kVA by the table (published: 127.3 A at 400 V, lines alike);
  // single-phase dwellings: 7 of the 20 on the worst line, 88.2 kVA x 7/20 / 230 V = 134.2 A
  test('the French table, with the odd dwellings on one line', () => {
    expect(worst(by(block(feeding('riser', [flats(20)])), 'nfc14100-riser').lines)).toBeCloseTo(134.2, 1);
  });
  test('three-phase dwellings load the lines alike', () => {
    // 9 kVA on three phases: 13.04 A a line each; 88.2 kVA / 690 V = 127.8 A
    const one = flats(20, { each: known(amperes(3000 / 230)), phases: known(3) });
    expect(worst(by(block(feeding('riser', [one])), 'nfc14100-riser').lines)).toBeCloseTo(127.8, 1);
  });
  test('customary British figures: 20 x 2 kW + 12 kW = 52 kW', () => {
    // 52 kW / 0.95 x 7/20 / 230 V = 83.3 A; the 52 kW as in the comparison of methods
    expect(worst(by(block(feeding('riser', [flats(20)])), 'customary-after-diversity').lines)).toBeCloseTo(83.3, 1);
  });
  test('constants of the operator govern where they are stated, and allow for unbalance themselves', () => {
    const dwellings = { afterDiversity: { demand: watts(2000), constant: watts(8000), unbalance: ratio(1.1) } };
    const { governing } = demandOf(bs7671Demand, block(feeding('riser', [flats(20)])), { ...other, dwellings });
    expect(governing.method).toBe('after-diversity');
    // 1.1 x (20 x 2 + 8) kW = 52.8 kW, a third of it / 0.95 / 230 V = 80.55 A
    expect(worst(governing.lines)).toBeCloseTo(80.55, 2);
  });
  test('the coincidence by the root: 20 x 9 x (0.2 + 0.8/sqrt 20) = 68.2 kW', () => {
    const dwellings = { coincidence: { largest: watts(9000), limit: ratio(0.2) } };
    const found = by(block(feeding('riser', [flats(20)])), 'root-coincidence', { dwellings });
    // 68.2 kW / 0.95 x 7/20 / 230 V = 109.2 A
    expect(worst(found.lines)).toBeCloseTo(109.2, 1);
  });
  test('two kinds are counted apart, and constants of one kind serve neither', () => {
    const two = block(feeding('riser', [flats(10), flats(10, { heating: known('night-storage') }, all, 'storage')]));
    // 10: 90 kVA x 0.63 = 56.7; with storage heating 90 x 0.8 = 72; 128.7 kVA x 4/10 / 230 V = 223.8 A
    expect(worst(by(two, 'nfc14100-riser').lines)).toBeCloseTo(223.8, 1);
    const dwellings = { coincidence: { largest: watts(9000), limit: ratio(0.2) } };
    expect(by(two, 'root-coincidence', { dwellings }).verdict).toBe('not-applicable');
  });
  test('other loads come on top in full', () => {
    const lift = load(20, { id: 'lift', purpose: 'motor', lines: all });
    const found = by(block(feeding('riser', [flats(20)]), feeding('lift', [lift], 32)), 'nfc14100-riser');
    expect(worst(found.lines)).toBeCloseTo(154.2, 1);
  });
  test('how they are heated decides, and is asked for by name', () => {
    const open = block(feeding('riser', [flats(20, { heating: unknown('ask the manager') })]));
    const { governing } = demandOf(bs7671Demand, open, other);
    expect(governing).toMatchObject({ method: 'customary-after-diversity', verdict: 'not-determined' });
    expect(governing.gaps).toEqual([{ kind: 'fact', fact: 'heating of flats', obtain: 'ask the manager' }]);
  });
  test('a house without them is told of no method for dwellings', () => {
    const house = block(feeding('cooker', [load(30)], 32));
    expect(demandOf(bs7671Demand, house, other).methods.some((m) => m.method === 'nfc14100-riser')).toBe(false);
  });
});

describe('by stage', () => {
  const floor = (n: number, count: number, rating = 100) =>
    board(`floor ${n}`, [feeding(`floor ${n} flats`, [flats(count, {}, all, `flats of floor ${n}`)], rating)], rating);
  const riser = feeding('riser', [floor(1, 10), floor(2, 10)]);
  const tower = block(riser);
  const of = (id: string, options = {}) =>
    feederDemandOf(bs7671Demand, tower, id, { ...other, ...options, governing: 'nfc14100-riser' });

  test('fewer dwellings below a stage coincide more', () => {
    // riser: 20 of 9 kVA, 8 of them on the worst line (4 and 4): 88.2 kVA x 8/20 / 230 V = 153.4 A;
    // a floor: 10 of 9 kVA x 0.63 = 56.7 kVA, 4/10 of it: 98.6 A
    expect(of('riser').worst).toBeCloseTo(153.4, 1);
    expect(of('floor 1 flats').worst).toBeCloseTo(98.6, 1);
    expect(of('riser').dwellings).toBe(20);
  });
  test('a board along a riser carries what is below itself', () => {
    const { results, limit } = of('riser');
    expect(limit).toBe(250); // not the 100 A of a floor
    const switches = results.filter((r) => r.check === 'demand-within-main-switch');
    expect(switches.map((r) => r.verdict)).toEqual(Array(6).fill('pass'));
  });
  test('and fails where that is too much for it', () => {
    const small = block(feeding('riser', [floor(1, 10, 80), floor(2, 10)]));
    const { results } = feederDemandOf(bs7671Demand, small, 'riser', { ...other, governing: 'nfc14100-riser' });
    expect(results.filter((r) => r.verdict === 'fail').length).toBe(3);
  });
  test('its sheet holds against a second calculation, with every method that applies', () => {
    const sheet = recorder('riser');
    const dwellings = {
      afterDiversity: { demand: watts(2000), constant: watts(8000), unbalance: ratio(1.1) },
      coincidence: { largest: watts(9000), limit: ratio(0.2) },
      energy: { each: kilowattHours(3500), linear: ratio(0.0003), root: ratio(0.025) },
    };
    const { demand } = feederDemandOf(bs7671Demand, tower, 'riser', { ...other, dwellings }, sheet);
    expect(demand.methods.filter((m) => m.verdict === 'applicable').map((m) => m.method)).toEqual([
      'after-diversity',
      'customary-after-diversity',
      'nfc14100-riser',
      'root-coincidence',
      'energy-to-peak',
      'connected-load',
    ]);
    expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
  });
  test('a stage never takes more than all at once, and the whole no less than a part, by methods without bands', () => {
    const counts = fc.integer({ min: 1, max: 40 });
    fc.assert(
      fc.property(counts, counts, fc.constantFrom(...all), (one, two, line) => {
        const building = block(
          feeding('left', [flats(one, {}, all, 'left')]),
          feeding('right', [flats(two, {}, all, 'right')]),
        );
        const dwellings = { coincidence: { largest: watts(9000 * 0.95), limit: ratio(0.2) } };
        const options = { ...other, dwellings, governing: 'root-coincidence' };
        const at = (id: string) =>
          feederDemandOf(bs7671Demand, building, id, options).demand.governing.lines.find((l) => l.line === line)
            ?.demand as number;
        const whole = demandOf(bs7671Demand, building, options).governing.lines.find((l) => l.line === line)
          ?.demand as number;
        const most = (count: number) => (Math.ceil(count / 3) * 9000) / 230;
        expect(at('left')).toBeLessThanOrEqual(most(one) + 1e-9);
        expect(whole).toBeLessThanOrEqual(at('left') + at('right') + 1e-9);
        expect(whole).toBeGreaterThanOrEqual(Math.max(at('left'), at('right')) - 1e-9);
      }),
    );
  });
});
