import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { designFromMeasured, eightTenthsRule, measuredLimitExact } from '../../../src/codes/bs7671/definitions.js';
import { bs7671, compareMeasured, disconnectionRemedies } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  adiabaticFactor,
  amperes,
  type CheckResult,
  celsius,
  type Installation,
  known,
  metres,
  ohms,
  perKelvin,
  type Run,
  seconds,
  squareMillimetres,
} from '../../../src/index.js';
import { adiabaticArea, faultEnergy } from '../../../src/physics/index.js';
import { caseOf, circuit, house, plainBreaker } from '../../support/house.js';
import { figuresOf, judged } from '../../support/judged.js';

const code = bs7671('2018+A2:2022');

const judgedAll = (installation: Installation, options: AssessmentOptions = {}) => {
  const c = caseOf(installation, 'ev', options);
  const all = (['disconnection', 'protective-conductor', 'breaking-capacity'] as const).flatMap((group) =>
    judged(code, group, c),
  );
  return { figures: figuresOf(code, c), of: (id: string) => all.find((r) => r.check === id) as CheckResult };
};
const area = fc.constantFrom(1.5, 2.5, 4, 6, 10, 16);
const run = fc
  .record({
    area,
    length: fc.integer({ min: 1, max: 200 }),
    type: fc.constantFrom('B' as const, 'C' as const, 'D' as const),
    rating: fc.constantFrom(6, 10, 16, 20, 32, 40),
  })
  .map(
    ({ area: size, length, type, rating }): Run =>
      circuit({
        device: {
          kind: known({ standard: 'EN 60898', type }),
          rating: known(amperes(rating)),
          breakingCapacity: known(amperes(6000)),
        },
        cable: { ...circuit().cable, area: known(squareMillimetres(size)) },
        stretches: [{ ...circuit().stretches[0]!, length: known(metres(length)) }],
      }),
  );
const impedance = fc.double({ min: 0.02, max: 3, noNaN: true });

describe('directions', () => {
  test('a lower external impedance never turns a pass into a fail for disconnection', () => {
    fc.assert(
      fc.property(run, impedance, impedance, (r, a, b) => {
        const verdict = (z: number) =>
          judgedAll(house([r], { externalImpedance: known(ohms(z)) })).of('automatic-disconnection').verdict;
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        return verdict(high) !== 'pass' || verdict(low) === 'pass';
      }),
    );
  });
  test('a longer run, a smaller cable and a larger device never help disconnection', () => {
    const margin = (r: Run) => judgedAll(house([r])).of('automatic-disconnection').alternatives?.[0]?.margin as number;
    fc.assert(
      fc.property(run, fc.integer({ min: 1, max: 50 }), (r, more) => {
        const s = r.stretches[0]!;
        const longer = {
          ...r,
          stretches: [{ ...s, length: known(metres((s.length as { value: number }).value + more)) }],
        };
        const larger = { ...r, device: { ...r.device, rating: known(amperes(50)) } };
        const smaller = { ...r, cable: { ...r.cable, area: known(squareMillimetres(1)) } };
        const here = margin(r);
        return margin(longer) <= here && margin(larger) <= here && margin(smaller) <= here;
      }),
    );
  });
  test('a lower external impedance may turn a pass into something else for breaking capacity, withstand and discrimination', () => {
    const at = (z: number) =>
      judgedAll(
        house([circuit({ device: { ...circuit().device, conditionalRating: known(amperes(6000)) } })], {
          externalImpedance: known(ohms(z)),
          prospectiveCurrent: known(amperes(230 / z)),
        }),
        { acceptMemoryFigures: true },
      );
    const [far, near] = [at(0.35), at(0.03)];
    expect(far.of('automatic-disconnection').verdict).toBe('pass');
    expect(near.of('automatic-disconnection').verdict).toBe('pass');
    expect(far.of('breaking-capacity').verdict).toBe('pass');
    expect(near.of('breaking-capacity').verdict).toBe('fail');
    expect(far.of('protective-conductor').verdict).toBe('pass');
    expect(near.of('protective-conductor').verdict).toBe('not-determined');
    expect(far.of('discrimination-with-cut-out').verdict).toBe('pass');
    expect(near.of('discrimination-with-cut-out').verdict).toBe('not-determined');
  });
  test('a longer time never lowers the conductor that is required', () => {
    const need = (current: number, time: number) =>
      adiabaticArea({
        letThrough: faultEnergy({ faultCurrent: amperes(current), faultTime: seconds(time) }),
        adiabaticFactor: adiabaticFactor(115),
      });
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20000, noNaN: true }),
        fc.double({ min: 0.01, max: 2.5, noNaN: true }),
        fc.double({ min: 0, max: 2.5, noNaN: true }),
        (i, t, more) => need(i, t + more) >= need(i, t),
      ),
    );
  });
  test('a colder conductor never raises the impedance of a run', () => {
    fc.assert(
      fc.property(run, fc.integer({ min: -20, max: 90 }), fc.integer({ min: 0, max: 60 }), (r, t, more) => {
        const z = (temperature: number) => {
          const at = caseOf(house([r]), 'ev', { testTemperature: celsius(temperature) });
          return code.runFigures(code.calculator.of(at), at.run, 'test').impedance as number;
        };
        return z(t) <= z(t + more);
      }),
    );
  });
  test('a larger let-through or a smaller protective conductor never helps', () => {
    const margin = (energy: number, size: number) => {
      const beside = { protective: 'separate', protectiveArea: known(squareMillimetres(size)) } as const;
      const r = circuit({ cable: { ...circuit().cable, ...beside } });
      return judgedAll(house([r]), { makersLetThrough: energy }).of('protective-conductor').alternatives?.[0]
        ?.margin as number;
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 1000, max: 90000 }),
        fc.integer({ min: 0, max: 90000 }),
        fc.constantFrom<[number, number][]>([1.5, 2.5], [2.5, 4], [4, 6]),
        (e, more, [size, next]) => {
          expect(margin(e + more, size)).toBeLessThanOrEqual(margin(e, size));
          expect(margin(e, size)).toBeLessThanOrEqual(margin(e, next));
        },
      ),
    );
  });
});

describe('a reading of the loop impedance', () => {
  const warm = (operating: number) => ({
    temperatureCoefficient: perKelvin(0.004),
    testTemperature: celsius(10),
    operatingTemperature: celsius(operating),
  });
  test('0.8 is 10 °C against 70 °C; at 90 °C it lets the limit be exceeded by 1.067', () => {
    const limit = ohms(1.3656);
    const read = eightTenthsRule({ loopImpedanceLimit: limit });
    const hot = (operating: number) =>
      designFromMeasured({ measuredImpedance: read, externalImpedance: ohms(0), ...warm(operating) }) / limit;
    expect(hot(70)).toBeCloseTo(1, 12);
    expect(hot(90)).toBeCloseTo(1.0667, 4);
  });
  test('the guide divides by 1.24 and the appendix multiplies by 0.8: 5.87 against 5.82 Ω for B6', () => {
    expect((7.28 / 1.24).toFixed(2)).toBe('5.87');
    expect(eightTenthsRule({ loopImpedanceLimit: ohms(7.28) }).toFixed(2)).toBe('5.82');
  });
  test('there and back', () => {
    fc.assert(
      fc.property(
        impedance,
        impedance,
        fc.integer({ min: 0, max: 40 }),
        fc.constantFrom(70, 90),
        (external, more, t, operating) => {
          const temperatures = { ...warm(operating), testTemperature: celsius(t) };
          const limit = ohms(external + more);
          const read = measuredLimitExact({
            loopImpedanceLimit: limit,
            externalImpedance: ohms(external),
            ...temperatures,
          });
          const back = designFromMeasured({
            measuredImpedance: read,
            externalImpedance: ohms(external),
            ...temperatures,
          });
          expect(Math.abs(back - limit)).toBeLessThan(1e-12 * Math.max(1, limit));
        },
      ),
    );
  });
  test('rules of thumb are named, and not required for 90 °C conductors', () => {
    const at = (insulation: 'thermoplastic-70' | 'thermosetting-90') =>
      compareMeasured({
        measured: ohms(1.1),
        limit: ohms(1.3656),
        external: ohms(0.35),
        testTemperature: celsius(10),
        insulation,
      }).map((r) => [r.check, r.verdict]);
    expect(at('thermoplastic-70')).toEqual([
      ['measured-loop-impedance', 'pass'],
      ['measured-loop-impedance-0.8', 'fail'],
      ['measured-loop-impedance-1.24', 'pass'],
    ]);
    expect(at('thermosetting-90').map((r) => r[1])).toEqual(['pass', 'not-required', 'not-required']);
  });
});

describe('remedies', () => {
  const size = (a: number, r: number) => ({ area: squareMillimetres(a), hot: (r * 1.2e-3) as never });
  const failing = {
    voltage: 218.5 as never,
    origin: ohms(0.35),
    external: ohms(0.35),
    loop: ohms(0.35 + 10.49 * 1.2e-3 * 100),
    limit: ohms(1.3656),
    length: metres(100),
    line: (3.08 * 1.2e-3) as never,
    protectiveSizes: [size(2.5, 7.41), size(4, 4.61), size(6, 3.08)],
    cableSizes: [size(6, 10.49), size(10, 6.44), size(16, 4.23)],
  };
  test('each would do, with the figure it states', () => {
    const found = disconnectionRemedies(failing);
    expect(found.map((r) => r.change)).toEqual([
      'protective-conductor',
      'cable',
      'device',
      'route',
      'residual-current-device',
      'supply',
    ]);
    expect(found[0]).toEqual({ change: 'protective-conductor', area: 4 });
    expect(found[1]).toEqual({ change: 'cable', area: 10 });
    const length = (found[3] as { length: number }).length;
    expect(0.35 + 10.49 * 1.2e-3 * length).toBeCloseTo(1.3656, 10);
    const device = (found[2] as { operatingCurrent: number }).operatingCurrent;
    expect(218.5 / device).toBeCloseTo(failing.loop, 10);
    expect((found[4] as { rating: number }).rating * failing.loop).toBeCloseTo(50, 10);
  });
  test('of a circuit: the cable that it names does disconnect, the size below does not', () => {
    const at = (size: number) =>
      circuit({
        device: plainBreaker,
        cable: { ...circuit().cable, area: known(squareMillimetres(size)) },
        stretches: [{ ...circuit().stretches[0]!, length: known(metres(110)) }],
      });
    const { figures, of } = judgedAll(house([at(6)]));
    expect(of('automatic-disconnection').verdict).toBe('fail');
    const remedies = (edition: string, of = figures) => bs7671(edition).remedies(caseOf(house([at(6)]), 'ev'), of);
    const found = remedies('2018+A2:2022');
    if (!Array.isArray(found)) throw new Error('no remedies');
    expect(found[0]).toEqual({ change: 'cable', area: 10 });
    expect(judgedAll(house([at(10)])).of('automatic-disconnection').verdict).toBe('pass');
    expect(remedies('2018+A2:2022', {})).toHaveProperty('missing');
    // of an edition whose text was not available nothing is offered
    expect(remedies('2018+A4:2026')).toHaveProperty('missing');
  });
  test('a little too much may be mended at the supply; nothing is offered where nothing fails', () => {
    const slightly = disconnectionRemedies({ ...failing, loop: ohms(1.4) });
    expect(slightly[slightly.length - 1]).toMatchObject({ change: 'supply' });
    expect(disconnectionRemedies({ ...failing, loop: ohms(1) })).toEqual([]);
    // at the origin no conductor is long enough to help
    const none = disconnectionRemedies({ ...failing, length: metres(0) }).map((r) => r.change);
    expect(none).not.toContain('cable');
    expect(none).not.toContain('protective-conductor');
  });
});

test('a separate protective conductor in the open has to be 4 mm², and its enclosure is asked for', () => {
  const at = (size: number, containment?: 'clipped' | 'conduit') => {
    const s = circuit().stretches[0]!;
    const r = circuit({
      cable: {
        ...circuit().cable,
        construction: 'single-core',
        protective: 'separate',
        protectiveArea: known(squareMillimetres(size)),
      },
      stretches: [containment ? { ...s, containment } : s],
    });
    return judgedAll(house([r])).of('separate-protective-conductor').verdict;
  };
  expect([at(2.5, 'clipped'), at(4, 'clipped'), at(2.5, 'conduit'), at(2.5)]).toEqual([
    'fail',
    'pass',
    'not-required',
    'not-determined',
  ]);
});

test('every failing check on shock says that nothing may be energised on the strength of a calculation alone', () => {
  const long = circuit({
    device: plainBreaker,
    stretches: [{ ...circuit().stretches[0]!, length: known(metres(150)) }],
  });
  const c = caseOf(house([long]), 'ev', { makersLetThrough: 500000 });
  const failed = (['disconnection', 'protective-conductor'] as const)
    .flatMap((group) => judged(code, group, c))
    .filter((r) => r.weight === 'rule' && r.verdict === 'fail');
  expect(failed.length).toBeGreaterThan(1);
  for (const r of failed) expect(r.caution).toMatch(/must not be energised on the strength of a calculation alone/);
});
