import { type Line, lineConductors } from '../../installation/index.js';
import type { Amperes, Ratio, WattHours } from '../../units/index.js';
import type { PerLine } from '../network/network.js';
import { type Inspection, inspectLines, isObject } from '../network/refuse.js';
import type { ChargingPeriod } from '../time/period.js';
import { inspectTimes, type RepeatingProfile } from '../time/profiles.js';
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
