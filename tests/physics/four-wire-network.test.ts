import fc from 'fast-check';
import { complex, lup, lusolve, type MathCollection, type Matrix, matrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type FourWireNetwork, type FourWireSection, hasCode, type NodeLoad, solveRadial } from '../../src/index.js';

/** What complex numbers of the library can do, as its types do not say. */
interface Complex {
  readonly re: number;
  readonly im: number;
  add(other: Complex): Complex;
  sub(other: Complex): Complex;
  mul(other: Complex | number): Complex;
  div(other: Complex | number): Complex;
  inverse(): Complex;
  conjugate(): Complex;
  abs(): number;
}

const c = (re: number, im = 0) => complex(re, im) as unknown as Complex;
const matrixOf = (rows: readonly (readonly Complex[])[]) => matrix(rows as unknown as MathCollection);

/**
 * The same network by nodal analysis: one matrix of all node potentials, loads as injections and admittances between
 * line and neutral, a general solver of linear equations, and repetition until the injections stand still.
 */
function nodal({ sections, sourceVoltage }: FourWireNetwork) {
  const size = 4 * sections.length;
  const rows: Complex[][] = Array.from({ length: size }, () => Array.from({ length: size }, () => c(0)));
  const fixed: Complex[] = Array.from({ length: size }, () => c(0));
  const sources = [0, 1, 2, 3].map((k) =>
    k === 3
      ? c(0)
      : c(sourceVoltage * Math.cos((2 * Math.PI * k) / 3), -sourceVoltage * Math.sin((2 * Math.PI * k) / 3)),
  );
  const stamp = (i: number, j: number, y: Complex) => {
    (rows[i] as Complex[])[j] = ((rows[i] as Complex[])[j] as Complex).add(y);
  };
  const between = (a: number, b: number, y: Complex) => {
    stamp(a, a, y);
    stamp(b, b, y);
    stamp(a, b, y.mul(-1));
    stamp(b, a, y.mul(-1));
  };
  sections.forEach((s, i) => {
    for (let k = 0; k < 4; k++) {
      const [r, x] = k < 3 ? s.line : s.neutral;
      const y = c(r, x).inverse();
      if (s.parent >= 0) between(4 * i + k, 4 * s.parent + k, y);
      else {
        stamp(4 * i + k, 4 * i + k, y);
        fixed[4 * i + k] = (fixed[4 * i + k] as Complex).add((sources[k] as Complex).mul(y));
      }
    }
    s.loads.forEach((load, k) => {
      if (load?.kind === 'impedance') between(4 * i + k, 4 * i + 3, c(load.resistance, load.reactance).inverse());
    });
  });
  const factors = lup(matrixOf(rows));
  let potentials: Complex[] = sections.flatMap(() => sources);
  for (let round = 0; round < 60; round++) {
    const injected = [...fixed];
    sections.forEach((s, i) => {
      s.loads.forEach((load, k) => {
        if (!load || load.kind === 'impedance') return;
        const u = (potentials[4 * i + k] as Complex).sub(potentials[4 * i + 3] as Complex);
        const drawn =
          load.kind === 'power'
            ? c(load.active, load.reactive).div(u).conjugate()
            : u.div(u.abs()).mul(c(load.current * Math.cos(load.angle), -load.current * Math.sin(load.angle)));
        injected[4 * i + k] = (injected[4 * i + k] as Complex).sub(drawn);
        injected[4 * i + 3] = (injected[4 * i + 3] as Complex).add(drawn);
      });
    });
    const solved = lusolve(factors, matrixOf(injected.map((v) => [v]))) as Matrix;
    const next = (solved.toArray() as unknown as (Complex | number)[][]).map(([v]) =>
      typeof v === 'number' ? c(v) : (v as Complex),
    );
    const moved = Math.max(...next.map((v, i) => v.sub(potentials[i] as Complex).abs()));
    potentials = next;
    if (moved < 1e-12 * sourceVoltage) break;
  }
  return {
    voltages: sections.map((_, i) =>
      [0, 1, 2].map((k) => (potentials[4 * i + k] as Complex).sub(potentials[4 * i + 3] as Complex).abs()),
    ),
    neutrals: sections.map((_, i) => (potentials[4 * i + 3] as Complex).abs()),
  };
}

const load: fc.Arbitrary<NodeLoad | null> = fc.oneof(
  fc.constant(null),
  fc.record({
    kind: fc.constant('current' as const),
    current: fc.double({ min: 0.1, max: 60, noNaN: true }),
    angle: fc.double({ min: -1, max: 1.2, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('power' as const),
    active: fc.double({ min: -5000, max: 10000, noNaN: true }),
    reactive: fc.double({ min: -3000, max: 5000, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant('impedance' as const),
    resistance: fc.double({ min: 4, max: 500, noNaN: true }),
    reactance: fc.double({ min: -4, max: 4, noNaN: true }),
  }),
);
const impedance = fc.tuple(
  fc.double({ min: 0.001, max: 0.04, noNaN: true }),
  fc.double({ min: 0, max: 0.02, noNaN: true }),
) as fc.Arbitrary<readonly [number, number]>;
const network: fc.Arbitrary<FourWireNetwork> = fc
  .array(fc.tuple(fc.nat(1000), impedance, impedance, fc.tuple(load, load, load)), { minLength: 1, maxLength: 5 })
  .chain((parts) =>
    fc.double({ min: 200, max: 260, noNaN: true }).map((sourceVoltage) => ({
      sourceVoltage,
      sections: parts.map(
        ([parent, line, neutral, loads], i): FourWireSection => ({
          parent: (parent % (i + 1)) - 1,
          line,
          neutral,
          loads,
        }),
      ),
    })),
  );

describe('radial four-wire networks', () => {
  it('agree with nodal analysis by a general solver, 1,000 random ones to 1e-9', () => {
    fc.assert(
      fc.property(network, (n) => {
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
  }, 120_000);

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
