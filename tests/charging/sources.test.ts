/** Solar power and batteries of a site beside its vehicles. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PerLine, type SimulationInput, simulate } from '../../src/charging/index.js';
import { amperes, hours, kilowattHours, ratio, seconds, volts, wattHours } from '../../src/index.js';
import { node, perLine, point, problemsOf } from './networks.js';
import { profilesOf, simulations } from './simulations.js';

type Sources = NonNullable<SimulationInput['sources']>;
type Storage = NonNullable<Sources[number]['storage']>;
const battery: Storage = {
  holds: kilowattHours(10),
  atBegin: ratio(0.5),
  most: amperes(20),
  lines: ['L1'],
  efficiency: ratio(0.8),
  gives: 'own-use',
};
/** A house of one line through hours, each with its load and its solar power, A. */
const house = (
  load: readonly number[],
  sun: readonly number[],
  more: Partial<Sources[number]> = {},
  input: Partial<SimulationInput> = {},
) =>
  simulate({
    network: { nodes: [node('intake', perLine(40))], points: [point('bay', 'intake', 32, { lines: ['L1'] })] },
    sessions: [],
    from: seconds(0),
    to: hours(load.length),
    step: hours(1),
    voltage: volts(230),
    load: [{ node: 'intake', every: hours(1), values: load.map((a) => perLine(a, 0, 0)) }],
    control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
    sources: [{ node: 'intake', solar: { every: hours(1), values: sun.map((a) => perLine(a, 0, 0)) }, ...more }],
    keepSeries: true,
    ...input,
  });
const kWh = (amps: number) => amps * 0.23;

describe('solar power', () => {
  test('serves the house first; what is left is exported up to the limit, and the rest not generated', () => {
    const [of] = house([10, 2], [6, 20], { exportLimit: amperes(12) }).sources!;
    // 6 of 6 A used; 2 of 20 A used, 12 A exported, 6 A not generated
    expect(of!.solar / 1000).toBeCloseTo(kWh(26), 9);
    expect(of!.curtailed / 1000).toBeCloseTo(kWh(6), 9);
    expect(of!.exported / 1000).toBeCloseTo(kWh(12), 9);
    expect(of!.imported / 1000).toBeCloseTo(kWh(4), 9);
  });
  test('makes room for vehicles above the limit of the supply', () => {
    const car = { id: 'car', point: 'bay', arrives: seconds(0), leaves: hours(2), energy: kilowattHours(20) };
    const found = house([30, 30], [0, 15], {}, { sessions: [car] });
    expect(found.series!.points[0]!.current.L1).toEqual([10, 25]);
    expect(found.nodes[0]!.peak[0]).toBeCloseTo(40, 9);
  });
});

describe('a battery', () => {
  test('takes what is left before it is exported, with its losses, and gives it to the house', () => {
    const found = house([0, 10, 10], [12, 0, 0], { storage: { ...battery, atBegin: ratio(0) } });
    const [of] = found.sources!;
    // 12 A in, 9.6 A come back: 9.6 A of the 10 A that follow
    expect(of!.stored / 1000).toBeCloseTo(kWh(12), 9);
    expect(of!.given / 1000).toBeCloseTo(kWh(9.6), 9);
    expect(of!.exported).toBe(0);
    expect(of!.imported / 1000).toBeCloseTo(kWh(10.4), 9);
    expect(of!.left).toBeCloseTo(0, 9);
  });
  test('takes only what may not be exported, where export goes first', () => {
    const [of] = house([0], [18], {
      storage: { ...battery, surplus: 'after-export' },
      exportLimit: amperes(13),
    }).sources!;
    expect(of!.exported / 1000).toBeCloseTo(kWh(13), 9);
    expect(of!.stored / 1000).toBeCloseTo(kWh(5), 9);
    expect(of!.curtailed).toBeCloseTo(0, 9);
  });
  test('gives above a limit alone where it is kept for that, and keeps its reserve', () => {
    const kept = house([50, 20], [0, 0], { storage: { ...battery, gives: 'above-limits' } });
    expect(kept.sources![0]!.given / 1000).toBeCloseTo(kWh(10), 9);
    expect(kept.nodes[0]!.overloaded[0]).toBe(0);
    const none = house([50], [0], { storage: { ...battery, gives: 'above-limits', reserve: ratio(0.5) } });
    expect(none.sources![0]!.given).toBe(0);
    expect(none.nodes[0]!.excess[0]).toBeCloseTo(10, 9);
  });
  test('lifts what vehicles share only where it is said to', () => {
    const car = { id: 'car', point: 'bay', arrives: seconds(0), leaves: hours(1), energy: kilowattHours(20) };
    const current = (forVehicles?: boolean) =>
      house(
        [30],
        [0],
        { storage: { ...battery, gives: 'above-limits', ...(forVehicles ? { forVehicles } : {}) } },
        { sessions: [car] },
      ).series!.points[0]!.current.L1![0];
    expect(current()).toBeCloseTo(10, 9);
    // 5 kWh in an hour are 21.7 A, of which the battery gives 20 A
    expect(current(true)).toBeCloseTo(30, 9);
  });
  test('is filled from the grid beside the vehicles, within the limit', () => {
    const found = house([30, 0], [0, 0], {
      storage: { ...battery, fill: [{ from: seconds(0), to: hours(1) }] },
    });
    const [of] = found.sources!;
    // 10 A are left of 40 A; what is left over in the second hour stays where it is
    expect(of!.stored / 1000).toBeCloseTo(kWh(10), 9);
    expect(found.nodes[0]!.peak[0]).toBeCloseTo(40, 9);
    expect(of!.left / 1000).toBeCloseTo(5 + kWh(8), 9);
  });
});

/** Outbuildings fed from an intake, on which a car at the first stands for an hour; by hand, A. */
describe('solar power behind a node, where nodes ahead may not export', () => {
  const site = (
    nodes: readonly { readonly load: number; readonly limit: number; readonly sun: number }[],
    { root = 0, car = 32, share = {}, at = 'n1' }: { root?: number; car?: number; share?: object; at?: string } = {},
  ) => {
    const ids = nodes.map((_, k) => `n${k + 1}`);
    const found = simulate({
      network: {
        nodes: [
          node('intake', perLine(100)),
          ...nodes.map(({ limit }, k) => node(ids[k]!, perLine(limit), { parent: 'intake' })),
        ],
        points: [point('bay', at, 63, { lines: ['L1'] })],
      },
      sessions: [
        {
          id: 'car',
          point: 'bay',
          arrives: seconds(0),
          leaves: hours(1),
          energy: wattHours(car * 230),
          most: amperes(car),
        },
      ],
      from: seconds(0),
      to: hours(1),
      step: hours(1),
      voltage: volts(230),
      load: [
        { node: 'intake', values: [perLine(root, 0, 0)] },
        ...nodes.map(({ load }, k) => ({ node: ids[k]!, values: [perLine(load, 0, 0)] })),
      ],
      control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
      sources: [
        { node: 'intake', exportLimit: amperes(0) },
        ...nodes.map(({ sun }, k) => ({ node: ids[k]!, solar: { values: [perLine(sun, 0, 0)] }, ...share })),
      ],
      keepSeries: true,
    });
    return {
      car: found.series!.points[0]!.current.L1![0],
      curtailed: found.sources!.map((o) => Math.round(o.curtailed / 230)),
      imported: found.sources!.map((o) => Math.round(o.imported / 230)),
      above: found.nodes.map((n) => n.longestAbove[0]),
    };
  };
  test('is counted on behind it, also where it is more than the house at the intake draws', () => {
    // 20 A of the sun and 12 A through a limit of 20 A; without a car nothing of the sun may be generated
    expect(site([{ load: 0, limit: 20, sun: 20 }])).toEqual({
      car: 32,
      curtailed: [0, 0],
      imported: [12, 12],
      above: [0, 0],
    });
    expect(site([{ load: 0, limit: 20, sun: 20 }], { car: 0.001 }).curtailed).toEqual([0, 20]);
  });
  test('is not where what feeds in at the intake, which nobody can hold back, makes it give way', () => {
    // 27 A feed in at the intake, 21 A are drawn behind the limit of 10 A: with the sun shut off 6 A are still exported
    expect(site([{ load: 21, limit: 10, sun: 27 }], { root: -27 })).toMatchObject({
      car: 0,
      curtailed: [0, 27],
      above: [0, 0],
    });
  });
  test('gives way first where no vehicle counts on it', () => {
    // 25 A at the first, 20 A of its sun and 5 A through its limit: they come from the second, of whose 20 A 15 A give way
    expect(
      site([
        { load: 0, limit: 5, sun: 20 },
        { load: 0, limit: 5, sun: 20 },
      ]),
    ).toEqual({
      car: 25,
      curtailed: [0, 0, 15],
      imported: [0, 5, 0],
      above: [0, 0, 0],
    });
  });
  test('a battery that gives on all its lines alike promises no more than each of them may carry away', () => {
    const storage = { ...battery, lines: ['L1', 'L2'], gives: 'above-limits', forVehicles: true };
    const both = (second: number) =>
      simulate({
        network: {
          nodes: [node('intake', perLine(10, 50, 50)), node('store', perLine(50), { parent: 'intake' })],
          points: [point('bay', 'intake', 32, { lines: ['L1'] })],
        },
        sessions: [{ id: 'car', point: 'bay', arrives: seconds(0), leaves: hours(1), energy: kilowattHours(20) }],
        from: seconds(0),
        to: hours(1),
        step: hours(1),
        voltage: volts(230),
        load: [{ node: 'intake', values: [perLine(0, second, 0)] }],
        control: { policy: { rule: 'max-min-amperes', stage: 'zero-or-least' } },
        sources: [
          { node: 'intake', exportLimit: amperes(0) },
          { node: 'store', storage: storage as Storage },
        ],
        keepSeries: true,
      }).series!.points[0]!.current.L1![0];
    // 5 kWh in an hour on two lines: 10.9 A each, where the house draws as much on the second; none where that line feeds in
    expect(both(20)).toBeCloseTo(10 + 5000 / 460, 9);
    expect(both(4)).toBeCloseTo(14, 9);
    expect(both(-20)).toBeCloseTo(10, 9);
  });
});

test('energy balances, no limit is exceeded, no export limit either, and a battery never holds more than it can', () => {
  const some = fc.record({
    holds: fc.integer({ min: 500, max: 20_000 }),
    atBegin: fc.double({ min: 0, max: 1, noNaN: true }),
    most: fc.integer({ min: 0, max: 40 }),
    lines: fc.constantFrom<Storage['lines']>(['L1'], ['L1', 'L2', 'L3'], ['L3']),
    gives: fc.constantFrom<Storage['gives']>('own-use', 'above-limits'),
    forVehicles: fc.boolean(),
    surplus: fc.constantFrom('before-export' as const, 'after-export' as const),
    fills: fc.boolean(),
    exportLimit: fc.option(fc.integer({ min: 0, max: 20 }), { nil: undefined }),
    twice: fc.boolean(),
    draws: fc.boolean(),
  });
  const drawn = simulations({ nodes: 3, points: 5 }).chain((input) =>
    fc.record({ input: fc.constant(input), sun: profilesOf(input.network, 0, 60, 8), s: some }),
  );
  fc.assert(
    fc.property(drawn, ({ input: given, sun, s }) => {
      const draw = (lines: PerLine): PerLine =>
        s.draws ? perLine(...(lines.map(Math.abs) as [number, number, number])) : lines;
      const input: SimulationInput = {
        ...given,
        network: {
          ...given.network,
          nodes: given.network.nodes.map((n) => (n.load ? { ...n, load: draw(n.load) } : n)),
        },
        load: (given.load ?? []).map((p) => ({ ...p, values: p.values.map(draw) })),
      };
      const storage: Storage = {
        holds: wattHours(s.holds),
        atBegin: ratio(s.atBegin),
        most: amperes(s.most),
        lines: s.lines,
        efficiency: ratio(0.9),
        gives: s.gives,
        forVehicles: s.forVehicles,
        surplus: s.surplus,
        ...(s.fills ? { fill: [{ from: hours(1), to: hours(2) }] } : {}),
      };
      const sources = input.network.nodes.map(({ id }, k): Sources[number] => {
        const solar = sun.find((p) => p.node === id);
        return {
          node: id,
          ...(solar ? { solar: { values: solar.values } } : {}),
          ...(k === 0 || s.twice ? { storage } : {}),
          ...(s.exportLimit === undefined ? {} : { exportLimit: amperes(s.exportLimit) }),
        };
      });
      const found = simulate({ ...input, sources, keepSeries: true });
      const bare = simulate({ ...input, keepSeries: true });
      for (const n of found.nodes) expect(n.longestAbove).toEqual([0, 0, 0]);
      const { series } = found;
      const h = input.step / 3600;
      const root = input.network.nodes.find((n) => n.parent === undefined)!;
      const through = (of: typeof found) => {
        const load = of.series!.load.find((n) => n.id === root.id)!.current;
        return (
          Object.values(load)
            .flat()
            .reduce((a, b) => a + b, 0) *
          input.voltage *
          h
        );
      };
      const charging =
        series!.points.flatMap((p) => Object.values(p.current).flat()).reduce((a, b) => a + b, 0) * input.voltage * h;
      const sum = (key: 'solar' | 'curtailed' | 'stored' | 'given') =>
        found.sources!.reduce((total, o) => total + o[key], 0);
      const at = found.sources!.find((o) => o.node === root.id)!;
      // what came in at the root is what was drawn, less what the sources gave
      expect(at.imported - at.exported).toBeCloseTo(through(found) + charging, 4);
      expect(through(bare) - through(found)).toBeCloseTo(
        sum('solar') - sum('curtailed') + sum('given') - sum('stored'),
        4,
      );
      for (const [k, o] of found.sources!.entries()) {
        expect(o.curtailed).toBeLessThanOrEqual(o.solar + 1e-6);
        expect(o.left).toBeGreaterThanOrEqual(-1e-6);
        const own = sources[k]!.storage;
        expect(o.left).toBeLessThanOrEqual((own?.holds ?? 0) + 1e-6);
        expect(o.left).toBeCloseTo((own ? own.holds * own.atBegin : 0) + o.stored * 0.9 - o.given, 4);
      }
      // no other load feeds in, which no export limit of the sources holds back
      if (s.exportLimit !== undefined && s.draws)
        for (const n of found.series!.load)
          for (const p of ['L1', 'L2', 'L3'] as const)
            for (const [k, base] of n.current[p].entries()) {
              const below = (id: string): boolean =>
                id === n.id ||
                input.network.nodes.some((o) => o.id === id && o.parent !== undefined && below(o.parent));
              const drawnHere = input.network.points.reduce(
                (total, q) =>
                  total + (below(q.node) ? (series!.points.find((x) => x.id === q.id)?.current[p]?.[k] ?? 0) : 0),
                0,
              );
              expect(base + drawnHere).toBeGreaterThanOrEqual(-s.exportLimit - 1e-5);
            }
    }),
    { numRuns: 150 },
  );
});

test('what cannot be is refused, each with its path', () => {
  const refused = (source: object, input: Partial<SimulationInput> = {}) =>
    problemsOf(() => house([0], [0], source as Partial<Sources[number]>, input)).join();
  expect(refused({ node: 'nowhere' })).toMatch(/sources.*nowhere/);
  expect(refused({ exportLimit: -1 })).toMatch(/exportLimit/);
  expect(refused({ solar: { values: [[1, 2, -3]] } })).toMatch(/solar/);
  expect(refused({ solar: { values: [] } })).toMatch(/solar/);
  expect(refused({ storage: 3 })).toMatch(/storage/);
  const wrong = { ...battery, efficiency: 2, lines: [], gives: 'never', atBegin: 3, fill: [{ from: 2, to: 1 }] };
  for (const key of ['efficiency', 'lines', 'gives', 'atBegin', 'fill'])
    expect(refused({ storage: wrong })).toContain(key);
  const neutral = { nodes: [node('intake', perLine(40), { neutralLimit: amperes(20) })], points: [] };
  expect(refused({}, { network: neutral })).toMatch(/neutrals/);
});
