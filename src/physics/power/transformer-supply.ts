import { invalidInput, type Problem, ratio } from '../../units/index.js';
import {
  type Impedance,
  lineEarthFault,
  lineEarthPath,
  type RadialElement,
  type RadialNetwork,
  splitImpedance,
  threePhaseFault,
  transformerFactorOf,
  warmed,
} from '../short-circuit.js';

/** What a figure is at least and at most. @inline */
export interface Span {
  readonly least: number;
  readonly most: number;
}

/** A transformer as the supply of an installation, by its plate, and what lies between it and the origin. */
export interface TransformerSupplyInput {
  /** Nominal voltage between lines of the installation, V. */
  readonly lineVoltage: number;
  readonly transformer: {
    /** Rated power, VA. */
    readonly rating: number;
    /** Rated voltage between lines of the low side without load, V. */
    readonly voltage: number;
    /** Impedance voltage u_k, 1; a plate is right within a tenth. */
    readonly impedanceVoltage: Span;
    /** Loss at rated current, W. */
    readonly loss: Span;
  };
  /** Fault level of the grid at the high side, VA; the largest may be without bound. */
  readonly gridFaultPower: Span;
  /** The cable to the origin at 20 °C: one line, and the protective path, Ω. */
  readonly cable?: { readonly line: Impedance; readonly protective: Impedance };
  /** Largest temperature of the conductors of that cable, °C. */
  readonly hottest?: number;
  /** Voltage factors c of the smallest and of the largest current. */
  readonly voltageFactor: Span;
}

/** What a transformer supplies at the origin: the smallest and the largest of each. */
export interface TransformerSupply {
  /** Loop of line and earth, Ω. */
  readonly externalImpedance: Span;
  /** Three-phase fault current, A. */
  readonly threePhase: Span;
  /** Line-to-earth fault current, A. */
  readonly lineEarth: Span;
}

function problemsOf(input: TransformerSupplyInput): readonly Problem[] {
  const problems: Problem[] = [];
  const positive = (value: unknown, path: Problem['path']) => {
    if (!(Number.isFinite(value) && (value as number) > 0)) problems.push({ path, message: 'must be above 0' });
  };
  const span = (value: Span | undefined, path: Problem['path'], open = false) => {
    const fits =
      value &&
      value.least > 0 &&
      value.most >= value.least &&
      Number.isFinite(value.least) &&
      (open || Number.isFinite(value.most));
    if (!fits) problems.push({ path, message: 'must be above 0, its end no less than its start' });
  };
  const { transformer: t, gridFaultPower, voltageFactor, cable, hottest } = input ?? {};
  positive(input?.lineVoltage, ['lineVoltage']);
  positive(t?.rating, ['transformer', 'rating']);
  positive(t?.voltage, ['transformer', 'voltage']);
  span(t?.impedanceVoltage, ['transformer', 'impedanceVoltage']);
  span(t?.loss, ['transformer', 'loss']);
  span(gridFaultPower, ['gridFaultPower'], true);
  span(voltageFactor, ['voltageFactor']);
  if (cable && !(Number.isFinite(hottest) && (hottest as number) >= 20))
    problems.push({ path: ['hottest'], message: 'must be from 20 °C where there is a cable' });
  if (problems.length === 0 && t.loss.most / t.rating > t.impedanceVoltage.least)
    problems.push({ path: ['transformer', 'loss'], message: 'is more than the impedance voltage allows' });
  return problems;
}

/** One end of the ranges: everything small and cold, or everything large and hot. */
function end(input: TransformerSupplyInput, which: 'least' | 'most'): RadialNetwork {
  const { transformer: t, cable, hottest, lineVoltage, voltageFactor } = input;
  const small = which === 'least';
  const voltage = voltageFactor[small ? 'most' : 'least'];
  const base = t.voltage ** 2;
  const size = (t.impedanceVoltage[which] * base) / t.rating;
  const resistance = (t.loss[which] * base) / t.rating ** 2;
  const reactance = Math.sqrt(size ** 2 - resistance ** 2);
  // where the correction would raise the impedance it is left out of the smallest: the safe side
  const factor = small
    ? Math.min(
        1,
        transformerFactorOf({
          maximumVoltageFactor: ratio(voltage),
          transformerReactanceRatio: ratio((reactance * t.rating) / base),
        }),
      )
    : 1;
  const level = input.gridFaultPower[small ? 'most' : 'least'];
  const grid = splitImpedance(Number.isFinite(level) ? (voltage * base) / level : 0, 0.1);
  const none: Impedance = { resistance: 0, reactance: 0 };
  const elements: RadialElement[] = [
    // the delta keeps the zero sequence from the grid
    { name: 'grid', line: grid, zero: none },
    {
      name: 'transformer',
      line: { resistance: resistance * factor, reactance: reactance * factor },
      zero: { resistance: resistance * factor, reactance: (small ? 0.95 : 1) * reactance * factor },
    },
  ];
  if (cable) {
    const element = { name: 'cable', ...cable };
    elements.push(small ? element : warmed(element, hottest as number));
  }
  return { lineVoltage, voltageFactor: voltage, elements };
}

/**
 * What a transformer with a delta on its high side and its star point earthed supplies: loop impedance and fault currents
 * at the origin, by IEC 60909-0. The smallest impedance counts a strong grid, the correction of the transformer where that lowers it,
 * and cold conductors, the largest a weak grid and hot ones. Motors of the site are not in it.
 * @param input plate of the transformer, fault level of the grid, cable to the origin
 * @returns least and most of the loop impedance, Ω, and of the fault currents, A
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { transformerSupply } from 'ohmwright/power';
 *
 * const supply = transformerSupply({
 *   lineVoltage: 400,
 *   transformer: {
 *     rating: 500_000,
 *     voltage: 433,
 *     impedanceVoltage: { least: 0.0428, most: 0.0523 },
 *     loss: { least: 3900, most: 5500 },
 *   },
 *   gridFaultPower: { least: 50e6, most: 250e6 },
 *   voltageFactor: { least: 0.95, most: 1.1 },
 * });
 * supply.threePhase.least < supply.threePhase.most; // => true
 * Math.round(supply.threePhase.most / 1000); // => 15
 * ```
 */
export function transformerSupply(input: TransformerSupplyInput): TransformerSupply {
  const problems = problemsOf(input);
  if (problems.length > 0) throw invalidInput('a transformer as supply', problems);
  const [strong, weak] = [end(input, 'least'), end(input, 'most')];
  const size = (network: RadialNetwork) => {
    const { resistance, reactance } = lineEarthPath(network);
    return Math.hypot(resistance, reactance);
  };
  return {
    externalImpedance: { least: size(strong), most: size(weak) },
    threePhase: { least: threePhaseFault(weak), most: threePhaseFault(strong) },
    lineEarth: { least: lineEarthFault(weak), most: lineEarthFault(strong) },
  };
}
