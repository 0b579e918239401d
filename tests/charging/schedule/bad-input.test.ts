import { expect, test } from 'vitest';
import { type ScheduleInput, schedule } from '../../../src/charging/index.js';
import { amperes, hasCode, hours, minutes, seconds, volts, wattHours } from '../../../src/index.js';
import { pathText } from '../../../src/units/error.js';
import { node, perLine, point } from '../networks.js';

const problemsOf = (input: ScheduleInput): string[] => {
  try {
    schedule(input);
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => `${pathText(p.path)}: ${p.message}`);
    throw error;
  }
  return [];
};

const good: ScheduleInput = {
  network: { nodes: [node('a', perLine(40))], points: [point('p', 'a'), point('q', 'a', 16, { least: amperes(8) })] },
  sessions: [{ id: 's', point: 'p', arrives: hours(1), leaves: hours(3), energy: wattHours(7000) }],
  from: hours(0),
  to: hours(4),
  step: hours(0.5),
  voltage: volts(230),
  policy: 'earliest-deadline',
  stage: 'zero-or-least',
};

test('good input has no problem', () => {
  expect(problemsOf(good)).toEqual([]);
});

test('every problem is named, each with its path', () => {
  const [session] = good.sessions;
  expect(
    problemsOf({
      ...good,
      network: {
        nodes: [node('a', perLine(40, -1, 40)), node('b', undefined, { parent: 'c' })],
        points: [point('p', 'a'), point('q', 'a', 16, { least: amperes(20) }), point('r', 'none')],
      },
      sessions: [
        { ...session!, leaves: hours(1) },
        { ...session!, id: 't', point: 'nowhere' },
        { ...session!, id: 'u', point: 'q', most: amperes(7), energy: wattHours(-1) },
      ],
      to: hours(0),
      voltage: volts(0),
      policy: 'luck' as never,
      hours: { kind: 'windows', windows: [{ from: hours(2), to: hours(1) }] },
      load: [{ node: 'x', values: [perLine(1)] }],
      limits: [{ node: 'a', values: [perLine(-2, 1, 1)] }],
      prices: { values: [0.1, Number.NaN], every: minutes(20), from: minutes(10) },
    }),
  ).toEqual([
    'network.nodes[0].limit[1]: must be at least 0',
    "network.nodes[1].parent: there is no node 'c'",
    'network.points[1].least: 20 A is above the largest current, 16 A',
    "network.points[2].node: there is no node 'none'",
    'to: must be after the begin, 0 s',
    'voltage: must be above 0',
    "policy: there is no policy 'luck'",
    'sessions[0].leaves: leaves at 3600 s, not after its arrival at 3600 s',
    "sessions[1].point: there is no point 'nowhere'",
    'sessions[2].energy: must be at least 0',
    "sessions[2].most: 7 A is below the smallest current of 'q', 20 A",
    'hours.windows[0].to: ends at 3600 s, not after its begin at 7200 s',
    "load[0].node: there is no node 'x'",
    'limits[0].values[0][0]: must be at least 0',
    'prices.values[1]: must be a finite number',
    'prices.every: must be a whole number of steps of 1800 s',
    'prices.from: must be a whole number of steps of 1800 s from the begin, 0 s',
  ]);
  expect(problemsOf({ ...good, step: seconds(0) })).toEqual(['step: must be above 0']);
  expect(problemsOf({ ...good, step: seconds(0.1) })).toEqual(['step: makes more than 100000 steps']);
  expect(problemsOf({ ...good, stage: 'rough' as never })).toEqual(["stage: there is no stage 'rough'"]);
  expect(problemsOf({ ...good, policy: 'minimum-cost' })).toEqual(['prices: must be given for a minimum of cost']);
  expect(problemsOf({ ...good, prices: { values: [] } })).toEqual(['prices.values: must have at least one value']);
});
