import { type SimulationInput, simulate } from '../../src/charging/index.js';
import { amperes, hours, kilowattHours, minutes, seconds, volts } from '../../src/index.js';
import type { Line } from '../../src/installation/index.js';
import { compare } from '../compare.js';

// Twenty points on three lines behind one intake; every vehicle comes each evening, at a time and with a need of its own.
const DAYS = 30;
const lines: readonly Line[] = ['L1', 'L2', 'L3'];
const ids = Array.from({ length: 20 }, (_, i) => `bay ${i + 1}`);
const spread = (i: number, day: number, most: number) => ((i * 37 + day * 101) % 97) * (most / 97);
const each = (a: number) => [amperes(a), amperes(a), amperes(a)] as const;

const month = (control: SimulationInput['control']): SimulationInput => ({
  network: {
    nodes: [{ id: 'intake', limit: each(80), load: each(10) }],
    points: ids.map((id, i) => ({ id, node: 'intake', lines: [lines[i % 3]!], most: amperes(32) })),
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
      values: Array.from({ length: DAYS * 24 + 24 }, (_, h) => each(8 + 12 * Math.abs(Math.sin(h / 4)))),
    },
  ],
  from: seconds(0),
  to: hours(DAYS * 24),
  step: minutes(1),
  voltage: volts(230),
  control,
});
const atOnce = month({ policy: { rule: 'max-min-amperes', stage: 'continuous' } });
const whole = month({ policy: { rule: 'max-min-amperes', stage: 'whole-steps' } });

export default [
  compare(`${DAYS} days at one-minute steps, 20 points`, {
    anchor: 'shares of continuous currents',
    ways: { 'shares of continuous currents': () => simulate(atOnce), 'shares of whole amperes': () => simulate(whole) },
  }),
];
