import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { iec60364 } from '../../../src/codes/iec60364/index.js';
import {
  amperes,
  assess,
  type Cable,
  celsius,
  type Group,
  isMissing,
  kelvinMetresPerWatt,
  known,
  type Line,
  type Load,
  metres,
  permitted,
  type Run,
  ratio,
  recorder,
  type Stretch,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../../src/index.js';
import { arbitraryInstallation } from '../../../src/testing/index.js';
import { verifySheet } from '../../../src/verify/index.js';
import { chargePoint, circuit, house, load, stretch } from '../../support/house.js';

const code = iec60364('2009');
const three: readonly Line[] = ['L1', 'L2', 'L3'];
const cable = (area: number, change: Partial<Cable> = {}): Cable => ({
  construction: 'multicore',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 3,
  area: known(squareMillimetres(area)),
  protective: 'core',
  ...change,
});
const judge = (change: Partial<Run>) =>
  assess(
    code,
    house([circuit({ cable: cable(6), ...change })], { phases: known(change.lines?.length === 3 ? 3 : 1) }),
    'ev',
  );
/** The number of a value or a limit. */
const amount = (of: unknown): number | undefined => (of as { readonly value?: number } | undefined)?.value;
const capacity = (s: Partial<Stretch>, c: Cable = cable(6), more: Partial<Run> = {}) =>
  judge({ cable: c, stretches: [stretch(s)], ...more }).figures.capacity;

describe('IEC 60364 as a wiring code', () => {
  it('names its edition and what it does not judge', () => {
    expect(() => iec60364('2024')).toThrow('not entered');
    expect(code.inForce('2026-11-25')).toBe('unknown');
    const found = judge({});
    expect(found.standing).toContain('recalled');
    const open = found.aspects.filter((a) => a.verdict !== 'not-determined').map((a) => a.aspect);
    expect(open).toEqual(['coordination', 'voltage-drop', 'terminal-temperature']);
    expect(found.overall.verdict).toBe('not-determined');
    expect(found.gaps).toContainEqual(expect.objectContaining({ kind: 'edition' }));
  });

  it('offers the sizes of its tables and the ratings of the device', () => {
    const sizes = (of: Parameters<typeof circuit>[0]) => code.sizesFor(circuit(of)).map((size) => size.area);
    expect(sizes({ cable: cable(6) }).slice(0, 4)).toEqual([1.5, 2.5, 4, 6]);
    expect(sizes({ cable: cable(6, { material: 'aluminium' }) })[0]).toBe(2.5);
    expect(sizes({ cable: cable(6, { construction: 'armoured' }) })).toEqual([]);
    expect(code.ratingsFor(circuit())).toContain(32);
  });

  // B.52.2 to B.52.13, 6 mm² and 25 mm²
  it.each([
    ['A2', { method: known('A'), insulated: known(metres(0)) }, cable(6), 32],
    ['A1', { method: known('A'), insulated: known(metres(0)) }, cable(6, { construction: 'single-core' }), 34],
    ['B1', { method: known('B1') }, cable(6, { construction: 'single-core' }), 41],
    ['B2', { method: known('B') }, cable(6), 38],
    ['C', {}, cable(6), 46],
    ['C, XLPE', {}, cable(6, { insulation: 'thermosetting-90' }), 58],
    ['C, aluminium', {}, cable(25, { material: 'aluminium' }), 83],
    ['E', { method: known('E') }, cable(6), 51],
    ['F', { method: known('F') }, cable(25, { construction: 'single-core' }), 131],
  ] as const)('rates method %s', (_, s, c, expected) => {
    expect(capacity(s as Partial<Stretch>, c)).toBe(expected);
  });

  it('rates three loaded conductors, and trefoil in air', () => {
    const more = { lines: three, feeds: [load(20, { lines: three })] };
    expect(capacity({}, cable(6, { cores: 4 }), more)).toBe(41);
    expect(capacity({ method: known('F') }, cable(25, { construction: 'single-core' }), more)).toBe(110);
    expect(capacity({ method: known('G') }, cable(25, { construction: 'single-core' }), more)).toBe(146);
  });

  it('tells ducts from cables direct in the ground', () => {
    const soil = {
      ambient: known(celsius(15)),
      depth: known(metres(0.6)),
      soilResistivity: known(kelvinMetresPerWatt(1)),
    };
    expect(capacity({ method: known('D'), containment: 'duct', ...soil })).toBeCloseTo(46 * 1.05 * 1.18, 10);
    expect(capacity({ method: known('D'), containment: 'buried', ...soil })).toBeCloseTo(48 * 1.05 * 1.5, 10);
    expect(capacity({ method: known('D2'), ...soil })).toBeCloseTo(48 * 1.05 * 1.5, 10);
    const open = judge({ stretches: [stretch({ method: known('D'), ...soil })] });
    expect(open.gaps).toContainEqual(expect.objectContaining({ fact: 'containment of route' }));
    // no factor for overload protection in the ground: I_n against I_z itself
    const found = judge({ stretches: [stretch({ method: known('D1'), ...soil })] });
    const limit = found.results.find((r) => r.check === 'tabulated-capacity')?.limit as { value: number };
    expect(limit.value).toBeCloseTo(32 / (1.05 * 1.18), 10);
  });

  it('takes its own factors', () => {
    const group = (circuits: number, change: Partial<Group> = {}): Group => ({
      arrangement: 'bunched',
      circuits: known(circuits),
      unequal: known(false),
      ...change,
    });
    // below 30 °C the factor rises as the heat balance has it, unlike BS 7671
    expect(capacity({ ambient: known(celsius(25)) })).toBeCloseTo(46 * 1.06, 10);
    expect(capacity({ ambient: known(celsius(10)) })).toBeCloseTo(46 * 1.22, 10);
    expect(capacity({ group: group(3) })).toBeCloseTo(46 * 0.7, 10);
    // one cable under a ceiling already has a factor
    expect(capacity({ group: group(1, { arrangement: 'single-layer-ceiling' }) })).toBeCloseTo(46 * 0.95, 10);
    const ground = {
      method: known('D2' as const),
      depth: known(metres(0.6)),
      soilResistivity: known(kelvinMetresPerWatt(2.5)),
    };
    // in the ground it goes on to twenty
    expect(
      capacity({ ...ground, ambient: known(celsius(20)), group: group(12, { arrangement: 'direct-in-ground' }) }),
    ).toBeCloseTo(48 * 0.36, 10);
    expect(
      capacity({
        ...ground,
        method: known('D1'),
        ambient: known(celsius(20)),
        group: group(8, { arrangement: 'ducts-in-ground' }),
      }),
    ).toBeCloseTo(46 * 0.54, 10);
    const tray = { support: 'ladder, cleats', trays: 1, spaced: false } as const;
    expect(capacity({ method: known('E'), group: group(4, { arrangement: 'single-layer-ladder', tray }) })).toBeCloseTo(
      51 * 0.8,
      10,
    );
    expect(isMissing(capacity({ insulated: known(metres(1)) }))).toBe(true);
    expect(capacity({ insulated: known(metres(0)) })).toBe(46);
  });

  it.each([
    ['armoured', { construction: 'armoured' }],
    ['flexible', { construction: 'flexible' }],
    ['60 °C', { insulation: 'thermosetting-60' }],
  ] as const)('has no table for a cable that is %s', (_, change) => {
    const found = judge({ cable: cable(6, change) });
    expect(found.gaps).toContainEqual(expect.objectContaining({ kind: 'cell', table: 'iec60364/b.52.2' }));
  });

  it('counts a fuse by its fusing current: 1.6 I_n, 1.9 I_n below 16 A', () => {
    const fuse = (rating: number, standard: 'BS 88-2' | 'BS 3036' = 'BS 88-2') =>
      judge({ device: { kind: known({ standard }), rating: known(amperes(rating)) }, feeds: [load(6)] }).results.find(
        (r) => r.check === 'conventional-overload',
      );
    expect(amount(fuse(40)?.value)).toBe(64);
    expect(amount(fuse(10)?.value)).toBe(19);
    // 1.6 · 50 A = 80 A above 1.45 · 46 A = 66.7 A, though I_n 40 A is below I_z
    expect(fuse(40)?.verdict).toBe('pass');
    expect(amount(fuse(50)?.limit)).toBeCloseTo(1.45 * 46, 10);
    expect(fuse(50)?.verdict).toBe('fail');
    expect(fuse(30, 'BS 3036')?.verdict).toBe('not-determined');
  });

  it('drop by Annex G: 35 mm² over 50 m, a motor at 100 A and cos φ 0.8, 5 V between lines', () => {
    const motor = load(100, { lines: three, powerFactor: ratio(0.8), purpose: 'motor' });
    const found = judge({
      lines: three,
      cable: cable(35, { cores: 4 }),
      feeds: [motor],
      stretches: [stretch({ length: known(metres(50)) })],
    });
    // guide: 1.0 V/(A·km), 5 V; its own constants give 0.974
    const between = (found.figures.totalDrop as number) * Math.sqrt(3);
    expect(between).toBeCloseTo(0.1 * 50 * Math.sqrt(3) * ((22.5 / 35) * 0.8 + 0.08 * 0.6), 10);
    expect(Math.abs(between - 5)).toBeLessThan(0.15);
  });

  it('Annex E: 39 A with 20 %, 40 % and 50 % of third harmonics need 10, 10 and 16 mm² where 6 mm² did without', () => {
    const smallest = (content: number) => {
      const run = circuit({
        lines: three,
        cable: cable(6, { cores: 4 }),
        device: { kind: known({ standard: 'EN 60898', type: 'B' }), rating: known(amperes(40)) },
        feeds: [load(39, { lines: three })],
        stretches: [stretch({ length: known(metres(5)) })],
        thirdHarmonic: known(ratio(content)),
      });
      return permitted(code, house([run], { phases: known(3) }), 'ev', { vary: 'area' }).intervals[0]?.from;
    };
    expect([0, 0.2, 0.4, 0.5].map((h) => smallest(h)?.value)).toEqual([6, 10, 10, 16]);
    expect(smallest(0.5)?.beyond?.check.check).toBe('load-within-capacity');
  });

  it('drop without a power factor: the impedance, at any size', () => {
    const drop = (area: number, material: Cable['material'] = 'copper') =>
      judge({ cable: cable(area, { material }), feeds: [load(10)] }).figures.totalDrop;
    expect(drop(2.5)).toBeCloseTo(10 * 20 * 2e-3 * Math.hypot(22.5 / 2.5, 0.08), 10);
    expect(drop(120)).toBeCloseTo(10 * 20 * 2e-3 * Math.hypot(22.5 / 120, 0.08), 10);
    expect(drop(16, 'aluminium')).toBeCloseTo(10 * 20 * 2e-3 * Math.hypot(36 / 16, 0.08), 10);
  });

  it('limits: 3 % for lighting, 5 % for the rest', () => {
    const limit = (purpose: Load['purpose']) =>
      amount(judge({ feeds: [load(6, { purpose })] }).results.find((r) => r.check === 'voltage-drop')?.limit);
    expect(limit('lighting')).toBe(0.03);
    expect(limit('cooking')).toBe(0.05);
  });

  it('judges no voltage window, which is of another code', () => {
    const feeds = [{ ...chargePoint, openPenDevice: known('open-pen-detection-window' as const) }];
    expect(judge({ feeds }).results.some((r) => r.check === 'voltage-window')).toBe(false);
  });

  it('ends in not-determined where a fact is not known', () => {
    const found = judge({ stretches: [stretch({ method: unknown(), length: unknown() })] });
    expect(found.aspects.find((a) => a.aspect === 'coordination')?.verdict).toBe('not-determined');
    expect(found.aspects.find((a) => a.aspect === 'voltage-drop')?.verdict).toBe('not-determined');
  });

  it('writes sheets that hold, for drawn installations, and never a number that is none', () => {
    const numbers = (value: unknown): number[] =>
      typeof value === 'number'
        ? [value]
        : typeof value === 'object' && value
          ? Object.values(value).flatMap(numbers)
          : [];
    fc.assert(
      fc.property(arbitraryInstallation({ open: true }), (installation) => {
        const sheet = recorder('sheet');
        const found = assess(code, installation, 'ev', {}, sheet);
        expect(numbers(found).every(Number.isFinite)).toBe(true);
        if (!isMissing(found.figures.capacity) && found.figures.capacity !== undefined)
          expect(found.figures.capacity).toBeGreaterThanOrEqual(0);
        expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
