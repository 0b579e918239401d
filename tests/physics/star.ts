import fc from 'fast-check';
import { type Complex, complex, lusolve } from 'mathjs';
import type { OpenPenCase } from '../../src/physics/index.js';

const amps = fc.double({ min: 0.5, max: 200, noNaN: true });
const ohm = fc.double({ min: 0.05, max: 500, noNaN: true });

/** Three loads of random currents on the lines of a star whose PEN conductor is open, all taken as resistances. */
export const openPenCases: fc.Arbitrary<OpenPenCase> = fc
  .tuple(
    fc.tuple(amps, amps, amps),
    fc.array(ohm, { minLength: 0, maxLength: 4 }),
    fc.double({ min: 0.01, max: 50, noNaN: true }),
    fc.double({ min: 0.9, max: 1.2, noNaN: true }),
  )
  .map(([currents, electrodes, sourceElectrode, sourceFactor]) => ({
    nominalVoltage: 230,
    sourceFactor,
    sourceElectrode,
    electrodes,
    loads: currents.map((current, k) => ({ line: (k + 1) as 1 | 2 | 3, current })),
  }));

/**
 * The same by nodal analysis: floating neutral and source neutral, with earth as the reference.
 * @param c three loads that are resistances
 */
export function openPenByNodes(c: OpenPenCase): { touchVoltage: number; sourceNeutral: number } {
  const y = c.loads.map((load) => load.current / c.nominalVoltage);
  const e = [0, -120, 120].map((d) => complex({ r: c.sourceFactor * c.nominalVoltage, phi: (d * Math.PI) / 180 }));
  const total = y.reduce((a, b) => a + b, 0);
  const ground = c.electrodes.reduce((s, r) => s + 1 / r, 0);
  const drive = e.reduce(
    (s, v, k) => complex(s.re + v.re * (y[k] as number), s.im + v.im * (y[k] as number)),
    complex(0, 0),
  );
  const matrix = [
    [complex(total + ground, 0), complex(-total, 0)],
    [complex(-total, 0), complex(total + 1 / (c.sourceElectrode as number), 0)],
  ];
  const solved = lusolve(matrix, [[drive], [complex(-drive.re, -drive.im)]]) as unknown as [[Complex], [Complex]];
  // a zero comes back as a plain number
  const [m, n] = [complex(solved[0][0]), complex(solved[1][0])];
  return { touchVoltage: Math.hypot(m.re, m.im), sourceNeutral: Math.hypot(n.re, n.im) };
}
