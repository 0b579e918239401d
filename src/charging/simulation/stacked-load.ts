import { type Line, lineConductors } from '../../installation/index.js';
import { CalculationError } from '../../units/index.js';
import type { ChargingNetwork } from '../network/network.js';
import { inspection, inspectNetwork, isObject } from '../network/refuse.js';
import type { Simulation } from './outcome.js';

/** Load of a node on a line step by step, stacked: what a picture of the night shows. @inline */
export interface StackedLoad {
  /** Begin of each step, minutes since midnight of the first day. */
  readonly minutes: readonly number[];
  /** Bands from the bottom up: the other load, then each point; A in each step. */
  readonly bands: readonly { readonly name: string; readonly current: readonly number[] }[];
  /** The limit in each step, A. */
  readonly limit: readonly number[];
}

/**
 * Load of a node on a line, stacked, from a simulation that kept its series.
 * @param simulation with its series
 * @param network of the simulation
 * @param at node and line; the `name` of the band of other load
 * @returns minutes, bands and limit, A
 * @throws CalculationError `unknown-definition` for a simulation without series or a node that it does not have;
 * `not-covered` for a node without a limit
 * @example
 * ```ts
 * import { amperes, hours, kilowattHours, minutes, volts } from 'ohmwright';
 * import { simulate, stackedLoad } from 'ohmwright/charging';
 *
 * const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
 * const network = {
 *   nodes: [{ id: 'intake', limit: line(60), load: line(40) }],
 *   points: [{ id: 'drive', node: 'intake', lines: ['L1'], most: amperes(32) }],
 * } as const;
 * const night = simulate({
 *   network,
 *   sessions: [{ id: 'car', point: 'drive', arrives: hours(18), leaves: hours(31), energy: kilowattHours(23) }],
 *   from: hours(17), to: hours(31), step: minutes(1), voltage: volts(230),
 *   control: { policy: { rule: 'max-min-amperes' } },
 *   keepSeries: true,
 * });
 * stackedLoad(night, network, { node: 'intake', line: 'L1', name: 'house' }).bands.map((band) => band.name); // => ['house', 'drive']
 * ```
 */
export function stackedLoad(
  simulation: Simulation,
  network: ChargingNetwork,
  at: { readonly node: string; readonly line: Line; readonly name: string },
): StackedLoad {
  const found = inspection();
  for (const [name, value] of Object.entries({ simulation, network, at }))
    found.when(!isObject(value), [name], 'must be an object');
  found.refuse('the loads of a node');
  inspectNetwork(network, found, ['network']);
  found.label(at.line, ['at', 'line'], lineConductors);
  found.refuse('the loads of a node');
  const { series } = simulation;
  const load = series?.load.find((n) => n.id === at.node);
  const limit = series?.limit.find((n) => n.id === at.node);
  if (!series || !load || !limit)
    throw new CalculationError('unknown-definition', `the simulation keeps no series of a node '${at.node}'`, {
      kind: 'node with series',
      id: at.node,
      known: series?.load.map((n) => n.id) ?? [],
    });
  const most = limit.current[at.line];
  if (most.some((value) => value === null))
    throw new CalculationError('not-covered', `node '${at.node}' has no limit on ${at.line}`, {
      what: `stacked load of '${at.node}', which has no limit on ${at.line}`,
    });
  const parent = new Map(network.nodes.map((n) => [n.id, n.parent]));
  const behind = (id: string | undefined): boolean => id !== undefined && (id === at.node || behind(parent.get(id)));
  const node = new Map(network.points.map((p) => [p.id, p.node]));
  const points = series.points.flatMap(({ id, current }) => {
    const own = current[at.line];
    return own && behind(node.get(id)) ? [{ name: id, current: own }] : [];
  });
  return {
    minutes: series.minutes,
    bands: [{ name: at.name, current: load.current[at.line] }, ...points],
    limit: most as readonly number[],
  };
}
