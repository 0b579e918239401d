import { procedure } from '../../core/index.js';
import { invalidInput, type Problem } from '../../units/index.js';
import { add, type Complex, complex, magnitude, polar } from '../complex.js';

/** The current of one order: 1 is the fundamental. */
export interface HarmonicCurrent {
  /** Order of the harmonic, a whole number from 1. */
  readonly order: number;
  /** Current, A or over the fundamental, 0 and up. */
  readonly current: number;
}

function spectrumProblems(all: readonly HarmonicCurrent[], at: Problem['path'] = []): readonly Problem[] {
  if (!Array.isArray(all)) return [{ path: at, message: 'must be a list of harmonics' }];
  const problems: Problem[] = all.flatMap(({ order, current }: HarmonicCurrent, i) => [
    ...(Number.isInteger(order) && order >= 1 && all.findIndex((h) => h.order === order) === i
      ? []
      : [{ path: [...at, i, 'order'], message: 'must be a whole number from 1, each once' }]),
    ...(Number.isFinite(current) && current >= 0 ? [] : [{ path: [...at, i, 'current'], message: 'must be from 0' }]),
  ]);
  if (problems.length === 0 && !(fundamental(all) > 0))
    problems.push({ path: at, message: 'must have a fundamental above 0' });
  return problems;
}
const fundamental = (all: readonly HarmonicCurrent[]) => all.find((h) => h.order === 1)?.current ?? 0;
const sum = (all: readonly HarmonicCurrent[], of: (h: HarmonicCurrent) => number) => all.reduce((s, h) => s + of(h), 0);
function refuse(problems: readonly Problem[]): void {
  if (problems.length > 0) throw invalidInput('the harmonics', problems);
}

/** Root of the squares of all harmonics over the fundamental. IEC 61000-2-2. */
export const distortionOf = /* @__PURE__ */ procedure({
  id: 'harmonic-distortion',
  title: 'Harmonics over the fundamental',
  output: 'distortion',
  method: 'root of the sum of the squares of all orders from 2 over the fundamental',
  source: { document: 'IEC 61000-2-2', clause: 'total harmonic distortion', provenance: 'memory' },
  run: (all: readonly HarmonicCurrent[]) => {
    refuse(spectrumProblems(all));
    return Math.sqrt(sum(all, (h) => (h.order === 1 ? 0 : h.current ** 2))) / fundamental(all);
  },
});

/** Factor of the eddy losses of a transformer by harmonics, as North America rates transformers. UL 1561. */
export const kRatingOf = /* @__PURE__ */ procedure({
  id: 'k-rating',
  title: 'Factor K of a load for transformers that are rated by it',
  output: 'harmonicLossFactor',
  method: 'sum of the squares of current times order over the sum of the squares of the currents',
  source: { document: 'UL 1561', clause: 'K-factor', provenance: 'two-sources' },
  run: (all: readonly HarmonicCurrent[]) => {
    refuse(spectrumProblems(all));
    return sum(all, (h) => (h.current * h.order) ** 2) / sum(all, (h) => h.current ** 2);
  },
});

/** A load and the transformer that carries it. */
export interface HarmonicLoad {
  readonly harmonics: readonly HarmonicCurrent[];
  /** Eddy losses over resistive losses, both at the fundamental, 1; often 0.1. */
  readonly eddyShare: number;
  /** Exponent of the order: 1.7 for round or rectangular wire, 1.5 for foil. */
  readonly exponent: number;
}

/** Factor K by which harmonics raise the load that a transformer feels. EN 50464-3. */
export const harmonicLoadFactorOf = /* @__PURE__ */ procedure({
  id: 'harmonic-load-factor',
  title: 'Factor by which harmonics raise the load that a transformer feels',
  output: 'harmonicLossFactor',
  method: 'root of 1 and the eddy share of all orders from 2, weighted by the order to a power',
  source: { document: 'EN 50464-3', provenance: 'memory' },
  run: ({ harmonics, eddyShare, exponent }: HarmonicLoad) => {
    refuse([
      ...spectrumProblems(harmonics, ['harmonics']),
      ...(Number.isFinite(eddyShare) && eddyShare >= 0 ? [] : [{ path: ['eddyShare'], message: 'must be from 0' }]),
      ...(Number.isFinite(exponent) && exponent > 0 ? [] : [{ path: ['exponent'], message: 'must be above 0' }]),
    ]);
    const first = fundamental(harmonics);
    const weighted = sum(harmonics, (h) => (h.order === 1 ? 0 : h.order ** exponent * (h.current / first) ** 2));
    const share = first ** 2 / sum(harmonics, (h) => h.current ** 2);
    return Math.sqrt(1 + (eddyShare / (1 + eddyShare)) * share * weighted);
  },
});

/** Factor by which harmonics reduce the load of a transformer that is not made for them. EN 50464-3. */
export const harmonicDeratingOf = /* @__PURE__ */ procedure({
  id: 'harmonic-derating',
  title: 'Factor by which harmonics reduce the load of a transformer',
  output: 'harmonicDerating',
  method: 'one over the factor by which harmonics raise the load',
  source: { document: 'EN 50464-3', provenance: 'memory' },
  run: (load: HarmonicLoad) => 1 / harmonicLoadFactorOf(load),
});

/** A single-phase load with its harmonics; a three-phase one is three of them. */
export interface NeutralLoad {
  /** Line conductor: 0 for L1, 1 for L2, 2 for L3. */
  readonly line: 0 | 1 | 2;
  /** Its currents by order, A. */
  readonly harmonics: readonly HarmonicCurrent[];
  /** Angle by which its fundamental lags the voltage, radians; 0 where it is absent. */
  readonly angle?: number;
}

/**
 * Current of a neutral that several single-phase loads share, harmonics included. Harmonics of one order are taken in
 * phase with each other on each line, which they never quite are: the neutral current of the third and its multiples is
 * never less than the real one. Circuit theory.
 */
export const neutralOfLoads = /* @__PURE__ */ procedure({
  id: 'neutral-of-loads',
  title: 'Current of a neutral that several loads share',
  output: 'harmonicNeutralCurrent',
  method:
    'phasors of each order, turned by a third of a period times the order from line to line; root of their squares',
  source: { document: 'Circuit theory', clause: "Kirchhoff's law for each order", provenance: 'derived' },
  run: (loads: readonly NeutralLoad[]) => {
    if (!Array.isArray(loads)) refuse([{ path: [], message: 'must be a list of loads' }]);
    refuse(
      loads.flatMap(({ line, harmonics, angle = 0 }: NeutralLoad, i) => [
        ...spectrumProblems(harmonics, [i, 'harmonics']),
        ...([0, 1, 2].includes(line) ? [] : [{ path: [i, 'line'], message: 'must be 0, 1 or 2' }]),
        ...(Number.isFinite(angle) ? [] : [{ path: [i, 'angle'], message: 'must be finite' }]),
      ]),
    );
    const orders = new Map<number, Complex>();
    for (const { line, harmonics, angle = 0 } of loads)
      for (const { order, current } of harmonics) {
        // a multiple of three turns by whole periods: exactly none
        const turn = ((line * order) % 3) * ((-2 * Math.PI) / 3);
        const own = polar(current, turn - (order === 1 ? angle : 0));
        orders.set(order, add(orders.get(order) ?? complex(0), own));
      }
    return Math.sqrt([...orders.values()].reduce((s, c) => s + magnitude(c) ** 2, 0));
  },
});
