import { lineConductors } from '../../installation/index.js';
import { wattHours } from '../../units/index.js';
import type { PerLine } from '../network/network.js';
import type { Moment, TreeOrder } from '../network/tree-order.js';
import type { ChargingPeriod } from '../time/period.js';
import { type StepClock, valueInStep } from '../time/profiles.js';
import type { SiteSources, SourceOutcome } from './sources.js';

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
  /**
   * What a node may still send towards the grid on a line, by the export limits on its way, A; below 0 where it sends too much.
   * Solar power of the nodes ahead gives way itself; on request so does all that shines beside what is behind the node.
   */
  const mayLeave = (v: number, p: number, charging: Float64Array, beside = false): number => {
    let least = Number.POSITIVE_INFINITY;
    for (let w = v; w >= 0; w = parent[w]!) {
      const k = sourcesAt.get(w);
      if (k === undefined) continue;
      const gives = w === v ? 0 : beside ? shining[3 * w + p]! - shining[3 * v + p]! : sunAt(k, p);
      least = Math.min(least, exportOf(all[k]!) + base[3 * w + p]! + charging[3 * w + p]! + gives);
    }
    return least;
  };
  const exportOf = ({ of }: Running): number => of.exportLimit ?? Number.POSITIVE_INFINITY;
  const exportAt = (v: number): number => {
    const k = sourcesAt.get(v);
    return k === undefined ? Number.POSITIVE_INFINITY : exportOf(all[k]!);
  };
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
  /** Solar current behind each node that is generated, and what of that of each source is not, A. */
  const shining = new Float64Array(base.length);
  const cut = all.map(() => [0, 0, 0]);
  const sunAt = (k: number, p: number): number => solar[k]![p as 0 | 1 | 2] - cut[k]![p]!;
  const dim = (k: number, p: number, current: number): void => {
    cut[k]![p] = cut[k]![p]! + current;
    add(shining, all[k]!.v, p, -current);
    add(base, all[k]!.v, p, current);
  };
  const sourcesAt = new Map(all.map((r, k) => [r.v, k]));
  /** Enters what the sources add, with what their batteries can give. */
  const enter = (give: (r: Running) => number) => {
    base.set(plain);
    feeding.fill(0);
    all.forEach((r, k) => {
      const at = 3 * r.v;
      const out = LINES.map((p) => {
        let least = Number.POSITIVE_INFINITY;
        for (let w = r.v; w >= 0; w = parent[w]!) least = Math.min(least, base[3 * w + p]! + exportAt(w));
        return Math.max(0, least - solar[k]![p]!);
      });
      for (const p of LINES) {
        // it gives on all its lines alike: on the others, where nothing of it may be needed, no more than may be exported
        const others = r.lines.filter((q) => q !== p).map((q) => out[q]!);
        const feeds = solar[k]![p] + (r.lines.includes(p) ? Math.min(give(r), ...others) : 0);
        add(base, r.v, p, -feeds);
        add(feeding, r.v, p, feeds);
        withheld[k]![p] = Math.min(feeding[at + p]!, Math.max(0, -base[at + p]! - exportOf(r)));
        if (parent[r.v]! < 0) continue;
        add(base, parent[r.v]!, p, withheld[k]![p]!);
        add(feeding, parent[r.v]!, p, -withheld[k]![p]!);
      }
    });
  };

  /**
   * Whether vehicles behind a node can count on what feeds in there: not where other load beside it feeds in so much that a node
   * ahead, to keep its export limit, would have to draw more through this one than its limit.
   */
  const countsOn = (v: number, p: number): boolean => {
    for (let w = parent[v]!; w >= 0; w = parent[w]!)
      if (plain[3 * v + p]! - plain[3 * w + p]! - exportAt(w) > limit[3 * v + p]!) return false;
    return true;
  };
  /** The smallest room on the way of a node to the grid on a line, A, with what shines, or with what of it can be counted on; below 0 where a limit is exceeded. */
  const roomAhead = (v: number, p: number, charging: Float64Array, counted = false): number => {
    let least = Number.POSITIVE_INFINITY;
    for (let w = v; w >= 0; w = parent[w]!) {
      const dark = counted && !countsOn(w, p) ? shining[3 * w + p]! : 0;
      least = Math.min(least, limit[3 * w + p]! - base[3 * w + p]! - charging[3 * w + p]! - dark);
    }
    return least;
  };
  const behind = (v: number, w: number): boolean => {
    let at = v;
    while (at > w) at = parent[at]!;
    return at === w;
  };
  /** What a node may not export is not generated: its own first, and first where no limit is in the way. */
  const keepExport = (k: number, p: number, charging: Float64Array): void => {
    const { v } = all[k]!;
    for (const within of [true, false])
      for (let j = k; j >= 0; j--) {
        const over = -(exportOf(all[k]!) + base[3 * v + p]! + charging[3 * v + p]!);
        if (over <= 0) return;
        if (!behind(all[j]!.v, v)) continue;
        const space = within ? Math.max(0, roomAhead(all[j]!.v, p, charging)) : over;
        dim(j, p, Math.min(sunAt(j, p), space, over));
      }
  };

  return {
    before(step, moved) {
      if (moved) plain.set(base);
      solar = all.map((r) => r.solarAt(step));
      enter((r) => (r.of.storage?.forVehicles ? canGive(r, length) : 0));
      for (let v = 0; v < order.nodes.length; v++)
        for (const p of LINES) {
          const c = 3 * v + p;
          room[c] = Math.max(0, limit[c]! - (countsOn(v, p) ? base : plain)[c]!);
        }
    },
    after(now, time, charging) {
      enter(() => 0);
      const hours = time / 3600;
      shining.fill(0);
      all.forEach(({ v }, k) => {
        for (const p of LINES) {
          cut[k]![p] = 0;
          add(shining, v, p, solar[k]![p]);
        }
      });
      all.forEach((r, k) => {
        const { of, v, lines, sum } = r;
        const { storage } = of;
        const most = exportOf(r);
        const net = LINES.map((p) => base[3 * v + p]! + charging[3 * v + p]!);
        let given = 0;
        if (storage) {
          const left = Math.min(...lines.map((p) => roomAhead(v, p, charging)));
          const safe = Math.min(...lines.map((p) => roomAhead(v, p, charging, true)));
          const mean = lines.reduce((total, p) => total + net[p]!, 0) / lines.length;
          const filling = storage.fill?.some((w) => now >= w.from && now < w.to) ?? false;
          const wanted = storage.gives === 'own-use' && !filling ? Math.max(0, mean) : 0;
          const outgoing = (beside: boolean) => Math.min(...lines.map((p) => mayLeave(v, p, charging, beside)));
          const gives = Math.max(Math.min(-left, outgoing(true)), Math.min(wanted, outgoing(false)));
          given = Math.max(0, Math.min(canGive(r, time), gives));
          if (given === 0 && safe > 0) {
            const over = (p: number) => Math.max(0, -net[p]! - (storage.surplus === 'after-export' ? most : 0));
            const spare = Math.max(0, lines.reduce((total, p) => total + over(p), 0) / lines.length);
            const space = ((storage.holds - r.energy) * 3600) / (storage.efficiency * time * voltage * lines.length);
            given = -Math.max(0, Math.min(storage.most, space, safe, filling ? storage.most : mean < 0 ? spare : 0));
          }
          const energy = given * voltage * lines.length * hours;
          r.energy -= energy > 0 ? energy : energy * storage.efficiency;
          sum.given += Math.max(0, energy);
          sum.stored += Math.max(0, -energy);
        }
        for (const p of LINES) {
          if (parent[v]! >= 0) add(base, parent[v]!, p, -withheld[k]![p]!);
          add(base, v, p, lines.includes(p) ? -given : 0);
          keepExport(k, p, charging);
        }
      });
      all.forEach(({ v, sum }, k) => {
        for (const p of LINES) {
          const flows = base[3 * v + p]! + charging[3 * v + p]!;
          sum.solar += solar[k]![p] * voltage * hours;
          sum.curtailed += cut[k]![p]! * voltage * hours;
          sum.imported += Math.max(0, flows) * voltage * hours;
          sum.exported += Math.max(0, -flows) * voltage * hours;
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
