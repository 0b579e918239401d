import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ohms } from '../../src/index.js';
import { equivalentFrequencyPeakFactorOf, meshedPeakFactorOf, peakFactorOf } from '../../src/physics/definitions.js';
import { seedOf } from '../support/seed.js';

interface Z {
  readonly r: number;
  readonly x: number;
}
const of = (formula: typeof peakFactorOf, { r, x }: Z) => formula({ resistance: ohms(r), reactance: ohms(x) });
const inSeries = (a: Z, b: Z): Z => ({ r: a.r + b.r, x: a.x + b.x });
function inParallel(a: Z, b: Z): Z {
  const [sr, sx] = [a.r + b.r, a.x + b.x];
  const [pr, px] = [a.r * b.r - a.x * b.x, a.r * b.x + a.x * b.r];
  const d = sr * sr + sx * sx;
  return { r: (pr * sr + px * sx) / d, x: (px * sr - pr * sx) / d };
}
const at = (share: number, { r, x }: Z): Z => ({ r, x: share * x });

/** Two sources in parallel, each behind a branch of its own, and a branch that both share, up to the fault. */
interface Mesh {
  readonly first: Z;
  readonly second: Z;
  readonly shared: Z;
}
const seen = ({ first, second, shared }: Mesh, share = 1) =>
  inSeries(inParallel(at(share, first), at(share, second)), at(share, shared));

/** Peak of the current by integration of the network over the first cycle, over √2 times the steady current. */
function peakByTime(mesh: Mesh): number {
  const w = 2 * Math.PI * 50;
  const { first: a, second: b, shared: c } = mesh;
  const [l11, l12, l22] = [(a.x + c.x) / w, c.x / w, (b.x + c.x) / w];
  const [r11, r12, r22] = [a.r + c.r, c.r, b.r + c.r];
  const det = l11 * l22 - l12 * l12;
  const slope = (i: number, j: number, e: number): [number, number] => {
    const [u, v] = [e - r11 * i - r12 * j, e - r12 * i - r22 * j];
    return [(l22 * u - l12 * v) / det, (l11 * v - l12 * u) / det];
  };
  const steps = 1000;
  const h = 0.02 / steps;
  let peak = 0;
  for (let angle = 0; angle < Math.PI; angle += Math.PI / 24) {
    let [i, j] = [0, 0];
    for (let k = 0; k < steps; k++) {
      const e = (t: number) => Math.SQRT2 * Math.sin(w * t + angle);
      const t = k * h;
      const [a1, b1] = slope(i, j, e(t));
      const [a2, b2] = slope(i + (h / 2) * a1, j + (h / 2) * b1, e(t + h / 2));
      const [a3, b3] = slope(i + (h / 2) * a2, j + (h / 2) * b2, e(t + h / 2));
      const [a4, b4] = slope(i + h * a3, j + h * b3, e(t + h));
      i += (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
      j += (h / 6) * (b1 + 2 * b2 + 2 * b3 + b4);
      peak = Math.max(peak, Math.abs(i + j));
    }
  }
  const z = seen(mesh);
  return (peak * Math.hypot(z.r, z.x)) / Math.SQRT2;
}

const branch = fc
  .record({ x: fc.double({ min: 0.1, max: 10, noNaN: true }), ratio: fc.double({ min: 0.02, max: 2, noNaN: true }) })
  .map(({ x, ratio }): Z => ({ r: ratio * x, x }));
const mesh = fc.record({ first: branch, second: branch, shared: branch });

describe('peak factor of meshed networks', () => {
  test('method (c) is the simple form where the network is a series', () => {
    fc.assert(
      fc.property(branch, branch, (a, b) => {
        const series = inSeries(a, b);
        expect(of(equivalentFrequencyPeakFactorOf, at(0.4, series))).toBeCloseTo(of(peakFactorOf, series), 12);
      }),
    );
  });
  test('method (b) is 1.15 times the simple form, at most 1.8', () => {
    expect(of(meshedPeakFactorOf, { r: 0.5, x: 1 })).toBeCloseTo(1.15 * 1.23866755695, 10);
    expect(of(meshedPeakFactorOf, { r: 0.1, x: 1 })).toBe(1.8);
  });
  test('against the network integrated in time: (c) within 5 %, (b) from 13 % below to 18 % above while its bound does not act', () => {
    fc.assert(
      fc.property(mesh, (m) => {
        const exact = peakByTime(m);
        const c = of(equivalentFrequencyPeakFactorOf, seen(m, 0.4));
        expect(Math.abs(c / exact - 1)).toBeLessThan(0.05);
        const b = of(meshedPeakFactorOf, seen(m));
        // at 1.8 the standard takes the largest that low voltage has; the network here can have more
        if (b < 1.8) {
          expect(b / exact).toBeGreaterThan(0.87);
          expect(b / exact).toBeLessThan(1.18);
        }
      }),
      { numRuns: 60, seed: seedOf(60909) },
    );
  });
});
