import fc from 'fast-check';
import { complex, lup, lusolve, type MathCollection, type Matrix, matrix } from 'mathjs';
import type { FourWireSection, NodeLoad } from '../../src/physics/four-wire-network.js';
import type { FourWireNetwork } from '../../src/physics/index.js';

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
export function nodal({ sections, sourceVoltage }: FourWireNetwork) {
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
/** Random radial networks. */
export const fourWireNetworks: fc.Arbitrary<FourWireNetwork> = fc
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
