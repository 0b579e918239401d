import { expect, test } from 'vitest';
import { allocate, type ChargingNetwork } from '../../src/charging/index.js';
import { amperes, ratio, seconds } from '../../src/index.js';
import { node, perLine, point, problemsOf } from './networks.js';

test('every problem of a network is named, each with its path', () => {
  const network: ChargingNetwork = {
    nodes: [
      node('a', perLine(-1, 5, 5), { unbalance: amperes(-2) }),
      node('a', perLine(5), { parent: 'nowhere' }),
      node('b', undefined, { parent: 'c', load: [amperes(1), Number.NaN as never, amperes(0)] }),
      node('c', undefined, { parent: 'b' }),
    ],
    points: [
      point('p', 'none', 5),
      point('p', 'a', 32, { lines: ['L1', 'L1'], weight: ratio(0) }),
      point('q', 'a', 32, { lines: [], vehicleLines: 2 }),
      point('r', 'a', 32, { lines: ['L4' as never], least: amperes(40) }),
    ],
  };
  expect(problemsOf(() => allocate(network, { rule: 'max-min-amperes' }))).toEqual([
    "nodes[1].id: 'a' is the name of another node too",
    'nodes[0].limit[0]: must be at least 0',
    'nodes[0].unbalance: must be at least 0',
    "nodes[1].parent: there is no node 'nowhere'",
    'nodes[2].load[1]: must be a finite number',
    "nodes[2].parent: 'b' is fed through itself",
    "nodes[3].parent: 'c' is fed through itself",
    "points[0].node: there is no node 'none'",
    'points[0].least: 6 A is above the largest current, 5 A',
    "points[1].id: 'p' is the name of another point too",
    "points[1].lines[1]: names 'L1' twice",
    'points[1].weight: must be above 0',
    'points[2].lines: must name one to three lines',
    'points[2].vehicleLines: must be 1 to 0, the lines of the point',
    "points[3].lines[0]: there is no line 'L4'",
    'points[3].least: 40 A is above the largest current, 32 A',
  ]);
});

test('so is everything wrong with a policy', () => {
  const network = { nodes: [node('a', perLine(5))], points: [] };
  expect(
    problemsOf(() =>
      allocate(network, {
        rule: 'max-min-amperes',
        resolution: amperes(0),
        waiting: { rotation: seconds(0), now: seconds(0) },
      }),
    ),
  ).toEqual(['resolution: must be above 0', 'waiting.rotation: must be above 0']);
  expect(problemsOf(() => allocate({ nodes: [], points: [] }, { rule: 'equal-share' }))).toEqual([
    'nodes: must name at least one node',
  ]);
});
