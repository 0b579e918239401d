import { describe, expect, test } from 'vitest';
import { allocate, type ChargingNetwork } from '../../src/charging/index.js';
import { amperes, ratio } from '../../src/index.js';
import { type SharingInstance, sharingInstances } from './instances.js';
import { node, perLine, point } from './networks.js';

const networkOf = ({ nodes, points }: SharingInstance): ChargingNetwork => ({
  nodes: nodes.map((limit, v) => node(`n${v}`, perLine(...limit), v > 0 ? { parent: 'n0' } : {})),
  points: points.map(({ node: at = 0, lines = ['L1'], most, weight = 1, priority = 1 }, i) =>
    point(`p${i}`, `n${at}`, most, { lines, weight: ratio(weight), priority }),
  ),
});

describe('instances with known optimum', () => {
  test.each(sharingInstances)('$id: $rule, $stage', (instance) => {
    const result = allocate(networkOf(instance), { rule: instance.rule, stage: instance.stage });
    const currents = result.points.map((p) => p.current as number);
    if (instance.sorted) currents.sort((a, b) => a - b);
    currents.forEach((current, i) => {
      expect(current).toBeCloseTo(instance.answer[i]!, instance.digits ?? 7);
    });
  });
});

test('what a point cannot take in whole steps is left to who waits', () => {
  const network = {
    nodes: [node('intake', perLine(36, 0, 0))],
    points: [point('a', 'intake', 31, { priority: 1 }), point('b', 'intake', 16, { priority: 2 })],
  };
  const currents = (resolution: number) =>
    allocate(network, { rule: 'strict-priority', stage: 'whole-steps', resolution: amperes(resolution) }).points.map(
      (p) => p.current,
    );
  // 31 A leave 5 A, which is too little; in steps of 2 A the first takes 30 A
  expect(currents(1)).toEqual([31, 0]);
  expect(currents(2)).toEqual([30, 6]);
});
