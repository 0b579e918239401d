/** Each piece of a riser carries the demand of what is tapped beyond it. */
import { describe, expect, test } from 'vitest';
import { bs7671, bs7671Demand } from '../../src/codes/bs7671/index.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { type Dwellings, dwellingsAtOnce } from '../../src/demand/index.js';
import {
  amperes,
  assess,
  hasCode,
  isMissing,
  known,
  type Line,
  type Load,
  metres,
  permitted,
  ratio,
  squareMillimetres,
  watts,
} from '../../src/index.js';
import { atItsDemand } from '../../src/site/at-its-demand.js';
import type { Survey } from '../../src/site/index.js';
import { circuit, house, stretch } from '../support/house.js';

const lines: readonly Line[] = ['L1', 'L2', 'L3'];
const floor = (id: string, count: number, at?: number): Load => {
  const dwellings: Dwellings = { count, each: known(amperes(60)), heating: known('not-electric' as const) };
  const current = dwellingsAtOnce(dwellings, 3);
  return {
    kind: 'load',
    id,
    purpose: 'dwellings',
    current,
    lines,
    dwellings,
    ...(at === undefined ? {} : { at: metres(at) }),
  };
};
const building = (feeds: readonly Load[]) =>
  house(
    [
      circuit({
        id: 'riser',
        lines,
        existing: true,
        device: { kind: known({ standard: 'BS 88-2' }), rating: known(amperes(100)) },
        cable: {
          ...circuit().cable,
          construction: 'multicore',
          cores: 5,
          protective: 'core',
          area: known(squareMillimetres(35)),
        },
        stretches: [stretch({ length: known(metres(90)) })],
        feeds,
      }),
    ],
    { phases: known(3) },
  );
const demandOf = (feeds: readonly Load[]) =>
  feederDemandOf(bs7671Demand, building(feeds), 'riser', {
    premises: 'other',
    governing: 'after-diversity',
    dwellings: { afterDiversity: { demand: watts(1500), constant: watts(8000), unbalance: ratio(1) } },
  });
const optionsFor = (feeds: readonly Load[]) => atItsDemand({ options: {} } as unknown as Survey, demandOf(feeds));
const along = (feeds: readonly Load[], options = optionsFor(feeds)) => {
  const found = assess(bs7671('2018+A2:2022'), building(feeds), 'riser', options).figures?.dropAlong;
  if (found === undefined || isMissing(found)) throw new Error('no drop');
  return found.find((d) => d.run === 'riser')?.drop as number;
};

const three = [floor('low', 5, 18), floor('middle', 5, 36), floor('high', 5)];
/** After diversity 1.5 kW for each flat and 8 kW for all, at 0.95, on the line that has most of the flats, A: of five two. */
const amps = (flats: number) => (((1.5 * flats + 8) * 1000) / 0.95 / 230) * (Math.ceil(flats / 3) / flats);

describe('a riser with flats along it', () => {
  test('has a demand at each place and beyond: fewer flats coincide more', () => {
    const { worst, beyond } = demandOf(three);
    expect(worst).toBeCloseTo(amps(15), 6);
    expect(beyond?.map((b) => b.at)).toEqual([18, 36, undefined]);
    expect(beyond?.map((b) => b.demand as number)).toEqual([15, 10, 5].map((n) => expect.closeTo(amps(n), 6)));
    expect(demandOf([floor('all', 15)])).not.toHaveProperty('beyond');
  });
  test('drops what its pieces drop', () => {
    // 35 mm² of the tables for 70 °C: 1.1 mV/A/m on three lines, of which a line has 1/√3
    const rate = 1.1 / Math.sqrt(3) / 1000;
    const expected = rate * (amps(15) * 18 + amps(10) * 18 + amps(5) * 54);
    expect(along(three) / expected).toBeCloseTo(1, 2);
    // all of it at the end
    expect(along([floor('high', 15)]) / (rate * amps(15) * 90)).toBeCloseTo(1, 2);
  });
  test('never drops more than with all of it at its end, nor less than with more flats higher up', () => {
    const [spread, raised, end] = [
      three,
      [floor('low', 5, 60), floor('middle', 5, 70), floor('high', 5)],
      [floor('high', 15)],
    ].map((feeds) => along(feeds));
    expect(spread!).toBeLessThan(raised!);
    expect(raised!).toBeLessThan(end!);
  });
  test('of another current nobody says where it is tapped: what the cable may carry is found as if it were connected load', () => {
    const options = { ...optionsFor(three), dropLimit: 0.01 };
    const largest = (of: typeof options) =>
      permitted(bs7671('2018+A2:2022'), building(three), 'riser', { vary: 'load' }, of).intervals;
    const [with1, without] = [largest(options), largest({ ...options, demandBeyond: {} })];
    expect(with1.length).toBeGreaterThan(0);
    expect(with1).toEqual(without);
  });
  test('a demand that cannot be is refused with its path', () => {
    const wrong = (demandBeyond: unknown) => {
      try {
        along(three, { demandBeyond } as never);
        return '';
      } catch (error) {
        return hasCode(error, 'invalid-input')
          ? error.detail.problems.map((p) => p.path.join('.')).join()
          : String(error);
      }
    };
    expect(wrong(7)).toContain('options.demandBeyond');
    expect(wrong({ riser: 7 })).toContain('options.demandBeyond.riser');
    expect(wrong({ riser: [{ at: metres(-3), demand: amperes(-1) }] })).toContain(
      'options.demandBeyond.riser.0.demand',
    );
    expect(wrong({ 'no riser': [] })).toContain('options.demandBeyond.no riser');
  });
});
