import { type Line, lineConductors } from '../../installation/index.js';
import { type Amperes, type Ratio, type WattHours, wattHours } from '../../units/index.js';
import type { PerLine } from '../network/network.js';
import { type Inspection, inspectLines, isObject } from '../network/refuse.js';
import type { Moment, TreeOrder } from '../network/tree-order.js';
import type { ChargingPeriod } from '../time/period.js';
import { inspectTimes, type RepeatingProfile, type StepClock, valueInStep } from '../time/profiles.js';
import type { TimeWindow } from '../time/windows.js';

/** A battery of the site. @inline */
export interface SiteStorage {
  /** Energy that it holds when full, Wh, above 0. */
  readonly holds: WattHours;
  /** State of charge at the begin, 1, 0 to 1. */
  readonly atBegin: Ratio;
  /** State of charge that it keeps for itself, 1, 0 to 1; 0 when absent. */
  readonly reserve?: Ratio;
  /** Largest current on each of its lines, either way, A. */
  readonly most: Amperes;
  /** Lines that it is connected to; it loads them alike. */
  readonly lines: readonly Line[];
  /** Energy that comes back over energy put in, 1, above 0 to 1. */
  readonly efficiency: Ratio;
  /** When it gives: for all that is drawn from the grid, or only where a limit would be exceeded. */
  readonly gives: 'own-use' | 'above-limits';
  /** Whether vehicles may be given what it can add to a limit; they share what the limit leaves when absent. */
  readonly forVehicles?: boolean;
  /** Whether what is left of solar power goes into it before it is exported; before when absent. */
  readonly surplus?: 'before-export' | 'after-export';
  /** When it is filled from the grid as far as limits leave room beside the vehicles; never when absent. */
  readonly fill?: readonly TimeWindow[];
}

/**
 * What feeds in at a node. Solar power serves what is connected behind the node first, vehicles included; then the battery and
 * the grid, in the order of the battery's `surplus`; what may not be exported is not generated. @inline
 */
export interface SiteSources {
  readonly node: string;
  /** Solar current that there is, on each line, A, 0 and up. */
  readonly solar?: RepeatingProfile<PerLine>;
  readonly storage?: SiteStorage;
  /** Largest current that the node may export on each line, A, 0 and up; any when absent. */
  readonly exportLimit?: Amperes;
}

/** What became of the sources of a node, at unity power factor. @inline */
export interface SourceOutcome {
  readonly node: string;
  /** Solar energy that there was, Wh. */
  readonly solar: WattHours;
  /** What of it was not generated because it could not be used, Wh. */
  readonly curtailed: WattHours;
  /** Energy that the battery took, Wh, at its terminals. */
  readonly stored: WattHours;
  /** Energy that it gave, Wh, at its terminals. */
  readonly given: WattHours;
  /** Energy in the battery at the end, Wh, as it would come back. */
  readonly left: WattHours;
  /** Energy that the node took from what feeds it, line by line, Wh. */
  readonly imported: WattHours;
  /** Energy that it gave to what feeds it, line by line, Wh. */
  readonly exported: WattHours;
}

/** Everything that is wrong with sources. */
export function inspectSources(
  { sources = [], ...period }: ChargingPeriod & { readonly sources?: readonly SiteSources[] },
  found: Inspection,
): void {
  if (!found.list(sources, ['sources'])) return;
  const nodes = new Map(period.network.nodes.map((n) => [n.id, n]));
  const limited = period.network.nodes.some((n) => n.unbalance !== undefined || n.neutralLimit !== undefined);
  found.when(limited && sources.length > 0, ['sources'], 'cannot stand beside limits of neutrals or of unbalance');
  const seen = new Set<string>();
  sources.forEach(({ node, solar, storage, exportLimit }, k) => {
    const path = ['sources', k];
    found.when(!nodes.has(node), [...path, 'node'], `there is no node '${node}'`);
    found.when(seen.has(node), [...path, 'node'], `'${node}' has other sources too`);
    seen.add(node);
    found.number(exportLimit, [...path, 'exportLimit'], { least: 0, optional: true });
    if (solar !== undefined) {
      if (!isObject(solar) || !Array.isArray(solar.values) || solar.values.length === 0)
        found.when(true, [...path, 'solar', 'values'], 'must have at least one value');
      else {
        inspectTimes(solar, [...path, 'solar'], period, found);
        for (const [j, value] of solar.values.entries()) inspectLines(value, 0, found, [...path, 'solar', 'values', j]);
      }
    }
    if (storage !== undefined) inspectStorage(storage, [...path, 'storage'], found);
  });
}

function inspectStorage(storage: SiteStorage, path: readonly (string | number)[], found: Inspection): void {
  if (!isObject(storage)) {
    found.when(true, path, 'must be a battery');
    return;
  }
  const { holds, atBegin, reserve = 0, most, lines, efficiency, gives, surplus, fill = [] } = storage;
  found.number(holds, [...path, 'holds'], { above: 0 });
  found.number(most, [...path, 'most'], { least: 0 });
  for (const [key, share] of Object.entries({ atBegin, reserve }))
    if (found.number(share, [...path, key], { least: 0 })) found.when(share > 1, [...path, key], 'must be at most 1');
  if (found.number(efficiency, [...path, 'efficiency'], { above: 0 }))
    found.when(efficiency > 1, [...path, 'efficiency'], 'must be at most 1');
  const known = Array.isArray(lines) && lines.length > 0 && new Set(lines).size === lines.length;
  found.when(
    !known || !lines.every((line) => lineConductors.includes(line)),
    [...path, 'lines'],
    'must be line conductors, each once',
  );
  found.label(gives, [...path, 'gives'], ['own-use', 'above-limits']);
  found.label(surplus, [...path, 'surplus'], ['before-export', 'after-export'], 'optional');
  if (found.list(fill, [...path, 'fill']))
    for (const [k, { from, to }] of fill.entries()) {
      const both = [
        found.number(from, [...path, 'fill', k, 'from'], {}),
        found.number(to, [...path, 'fill', k, 'to'], {}),
      ];
      found.when(both.every(Boolean) && to <= from, [...path, 'fill', k], 'must end after its begin');
    }
}

/** The sources of a node while they are simulated. */
interface Running {
  readonly of: SiteSources;
  readonly v: number;
  readonly lines: readonly number[];
  readonly solarAt: (step: number) => PerLine;
  /** Energy in the battery, Wh, as it would come back. */
  energy: number;
  readonly sum: Record<'solar' | 'curtailed' | 'stored' | 'given' | 'imported' | 'exported', number>;
}

const NONE: PerLine = [0, 0, 0] as unknown as PerLine;
const LINES = [0, 1, 2] as const;

/** What moves the sources of a network on from step to step. */
export interface Dispatch {
  /** Sets what they leave for the vehicles in a step; `moved`: whether other load or limits have changed. */
  before(step: number, moved: boolean): void;
  /** Settles them beside what the vehicles draw; other load is then what the nodes saw. */
  after(now: number, time: number, charging: Float64Array): void;
  outcome(): readonly SourceOutcome[];
}

/** Dispatches the sources of a network, each step on its own, with no look ahead. */
export function dispatchOf(
  order: TreeOrder,
  moment: Moment,
  sources: readonly SiteSources[],
  { voltage, step: length, ...clock }: StepClock & Pick<ChargingPeriod, 'voltage'>,
): Dispatch {
  const { base, room } = moment;
  const { limit, parent } = order;
  const place = new Map(order.nodes.map((node, v) => [node.id, v]));
  const plain = base.slice();
  let solar: readonly PerLine[] = [];
  const all = sources.map((of): Running => {
    const { solar: course, storage } = of;
    const index = course && valueInStep(course, { ...clock, step: length });
    return {
      of,
      v: place.get(of.node)!,
      lines: storage ? LINES.filter((p) => storage.lines.includes(lineConductors[p])) : [],
      solarAt: (step) => (index ? course!.values[index(step)]! : NONE),
      energy: storage ? storage.holds * storage.atBegin : 0,
      sum: { solar: 0, curtailed: 0, stored: 0, given: 0, imported: 0, exported: 0 },
    };
  });
  // what stands behind a node is settled before the node
  all.sort((a, b) => b.v - a.v);
  const add = (to: Float64Array, v: number, p: number, current: number) => {
    for (let w = v; w >= 0; w = parent[w]!) to[3 * w + p] = to[3 * w + p]! + current;
  };
  /** What a node may still send towards the grid on a line, by the export limits on its way, A; below 0 where it sends too much. */
  const mayLeave = (v: number, p: number, charging: Float64Array): number => {
    let least = Number.POSITIVE_INFINITY;
    for (let w = v; w >= 0; w = parent[w]!) {
      const k = sourcesAt.get(w);
      if (k === undefined) continue;
      // solar power of a node ahead gives way itself
      const own = w === v ? 0 : solar[k]![p as 0 | 1 | 2];
      least = Math.min(least, exportOf(all[k]!) + base[3 * w + p]! + charging[3 * w + p]! + own);
    }
    return least;
  };
  const exportOf = ({ of }: Running): number => of.exportLimit ?? Number.POSITIVE_INFINITY;
  const canGive = ({ of: { storage }, energy, lines }: Running, time: number): number =>
    storage
      ? Math.max(
          0,
          Math.min(
            storage.most,
            ((energy - storage.holds * (storage.reserve ?? 0)) * 3600) / (time * voltage * lines.length),
          ),
        )
      : 0;
  /** What nodes ahead of the sources cannot count on, because the node may not export it, A. */
  const withheld = all.map(() => [0, 0, 0]);
  const feeding = new Float64Array(base.length);
  const sourcesAt = new Map(all.map((r, k) => [r.v, k]));
  /** Enters what the sources add, with what their batteries can give. */
  const enter = (give: (r: Running) => number) => {
    base.set(plain);
    feeding.fill(0);
    all.forEach((r, k) => {
      const at = 3 * r.v;
      // it gives on all its lines alike, and on none of them more than may be exported
      const out = r.lines.map((p) => Math.max(0, base[at + p]! - solar[k]![p]! + exportOf(r)));
      const more = Math.min(give(r), ...out);
      for (const p of LINES) {
        const feeds = solar[k]![p] + (r.lines.includes(p) ? more : 0);
        add(base, r.v, p, -feeds);
        add(feeding, r.v, p, feeds);
        withheld[k]![p] = Math.min(feeding[at + p]!, Math.max(0, -base[at + p]! - exportOf(r)));
        if (parent[r.v]! < 0) continue;
        add(base, parent[r.v]!, p, withheld[k]![p]!);
        add(feeding, parent[r.v]!, p, -withheld[k]![p]!);
      }
    });
  };

  return {
    before(step, moved) {
      if (moved) plain.set(base);
      solar = all.map((r) => r.solarAt(step));
      enter((r) => (r.of.storage?.forVehicles ? canGive(r, length) : 0));
      for (let c = 0; c < room.length; c++) room[c] = Math.max(0, limit[c]! - base[c]!);
    },
    after(now, time, charging) {
      enter(() => 0);
      const hours = time / 3600;
      all.forEach((r, k) => {
        const { of, v, lines, sum } = r;
        const { storage } = of;
        const most = exportOf(r);
        const net = LINES.map((p) => base[3 * v + p]! + charging[3 * v + p]!);
        /** The smallest room on the way to the grid on the lines of the battery; below 0 where a limit is exceeded. */
        let left = Number.POSITIVE_INFINITY;
        for (let w = v; w >= 0; w = parent[w]!)
          for (const p of lines) left = Math.min(left, limit[3 * w + p]! - base[3 * w + p]! - charging[3 * w + p]!);
        let given = 0;
        if (storage) {
          const mean = lines.reduce((total, p) => total + net[p]!, 0) / lines.length;
          const filling = storage.fill?.some((w) => now >= w.from && now < w.to) ?? false;
          const wanted = storage.gives === 'own-use' && !filling ? Math.max(0, mean) : 0;
          const outgoing = Math.min(...lines.map((p) => mayLeave(v, p, charging)));
          given = Math.max(0, Math.min(canGive(r, time), Math.max(-left, wanted), outgoing));
          if (given === 0 && left > 0) {
            const over = (p: number) => Math.max(0, -net[p]! - (storage.surplus === 'after-export' ? most : 0));
            const spare = Math.max(0, lines.reduce((total, p) => total + over(p), 0) / lines.length);
            const space = ((storage.holds - r.energy) * 3600) / (storage.efficiency * time * voltage * lines.length);
            given = -Math.max(0, Math.min(storage.most, space, left, filling ? storage.most : mean < 0 ? spare : 0));
          }
          const energy = given * voltage * lines.length * hours;
          r.energy -= energy > 0 ? energy : energy * storage.efficiency;
          sum.given += Math.max(0, energy);
          sum.stored += Math.max(0, -energy);
        }
        for (const p of LINES) {
          const flows = net[p]! - (lines.includes(p) ? given : 0);
          if (parent[v]! >= 0) add(base, parent[v]!, p, -withheld[k]![p]!);
          add(base, v, p, lines.includes(p) ? -given : 0);
          const cut = Math.min(solar[k]![p], Math.max(0, -mayLeave(v, p, charging)));
          add(base, v, p, cut);
          sum.solar += solar[k]![p] * voltage * hours;
          sum.curtailed += cut * voltage * hours;
          sum.imported += Math.max(0, flows + cut) * voltage * hours;
          sum.exported += Math.max(0, -flows - cut) * voltage * hours;
        }
      });
    },
    outcome: () =>
      sources.map(({ node }): SourceOutcome => {
        const { energy, sum } = all.find((r) => r.of.node === node)!;
        return {
          node,
          solar: wattHours(sum.solar),
          curtailed: wattHours(sum.curtailed),
          stored: wattHours(sum.stored),
          given: wattHours(sum.given),
          left: wattHours(energy),
          imported: wattHours(sum.imported),
          exported: wattHours(sum.exported),
        };
      }),
  };
}
