import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amperes,
  assess,
  type Board,
  type Cable,
  celsius,
  type Installation,
  known,
  type Line,
  type Load,
  metres,
  ohms,
  type Run,
  ratio,
  squareMillimetres,
  vars,
  volts,
  watts,
} from '../../../src/index.js';
import { voltageAtConstantCurrent, voltageAtConstantPower } from '../../../src/physics/definitions.js';
import { chargePoint, circuit, house, stretch } from '../../support/house.js';
import { smallCode } from '../../support/small-code.js';

const load = (id: string, current: number, change: Partial<Load> = {}): Load => ({
  kind: 'load',
  id,
  purpose: 'other',
  current: known(amperes(current)),
  lines: ['L1'],
  ...change,
});
const route = (length: number): Run['stretches'] => [
  { name: 'route', length: known(metres(length)), method: known('C'), ambient: known(celsius(30)) },
];
const multicore = (area: number, cores: Cable['cores']): Cable => ({
  construction: 'multicore',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores,
  area: known(squareMillimetres(area)),
  protective: 'separate',
});
const three: readonly Line[] = ['L1', 'L2', 'L3'];
const dropOf = (installation: Installation, id = 'ev', options = {}) =>
  assess(smallCode, installation, id, options).figures.totalDrop as number;
const lowest = (installation: Installation, id = 'ev') =>
  assess(smallCode, installation, id).figures.voltageAtLowestSupply as number;

describe('voltage drop of a run', () => {
  it('counts a ring as two ways to the farthest point', () => {
    const radial = dropOf(house([circuit()]));
    expect(dropOf(house([circuit({ ring: true })]))).toBeCloseTo(radial / 4, 12);
  });

  it('shares the current between conductors in parallel', () => {
    const one = circuit();
    expect(dropOf(house([{ ...one, cable: { ...one.cable, parallel: 2 } }]))).toBeCloseTo(dropOf(house([one])) / 2, 12);
  });

  it('adds up what flows in each section between taps', () => {
    // 6, 10, 16 and 32 A at 5, 10, 20 and 30 m
    const taps = (
      [
        [6, 5],
        [10, 10],
        [16, 20],
      ] as const
    ).map(([amps, at]) => load(`tap ${at}`, amps, { at: metres(at) }));
    const run = circuit({ feeds: [...taps, load('end', 32)], stretches: route(30) });
    const moment = 64 * 5 + 58 * 5 + 48 * 10 + 32 * 10;
    expect(dropOf(house([run]))).toBeCloseTo(7.3e-3 * moment, 10);
    const all = circuit({ feeds: [load('end', 64)], stretches: route(30) });
    expect(lowest(house([run]))).toBeGreaterThan(lowest(house([all])));
  });

  it('takes r and x of the table at the power factor, and z where it is not stated', () => {
    const at = (powerFactor: number | undefined, area: number) =>
      dropOf(
        house([
          circuit({
            cable: multicore(area, 2),
            feeds: [load('motor', 100, powerFactor === undefined ? {} : { powerFactor: ratio(powerFactor) })],
            stretches: route(50),
          }),
        ]),
      );
    // Table 4D2B, single-phase: 35 mm² r 1.25, x 0.165, z 1.25; 10 mm² 4.4 mV/A/m
    expect(at(0.8, 35)).toBeCloseTo(5 * (1.25 * 0.8 + 0.165 * 0.6), 10);
    expect(at(undefined, 35)).toBeCloseTo(5 * 1.25, 10);
    expect(at(0.8, 10)).toBeCloseTo(5 * 4.4 * 0.8, 10);
  });

  it('counts the neutral of an unbalanced four-wire run', () => {
    const run = (loads: readonly Load[]) =>
      circuit({ lines: three, cable: multicore(10, 4), feeds: loads, stretches: route(40) });
    const onThree = (loads: readonly Load[]) => house([run(loads)], { phases: known(3) });
    const balanced = onThree([load('a', 20, { lines: three })]);
    // Table 4D2B, three-phase: 3.8 mV/A/m between lines
    const perPhase = (3.8e-3 * 20 * 40) / Math.sqrt(3);
    expect(dropOf(balanced)).toBeCloseTo(perPhase, 10);
    // on one line alone: line and neutral, twice as much
    expect(dropOf(onThree([load('a', 20)]))).toBeCloseTo(2 * perPhase, 10);
    // a light line beside heavy ones is followed where the circuit is on it
    const some = onThree([load('a', 20), load('b', 10, { lines: ['L2'] }), load('c', 6, { lines: ['L3'] })]);
    expect(dropOf(some)).toBeCloseTo(perPhase * (2 - 16 / 40), 10);
    // the exact solution says the same within the reactance and the print's rounding
    const exact = 216.2 - lowest(some);
    expect(Math.abs(exact / dropOf(some) - 1)).toBeLessThan(0.12);
  });

  it('follows the line of a single-phase circuit through a three-phase feeder', () => {
    const sub = (line: Line): Board => ({
      kind: 'board',
      complete: known(true),
      noResidual: known(true),
      id: 'sub',
      runs: [
        circuit({ lines: [line], feeds: [{ ...chargePoint, lines: [line] }] }),
        circuit({ id: 'rest', lines: ['L1'], feeds: [load('rest', 25)] }),
      ],
    });
    const feeder = (line: Line) =>
      house(
        [
          circuit({
            id: 'feeder',
            lines: three,
            cable: multicore(16, 4),
            feeds: [sub(line)],
            stretches: route(30),
            device: { ...circuit().device, rating: known(amperes(63)) },
          }),
        ],
        { phases: known(3) },
      );
    expect(dropOf(feeder('L1'))).toBeGreaterThan(dropOf(feeder('L2')));
    expect(lowest(feeder('L1'))).toBeLessThan(lowest(feeder('L2')));
    // declared demand stands on every line of the feeder
    expect(dropOf(feeder('L2'), 'ev', { feederDemand: { feeder: amperes(40) } })).toBeCloseTo(
      dropOf(feeder('L1'), 'ev', { feederDemand: { feeder: amperes(40) } }),
      10,
    );
  });
});

describe('exact voltage at the point', () => {
  // 6 mm² copper, 3.08 mΩ/m at 20 °C (IEC 60228), 0.08 mΩ/m, go and return over 20 m
  const impedanceAt = (temperature: number, length = 20) => ({
    resistance: ohms(2 * 3.08e-3 * length * (1 + 0.004 * (temperature - 20))),
    reactance: ohms(2 * 0.08e-3 * length),
  });
  const temperatureOf = (installation: Installation) =>
    assess(smallCode, installation, 'ev').figures.hottestConductor as number;

  it('of a load that holds its current is the closed form', () => {
    for (const [factor, feeds] of [
      [1, [chargePoint]],
      [0.8, [load('motor', 32, { powerFactor: ratio(0.8) })]],
    ] as const) {
      const installation = house([circuit({ feeds })]);
      const closed = voltageAtConstantCurrent({
        supplyVoltage: volts(216.2),
        ...impedanceAt(temperatureOf(installation)),
        designCurrent: amperes(32),
        powerFactor: ratio(factor),
        reactiveFactor: ratio(Math.sqrt(1 - factor ** 2)),
      });
      expect(lowest(installation)).toBeCloseTo(closed, 9);
    }
  });

  it('of a load that holds its power is the closed form, and lower', () => {
    const feeds = [load('drive', 32, { holds: 'power', powerFactor: ratio(1) })];
    const installation = house([circuit({ feeds })]);
    const closed = voltageAtConstantPower({
      supplyVoltage: volts(216.2),
      ...impedanceAt(temperatureOf(installation)),
      activePower: watts(230 * 32),
      reactivePower: vars(0),
    });
    expect(lowest(installation)).toBeCloseTo(closed, 9);
    expect(lowest(installation)).toBeLessThan(lowest(house([circuit({ feeds: [load('heater', 32)] })])));
  });

  it('rises where the circuit feeds in', () => {
    const installation = house([circuit({ feeds: [load('roof', 16, { purpose: 'generation' })] })]);
    expect(assess(smallCode, installation, 'ev').figures.voltageAtHighestSupply).toBeGreaterThan(253);
  });

  it('names a load that cannot be served', () => {
    const feeds = [load('drive', 300, { holds: 'power' })];
    const found = assess(smallCode, house([circuit({ feeds, stretches: route(2000) })]), 'ev');
    expect(found.figures.voltageAtLowestSupply).toMatchObject({ missing: [{ kind: 'range' }] });
  });
});

describe('rating and drop', () => {
  const area = fc.constantFrom(1.5, 2.5, 4, 6, 10, 16);
  const with_ = (size: number, length: number, amps: number, ambient: number): Installation => {
    const run = circuit();
    return house([
      {
        ...run,
        cable: { ...run.cable, area: known(squareMillimetres(size)) },
        stretches: [stretch({ length: known(metres(length)), ambient: known(celsius(ambient)) })],
        feeds: [{ ...chargePoint, setting: known(amperes(amps)) }],
      },
    ]);
  };
  const figures = (i: Installation) => assess(smallCode, i, 'ev').figures;

  it('longer never drops less, larger never carries less, hotter never carries more, and nothing is no number', () => {
    fc.assert(
      fc.property(
        area,
        area,
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        fc.integer({ min: 10, max: 60 }),
        fc.integer({ min: 0, max: 20 }),
        (size, other, length, more, amps, ambient, hotter) => {
          const base = figures(with_(size, length, amps, ambient));
          const longer = figures(with_(size, length + more, amps, ambient));
          expect(longer.totalDrop).toBeGreaterThanOrEqual(base.totalDrop as number);
          const [near, far] = [base.voltageAtLowestSupply, longer.voltageAtLowestSupply];
          // a conductor far beyond its capacity has no temperature, and a point that cannot be served no voltage
          if (typeof near === 'number' && typeof far === 'number') expect(far).toBeLessThanOrEqual(near + 1e-9);
          const [small, large] = [Math.min(size, other), Math.max(size, other)];
          expect(figures(with_(large, length, amps, ambient)).capacity).toBeGreaterThanOrEqual(
            figures(with_(small, length, amps, ambient)).capacity as number,
          );
          const warm = figures(with_(size, length, amps, ambient + hotter)).capacity;
          if (typeof warm === 'number') expect(warm).toBeLessThanOrEqual(base.capacity as number);
          expect(JSON.stringify(base)).not.toMatch(/null/);
          expect(base.capacity).toBeGreaterThan(0);
        },
      ),
      { numRuns: 60 },
    );
  });
});
