import { formula, procedure } from '../../core/index.js';
import { invalidInput, type Problem } from '../../units/index.js';

/** Voltage drop between lines at the end of a busbar trunking or riser whose load is spread evenly along it. Circuit theory. */
export const dropOfSpreadLoad = /* @__PURE__ */ formula({
  id: 'drop-of-spread-load',
  title: 'Voltage drop between lines of a load that is spread evenly along a run',
  inputs: ['designCurrent', 'length', 'resistancePerMetre', 'reactancePerMetre', 'powerFactor', 'reactiveFactor'],
  output: 'voltageDrop',
  expression:
    'sqrt(3) / 2 * designCurrent * length * (resistancePerMetre * powerFactor + reactancePerMetre * reactiveFactor)',
  compute: (v) =>
    (Math.sqrt(3) / 2) *
    v.designCurrent *
    v.length *
    (v.resistancePerMetre * v.powerFactor + v.reactancePerMetre * v.reactiveFactor),
  source: {
    document: 'Circuit theory',
    clause: 'sum along the run',
    provenance: 'derived',
    note: 'half of what one load at the end makes',
  },
});

/** What is tapped off a run at a place. @inline */
export interface TapOff {
  /** Distance from the start of the run, m, 0 and up. */
  readonly at: number;
  /** Current of each line, A, 0 and up. */
  readonly current: number;
  /** Power factor of the load, lagging, 1. */
  readonly powerFactor: number;
}

/** A busbar trunking or riser with tap-offs, of three lines alike. */
export interface TappedRun {
  /** Resistance of one line, Ω/m. */
  readonly resistancePerMetre: number;
  /** Reactance of one line, Ω/m. */
  readonly reactancePerMetre: number;
  readonly taps: readonly TapOff[];
}

/** What a run does at one of its taps. @inline */
export interface TapResult {
  /** Distance from the start, m. */
  readonly at: number;
  /** Current of each line up to here, A: of the section ahead of the tap. */
  readonly current: number;
  /** Drop of the voltage between lines from the start to here, V. */
  readonly drop: number;
}

/**
 * Currents of the sections of a run with tap-offs and the drop at each, from its start on.
 * @param run resistance and reactance, Ω/m, and what is tapped off where
 * @returns for each place of a tap the current ahead of it, A, and the drop between lines, V, in the order of the places
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { alongTaps } from 'ohmwright/power';
 *
 * const riser = alongTaps({
 *   resistancePerMetre: 0.0001,
 *   reactancePerMetre: 0,
 *   taps: [
 *     { at: 10, current: 100, powerFactor: 1 },
 *     { at: 20, current: 100, powerFactor: 1 },
 *   ],
 * });
 * riser.map((t) => t.current); // => [200, 100]
 * riser[1]?.drop; // ≈ 0.52
 * ```
 */
export function alongTaps({ resistancePerMetre, reactancePerMetre, taps }: TappedRun): readonly TapResult[] {
  const problems: Problem[] = [];
  const positive = (value: unknown, path: Problem['path'], most = Number.POSITIVE_INFINITY) => {
    if (!(Number.isFinite(value) && (value as number) >= 0 && (value as number) <= most))
      problems.push({ path, message: most === 1 ? 'must be from 0 to 1' : 'must be from 0' });
  };
  positive(resistancePerMetre, ['resistancePerMetre']);
  positive(reactancePerMetre, ['reactancePerMetre']);
  if (!Array.isArray(taps) || taps.length === 0) problems.push({ path: ['taps'], message: 'must be at least one' });
  else
    taps.forEach((t: TapOff, i) => {
      positive(t?.at, ['taps', i, 'at']);
      positive(t?.current, ['taps', i, 'current']);
      positive(t?.powerFactor, ['taps', i, 'powerFactor'], 1);
    });
  if (problems.length > 0) throw invalidInput('a run with tap-offs', problems);
  const inOrder = [...taps].sort((a, b) => a.at - b.at);
  const results: TapResult[] = [];
  let [last, drop] = [0, 0];
  inOrder.forEach(({ at }, i) => {
    const beyond = inOrder.slice(i);
    const active = beyond.reduce((s, t) => s + t.current * t.powerFactor, 0);
    const reactive = beyond.reduce((s, t) => s + t.current * Math.sqrt(1 - t.powerFactor ** 2), 0);
    drop += Math.sqrt(3) * (at - last) * (resistancePerMetre * active + reactancePerMetre * reactive);
    last = at;
    results.push({ at, current: Math.hypot(active, reactive), drop });
  });
  return results;
}

/** Voltage drop between lines at the last tap of a run. Circuit theory. */
export const dropAtLastTap = /* @__PURE__ */ procedure({
  id: 'drop-at-last-tap',
  title: 'Voltage drop between lines at the last tap of a run',
  output: 'voltageDrop',
  method: 'drop of each section by the currents of all taps beyond it, in phase with the voltage',
  source: { document: 'Circuit theory', clause: 'sum over sections', provenance: 'derived' },
  run: (run: TappedRun) => alongTaps(run).at(-1)?.drop ?? 0,
});
