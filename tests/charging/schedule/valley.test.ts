import { expect, test } from 'vitest';
import { type ScheduleInput, schedule } from '../../../src/charging/index.js';
import { amperes, hours, kilowattHours, volts } from '../../../src/index.js';
import { node, perLine, point } from '../networks.js';

/** 1 A at 1000 V is 1 kW. Provenance of the answer: derived; a quadratic programme apart from this project agrees. */
const input: ScheduleInput = {
  network: {
    nodes: [node('intake', perLine(100, 0, 0))],
    points: [point('p', 'intake', 3.5, { least: amperes(0.1) })],
  },
  sessions: [{ id: 'car', point: 'p', arrives: hours(0), leaves: hours(6), energy: kilowattHours(10) }],
  from: hours(0),
  to: hours(6),
  step: hours(1),
  voltage: volts(1000),
  load: [{ node: 'intake', values: [3, 2, 1.5, 1, 1, 2].map((kW) => perLine(kW, 0, 0)) }],
  policy: 'valley-filling',
  stage: 'continuous',
};

test('a night is filled to a level of 3.4167 kW', () => {
  const night = schedule(input);
  expect(night.peak).toBeCloseTo(3416.7, 1);
  const at = (hour: number) => night.sessions[0]!.stretches.find((s) => s.from <= hours(hour) && hours(hour) < s.to);
  [0.4167, 1.4167, 1.9167, 2.4167, 2.4167, 1.4167].forEach((kW, hour) => {
    expect(at(hour)?.current).toBeCloseTo(kW, 4);
  });
  expect(night.shortfall).toBe(0);
});
