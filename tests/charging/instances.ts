import type { SharingRule } from '../../src/charging/allocation/policy.js';

/**
 * Small instances of sharing with known optimum. Provenance: derived; each was solved by exact rational arithmetic and
 * again by linear programming, by an optimiser or by brute force, apart from this project's code. Currents in A.
 */
export interface SharingInstance {
  readonly id: string;
  readonly rule: SharingRule;
  readonly stage: 'continuous' | 'zero-or-least' | 'whole-steps';
  /** Limit of each node on L1, L2, L3; the first is the intake, which feeds the others. */
  readonly nodes: readonly (readonly [number, number, number])[];
  /** Node, lines, largest current and weight of each point. */
  readonly points: readonly {
    node?: number;
    lines?: readonly ('L1' | 'L2' | 'L3')[];
    most: number;
    weight?: number;
    priority?: number;
  }[];
  readonly answer: readonly number[];
  /** Whether the answer lists the currents in rising order, whoever gets them. */
  readonly sorted?: true;
  readonly digits?: number;
}

const one = (limit: number) => [[limit, 0, 0]] as const;
const caps = (...most: number[]) => most.map((m) => ({ most: m }));
const feeders = [
  [100, 0, 0],
  [40, 0, 0],
  [80, 0, 0],
] as const;
const rows = [1, 1, 1, 2, 2, 2].map((node) => ({ node, most: 32 }));
const three = [
  { lines: ['L1', 'L2', 'L3'], most: 32 },
  { lines: ['L1'], most: 32 },
  { lines: ['L2'], most: 32 },
  { lines: ['L3'], most: 32 },
] as const;

export const sharingInstances: readonly SharingInstance[] = [
  {
    id: 'A',
    rule: 'max-min-amperes',
    stage: 'continuous',
    nodes: one(80),
    points: caps(32, 32, 16, 10, 6),
    answer: [24, 24, 16, 10, 6],
  },
  {
    id: 'A2',
    rule: 'equal-share',
    stage: 'continuous',
    nodes: one(80),
    points: caps(32, 32, 16, 10, 6),
    answer: [16, 16, 16, 10, 6],
  },
  {
    id: 'B',
    rule: 'max-min-amperes',
    stage: 'continuous',
    nodes: one(60),
    points: [
      { most: 32, weight: 1 },
      { most: 32, weight: 2 },
      { most: 32, weight: 1 },
    ],
    answer: [15, 30, 15],
  },
  {
    id: 'C exact',
    rule: 'max-min-amperes',
    stage: 'zero-or-least',
    nodes: one(40),
    points: caps(32, 32, 32, 32, 32, 32, 32, 32),
    answer: [0, 0, 6.6667, 6.6667, 6.6667, 6.6667, 6.6667, 6.6667],
    sorted: true,
    digits: 4,
  },
  {
    id: 'C integer',
    rule: 'max-min-amperes',
    stage: 'whole-steps',
    nodes: one(40),
    points: caps(32, 32, 32, 32, 32, 32, 32, 32),
    answer: [0, 0, 6, 6, 7, 7, 7, 7],
    sorted: true,
  },
  {
    id: 'C3',
    rule: 'max-min-amperes',
    stage: 'whole-steps',
    nodes: one(17),
    points: caps(10, 10, 10),
    answer: [0, 8, 9],
    sorted: true,
  },
  {
    id: 'C4',
    rule: 'max-min-amperes',
    stage: 'whole-steps',
    nodes: one(18),
    points: caps(10, 10, 10),
    answer: [6, 6, 6],
  },
  {
    id: 'D',
    rule: 'max-min-amperes',
    stage: 'continuous',
    nodes: feeders,
    points: rows,
    answer: [13.3333, 13.3333, 13.3333, 20, 20, 20],
    digits: 4,
  },
  {
    id: 'D proportional',
    rule: 'proportional-fairness',
    stage: 'continuous',
    nodes: feeders,
    points: rows,
    answer: [13.3333, 13.3333, 13.3333, 20, 20, 20],
    digits: 4,
  },
  {
    id: 'E',
    rule: 'max-min-amperes',
    stage: 'continuous',
    nodes: [[30, 30, 30]],
    points: three,
    answer: [15, 15, 15, 15],
  },
  {
    id: 'E proportional',
    rule: 'proportional-fairness',
    stage: 'continuous',
    nodes: [[30, 30, 30]],
    points: three,
    answer: [7.5, 22.5, 22.5, 22.5],
  },
  {
    id: 'E2',
    rule: 'max-min-kilowatts',
    stage: 'continuous',
    nodes: [[30, 30, 30]],
    points: three,
    answer: [7.5, 22.5, 22.5, 22.5],
  },
  {
    id: 'L',
    rule: 'strict-priority',
    stage: 'whole-steps',
    nodes: one(50),
    points: [
      { most: 32, priority: 1 },
      { most: 32, priority: 2 },
      { most: 32, priority: 3 },
    ],
    answer: [32, 18, 0],
  },
  {
    id: 'M',
    rule: 'max-min-amperes',
    stage: 'whole-steps',
    nodes: one(50),
    points: caps(32, 32, 32),
    answer: [16, 17, 17],
    sorted: true,
  },
];
