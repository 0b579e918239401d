import * as highsModule from 'highs';
import { type ScheduleInput, schedule } from '../../src/charging/index.js';
import { type Course, courseOf } from '../../src/charging/schedule/course.js';
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

const nights = new Map([20, 50, 200].map((n) => [n, night(n)]));
const plan = (n: number, policy: SchedulePolicy, stage: ScheduleInput['stage'] = 'continuous') =>
  schedule({ ...nights.get(n)!, policy, stage });

const price = (course: Course, form: LinearForm, k: number) => course.slots[form.cells[k]!.slot]!.price;

/** The same three objectives by a general solver, its programmes built each time: most energy, least cost, early. */
function byGeneralSolver(input: ScheduleInput): readonly number[] {
  const course = courseOf(input, false);
  const form = linearFormOf(course);
  const { cells, needs, limits } = form;
  const begin = course.slots[0]!.from;
  const objectives = [
    cells.map((c) => c.energy),
    cells.map((c, k) => -c.energy * price(course, form, k)),
    cells.map((c) => (-c.energy * (course.slots[c.slot]!.from - begin)) / 61_200),
  ];
  const rows = [...needs, ...limits].map((r) => ({
    who: Array.from(r.variables),
    by: Array.from(r.coefficients),
    least: -highs.infinity,
    most: r.most,
  }));
  return objectives.map((objective) => {
    const starts = [0];
    for (const { who } of rows) starts.push(starts.at(-1)! + who.length);
    const best = highs.withModel(
      {
        numCols: cells.length,
        numRows: rows.length,
        sense: highs.constants.objectiveSense.maximize,
        colCost: objective,
        colLower: cells.map(() => 0),
        colUpper: cells.map((c) => c.most),
        rowLower: rows.map((r) => r.least),
        rowUpper: rows.map((r) => r.most),
        matrix: {
          format: 'csr',
          numRows: rows.length,
          numCols: cells.length,
          starts,
          indices: rows.flatMap((r) => r.who),
          values: rows.flatMap((r) => r.by),
        },
      },
      (model) => {
        model.options.set({ output_flag: false });
        model.run();
        return model.getObjectiveValue();
      },
    );
    rows.push({ who: [...cells.keys()], by: objective, least: best - 1e-7, most: highs.infinity });
    return best;
  });
}

// both come to the same before they are measured; 500 vehicles take the solver half a minute: see the words of the page
for (const n of [50, 200] as const) {
  const own = plan(n, 'minimum-cost');
  const [energy, cost] = byGeneralSolver({ ...nights.get(n)!, policy: 'minimum-cost' });
  if (Math.abs(own.delivered / 1000 - energy!) > 1e-5 || Math.abs(own.cost! + cost!) > 1e-5)
    throw new Error(`${n} vehicles: ${own.delivered} Wh for ${own.cost}, by the solver ${energy} kWh for ${-cost!}`);
}

const against = (n: 50 | 200) =>
  compare(`least cost of ${n} vehicles against a general linear solver`, {
    anchor: 'general linear solver, three objectives, building included',
    ways: {
      'general linear solver, three objectives, building included': () =>
        byGeneralSolver({ ...nights.get(n)!, policy: 'minimum-cost' }),
      'schedule, whole result': () => plan(n, 'minimum-cost'),
      'filled valleys, whole result': () => plan(n, 'valley-filling'),
      'earliest deadline, whole result': () => plan(n, 'earliest-deadline'),
    },
  });

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
  against(50),
  against(200),
];
