import * as highsModule from 'highs';
import { type ScheduleInput, schedule } from '../../src/charging/index.js';
import { courseOf } from '../../src/charging/schedule/course.js';
import type { SchedulePolicy } from '../../src/charging/schedule/input.js';
import { type LinearForm, linearFormOf } from '../../src/charging/schedule/linear.js';
import { amperes, hours, type Line, minutes, seconds, volts, wattHours } from '../../src/index.js';
import { compare } from '../compare.js';

const highs = await (highsModule as unknown as { default: () => Promise<import('highs').Highs> }).default();
const LINES: readonly Line[] = ['L1', 'L2', 'L3'];
const three = (a: number) => [amperes(a), amperes(a), amperes(a)] as const;

/** A night: rows of ten points behind an intake, every third point three-phase, load and price changing with time. */
function night(count: number): Omit<ScheduleInput, 'policy'> {
  const at = (i: number, k: number) => (Math.abs(Math.sin(12.9898 * (i + 1) + 78.233 * k)) * 43758.5453) % 1;
  return {
    network: {
      nodes: [
        { id: 'intake', limit: three(5 * count) },
        ...Array.from({ length: count / 10 }, (_, r) => ({ id: `r${r}`, parent: 'intake', limit: three(80) })),
      ],
      points: Array.from({ length: count }, (_, i) => ({
        id: `p${i}`,
        node: `r${Math.floor(i / 10)}`,
        lines: [0, 1, 2].slice(0, i % 3 === 0 ? 3 : 1).map((k) => LINES[(k + i) % 3]!),
        most: amperes(32),
      })),
    },
    sessions: Array.from({ length: count }, (_, i) => ({
      id: `s${i}`,
      point: `p${i}`,
      arrives: minutes(Math.round(960 + 360 * at(i, 1))),
      leaves: minutes(Math.round(1740 + 240 * at(i, 2))),
      energy: wattHours(Math.round(5000 + 25000 * at(i, 3))),
    })),
    from: hours(16),
    to: hours(33),
    step: hours(0.5),
    voltage: volts(230),
    stage: 'continuous',
    prices: { values: Array.from({ length: 17 }, (_, k) => 0.1 + 0.02 * ((k * 5) % 11)), every: hours(1) },
    load: [
      { node: 'intake', values: Array.from({ length: 34 }, (_, k) => three(10 + 8 * at(k, 4))), every: seconds(1800) },
    ],
  };
}

const nights = new Map([10, 20, 50].map((n) => [n, night(n)]));
const plan = (n: number, policy: SchedulePolicy, stage: ScheduleInput['stage'] = 'continuous') =>
  schedule({ ...nights.get(n)!, policy, stage });

/** The same linear form by a general solver: most energy, then least cost beside it. */
function byGeneralSolver({ cells, needs, limits }: LinearForm, prices: readonly number[]): number {
  const rows = [...needs, ...limits];
  const energy = cells.map((c) => c.energy);
  const solve = (cost: readonly number[], least: number): number => {
    const all = [
      ...rows.map((r) => ({ who: Array.from(r.variables), by: Array.from(r.coefficients) })),
      { who: [...cells.keys()], by: energy },
    ];
    const starts = [0];
    for (const { who } of all) starts.push(starts.at(-1)! + who.length);
    return highs.withModel(
      {
        numCols: cells.length,
        numRows: all.length,
        sense: highs.constants.objectiveSense.maximize,
        colCost: [...cost],
        colLower: cells.map(() => 0),
        colUpper: cells.map((c) => c.most),
        rowLower: all.map((_, r) => (r === rows.length ? least : -highs.infinity)),
        rowUpper: all.map((_, r) => rows[r]?.most ?? highs.infinity),
        matrix: {
          format: 'csr',
          numRows: all.length,
          numCols: cells.length,
          starts,
          indices: all.flatMap((r) => r.who),
          values: all.flatMap((r) => r.by),
        },
      },
      (model) => {
        model.options.set({ output_flag: false });
        model.run();
        return model.getObjectiveValue();
      },
    );
  };
  const most = solve(energy, 0);
  return solve(
    cells.map((c, k) => -c.energy * prices[k]!),
    most - 1e-7,
  );
}

const course = courseOf({ ...nights.get(50)!, policy: 'minimum-cost' }, false);
const form = linearFormOf(course);
const prices = form.cells.map((c) => course.slots[c.slot]!.price);

export default [
  compare('schedule of a night with 20 vehicles, by policy', {
    anchor: 'earliest deadline',
    ways: {
      'earliest deadline': () => plan(20, 'earliest-deadline'),
      'least laxity': () => plan(20, 'least-laxity'),
      'least cost': () => plan(20, 'minimum-cost'),
      'valley filling': () => plan(20, 'valley-filling'),
      'least cost with smallest currents': () => plan(20, 'minimum-cost', 'zero-or-least'),
    },
  }),
  compare('least cost, growth with the number of vehicles', {
    anchor: '10 vehicles',
    ways: {
      '10 vehicles': () => plan(10, 'minimum-cost'),
      '20 vehicles': () => plan(20, 'minimum-cost'),
      '50 vehicles': () => plan(50, 'minimum-cost'),
    },
  }),
  compare('least cost of 50 vehicles against a general linear solver', {
    anchor: 'schedule, whole result',
    ways: {
      'schedule, whole result': () => plan(50, 'minimum-cost'),
      'general linear solver, two objectives, programme ready': () => byGeneralSolver(form, prices),
    },
  }),
];
