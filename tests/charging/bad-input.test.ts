import { describe, expect, test } from 'vitest';
import { allocate, type ChargingNetwork, controllerOf, schedule, simulate } from '../../src/charging/index.js';
import { amperes, ratio, seconds, volts } from '../../src/index.js';
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

describe('from plain JavaScript', () => {
  const one = perLine(40, 0, 0);
  const network = { nodes: [node('intake', one, { load: perLine(10, 0, 0) })], points: [point('a', 'intake')] };
  const policy = { rule: 'bogus', waiting: 'bogus', stage: 'bogus', remainder: 'bogus' } as never;
  const words = (root: string) => [
    `${root}rule: must be one of max-min-amperes, max-min-kilowatts, proportional-fairness, strict-priority, equal-share, not 'bogus'`,
    `${root}waiting: must be one of longest-waiting, least-energy, priority, not 'bogus'`,
    `${root}stage: must be one of continuous, zero-or-least, whole-steps, not 'bogus'`,
    `${root}remainder: must be one of share, leave, not 'bogus'`,
  ];
  const settings = {
    policy: { rule: 'max-min-amperes' },
    meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
    meterPeriod: seconds(1),
    controllerPeriod: seconds(1),
    vehicleReaction: seconds(5),
    staleAfter: seconds(10),
    riseAfter: seconds(0),
    resumeAfter: seconds(0),
  } as const;
  const period = { network, sessions: [], from: seconds(0), to: seconds(60), step: seconds(1), voltage: volts(230) };

  test('labels are refused at every entry', () => {
    expect(problemsOf(() => allocate(network, policy))).toEqual(words(''));
    const meters = [{ node: 'intake', measures: 'bogus', positive: 'bogus' }] as never;
    expect(problemsOf(() => controllerOf(network, { ...settings, policy, meters }))).toEqual([
      ...words('policy.'),
      "meters[0].measures: must be one of everything, other-load, not 'bogus'",
      "meters[0].positive: must be one of import, export, not 'bogus'",
    ]);
    expect(problemsOf(() => simulate({ ...period, control: { policy } }))).toEqual(words('control.policy.'));
    expect(problemsOf(() => simulate({ ...period, control: { ...settings, policy } }))).toEqual(
      words('control.policy.'),
    );
    const hours = { kind: 'bogus' } as never;
    expect(problemsOf(() => schedule({ ...period, policy: 'bogus', stage: 'bogus', hours } as never))).toEqual([
      "policy: there is no policy 'bogus'",
      "stage: there is no stage 'bogus'",
      "hours.kind: must be one of any, off-peak, windows, not 'bogus'",
    ]);
  });

  test('what is wrong with network and policy is told in one go', () => {
    expect(problemsOf(() => allocate({ nodes: [], points: [] }, { rule: 'bogus' } as never))).toEqual([
      words('')[0],
      'nodes: must name at least one node',
    ]);
  });

  test('points and nodes have names', () => {
    const nameless = (id: unknown) => ({
      nodes: [{ ...network.nodes[0]!, id: id as string }],
      points: [{ ...network.points[0]!, id: id as string }],
    });
    for (const id of [undefined, null, 7, ''])
      expect(problemsOf(() => allocate(nameless(id), { rule: 'equal-share' }))).toEqual(
        expect.arrayContaining([
          'nodes[0].id: must be a name, a text that is not empty',
          'points[0].id: must be a name, a text that is not empty',
        ]),
      );
  });

  test.each([undefined, null, 7, 'text', [], {}, { nodes: null, points: 7 }, { nodes: [null], points: [undefined] }])(
    'nothing but a typed error: %j',
    (junk) => {
      const bad = junk as never;
      const entries = [
        () => allocate(bad, { rule: 'equal-share' }),
        () => allocate(network, bad),
        () => controllerOf(bad, settings),
        () => controllerOf(network, bad),
        () => controllerOf(network, { ...settings, meters: bad }),
        () => controllerOf(network, { ...settings, policy: bad }),
        () => simulate(bad),
        () => simulate({ ...period, network: bad, control: settings }),
        () => simulate({ ...period, control: bad }),
        () => schedule(bad),
        () => schedule({ ...period, network: bad, policy: 'least-laxity', stage: 'continuous' }),
      ];
      for (const entry of entries) {
        // no meters at all are meters: none
        if (Array.isArray(junk) && junk.length === 0 && entry === entries[4]) continue;
        expect(problemsOf(entry), String(entry)).not.toEqual([]);
      }
    },
  );
});

test('currents are clean multiples of the resolution', () => {
  const at = (room: number, resolution: number, least?: number) =>
    allocate(
      {
        nodes: [node('a', perLine(room, 0, 0))],
        points: [point('p', 'a', 32, least === undefined ? {} : { least: amperes(least) }), point('q', 'a')],
      },
      { rule: 'max-min-amperes', resolution: amperes(resolution) },
    ).points.map((p) => p.current);
  expect(at(13.2, 0.1)).toEqual([6.6, 6.6]);
  expect(at(13.3, 0.1)).toEqual([6.7, 6.6]);
  expect(at(20.7, 0.3)).toEqual([10.5, 10.2]);
  expect(at(13.3, 0.7, 6.1)).toEqual([7, 6.3]);
});

test('a limit of unbalance that other load exceeds alone is reported, and whom a cap keeps from ever charging', () => {
  const { unbalanced, neverServed, points } = allocate(
    {
      nodes: [
        node('intake', perLine(60), { load: perLine(30, 5, 5), unbalance: amperes(20) }),
        node('row', perLine(5), { parent: 'intake' }),
      ],
      points: [point('p', 'intake'), point('q', 'row')],
    },
    { rule: 'max-min-amperes' },
  );
  expect(unbalanced).toEqual([
    { node: 'intake', lines: ['L1', 'L2'], excess: 5 },
    { node: 'intake', lines: ['L1', 'L3'], excess: 5 },
  ]);
  expect(points.map((p) => p.current)).toEqual([0, 0]);
  expect(neverServed).toEqual([
    {
      path: ['points', 1],
      message: "'q' never charges: the limit of 'row' on L1, 5 A, is below its smallest current, 6 A",
    },
  ]);
});
