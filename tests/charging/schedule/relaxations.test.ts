import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Relaxation, relaxationsOf, relaxed, type ScheduleInput, schedule } from '../../../src/charging/index.js';
import type { Cure } from '../../../src/charging/schedule/relaxations.js';
import { amperes, hours, kilowattHours, seconds, volts, wattHours } from '../../../src/index.js';
import { seedOf } from '../../support/seed.js';
import { node, perLine, point } from '../networks.js';
import { expectSound, inputs } from './inputs.js';

/** Energy that counts as none, Wh. */
const NONE = 1e-3;
const leastShortfall = (input: ScheduleInput) =>
  schedule({ ...input, policy: 'valley-filling', stage: 'continuous' }).shortfall;

/** The same relaxation, one step of its resolution smaller. */
function oneStepLess({ relaxation, resolution }: Cure): Relaxation {
  switch (relaxation.kind) {
    case 'less-energy':
      return {
        ...relaxation,
        sessions: relaxation.sessions.map((s) => ({ ...s, less: wattHours(s.less - resolution) })),
      };
    case 'later-departure':
      return { ...relaxation, later: seconds(relaxation.later - resolution) };
    case 'more-capacity':
      return { ...relaxation, more: amperes(relaxation.more - resolution) };
  }
}

describe('relaxations', () => {
  test('each cures, and one step less does not', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        inputs({
          nodes: 3,
          points: 4,
          steps: 5,
          profiles: true,
          hours: true,
          share: [40, 120].map((x) => x / 100) as never,
        }),
        (input) => {
          const full: ScheduleInput = { ...input, policy: 'valley-filling', stage: 'continuous' };
          const lacking = leastShortfall(full);
          const cures = relaxationsOf(full);
          expect(cures.length > 0).toBe(lacking > 0);
          for (const cure of cures) {
            const { relaxation } = cure;
            seen.add(
              `${relaxation.kind} ${relaxation.kind === 'more-capacity' ? relaxation.nodes.length > 1 : relaxation.sessions.length > 1}`,
            );
            const again = relaxed(full, relaxation);
            expectSound(again, cure.schedule);
            expect(cure.schedule.shortfall, JSON.stringify(relaxation)).toBeLessThan(NONE);
            expect(leastShortfall(relaxed(full, oneStepLess(cure))), JSON.stringify(relaxation)).toBeGreaterThan(0);
            if (relaxation.kind === 'less-energy') {
              const less = relaxation.sessions.reduce((sum, s) => sum + s.less, 0);
              expect(less).toBeGreaterThanOrEqual(lacking - NONE);
              // together they give up the least there is, each rounded to the resolution
              if (relaxation === cures[0]!.relaxation)
                expect(less).toBeLessThan(lacking + cure.resolution * relaxation.sessions.length);
            }
          }
        },
      ),
      { numRuns: 150, seed: seedOf(61), endOnFailure: true },
    );
    // every kind, for one and for several, has been met
    expect([...seen].sort()).toEqual([
      'later-departure false',
      'later-departure true',
      'less-energy false',
      'less-energy true',
      'more-capacity false',
      'more-capacity true',
    ]);
  });

  test('each cures where lines must be in balance, where less for one may mean less for others', () => {
    let count = 0;
    fc.assert(
      fc.property(inputs({ nodes: 3, points: 6, steps: 6, unbalance: true, overload: true }), (input) => {
        const full: ScheduleInput = { ...input, policy: 'minimum-cost', stage: 'continuous' };
        for (const cure of relaxationsOf(full)) {
          count++;
          expectSound(relaxed(full, cure.relaxation), cure.schedule);
          expect(cure.schedule.shortfall, JSON.stringify(cure.relaxation)).toBeLessThan(NONE);
        }
      }),
      { numRuns: 150, seed: seedOf(62), endOnFailure: true },
    );
    expect(count).toBeGreaterThan(100);
  });

  const two: ScheduleInput = {
    network: {
      nodes: [node('intake', perLine(40, 0, 0)), node('row', perLine(20, 0, 0), { parent: 'intake' })],
      points: [point('p', 'row'), point('q', 'row')],
    },
    sessions: [
      { id: 'car', point: 'p', arrives: hours(22), leaves: hours(30), energy: kilowattHours(27.6) },
      { id: 'van', point: 'q', arrives: hours(22), leaves: hours(30), energy: kilowattHours(13.8) },
    ],
    from: hours(22),
    to: hours(30),
    step: hours(0.5),
    voltage: volts(230),
    policy: 'earliest-deadline',
    stage: 'zero-or-least',
  };

  test('two vehicles behind one row: 41.4 kWh of which 20 A give 36.8 kWh in eight hours', () => {
    const cures = relaxationsOf(two);
    expect(cures.map((c) => c.relaxation)).toEqual([
      {
        kind: 'less-energy',
        sessions: [
          { id: 'car', less: 3067 },
          { id: 'van', less: 1534 },
        ],
      },
      { kind: 'less-energy', sessions: [{ id: 'car', less: 4600 }] },
      { kind: 'less-energy', sessions: [{ id: 'van', less: 4600 }] },
      { kind: 'later-departure', sessions: ['car', 'van'], later: 3600 },
      { kind: 'later-departure', sessions: ['car'], later: 3600 },
      { kind: 'later-departure', sessions: ['van'], later: 3600 },
      { kind: 'more-capacity', nodes: ['row'], more: 2.5 },
    ]);
    // run again by the policy of the input, with smallest currents
    for (const { schedule: again, relaxation } of cures)
      expect(again.shortfall, JSON.stringify(relaxation)).toBeLessThan(1e-6);
  });

  test('where no single limit helps, all are raised; a stay at the point ends how late one can leave', () => {
    const cures = relaxationsOf({
      ...two,
      network: { ...two.network, nodes: [node('intake', perLine(20, 0, 0)), two.network.nodes[1]!] },
      sessions: [
        ...two.sessions,
        { id: 'next', point: 'q', arrives: hours(30), leaves: hours(31), energy: wattHours(0) },
      ],
      limits: [{ node: 'intake', values: [perLine(20, 0, 0)] }],
    }).map((c) => c.relaxation);
    expect(cures).toContainEqual({ kind: 'more-capacity', nodes: ['intake', 'row'], more: 2.5 });
    expect(cures.filter((r) => r.kind === 'later-departure')).toEqual([
      { kind: 'later-departure', sessions: ['car'], later: 3600 },
    ]);
  });

  test('there are none where all can be met, even if the policy misses it', () => {
    expect(relaxationsOf({ ...two, sessions: [two.sessions[0]!] })).toEqual([]);
  });
});
