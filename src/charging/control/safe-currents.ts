import { type Amperes, amperes } from '../../units/index.js';
import { allocate } from '../allocation/allocate.js';
import type { ChargingNetwork, PerLine } from '../network/network.js';

/** Current of each point without word from meter or controller, A, by name. @inline */
export type SafeCurrents = Readonly<Record<string, Amperes>>;

/**
 * Current to which each point falls when the meter or the controller is silent, so that all together stay within every
 * limit beside the worst other load: equal parts, in whole steps, on every line that a point is wired to, with or
 * without a vehicle. Where a part would be under the smallest current, points late in the order of waiting get nothing.
 */
export function safeCurrents(network: ChargingNetwork, resolution: Amperes = amperes(1)): SafeCurrents {
  // generation may fail together with the meter: it leaves no room
  const nodes = network.nodes.map((n) => (n.load ? { ...n, load: importOnly(n.load) } : n));
  const points = network.points.map(({ vehicleLines: _, connected: __, ...point }) => point);
  // with nobody's maximum above the smallest current, those who run are those for whom it fits
  const least = allocate(
    { nodes, points: points.map((p) => ({ ...p, most: p.least ?? amperes(Math.min(6, p.most)) })) },
    { rule: 'max-min-amperes', stage: 'zero-or-least' },
  ).points;
  const able = points.filter((_, i) => least[i]!.current > 0);
  const shares = allocate({ nodes, points: able }, { rule: 'equal-share', resolution }).points;
  const safe: Record<string, Amperes> = {};
  for (const p of network.points) safe[p.id] = amperes(0);
  for (const p of shares) safe[p.id] = p.current;
  return safe;
}

const importOnly = ([a, b, c]: PerLine): PerLine => [
  amperes(Math.max(0, a)),
  amperes(Math.max(0, b)),
  amperes(Math.max(0, c)),
];
