import { lineConductors } from '../../installation/index.js';
import { invalidInput, type Problem, shown } from '../../units/index.js';
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
  /** One of these labels, or absent where allowed. */
  label(value: unknown, path: Path, labels: readonly string[], optional?: 'optional'): boolean;
  /** A list whose entries are objects. */
  list(value: unknown, path: Path): boolean;
  /** Throws `invalid-input` when anything was found. */
  refuse(what: string): void;
}

/** Whether something is an object, a list not being one. */
export const isObject = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

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
      // an end that another setting gives may be no number itself
      else if (typeof least === 'number' && value < least)
        problems.push({ path, message: `must be at least ${least}` });
      else if (above !== undefined && value <= above) problems.push({ path, message: `must be above ${above}` });
      else return true;
      return false;
    },
    label(value, path, labels, optional) {
      if (labels.includes(value as string) || (value === undefined && optional)) return true;
      problems.push({ path, message: `must be one of ${labels.join(', ')}, not ${shown(value)}` });
      return false;
    },
    list(value, path) {
      if (!Array.isArray(value)) {
        problems.push({ path, message: 'must be a list' });
        return false;
      }
      const before = problems.length;
      value.forEach((entry, i) => {
        if (!isObject(entry)) problems.push({ path: [...path, i], message: 'must be an object' });
      });
      return problems.length === before;
    },
    refuse(what) {
      if (problems.length > 0) throw invalidInput(what, problems);
    },
  };
}

/** What is said where currents do not go with the line conductors. */
export const THREE_CURRENTS = 'must have three currents, for L1, L2 and L3';

/** Names a result goes by: a text, not empty, and not the one that a record cannot hold. */
export function inspectName(id: unknown, path: Path, found: Inspection): void {
  if (typeof id !== 'string' || id === '') found.when(true, path, 'must be a name, a text that is not empty');
  else if (id === '__proto__') found.when(true, path, "'__proto__' cannot be a name");
}

/**
 * Everything that is wrong with a network, with the path from its root.
 * @returns whether it is a network at all, so that what refers to it can be looked at
 */
export function inspectNetwork(network: ChargingNetwork, found: Inspection, root: Path = []): boolean {
  if (!isObject(network)) {
    found.when(true, root, 'must be a network of nodes and points');
    return false;
  }
  const lists = [found.list(network.nodes, [...root, 'nodes']), found.list(network.points, [...root, 'points'])];
  if (!lists.every(Boolean)) return false;
  const nodes = new Map<string, NetworkNode>();
  network.nodes.forEach((node, i) => {
    const path = [...root, 'nodes', i, 'id'];
    if (nodes.has(node.id)) found.when(true, path, `${shown(node.id)} is the name of another node too`);
    inspectName(node.id, path, found);
    nodes.set(node.id, node);
  });
  network.nodes.forEach((node, i) => {
    inspectNode(node, nodes, found, [...root, 'nodes', i]);
  });
  found.when(network.nodes.length === 0, [...root, 'nodes'], 'must name at least one node');
  const points = new Set<string>();
  let at = 0;
  const path = () => [...root, 'points', at];
  network.points.forEach((point, i) => {
    at = i;
    if (points.has(point.id))
      found.when(true, [...path(), 'id'], `${shown(point.id)} is the name of another point too`);
    if (typeof point.id !== 'string' || point.id === '' || point.id === '__proto__')
      inspectName(point.id, [...path(), 'id'], found);
    points.add(point.id);
    if (!nodes.has(point.node)) found.when(true, [...path(), 'node'], `there is no node ${shown(point.node)}`);
    inspectPoint(point, found, path);
  });
  return true;
}

/** Three currents, one for each line conductor. */
export function inspectLines(values: unknown, least: number | undefined, found: Inspection, path: Path): void {
  if (!Array.isArray(values) || values.length !== 3) {
    found.when(true, path, THREE_CURRENTS);
    return;
  }
  values.forEach((value, p) => {
    if (!(Number.isFinite(value) && (least === undefined || value >= least)))
      found.number(value, [...path, p], least === undefined ? {} : { least });
  });
}

function inspectNode(node: NetworkNode, nodes: Map<string, NetworkNode>, found: Inspection, path: Path): void {
  for (const [name, least] of [
    ['limit', 0],
    ['load', undefined],
    ['worst', 0],
  ] as const) {
    if (node[name] !== undefined) inspectLines(node[name], least, found, [...path, name]);
  }
  if (node.unbalance !== undefined) found.number(node.unbalance, [...path, 'unbalance'], { least: 0 });
  if (node.neutralLimit !== undefined) found.number(node.neutralLimit, [...path, 'neutralLimit'], { least: 0 });
  if (node.thirdHarmonic !== undefined && found.number(node.thirdHarmonic, [...path, 'thirdHarmonic'], { least: 0 }))
    found.when(node.thirdHarmonic > 1, [...path, 'thirdHarmonic'], 'must be at most 1');
  if (node.parent === undefined) return;
  if (!nodes.has(node.parent)) found.when(true, [...path, 'parent'], `there is no node ${shown(node.parent)}`);
  // a cycle has no end: no walk to a root is longer than the number of nodes
  let above: NetworkNode | undefined = node;
  for (let steps = 0; above?.parent !== undefined; steps++) {
    if (steps > nodes.size) {
      found.when(true, [...path, 'parent'], `${shown(node.id)} is fed through itself`);
      return;
    }
    above = nodes.get(above.parent);
  }
}

function inspectPoint(point: NetworkPoint, found: Inspection, path: () => Path): void {
  const { lines, most, least = LEAST_CURRENT as number } = point;
  if (!Array.isArray(lines)) {
    found.when(true, [...path(), 'lines'], 'must be a list of lines');
    return;
  }
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
      found.when(!lineConductors.includes(line), [...path(), 'lines', k], `there is no line ${shown(line)}`);
      found.when(lines.indexOf(line) !== k, [...path(), 'lines', k], `names ${shown(line)} twice`);
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
  const { vehicleLines, weight, priority, waitingSince, received, connected } = point;
  if (connected !== undefined && typeof connected !== 'boolean')
    found.when(true, [...path(), 'connected'], 'must be true or false');
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
