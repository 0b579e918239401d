import { lineConductors } from '../../installation/index.js';
import { invalidInput, type Problem } from '../../units/index.js';
import type { ChargingNetwork, NetworkNode, NetworkPoint } from './network.js';
import { LEAST_CURRENT } from './network.js';

type Path = readonly (string | number)[];

/** Collects what is wrong with an input, each with its path. */
export interface Inspection {
  readonly problems: Problem[];
  /** Notes a problem when the condition holds. */
  when(wrong: boolean, path: Path, message: string): void;
  /** A finite number within the ends, or absent where allowed. */
  number(value: unknown, path: Path, ends: { least?: number; above?: number; optional?: true }): boolean;
  /** Throws `invalid-input` when anything was found. */
  refuse(what: string): void;
}

/** An empty inspection. */
export function inspection(): Inspection {
  const problems: Problem[] = [];
  const when = (wrong: boolean, path: Path, message: string) => {
    if (wrong) problems.push({ path, message });
  };
  return {
    problems,
    when,
    number(value, path, { least, above, optional }) {
      if (value === undefined && optional) return true;
      const finite = typeof value === 'number' && Number.isFinite(value);
      if (!finite) problems.push({ path, message: 'must be a finite number' });
      else if (least !== undefined && value < least) problems.push({ path, message: `must be at least ${least}` });
      else if (above !== undefined && value <= above) problems.push({ path, message: `must be above ${above}` });
      else return true;
      return false;
    },
    refuse(what) {
      if (problems.length > 0) throw invalidInput(what, problems);
    },
  };
}

/** What is said where currents do not go with the line conductors. */
export const THREE_CURRENTS = 'must have three currents, for L1, L2 and L3';

/** Results go by name, and a record cannot hold this one. */
const noName = "'__proto__' cannot be a name";

/** Everything that is wrong with a network, with the path from its root. */
export function inspectNetwork(network: ChargingNetwork, found: Inspection, root: Path = []): void {
  const nodes = new Map<string, NetworkNode>();
  network.nodes.forEach((node, i) => {
    found.when(nodes.has(node.id), [...root, 'nodes', i, 'id'], `'${node.id}' is the name of another node too`);
    found.when(node.id === '__proto__', [...root, 'nodes', i, 'id'], noName);
    nodes.set(node.id, node);
  });
  network.nodes.forEach((node, i) => {
    inspectNode(node, nodes, found, [...root, 'nodes', i]);
  });
  found.when(network.nodes.length === 0, [...root, 'nodes'], 'must name at least one node');
  const points = new Set<string>();
  network.points.forEach((point, i) => {
    const path = () => [...root, 'points', i];
    if (points.has(point.id)) found.when(true, [...path(), 'id'], `'${point.id}' is the name of another point too`);
    if (point.id === '__proto__') found.when(true, [...path(), 'id'], noName);
    points.add(point.id);
    if (!nodes.has(point.node)) found.when(true, [...path(), 'node'], `there is no node '${point.node}'`);
    inspectPoint(point, found, path);
  });
}

function inspectNode(node: NetworkNode, nodes: Map<string, NetworkNode>, found: Inspection, path: Path): void {
  for (const [name, least] of [
    ['limit', 0],
    ['load', undefined],
  ] as const) {
    const values = node[name];
    if (values === undefined) continue;
    found.when(values.length !== 3, [...path, name], THREE_CURRENTS);
    values.forEach((value, p) => {
      found.number(value, [...path, name, p], least === undefined ? {} : { least });
    });
  }
  found.number(node.unbalance, [...path, 'unbalance'], { least: 0, optional: true });
  found.number(node.neutralLimit, [...path, 'neutralLimit'], { least: 0, optional: true });
  if (node.parent === undefined) return;
  found.when(!nodes.has(node.parent), [...path, 'parent'], `there is no node '${node.parent}'`);
  // a cycle has no end: no walk to a root is longer than the number of nodes
  let above: NetworkNode | undefined = node;
  for (let steps = 0; above?.parent !== undefined; steps++) {
    if (steps > nodes.size) {
      found.when(true, [...path, 'parent'], `'${node.id}' is fed through itself`);
      return;
    }
    above = nodes.get(above.parent);
  }
}

function inspectPoint(point: NetworkPoint, found: Inspection, path: () => Path): void {
  const { lines, most, least = LEAST_CURRENT as number } = point;
  const good =
    lines.length >= 1 &&
    lines.length <= 3 &&
    lines.every((line, k) => lineConductors.includes(line) && lines.indexOf(line) === k) &&
    Number.isFinite(most) &&
    least > 0 &&
    most >= least &&
    Number.isFinite(least);
  if (!good) {
    found.when(lines.length < 1 || lines.length > 3, [...path(), 'lines'], 'must name one to three lines');
    lines.forEach((line, k) => {
      found.when(!lineConductors.includes(line), [...path(), 'lines', k], `there is no line '${line}'`);
      found.when(lines.indexOf(line) !== k, [...path(), 'lines', k], `names '${line}' twice`);
    });
    const numbers = [
      found.number(most, [...path(), 'most'], { least: 0 }),
      found.number(least, [...path(), 'least'], { above: 0 }),
    ];
    found.when(
      numbers.every(Boolean) && least > most,
      [...path(), 'least'],
      `${least} A is above the largest current, ${most} A`,
    );
  }
  const { vehicleLines, weight, priority, waitingSince, received } = point;
  if (vehicleLines !== undefined)
    found.when(
      ![1, 2, 3].includes(vehicleLines) || vehicleLines > lines.length,
      [...path(), 'vehicleLines'],
      `must be 1 to ${lines.length}, the lines of the point`,
    );
  if (weight !== undefined) found.number(weight, [...path(), 'weight'], { above: 0 });
  if (priority !== undefined) found.number(priority, [...path(), 'priority'], {});
  if (waitingSince !== undefined) found.number(waitingSince, [...path(), 'waitingSince'], {});
  if (received !== undefined) found.number(received, [...path(), 'received'], { least: 0 });
}
