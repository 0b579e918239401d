import type { ChargingNetwork, CurrentProfile, NetworkNode, PerLine } from '../charging/index.js';
import { isMissing, type Known } from '../core/index.js';
import { existingOn } from '../demand/demand.js';
import type { FeederDemand } from '../demand/feeder.js';
import type { Adequacy } from '../demand/index.js';
import { type Board, type Installation, type Line, pathTo } from '../installation/index.js';
import { type Amperes, amperes } from '../units/index.js';
import { limitOf, type Vehicle } from './night-vehicles.js';

const perLine = (of: (line: Line) => number): PerLine => [amperes(of('L1')), amperes(of('L2')), amperes(of('L3'))];

/** What everything else draws on a line at a board and all behind it, A. */
export type Existing = (board: Board, line: Line) => Known<Amperes>;

/** By the governing method: of the supply for its board, of the feeder for a board behind one. */
export function existingOf(installation: Installation, supply: Adequacy, feeders: readonly FeederDemand[]): Existing {
  const feederOf = (board: Board) =>
    feeders.find((f) => pathTo(installation, f.run)?.run.feeds.some((o) => o.kind === 'board' && o.id === board.id));
  return (board, line) =>
    board.id === installation.board.id
      ? existingOn(supply.demand, line)
      : existingOn(feederOf(board)?.demand ?? supply.demand, line);
}

/** What everything that no control holds draws on a line at a board and all behind it in a step, A. */
export type Beside = (board: Board, line: Line, step: number) => number;

/** The boards that hold vehicles, in the order of the tree, with their limits and with what else they carry. */
export function heldNetwork(
  vehicles: readonly Vehicle[],
  beside: Beside,
  steps: number,
): { readonly network: ChargingNetwork; readonly load: readonly CurrentProfile[] } {
  const boards = new Map(vehicles.flatMap((v) => v.held.map((b) => [b.id, b] as const)));
  const behind = (b: Board) => vehicles.find((v) => v.boards.some((x) => x.id === b.id))?.boards ?? [];
  const parentOf = (b: Board): Board | undefined => {
    const way = behind(b);
    const at = way.findIndex((x) => x.id === b.id);
    return way
      .slice(0, at)
      .filter((x) => boards.has(x.id))
      .at(-1);
  };
  const nodes = [...boards.values()].map((b): NetworkNode => {
    const parent = parentOf(b);
    const limit = limitOf(b);
    return {
      id: b.id,
      ...(parent ? { parent: parent.id } : {}),
      ...(limit === undefined || isMissing(limit) ? {} : { limit: perLine(() => limit) }),
    };
  });
  const load = [...boards.values()].map((b): CurrentProfile => {
    const children = [...boards.values()].filter((x) => parentOf(x)?.id === b.id);
    const own = (line: Line, k: number) =>
      Math.max(0, beside(b, line, k) - children.reduce((sum, c) => sum + beside(c, line, k), 0));
    return { node: b.id, values: Array.from({ length: steps }, (_, k) => perLine((line) => own(line, k))) };
  });
  // one root, as a network has
  const roots = nodes.filter((n) => n.parent === undefined);
  const all = roots.length > 1 ? [{ id: ROOT }, ...nodes.map((n) => (n.parent ? n : { ...n, parent: ROOT }))] : nodes;
  return { network: { nodes: all, points: vehicles.map((v) => pointAt(v, v.held.at(-1)?.id ?? ROOT)) }, load };
}

/** The one root that a network has where boards with a load control stand side by side. */
export const ROOT = 'supply';

/** The point of a vehicle at a place of a network. */
export const pointAt = (v: Vehicle, node: string) => ({
  id: v.point.id,
  node,
  lines: v.point.lines,
  most: v.current,
  ...(v.point.minimum === undefined ? {} : { least: v.point.minimum }),
});
