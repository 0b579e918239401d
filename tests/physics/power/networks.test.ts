import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasCode, kilovoltAmperes, ohms, percent, ratio, volts, watts } from '../../../src/index.js';
import {
  type FourWireNetwork,
  type Impedance,
  lineEarthFault,
  solveRadial,
  threePhaseFault,
} from '../../../src/physics/index.js';
import {
  circulatingCurrentOf,
  meshedLineEarthFault,
  meshedLineLineFault,
  meshedPeakCurrent,
  meshedThreePhaseFault,
  motorFaultCurrentOf,
  motorGroupReactance,
  motorGroupResistance,
  motorImpedanceOf,
  motorRatingOf,
} from '../../../src/physics/power/definitions.js';
import {
  type FaultNetwork,
  faultContributions,
  impedanceAt,
  type LoadNetwork,
  parallelShares,
  solveNetwork,
} from '../../../src/physics/power/index.js';
import { fourWireNetworks } from '../nodal.js';
import { loadNetworks } from './branch-equations.js';
import { crossChecks } from './networks.cross.js';

const refused = (run: () => unknown): unknown => {
  try {
    run();
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => p.path.join('.'));
    return (error as { code?: unknown }).code;
  }
  return 'taken';
};

test.each(crossChecks.map((c) => [c.id, c] as const))('%s', (_, c) => {
  const { compared, agreed } = c.run();
  expect(agreed / compared).toBeGreaterThanOrEqual(c.leastShare);
});

test('a radial network comes to what the radial solver makes of it', () => {
  fc.assert(
    fc.property(fourWireNetworks, (radial: FourWireNetwork) => {
      const z = ([resistance, reactance]: readonly [number, number]) => ({ resistance, reactance });
      const network: LoadNetwork = {
        sources: [{ node: '-1', voltage: radial.sourceVoltage }],
        branches: radial.sections.map((s, i) => ({
          name: `${i}`,
          from: `${s.parent}`,
          to: `${i}`,
          line: z(s.line),
          neutral: z(s.neutral),
        })),
        loads: radial.sections.flatMap((s, i) =>
          s.loads.flatMap((load, line) => (load ? [{ node: `${i}`, line: line as 0 | 1 | 2, load }] : [])),
        ),
      };
      const theirs = solveRadial(radial);
      const ours = solveNetwork(network);
      radial.sections.forEach((_, i) => {
        const at = ours.nodes.find((n) => n.node === `${i}`);
        for (const k of [0, 1, 2] as const) expect(at?.voltages[k]).toBeCloseTo(theirs.voltages[i]?.[k] as number, 6);
        expect(ours.branches[i]?.currents[3]).toBeCloseTo(theirs.currents[i]?.[3] as number, 6);
      });
    }),
    { numRuns: 25 },
  );
});

test('a cable more in parallel never costs more losses, where all is resistance and loads hold their current', () => {
  fc.assert(
    fc.property(loadNetworks, (network) => {
      const plain = (z: Impedance) => ({ resistance: z.resistance, reactance: 0 });
      const held: LoadNetwork = {
        ...network,
        sources: [{ node: 'grid', voltage: 240 }],
        branches: network.branches.map(({ ratio: _, neutral, ...b }) => ({
          ...b,
          line: plain(b.line),
          ...(neutral ? { neutral: plain(neutral) } : {}),
        })),
        loads: network.loads.map((l) => ({ ...l, line: 0, load: { kind: 'current', current: 20, angle: 0 } })),
      };
      const cable = held.branches.find((b) => b.neutral);
      if (!cable) return;
      const more = { ...held, branches: [...held.branches, { ...cable, name: 'beside it' }] };
      expect(solveNetwork(more).losses).toBeLessThanOrEqual(solveNetwork(held).losses * (1 + 1e-9));
    }),
    { numRuns: 20 },
  );
});

describe('two transformers in parallel', () => {
  const line = (kVA: number, uk: number) => ({ resistance: 0, reactance: (uk * 400 ** 2) / (kVA * 1e3) });
  const network = (taps: number, loads: LoadNetwork['loads']): LoadNetwork => ({
    sources: [{ node: 'grid', voltage: 400 / Math.sqrt(3) }],
    branches: [
      { name: '1000', from: 'grid', to: 'board', line: line(1000, 0.05) },
      { name: '1500', from: 'grid', to: 'board', line: line(1500, 0.08), ratio: 1 / (1 + taps) },
    ],
    loads,
    stars: ['board'],
  });

  test('share a load as the rule of shares says', () => {
    const load = ([0, 1, 2] as const).map((k) => ({
      node: 'board',
      line: k,
      load: { kind: 'current' as const, current: 1000, angle: 0.5 },
    }));
    const [a, b] = solveNetwork(network(0, load)).branches.map((x) => x.currents[0]) as [number, number];
    const shares = parallelShares(
      [
        { rating: kilovoltAmperes(1000), impedanceVoltage: percent(5) },
        { rating: kilovoltAmperes(1500), impedanceVoltage: percent(8) },
      ],
      kilovoltAmperes(1000),
    );
    expect(a / (a + b)).toBeCloseTo(shares[0]?.loadShare as number, 9);
  });

  test('on unlike taps drive a current through each other without load', () => {
    const [a, b] = solveNetwork(network(0.025, [])).branches.map((x) => x.currents[0]) as [number, number];
    const formula = circulatingCurrentOf({
      tapDifference: ratio(0.025),
      transformerVoltage: volts(400),
      transformerImpedance: ohms(line(1000, 0.05).reactance),
      secondTransformerImpedance: ohms(line(1500, 0.08).reactance),
    });
    expect(a).toBeCloseTo(formula, 6);
    expect(b).toBeCloseTo(a, 6);
    expect(solveNetwork(network(0, [])).branches[0]?.currents[0]).toBeCloseTo(0, 9);
  });
});

describe('faults', () => {
  const z = (resistance: number, reactance: number) => ({ resistance, reactance });
  const radial: FaultNetwork = {
    lineVoltage: 400,
    voltageFactor: 1.05,
    branches: [
      { name: 'grid', from: 'source', to: '11 kV', impedance: z(0.0001, 0.001) },
      { name: 'transformer', from: '11 kV', to: 'board', impedance: z(0.003, 0.015) },
      { name: 'cable', from: 'board', to: 'end', impedance: z(0.02, 0.004) },
    ],
    zero: [
      { name: 'transformer', from: 'source', to: 'board', impedance: z(0.003, 0.0145) },
      { name: 'cable', from: 'board', to: 'end', impedance: z(0.08, 0.016) },
    ],
  };

  test('of a radial network come to the closed form', () => {
    const elements = [
      { name: 'grid', line: z(0.0001, 0.001), zero: z(0, 0) },
      { name: 'transformer', line: z(0.003, 0.015), zero: z(0.003, 0.0145) },
      { name: 'cable', line: z(0.02, 0.004), zero: z(0.08, 0.016) },
    ];
    const closed = { lineVoltage: 400, voltageFactor: 1.05, elements };
    const place = { network: radial, node: 'end' };
    expect(meshedThreePhaseFault(place)).toBeCloseTo(threePhaseFault(closed), 6);
    expect(meshedLineEarthFault(place)).toBeCloseTo(lineEarthFault(closed), 6);
    expect(meshedLineLineFault(place) / meshedThreePhaseFault(place)).toBeCloseTo(0.8660254, 7);
    expect(meshedPeakCurrent(place)).toBeGreaterThan(1.02 * Math.SQRT2 * meshedThreePhaseFault(place));
  });

  test('motors add what their own formula says at their terminals, and never take anything away', () => {
    const motorRating = motorRatingOf({
      motorPower: watts(160_000),
      motorEfficiency: ratio(0.94),
      powerFactor: ratio(0.86),
    });
    const motorImpedance = motorImpedanceOf({ motorVoltage: volts(400), motorRating, startMultiple: ratio(6) });
    const impedance = z(motorGroupResistance({ motorImpedance }), motorGroupReactance({ motorImpedance }));
    const motors = { name: 'motors', from: 'source', to: 'board', impedance };
    const network = { ...radial, branches: [...radial.branches, motors] };
    const own = faultContributions({ network, node: 'board' }).find((c) => c.name === 'motors')?.current as number;
    const formula = motorFaultCurrentOf({ voltageFactor: ratio(1.05), lineVoltage: volts(400), motorImpedance });
    // 0.42 and 0.922 are rounded so that the size is right to 0.02 %
    expect(own / formula).toBeCloseTo(1, 3);
    for (const node of ['board', 'end', '11 kV'])
      expect(meshedThreePhaseFault({ network, node })).toBeGreaterThan(
        meshedThreePhaseFault({ network: radial, node }),
      );
  });

  test('what cannot be is refused by name', () => {
    const place = { network: radial, node: 'end' };
    expect(refused(() => meshedThreePhaseFault({ ...place, node: 'nowhere' }))).toEqual(['node']);
    expect(
      refused(() => meshedLineEarthFault({ node: 'end', network: { ...radial, zero: undefined } as never })),
    ).toEqual(['zero']);
    expect(refused(() => meshedThreePhaseFault({ ...place, network: { ...radial, voltageFactor: 2 } }))).toEqual([
      'voltageFactor',
    ]);
    expect(refused(() => impedanceAt(place, 0))).toEqual(['frequency']);
    const dead = { ...radial, branches: radial.branches.slice(1) };
    expect(refused(() => meshedThreePhaseFault({ ...place, network: dead }))).toBe('no-solution');
    const bad = [{ name: 'x', from: 'a', to: 'a', impedance: z(-1, 0) }];
    expect(refused(() => impedanceAt({ ...place, network: { ...radial, branches: bad } }))).toEqual([
      'branches.0.impedance',
      'branches.0',
    ]);
  });
});

test('a network that cannot be is refused by name', () => {
  const cable = {
    name: 'cable',
    from: 'a',
    to: 'b',
    line: { resistance: 0.1, reactance: 0 },
    neutral: { resistance: 0.1, reactance: 0 },
  };
  const load = { node: 'b', line: 0, load: { kind: 'current', current: 10, angle: 0 } } as const;
  const good: LoadNetwork = { sources: [{ node: 'a', voltage: 230 }], branches: [cable], loads: [load] };
  expect(refused(() => solveNetwork(good))).toBe('taken');
  expect(refused(() => solveNetwork({ ...good, sources: [] }))).toContain('sources');
  expect(refused(() => solveNetwork({ ...good, loads: [{ ...load, node: 'c' }] }))).toEqual(['loads.0.node']);
  const { neutral: _, ...three } = cable;
  expect(refused(() => solveNetwork({ ...good, branches: [three] }))).toEqual(['loads.0.node']);
  expect(refused(() => solveNetwork({ ...good, branches: [{ ...cable, ratio: 3 }] }))).toEqual(['branches.0.ratio']);
  expect(refused(() => solveNetwork({ ...good, branches: [cable, { ...cable, from: 'x', to: 'y' }] }))).toEqual([
    'branches.1',
  ]);
  const heavy = { ...load, load: { kind: 'power', active: 1e6, reactive: 0 } } as const;
  expect(refused(() => solveNetwork({ ...good, loads: [heavy] }))).toBe('no-solution');
});
