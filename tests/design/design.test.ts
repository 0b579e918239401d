import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { withArea } from '../../src/design/vary.js';
import {
  amperes,
  assess,
  type Cable,
  celsius,
  cheapestFirst,
  type Design,
  design,
  type Installation,
  known,
  metres,
  ohms,
  permitted,
  type Run,
  type Stretch,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { withRun } from '../../src/installation/index.js';
import { sizeWords } from '../../src/installation/marking.js';
import { chargePoint, circuit, house } from '../support/house.js';
import { smallCode } from '../support/small-code.js';

const stretch = (length: number, change: Partial<Stretch> = {}): Stretch => ({
  name: 'route',
  length: known(metres(length)),
  method: known('C'),
  ambient: known(celsius(30)),
  group: { arrangement: 'bunched', circuits: known(1), unequal: known(false) },
  insulated: known(metres(0)),
  ...change,
});
const along = (length: number, change: Partial<Stretch> = {}) => circuit({ stretches: [stretch(length, change)] });

const twin = circuit().cable;
const multicore: Cable = {
  ...twin,
  construction: 'multicore',
  insulation: 'thermosetting-90',
  cores: 3,
  protective: 'core',
};

/** The installation with the chosen candidate in it. */
const built = (installation: Installation, d: Design): Installation =>
  withRun(installation, d.run, (run) => ({
    ...run,
    cable: d.chosen?.cable as Cable,
    device: { ...run.device, rating: known(d.chosen?.rating ?? amperes(0)) },
  }));

describe('design', () => {
  it('takes the smallest size and rating that pass, and says why each cheaper one fails', () => {
    const installation = house([along(20)]);
    const found = design(smallCode, installation, 'ev');
    expect(found.outcome).toBe('accepted');
    // 32 A clipped direct: 4 mm² carries 37 A (Table 4D5)
    expect([found.chosen?.area, found.chosen?.rating]).toEqual([4, 32]);
    expect(found.passedOver.every((p) => p.verdict === 'fail' && p.check.verdict === 'fail')).toBe(true);
    expect(found.passedOver).toHaveLength(9 + 9 + 5); // all ratings at 1.5 and 2.5 mm², and five below 32 A at 4 mm²
    expect(found.passedOver.find((p) => p.candidate.area === 2.5 && p.candidate.rating === 32)?.check.check).toBe(
      'tabulated-capacity',
    );
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(found.assessment).toEqual(assess(smallCode, built(installation, found), 'ev'));
  });
  it('keeps the name of a size that is not called by its area, and drops it with the size', () => {
    const sizes = [2.5, 4, 6].map((size, i) => ({ area: squareMillimetres(size), name: `size ${i}` }));
    const found = design({ ...smallCode, sizesFor: () => sizes }, house([along(20)]), 'ev', {}, { lengths: false });
    const named = found.chosen?.cable as Cable;
    expect(sizeWords(named)).toBe('size 1');
    expect(sizeWords({ ...named, area: unknown() })).toBeUndefined();
    expect(sizeWords(twin)).toBe('6 mm²');
    const varied = withArea({ ...circuit(), cable: named }, 6).cable;
    expect(sizeWords(varied)).toBe('6 mm²');
  });

  it('takes a larger size on a longer route, because of the drop', () => {
    const found = design(smallCode, house([along(40)]), 'ev');
    expect(found.chosen?.area).toBe(6);
    expect(found.passedOver.at(-1)?.check.check).toBe('device-carries-load');
    expect(found.passedOver.find((p) => p.candidate.area === 4 && p.candidate.rating === 32)?.check.check).toBe(
      'voltage-drop',
    );
  });

  it('follows another order, and chooses among cables', () => {
    const installation = house([along(20)]);
    const dearest = design(
      smallCode,
      installation,
      'ev',
      {},
      {
        order: { words: 'largest first', compare: (a, b) => -cheapestFirst.compare(a, b) },
      },
    );
    expect(dearest.order).toBe('largest first');
    expect(dearest.chosen?.area).toBe(16);
    const both = design(smallCode, installation, 'ev', { cables: [twin, multicore] });
    expect(both.chosen?.choice).toBe(0);
    // at 45 °C the thermoplastic cable needs one size more: 37 A times 0.79 is 29.2 A, below the 32 A of the device
    const warm = {
      ...along(10, { ambient: known(celsius(45)) }),
      feeds: [{ ...chargePoint, setting: known(amperes(28)) }],
    };
    const hot = design(smallCode, house([warm]), 'ev', { cables: [twin, multicore] });
    expect([hot.chosen?.choice, hot.chosen?.area]).toEqual([1, 4]);
  });

  it('returns the best open candidate with what is missing, and every candidate when all fail', () => {
    const open = design(smallCode, house([along(20, { ambient: unknown('measure it in the loft') })]), 'ev');
    expect(open.outcome).toBe('not-determined');
    expect(open.gaps).toContainEqual({
      kind: 'fact',
      fact: 'ambientTemperature',
      obtain: 'measure it in the loft',
    });
    expect(open.assessment?.overall.failed).toEqual([]);
    const none = design(smallCode, house([along(2000)]), 'ev');
    expect(none.outcome).toBe('none');
    expect(none.chosen).toBeUndefined();
    expect(none.passedOver).toHaveLength(6 * 9);
    const strange = circuit({
      cable: { ...twin, insulation: 'thermosetting-60' },
      device: { ...circuit().device, kind: unknown(), rating: unknown() },
    });
    expect(design(bs7671('2018+A2:2022'), house([strange]), 'ev').gaps).toHaveLength(1);
  });

  it('names the permitted length with the check that fails beyond it', () => {
    const found = design(smallCode, house([along(20)]), 'ev');
    const [only] = found.lengths?.intervals ?? [];
    expect(found.lengths?.intervals).toHaveLength(1);
    // 5 % of 230 V over 11 mV/A/m and 32 A: 32.67 m
    expect(only?.to.value).toBeCloseTo(11.5 / (0.011 * 32), 2);
    expect(only?.to.beyond?.check.check).toBe('voltage-drop');
    expect(only?.from.beyond).toBeUndefined();
  });

  it('drops the protective core of another size, keeps a separate one', () => {
    const own: Run = { ...along(20), cable: { ...twin, protectiveArea: known(squareMillimetres(2.5)) } };
    expect(design(smallCode, house([own]), 'ev').chosen?.cable.protectiveArea).toBeUndefined();
    const separate: Run = { ...own, cable: { ...own.cable, protective: 'separate' } };
    expect(design(smallCode, house([separate]), 'ev').chosen?.cable.protectiveArea).toEqual(
      known(squareMillimetres(2.5)),
    );
  });

  it('passes what it accepts and names a failing check for every cheaper candidate, on every input', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 120, noNaN: true }),
        fc.integer({ min: 6, max: 40 }),
        fc.integer({ min: 10, max: 65 }),
        fc.integer({ min: 1, max: 9 }),
        fc.constantFrom('C' as const, '101' as const, 'A' as const),
        (length, load, ambient, circuits, method) => {
          const run: Run = {
            ...along(length, {
              ambient: known(celsius(ambient)),
              method: known(method),
              group: { arrangement: 'bunched', circuits: known(circuits), unequal: known(false) },
            }),
            feeds: [{ ...chargePoint, setting: known(amperes(load)) }],
          };
          const installation = house([run]);
          const d = design(smallCode, installation, 'ev', { cables: [twin, multicore] });
          for (const p of d.passedOver) {
            expect(p.verdict).toBe(p.check.verdict);
            expect(p.verdict).not.toBe('pass');
          }
          if (d.outcome !== 'accepted') return;
          expect(assess(smallCode, built(installation, d), 'ev').overall.verdict).toBe('pass');
          const cheaper = d.passedOver.map((p) => p.candidate);
          for (const c of cheaper) expect(cheapestFirst.compare(c, d.chosen as typeof c)).toBeLessThan(0);
          expect(d.lengths?.intervals.some((i) => i.from.value <= length && length <= i.to.value)).toBe(true);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('permitted values', () => {
  it('finds the largest load, smallest size, highest ambient and largest grouping, each with its failing check', () => {
    const grouped = along(20, { group: { arrangement: 'bunched', circuits: known(1), unequal: known(false) } });
    const installation = house([grouped]);
    const ask = (question: Parameters<typeof permitted>[3]) => permitted(smallCode, installation, 'ev', question);
    const load = ask({ vary: 'load' }).intervals[0]?.to;
    expect(load?.value).toBeCloseTo(32, 2);
    expect(load?.beyond?.check.check).toBe('device-carries-load');
    const size = ask({ vary: 'area' });
    expect(size.intervals.map((i) => [i.from.value, i.to.value])).toEqual([[4, 16]]);
    expect(size.intervals[0]?.from.beyond).toMatchObject({ value: 2.5, check: { check: 'tabulated-capacity' } });
    // 47 A times C_a is at least 32 A down to 0.68: Table 4B1 has 0.71 at 50 °C and 0.61 at 55 °C
    const ambient = ask({ vary: 'ambient' }).intervals[0]?.to;
    expect(ambient?.value).toBeCloseTo(50, 1);
    expect(ambient?.beyond?.check.check).toBe('tabulated-capacity');
    // 47 A times C_g: 0.70 for three, 0.65 for four
    expect(ask({ vary: 'grouping' }).intervals[0]?.to.value).toBe(3);
    expect(ask({ vary: 'rating' }).intervals.map((i) => [i.from.value, i.to.value])).toEqual([[32, 40]]);
    expect(ask({ vary: 'ground' }).gaps).toHaveLength(1);
    expect(ask({ vary: 'grouping', stretch: 'attic' }).gaps).toHaveLength(1);
  });

  it('proves its ends: the end passes, the value beyond does not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 60, noNaN: true }),
        fc.constantFrom(2.5, 4, 6, 10),
        fc.constantFrom('length' as const, 'load' as const, 'ambient' as const),
        (length, area, vary) => {
          const run = along(length);
          const installation = house([{ ...run, cable: { ...run.cable, area: known(squareMillimetres(area)) } }]);
          const at = (value: number) => {
            const one = withRun(installation, 'ev', (r) => ({
              ...r,
              stretches: r.stretches.map((s) => ({
                ...s,
                ...(vary === 'length' ? { length: known(metres(value)) } : {}),
                ...(vary === 'ambient' ? { ambient: known(celsius(value)) } : {}),
              })),
              feeds: vary === 'load' ? [{ ...chargePoint, setting: known(amperes(value)) }] : r.feeds,
            }));
            return assess(smallCode, one, 'ev').overall.verdict;
          };
          for (const i of permitted(smallCode, installation, 'ev', { vary }).intervals) {
            for (const e of [i.from, i.to]) {
              expect(at(e.value)).toBe(i.verdict);
              if (e.beyond) expect(at(e.beyond.value)).not.toBe(i.verdict);
            }
            expect(at((i.from.value + i.to.value) / 2)).toBe(i.verdict);
          }
        },
      ),
      { numRuns: 20 },
    );
  });

  it('varies all stretches in proportion, one alone by name, and a feeder by its declared demand', () => {
    const two = circuit({ stretches: [stretch(5, { name: 'loft' }), stretch(15, { name: 'wall' })] });
    const installation = house([two]);
    const total = permitted(smallCode, installation, 'ev', { vary: 'length' }).intervals[0]?.to.value ?? 0;
    const wall = permitted(smallCode, installation, 'ev', { vary: 'length', stretch: 'wall' }).intervals[0]?.to.value;
    expect(wall).toBeCloseTo(total - 5, 2);
    const garage = { kind: 'board' as const, noResidual: known(true), id: 'garage', runs: [circuit()] };
    const fed = house([circuit({ id: 'submain', feeds: [garage] })]);
    const demand = permitted(smallCode, fed, 'submain', { vary: 'load' }).intervals[0]?.to.value;
    expect(demand).toBeCloseTo(32, 2);
  });

  it('bars everything where no value helps, and names the check', () => {
    const run = along(20, { ambient: known(celsius(60)) });
    const found = permitted(smallCode, house([run], { externalImpedance: known(ohms(0.2)) }), 'ev', { vary: 'length' });
    expect(found.intervals).toEqual([]);
    expect(found.barredBy.map((c) => c.check)).toContain('tabulated-capacity');
  });
});
