import { type LoadNetwork, solveNetwork } from '../../../src/physics/power/index.js';
import { voltageAtNode } from '../../../src/physics/power/load-network.js';
import type { PublishedCase } from '../../support/published.js';

/** A ring of two conductors fed at A, of 0.03 Ω for 100 m of one conductor; 120 A at B and 80 A at C. */
const twoWire: LoadNetwork = {
  sources: [{ node: 'A', voltage: 240 }],
  branches: (
    [
      ['AB', 'A', 'B', 150],
      ['BC', 'B', 'C', 50],
      ['CA', 'C', 'A', 100],
    ] as const
  ).map(([name, from, to, metres]) => {
    const conductor = { resistance: (0.03 * metres) / 100, reactance: 0 };
    return { name, from, to, line: conductor, neutral: conductor };
  }),
  loads: [
    { node: 'B', line: 0, load: { kind: 'current', current: 120, angle: 0 } },
    { node: 'C', line: 0, load: { kind: 'current', current: 80, angle: 0 } },
  ],
};
const lines = [0, 1, 2] as const;
/** A three-phase ring main fed at A; the currents are referred to the voltage there, which is why it is taken as very high. */
const ringMain: LoadNetwork = {
  sources: [{ node: 'A', voltage: 1e9 }],
  branches: (
    [
      ['AB', 'A', 'B', 1, 0.6],
      ['BC', 'B', 'C', 1.2, 0.9],
      ['CD', 'C', 'D', 0.8, 0.5],
      ['DA', 'D', 'A', 3, 2],
    ] as const
  ).map(([name, from, to, resistance, reactance]) => ({ name, from, to, line: { resistance, reactance } })),
  stars: ['B', 'C', 'D'],
  loads: (
    [
      ['B', 50, 0.8],
      ['C', 120, 1],
      ['D', 70, 0.866],
    ] as const
  ).flatMap(([node, current, cos]) =>
    lines.map((line) => ({ node, line, load: { kind: 'current' as const, current, angle: Math.acos(cos) } })),
  ),
};
const currentIn = (network: LoadNetwork, name: string): number =>
  solveNetwork(network).branches.find((b) => b.name === name)?.currents[0] ?? Number.NaN;

const textbook = { document: 'Textbook of power systems', where: 'ring distributor of 300 m, recalled' } as const;
const answers = { document: 'Answer to a question on ring mains', where: 'ring ABCD fed at 11 kV' } as const;

/** Rings and their branches by the general network. */
export const cases: readonly PublishedCase[] = [
  ...(
    [
      ['AB', 86.67],
      ['BC', 33.33],
      ['CA', 113.33],
    ] as const
  ).map(
    ([name, published]): PublishedCase => ({
      id: `ring-distributor-${name.toLowerCase()}`,
      about: `current in section ${name} of a ring of two conductors`,
      source: textbook,
      provenance: 'memory',
      exercises: ['voltage-at-node'],
      ours: () => currentIn(twoWire, name),
      published,
      unit: 'A',
      tolerance: 0.0051,
    }),
  ),
  ...(
    [
      ['B', 232.2],
      ['C', 233.2],
    ] as const
  ).map(
    ([node, published]): PublishedCase => ({
      id: `ring-distributor-voltage-${node.toLowerCase()}`,
      about: `voltage at ${node} of the same ring`,
      source: textbook,
      provenance: 'memory',
      exercises: ['voltage-at-node'],
      ours: () => voltageAtNode({ network: twoWire, node, line: 0 }),
      published,
      unit: 'V',
      tolerance: 0.0501,
    }),
  ),
  ...(
    [
      ['AB', 146.2, 0.1],
      ['BC', 100.6, 0.1],
      // the answer rounds on its way
      ['CD', 23.8, 0.2],
    ] as const
  ).map(
    ([name, published, tolerance]): PublishedCase => ({
      id: `ring-main-${name.toLowerCase()}`,
      about: `current in section ${name} of a three-phase ring main`,
      source: answers,
      provenance: 'one-source',
      exercises: ['voltage-at-node'],
      ours: () => currentIn(ringMain, name),
      published,
      unit: 'A',
      tolerance,
    }),
  ),
];
