import { type SimulationInput, simulate } from '../../src/charging/index.js';
import { amperes, hours, kilowattHours, minutes, seconds, volts } from '../../src/index.js';
import type { Line } from '../../src/installation/index.js';
import { compare } from '../compare.js';
import { yearByHand } from './year-by-hand.js';

// Points in rows of ten behind one intake; every vehicle comes each evening, at a time and with a need of its own.
const DAYS = 365;
const lines: readonly Line[] = ['L1', 'L2', 'L3'];
const spread = (i: number, day: number, most: number) => ((i * 37 + day * 101) % 97) * (most / 97);
const each = (a: number) => [amperes(a), amperes(a), amperes(a)] as const;

const year = (count: number, stage: 'continuous' | 'whole-steps'): SimulationInput => {
  const ids = Array.from({ length: count }, (_, i) => `bay ${i + 1}`);
  return {
    network: {
      nodes: [
        { id: 'intake', limit: each(4 * count) },
        ...Array.from({ length: count / 10 }, (_, r) => ({ id: `row ${r}`, parent: 'intake', limit: each(63) })),
      ],
      points: ids.map((id, i) => ({
        id,
        node: `row ${Math.floor(i / 10)}`,
        lines: [lines[i % 3]!],
        most: amperes(32),
      })),
    },
    sessions: Array.from({ length: DAYS }, (_, day) =>
      ids.map((point, i) => ({
        id: `${point}, day ${day}`,
        point,
        arrives: hours(day * 24 + 17 + spread(i, day, 4)),
        leaves: hours(day * 24 + 30 + spread(i, day + 5, 2)),
        energy: kilowattHours(5 + spread(i, day, 20)),
      })),
    ).flat(),
    load: [
      {
        node: 'intake',
        from: seconds(0),
        every: hours(1),
        values: Array.from({ length: DAYS * 24 }, (_, h) => each(count * (0.5 + 0.6 * Math.abs(Math.sin(h / 4))))),
      },
    ],
    from: seconds(0),
    to: hours(DAYS * 24),
    step: minutes(1),
    voltage: volts(230),
    control: { policy: { rule: 'max-min-amperes', stage } },
  };
};

const small = year(20, 'continuous');
const large = year(200, 'continuous');

/** The loop by hand comes to the same before it is measured. */
for (const input of [small, large]) {
  const [own, hand] = [simulate(input), yearByHand(input)];
  const near = (a: number, b: number, what: string) => {
    if (Math.abs(a - b) > 1e-6 * (1 + Math.abs(a))) throw new Error(`${what}: ${a}, by hand ${b}`);
  };
  own.sessions.forEach((s, k) => {
    near(s.delivered, hand.delivered[k]!, `${s.id}, energy`);
    near(s.fullAt ?? 0, hand.fullAt[k]!, `${s.id}, full`);
    near(s.waited, hand.waited[k]!, `${s.id}, waited`);
  });
  own.nodes.forEach((n) => {
    const v = input.network.nodes.findIndex((node) => node.id === n.id);
    for (let p = 0; p < 3; p++) {
      near(n.peak[p]!, hand.peak[3 * v + p]!, `${n.id}, peak`);
      near(n.atLimit[p]!, hand.atLimit[3 * v + p]!, `${n.id}, at its limit`);
      near(n.overloaded[p]!, hand.overloaded[3 * v + p]!, `${n.id}, overloaded`);
    }
  });
}

export default [
  compare('a year of minutes, 20 points', {
    anchor: 'loop by hand, continuous currents',
    ways: {
      'loop by hand, continuous currents': () => yearByHand(small),
      'continuous currents': () => simulate(small),
      'whole amperes': () => simulate(year(20, 'whole-steps')),
    },
  }),
  compare('a year of minutes, 200 points', {
    anchor: 'loop by hand, continuous currents',
    ways: {
      'loop by hand, continuous currents': () => yearByHand(large),
      'continuous currents': () => simulate(large),
    },
  }),
];
