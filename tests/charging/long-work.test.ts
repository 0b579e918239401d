import { describe, expect, test } from 'vitest';
import { type LongWork, type SimulationInput, schedule, simulate } from '../../src/charging/index.js';
import { hours, kilowattHours, minutes, volts } from '../../src/index.js';
import { node, perLine, point } from './networks.js';

const cars = {
  network: { nodes: [node('intake', perLine(40, 0, 0))], points: [point('a', 'intake'), point('b', 'intake')] },
  sessions: ['a', 'b'].map((id) => ({
    id,
    point: id,
    arrives: hours(18),
    leaves: hours(42),
    energy: kilowattHours(40),
  })),
  from: hours(18),
  to: hours(42),
  step: minutes(1),
  voltage: volts(230),
} as const;
const year: SimulationInput = { ...cars, control: { policy: { rule: 'max-min-amperes' } } };
const prices = { values: [0.3, 0.1, 0.2], every: hours(1) };
const ways: readonly (readonly [string, (work?: LongWork) => unknown])[] = [
  ['a simulation', (work) => simulate(year, work)],
  ...(['earliest-deadline', 'least-laxity', 'minimum-cost', 'valley-filling'] as const).map(
    (policy) =>
      [
        `a schedule by ${policy}`,
        (work?: LongWork) => schedule({ ...cars, prices, policy, stage: 'continuous', step: minutes(30) }, work),
      ] as const,
  ),
];

describe('long work', () => {
  test.each(ways)('%s tells how far it is, and comes to the same', (_, run) => {
    const told: [number, number][] = [];
    expect(run({ progress: (done, total) => told.push([done, total]) })).toEqual(run());
    expect(told.length).toBeGreaterThan(1);
    for (const [k, [done, total]] of told.entries()) {
      expect(done).toBeLessThanOrEqual(total);
      expect(done).toBeGreaterThanOrEqual(told[k - 1]?.[0] ?? 0);
      expect(total).toBe(told[0]?.[1]);
    }
  });

  test.each(ways)('%s is cut short by a signal, with its reason', (_, run) => {
    const control = new AbortController();
    let told = 0;
    const progress = () => {
      if (++told === 2) control.abort('nobody waits any more');
    };
    expect(() => run({ progress, signal: control.signal })).toThrow('nobody waits any more');
    expect(told).toBe(2);
    // one that nobody has aborted stands in no way
    expect(run({ signal: new AbortController().signal })).toEqual(run());
  });
});
