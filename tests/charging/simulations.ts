import fc from 'fast-check';
import type {
  AllocationPolicy,
  ChargingNetwork,
  ChargingSession,
  CurrentProfile,
  SimulationInput,
} from '../../src/charging/index.js';
import { amperes, minutes, seconds, volts, wattHours } from '../../src/index.js';
import { type NetworkShape, networks, perLine } from './networks.js';

/** Every rule of sharing, taken to every stage. */
export const policies: readonly AllocationPolicy[] = (
  ['max-min-amperes', 'max-min-kilowatts', 'proportional-fairness', 'strict-priority', 'equal-share'] as const
).flatMap((rule) => (['continuous', 'zero-or-least', 'whole-steps'] as const).map((stage) => ({ rule, stage })));

/** Up to two stays at each point in four hours, in steps of five minutes. */
export const sessionsAt = (network: ChargingNetwork): fc.Arbitrary<readonly ChargingSession[]> =>
  fc
    .tuple(
      ...network.points.map(() =>
        fc.record({
          cuts: fc.uniqueArray(fc.integer({ min: 0, max: 15_000 }), { minLength: 4, maxLength: 4 }),
          energies: fc.tuple(fc.integer({ min: 0, max: 9000 }), fc.integer({ min: 0, max: 9000 })),
          count: fc.integer({ min: 0, max: 2 }),
          most: fc.option(fc.integer({ min: 6, max: 32 }), { nil: undefined }),
        }),
      ),
    )
    .map((stays) =>
      stays.flatMap(({ cuts, energies, count, most }, i) => {
        const [a, b, c, d] = [...cuts].sort((x, y) => x - y) as [number, number, number, number];
        return [
          [a, b, energies[0]],
          [c, d, energies[1]],
        ]
          .slice(0, count)
          .map(([from, to, energy], k) => ({
            id: `s${i}.${k}`,
            point: network.points[i]!.id,
            arrives: seconds(from!),
            leaves: seconds(to!),
            energy: wattHours(energy!),
            ...(most === undefined ? {} : { most: amperes(most) }),
          }));
      }),
    );

/** Profiles for some of the nodes. */
export const profilesOf = (network: ChargingNetwork, min: number, max: number, length: number) =>
  fc
    .tuple(
      ...network.nodes.map(() =>
        fc.option(
          fc.array(fc.tuple(fc.integer({ min, max }), fc.integer({ min, max }), fc.integer({ min, max })), {
            minLength: 1,
            maxLength: length,
          }),
          { nil: undefined },
        ),
      ),
    )
    .map((values) =>
      values.flatMap((v, i): CurrentProfile[] =>
        v ? [{ node: network.nodes[i]!.id, values: v.map(([a, b, c]) => perLine(a, b, c)) }] : [],
      ),
    );

/** Four hours of charging in a random network. */
export const simulations = (
  shape: NetworkShape,
  some: readonly AllocationPolicy[] = policies,
): fc.Arbitrary<SimulationInput> =>
  networks(shape).chain((network) =>
    fc
      .record({
        sessions: sessionsAt(network),
        load: profilesOf(network, -20, 90, 12),
        limits: profilesOf(network, 0, 120, 4),
        policy: fc.constantFrom(...some),
        resumeAfter: fc.constantFrom(0, 0, 600),
      })
      .map(({ sessions, load, limits, policy, resumeAfter }) => ({
        network,
        sessions,
        load: load.map((p) => ({ ...p, every: minutes(10) })),
        limits: limits.map((p) => ({ ...p, every: minutes(30) })),
        from: seconds(0),
        to: seconds(14_400),
        step: minutes(5),
        voltage: volts(230),
        control: { policy, resumeAfter: seconds(resumeAfter) },
        keepSeries: true,
      })),
  );

/** Four minutes of a load control with meters, periods and delays, in a random network. */
export const controlled: fc.Arbitrary<SimulationInput> = networks({ nodes: 3, points: 5, overload: true }).chain(
  (network) =>
    fc
      .record({
        meterPeriod: fc.integer({ min: 1, max: 5 }),
        controllerPeriod: fc.integer({ min: 1, max: 4 }),
        reaction: fc.integer({ min: 0, max: 4 }),
        measures: fc.constantFrom('everything', 'other-load' as const),
        // each value holds longer than the longest sum of the periods
        load: profilesOf(network, -20, 110, 12),
        plugs: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 5, maxLength: 5 }),
      })
      .map(({ meterPeriod, controllerPeriod, reaction, measures, load, plugs }) => ({
        network,
        sessions: network.points.map((p, i) => ({
          id: p.id,
          point: p.id,
          arrives: seconds(plugs[i % 5]!),
          leaves: seconds(1000),
          energy: wattHours(100_000),
        })),
        load: load.map((p) => ({ ...p, every: seconds(16) })),
        from: seconds(0),
        to: seconds(240),
        step: seconds(1),
        voltage: volts(230),
        control: {
          policy: { rule: 'max-min-amperes' },
          meters: network.nodes.map((n) => ({ node: n.id, measures, positive: 'import' })),
          meterPeriod: seconds(meterPeriod),
          controllerPeriod: seconds(controllerPeriod),
          pointReaction: seconds(0),
          vehicleReaction: seconds(reaction),
          staleAfter: seconds(10),
          riseAfter: seconds(0),
          resumeAfter: seconds(15),
        },
        keepSeries: true,
      })),
);
