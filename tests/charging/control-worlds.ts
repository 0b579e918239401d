import fc from 'fast-check';
import type { ChargingNetwork, ControlMeasurement, ControlSettings, ControlStep } from '../../src/charging/index.js';
import { controllerOf } from '../../src/charging/index.js';
import { amperes, type Line, seconds } from '../../src/index.js';
import { limited, linesOf, networks, perLine, way } from './networks.js';

/** A stretch of time in which something is amiss, s. */
interface Spell {
  readonly from: number;
  readonly lasts: number;
}

/** What happens to a load control in a few minutes: everything ends before `END`. */
export interface World {
  readonly network: ChargingNetwork;
  readonly settings: ControlSettings;
  /** Other load of a node on a line goes to a value, at once or as a ramp. */
  readonly loads: readonly {
    readonly at: number;
    readonly over: number;
    readonly node: number;
    readonly line: number;
    readonly load: number;
  }[];
  readonly meter: readonly (Spell & { readonly kind: 'gone' | 'broken' | 'frozen' })[];
  readonly clocks: readonly (Spell & { readonly jump: number; readonly whose: 'controller' | 'meter' | 'both' })[];
  /** Points without a link: they fall to their safe current, and nobody hears of them. */
  readonly silent: readonly (Spell & { readonly point: number })[];
  /** Vehicles that draw all they can whatever they are told. */
  readonly ignoring: readonly (Spell & { readonly point: number })[];
  /** Whether a point says what it draws. */
  readonly reports: readonly boolean[];
  /** Share of what it may draw that a vehicle takes, by time and point. */
  readonly takes: readonly number[];
  readonly plugs: readonly number[];
}

export const END = 220;
export const RECOVER = 20;

const spell = (lasts: number) => ({
  from: fc.integer({ min: 10, max: END - lasts - 5 }),
  lasts: fc.integer({ min: 1, max: lasts }),
});
const some = <T>(one: fc.Arbitrary<T>, most: number) => fc.array(one, { minLength: 0, maxLength: most });

/** Worlds; `calm`: with nothing amiss but the load. */
export const worlds = (faults: { readonly unread: boolean; readonly calm?: boolean }): fc.Arbitrary<World> =>
  networks({ nodes: 3, points: 5 })
    .map(limited)
    .chain((network) => {
      const point = fc.nat({ max: network.points.length - 1 });
      const amiss = (most: number) => (faults.calm ? 0 : most);
      return fc
        .record({
          meterPeriod: fc.integer({ min: 1, max: 4 }),
          controllerPeriod: fc.integer({ min: 1, max: 3 }),
          pointReaction: fc.integer({ min: 0, max: 6 }),
          vehicleReaction: fc.integer({ min: 0, max: 4 }),
          measures: fc.constantFrom('everything', 'everything', 'other-load' as const),
          rule: fc.constantFrom('max-min-amperes', 'strict-priority' as const),
          loads: fc.array(
            fc.record({
              at: fc.integer({ min: 0, max: END - 60 }),
              over: fc.constantFrom(0, 0, 5, 20, 50),
              node: fc.nat({ max: network.nodes.length - 1 }),
              line: fc.nat({ max: 2 }),
              load: fc.integer({ min: -10, max: 90 }),
            }),
            { minLength: 2, maxLength: 8 },
          ),
          meter: some(
            fc.record({ ...spell(60), kind: fc.constantFrom('gone', 'broken', 'frozen' as const) }),
            amiss(2),
          ),
          clocks: some(
            fc.record({
              ...spell(70),
              jump: fc.constantFrom(-100_000, -3600, -7, -2, 1, 2, 8, 30, 3600, 1e9),
              whose: fc.constantFrom('controller', 'meter', 'both' as const),
            }),
            amiss(3),
          ),
          silent: some(fc.record({ ...spell(60), point }), amiss(2)),
          ignoring: some(fc.record({ ...spell(80), point }), amiss(2)),
          reports: fc.array(faults.unread ? fc.boolean() : fc.constant(true), { minLength: 5, maxLength: 5 }),
          takes: fc.array(fc.constantFrom(0, 0.5, 1, 1), { minLength: 7, maxLength: 7 }),
          plugs: fc.array(fc.integer({ min: 0, max: 80 }), { minLength: 5, maxLength: 5 }),
        })
        .map(({ meterPeriod, controllerPeriod, pointReaction, vehicleReaction, measures, rule, ...rest }) => ({
          ...rest,
          // the worst load that is stated is the worst that comes
          network: {
            ...network,
            nodes: network.nodes.map((n) => ({ ...n, worst: perLine(...worstOf(network, n.id, rest.loads)) })),
          },
          settings: {
            policy: { rule },
            meters: network.nodes.map((n) => ({ node: n.id, measures, positive: 'import' as const })),
            meterPeriod: seconds(meterPeriod),
            controllerPeriod: seconds(controllerPeriod),
            pointReaction: seconds(pointReaction),
            vehicleReaction: seconds(vehicleReaction),
            staleAfter: seconds(12),
            riseAfter: seconds(0),
            resumeAfter: seconds(15),
            turnPeriod: seconds(1e6),
            recoverAfter: seconds(RECOVER),
          },
        }));
    });

function worstOf(network: ChargingNetwork, id: string, loads: World['loads']): [number, number, number] {
  const worst = [0, 1, 2].map((k) =>
    network.nodes.reduce((sum, n, v) => {
      if (!way(network, n.id).includes(id)) return sum;
      const all = [n.load?.[k] ?? 0, ...loads.filter((l) => l.node === v && l.line === k).map((l) => l.load)];
      return sum + Math.max(0, ...all);
    }, 0),
  );
  return worst as [number, number, number];
}

/** One line of one node with a limit, second by second, A. */
export interface Trace {
  readonly limit: number;
  /** What flows in all. */
  readonly total: readonly number[];
  readonly load: readonly number[];
  /** What vehicles draw above their commands, that nobody reports, or whose point has no link. */
  readonly stray: readonly number[];
  /** The part of vehicles that ignore their commands. */
  readonly ignoring: readonly number[];
}

/** Lets a world go on for a time, in steps of a second. */
export function run(
  world: World,
  until: number,
): { readonly traces: readonly Trace[]; readonly steps: readonly (ControlStep & { readonly at: number })[] } {
  const { network, settings } = world;
  const { start, step, safe } = controllerOf(network, settings);
  const reaction = settings.pointReaction! + settings.vehicleReaction;
  const within = (s: Spell, t: number) => t >= s.from && t < s.from + s.lasts;
  // a vehicle that neither its point nor a meter sees is out of reach of any control
  const seen = (i: number, t: number) =>
    settings.meters[0]!.measures === 'everything' ||
    (world.reports[i] && !world.silent.some((s) => s.point === i && within(s, t)));
  const below = network.nodes.map((n) => network.nodes.map((o) => way(network, o.id).includes(n.id)));
  const behind = network.nodes.map((n) => network.points.map((p) => way(network, p.node).includes(n.id)));
  const onLine = network.points.map((p) => [0, 1, 2].map((k) => linesOf(p).includes(`L${k + 1}` as Line)));
  const own = network.nodes.map((n) => [...(n.load ?? [0, 0, 0])] as number[]);
  const ramps: { readonly node: number; readonly line: number; readonly by: number; readonly end: number }[] = [];
  const told: number[][] = []; // what each point goes by, second by second
  const traces = network.nodes.flatMap((n, v) =>
    n.limit
      ? [0, 1, 2].map((k) => ({
          v,
          k,
          limit: n.limit![k]!,
          total: [] as number[],
          load: [] as number[],
          stray: [] as number[],
          ignoring: [] as number[],
        }))
      : [],
  );
  const steps: (ControlStep & { at: number })[] = [];
  let state = start;
  let commands: Readonly<Record<string, number>> = Object.fromEntries(network.points.map((p) => [p.id, 0]));
  let measured: ControlMeasurement | undefined;
  for (let t = 0; t < until; t++) {
    for (const l of world.loads)
      if (l.at === t) {
        // the last word on a load holds: a ramp in progress ends where it is
        for (let r = ramps.length - 1; r >= 0; r--)
          if (ramps[r]!.node === l.node && ramps[r]!.line === l.line) ramps.splice(r, 1);
        if (l.over === 0) own[l.node]![l.line] = l.load;
        else ramps.push({ node: l.node, line: l.line, by: (l.load - own[l.node]![l.line]!) / l.over, end: t + l.over });
      }
    for (const r of ramps) if (t < r.end) own[r.node]![r.line] = own[r.node]![r.line]! + r.by;
    const load = below.map((row) => [0, 1, 2].map((k) => own.reduce((sum, o, w) => sum + (row[w] ? o[k]! : 0), 0)));
    const silent = network.points.map((_, i) => world.silent.some((s) => s.point === i && within(s, t)));
    const ignores = network.points.map((_, i) =>
      world.ignoring.some((s) => s.point === i && within(s, t) && seen(i, t)),
    );
    const plugged = network.points.map((p, i) => p.connected !== false && t >= world.plugs[i % 5]!);
    const allowed = network.points.map((_, i) =>
      Math.max(0, ...told.slice(Math.max(0, t - reaction)).map((c) => c[i]!)),
    );
    const draw = network.points.map((p, i) => {
      if (!plugged[i]) return 0;
      if (ignores[i]) return p.most as number;
      return allowed[i]! * world.takes[(i + (t < END ? t >> 4 : 0)) % 7]!;
    });
    const at = (v: number, k: number, which: (i: number) => boolean) =>
      draw.reduce((sum, d, i) => sum + (behind[v]![i] && onLine[i]![k] && which(i) ? d : 0), 0);

    const offset = (whose: 'controller' | 'meter') =>
      world.clocks.reduce(
        (sum, c) => sum + (within(c, t) && (c.whose === whose || c.whose === 'both') ? c.jump : 0),
        0,
      );
    const spoilt = world.meter.find((m) => within(m, t))?.kind;
    if (t % settings.meterPeriod === 0 && spoilt !== 'frozen')
      measured =
        spoilt === 'gone'
          ? undefined
          : {
              at: seconds(t + offset('meter')),
              nodes: Object.fromEntries(
                network.nodes.map((n, v) => {
                  const seen = [0, 1, 2].map((k) =>
                    spoilt === 'broken'
                      ? Number.NaN
                      : load[v]![k]! + (settings.meters[0]!.measures === 'everything' ? at(v, k, () => true) : 0),
                  );
                  return [n.id, seen as never];
                }),
              ),
              points: Object.fromEntries(
                network.points.flatMap((p, i) =>
                  silent[i]
                    ? []
                    : [[p.id, { connected: plugged[i]!, ...(world.reports[i] ? { current: amperes(draw[i]!) } : {}) }]],
                ),
              ),
            };
    if (t % settings.controllerPeriod === 0) {
      const next = step(state, measured, seconds(t + offset('controller')));
      state = next.state;
      commands = next.commands;
      steps.push({ ...next, at: t });
    }
    told.push(network.points.map((p, i) => (silent[i] ? safe[p.id]! : commands[p.id]!)));
    for (const { v, k, total, load: loads, stray, ignoring } of traces) {
      total.push(load[v]![k]! + at(v, k, () => true));
      // whose point was without its link a moment ago may not follow yet
      const lost = (i: number) =>
        world.silent.some((s) => s.point === i && t >= s.from && t < s.from + s.lasts + reaction + 8);
      loads.push(load[v]![k]!);
      // of a vehicle that ignores its command what is above it: told less, it strays further
      const above = draw.reduce((sum, d, i) => {
        if (!ignores[i] || lost(i) || !world.reports[i] || !behind[v]![i] || !onLine[i]![k]) return sum;
        return sum + Math.max(0, d - allowed[i]!);
      }, 0);
      stray.push(above + at(v, k, (i) => lost(i) || !world.reports[i]));
      ignoring.push(at(v, k, (i) => ignores[i]!));
    }
  }
  return { traces, steps };
}
