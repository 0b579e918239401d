import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasCode } from '../../src/index.js';
import type { FourWireSection, NodeLoad } from '../../src/physics/four-wire-network.js';
import { solveRadial } from '../../src/physics/index.js';
import { fourWireNetworks, nodal } from './nodal.js';

describe('radial four-wire networks', () => {
  it('agree with nodal analysis by a general solver, 1,000 random ones to 1e-9', () => {
    fc.assert(
      fc.property(fourWireNetworks, (n) => {
        const ours = solveRadial(n);
        const theirs = nodal(n);
        n.sections.forEach((_, i) => {
          for (let k = 0; k < 3; k++) {
            const [a, b] = [ours.voltages[i]?.[k] as number, theirs.voltages[i]?.[k] as number];
            expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * b);
          }
          const [a, b] = [ours.neutralVoltages[i] as number, theirs.neutrals[i] as number];
          expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * n.sourceVoltage);
        });
      }),
      { numRuns: 1000 },
    );
  });

  // circuit theory: figures computed by another program with Newton's method
  const tap = (r: number, x: number, parent: number, loads: FourWireSection['loads']): FourWireSection => ({
    parent,
    line: [r, x],
    neutral: [r, x],
    loads,
  });
  const charger: NodeLoad = { kind: 'power', active: 7360, reactive: 0 };
  const third: NodeLoad = { kind: 'power', active: 3680, reactive: 0 };
  const amps = (current: number, angle = 0): NodeLoad => ({ kind: 'current', current, angle });
  const known: readonly (readonly [string, readonly FourWireSection[], readonly number[], number])[] = [
    [
      'one charger on L1',
      [tap(0.0626966, 0.008, -1, [amps(32), null, null])],
      [225.986847721, 231.226882833, 230.793119363],
      2.02255788031,
    ],
    [
      'unbalanced currents at three power factors',
      [tap(0.0626966, 0.008, -1, [amps(60, 0.451026811796), amps(30, 0.317560429292), amps(10)])],
      [224.440480653, 227.344020012, 232.155217069],
      2.86081015803,
    ],
    [
      'half neutral, constant power',
      [
        {
          parent: -1,
          line: [0.034638675, 0.01125],
          neutral: [0.06927735, 0.0225],
          loads: [
            { kind: 'power', active: 30000, reactive: 10000 },
            { kind: 'power', active: 10000, reactive: 3000 },
            { kind: 'power', active: 5000, reactive: 0 },
          ],
        },
      ],
      [216.934863034, 230.784895475, 234.79112063],
      7.9740144032,
    ],
    [
      'six chargers in turn on the three lines',
      [0, 1, 2, 3, 4, 5].map((i) =>
        tap(0.01567415, 0.002, i - 1, [0, 1, 2].map((k) => (i % 3 === k ? charger : null)) as never),
      ),
      [229.128081918, 226.238794555, 223.930971613],
      1.80211074398,
    ],
    [
      'six chargers all on L1',
      [0, 1, 2, 3, 4, 5].map((i) => tap(0.01567415, 0.002, i - 1, [charger, null, null])),
      [206.978274887, 237.105658858, 234.838077805],
      11.5976224609,
    ],
    [
      'a tree with branches',
      [
        tap(0.01385547, 0.0045, -1, [null, null, null]),
        tap(0.02507864, 0.0032, 0, [third, third, third]),
        tap(0.04388762, 0.0056, 0, [charger, null, null]),
        tap(0.04127925, 0.00249, 2, [null, charger, amps(16)]),
      ],
      [228.27369758, 225.147668695, 229.224572356],
      1.44444428023,
    ],
  ];
  it.each(known)('%s', (_, sections, voltages, neutral) => {
    const solved = solveRadial({ sourceVoltage: 230, sections });
    voltages.forEach((v, k) => {
      expect(solved.voltages.at(-1)?.[k]).toBeCloseTo(v, 8);
    });
    expect(solved.neutralVoltages.at(-1)).toBeCloseTo(neutral, 8);
  });

  it('refuses what cannot be served and what is no network', () => {
    const heavy = tap(1, 0, -1, [{ kind: 'power', active: 50_000, reactive: 0 }, null, null]);
    const codes = [[heavy], [tap(0.1, 0, 3, [null, null, null])], [tap(-1, 0, -1, [null, null, null])]].map(
      (sections) => {
        try {
          solveRadial({ sourceVoltage: 230, sections });
          return 'solved';
        } catch (error) {
          return hasCode(error, 'no-solution') ? 'no-solution' : hasCode(error, 'invalid-input') ? 'invalid' : 'other';
        }
      },
    );
    expect(codes).toEqual(['no-solution', 'invalid', 'invalid']);
  });
});
