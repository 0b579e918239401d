import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Schedule, type ScheduleInput, schedule } from '../../../src/charging/index.js';
import { seedOf } from '../../support/seed.js';
import { linesOf, rowsOf } from '../networks.js';
import { type LinearProgramme, maximum } from '../solver.js';
import { edgesOf, expectSound, type InputShape, inputs, networkAt } from './inputs.js';

type Ahead = Omit<ScheduleInput, 'policy' | 'stage'>;
type Rows = LinearProgramme['rows'];

/** A schedule as a linear programme, written from the definitions alone; energies in kWh. */
function modelOf(input: Ahead) {
  const edges = edgesOf(input);
  const cells: { session: number; energy: number; most: number; lines: number; price: number; part: number }[] = [];
  const rows: Rows[number][] = [];
  const parts: { from: number; to: number; base: number; who: number[] }[] = [];
  for (let e = 0; e + 1 < edges.length; e++) {
    const [from, to] = [edges[e]!, edges[e + 1]!];
    if (to - from < 1e-6) continue;
    const { network, sessions } = networkAt(input, (from + to) / 2);
    const prices = input.prices!;
    const price = prices.values[Math.floor((from + 1e-6 - input.from) / prices.every!) % prices.values.length]!;
    const column = sessions.map((session, i) => {
      const p = network.points[i]!;
      const lines = linesOf(p).length;
      const energy = (lines * input.voltage * (to - from)) / 3.6e6;
      return cells.push({ session, energy, most: p.most, lines, price, part: parts.length }) - 1;
    });
    for (const { who, sign, room } of rowsOf(network))
      rows.push({ who: who.map((i) => column[i]!), by: sign, to: room });
    const roots = network.nodes.reduce((sum, n) => sum + (n.load ?? [0, 0, 0]).reduce((a, b) => a + b, 0), 0);
    parts.push({ from, to, base: roots, who: column });
  }
  const least = cells.map(() => 0);
  const most = cells.map((c) => c.most);
  const of = (k: number) => cells.flatMap((c, i) => (c.session === k ? [i] : []));
  const need = input.sessions.map((s, k): Rows[number] => {
    const who = of(k);
    return { who, by: who.map((i) => cells[i]!.energy), to: s.energy / 1000 };
  });
  return { cells, parts, rows: [...rows, ...need], need, least, most };
}

/** The energy of all is the most there can be, and its shares are the lexicographic maximum. */
function expectMostEnergy(input: Ahead, result: Schedule): void {
  const { cells, rows, need, least, most } = modelOf(input);
  const energy = cells.map((c) => c.energy);
  const best = cells.length === 0 ? 0 : maximum({ objective: energy, least, most, rows })!.value;
  expect(Math.abs(result.delivered / 1000 - best)).toBeLessThan(1e-6);
  expect(result.bound!.shortfall).toBeCloseTo(result.shortfall, 6);
  if (result.shortfall < 1e-3 || cells.length === 0) return;
  const all: Rows[number] = { who: cells.map((_, i) => i), by: energy, from: best - 1e-9 };
  const wanting = input.sessions.flatMap((s, k) => (s.energy > 0 ? [k] : []));
  const share = (k: number) => result.sessions[k]!.delivered / input.sessions[k]!.energy;
  const open = new Set(wanting);
  const fixed: Rows[number][] = [];
  while (open.size > 0) {
    const lowest = Math.min(...[...open].map(share));
    const level = cells.length;
    const raised = maximum({
      objective: [...least, 1],
      least: [...least, 0],
      most: [...most, 2],
      rows: [
        ...rows,
        all,
        ...fixed,
        ...[...open].map((k) => ({
          who: [...need[k]!.who, level],
          by: [...need[k]!.by, -input.sessions[k]!.energy / 1000],
          from: 0,
        })),
      ],
    });
    expect(Math.abs(raised!.value - lowest), 'share').toBeLessThan(1e-6);
    for (const k of open)
      if (share(k) <= lowest + 1e-7) {
        open.delete(k);
        fixed.push({ ...need[k]!, from: result.sessions[k]!.delivered / 1000 - 1e-9 });
      }
  }
}

/** Rows that fix what each vehicle gets. */
const given = (result: Schedule, need: Rows): Rows =>
  need.map((row, k) => ({ ...row, from: result.sessions[k]!.delivered / 1000 - 1e-9 }));

function expectLeastCost(input: Ahead): void {
  const full: ScheduleInput = { ...input, policy: 'minimum-cost', stage: 'continuous' };
  const result = schedule(full);
  expectSound(full, result);
  expectMostEnergy(input, result);
  const { cells, rows, need, least, most } = modelOf(input);
  if (cells.length === 0) return;
  const best = maximum({
    objective: cells.map((c) => -c.energy * c.price),
    least,
    most,
    rows: [...rows, ...given(result, need)],
  });
  expect(Math.abs(result.cost! + best!.value)).toBeLessThan(1e-6);
  expect(result.bound!.cost).toBeCloseTo(result.cost!, 9);
}

/** Totals of the site in each part, A: from the highest down, none that is above can be lowered. */
function expectFilledValleys(input: Ahead): void {
  const full: ScheduleInput = { ...input, policy: 'valley-filling', stage: 'continuous' };
  const result = schedule(full);
  expectSound(full, result);
  expectMostEnergy(input, result);
  const { cells, parts, rows, need, least, most } = modelOf(input);
  const currentOf = (k: number, time: number) =>
    result.sessions[k]!.stretches.find((s) => s.from <= time && time < s.to)?.current ?? 0;
  const totals = parts.map(({ from, to, base, who }) =>
    who.reduce((sum, i) => sum + cells[i]!.lines * currentOf(cells[i]!.session, (from + to) / 2), base),
  );
  expect(result.peak).toBeCloseTo(Math.max(...totals) * input.voltage, 5);
  if (cells.length === 0) return;
  const fixedNeeds = given(result, need);
  const open = new Set(parts.keys());
  const closed: Rows[number][] = [];
  // the general solver keeps rows to 1e-9 kWh, which is more of a current in a part of seconds than of half an hour
  const tolerance = 1e-6 + (2e-9 * input.sessions.length) / Math.min(...cells.map((c) => c.energy / c.lines));
  const total = (t: number): Rows[number] => ({
    who: parts[t]!.who,
    by: parts[t]!.who.map((i) => cells[i]!.lines),
  });
  const z = cells.length;
  while (open.size > 0) {
    const highest = Math.max(...[...open].map((t) => totals[t]!));
    const lowered = maximum({
      objective: [...least, -1],
      least: [...least, -1e4],
      most: [...most, 1e4],
      rows: [
        ...rows,
        ...fixedNeeds,
        ...closed,
        ...[...open].map((t) => ({
          who: [...total(t).who, z],
          by: [...total(t).by, -1],
          to: -parts[t]!.base,
        })),
      ],
    });
    expect(Math.abs(-lowered!.value - highest), 'level').toBeLessThan(tolerance);
    const top = [...open].filter((t) => totals[t]! >= highest - 1e-6);
    const objective = cells.map((c) => (top.includes(c.part) ? -c.lines : 0));
    const below = [...open].map((t) => ({ ...total(t), to: highest + 1e-9 - parts[t]!.base }));
    const together = maximum({ objective, least, most, rows: [...rows, ...fixedNeeds, ...closed, ...below] });
    const base = top.reduce((sum, t) => sum + parts[t]!.base, 0);
    expect(base - together!.value, 'those at the level').toBeGreaterThan(top.length * (highest - 10 * tolerance));
    for (const t of top) {
      open.delete(t);
      closed.push({ ...total(t), to: totals[t]! + 1e-9 - parts[t]!.base });
    }
  }
}

const shapes: Record<string, InputShape> = {
  'three lines, mixed': { nodes: 4, points: 6, profiles: true },
  'between steps, with hours and delays': { nodes: 3, points: 5, profiles: true, hours: true, between: true },
  'with limits on unbalance': { nodes: 3, points: 5, unbalance: true, overload: true },
  'one line each': { nodes: 4, points: 6, singlePhase: true, whole: true },
  'plenty of room': { nodes: 2, points: 4, share: [0, 0.6] },
};

describe('optimal by a general linear solver: 500 random instances of cost, and as many of valleys', () => {
  for (const [name, shape] of Object.entries(shapes)) {
    test(`least cost, ${name}`, () => {
      fc.assert(fc.property(inputs(shape), expectLeastCost), { numRuns: 100, seed: seedOf(41), endOnFailure: true });
    });
    test(`filled valleys, ${name}`, () => {
      fc.assert(fc.property(inputs(shape), expectFilledValleys), {
        numRuns: 100,
        seed: seedOf(42),
        endOnFailure: true,
      });
    });
  }
});
