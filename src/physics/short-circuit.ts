import { formula, procedure, stated } from '../core/index.js';
import { CalculationError, invalidInput, type Problem } from '../units/index.js';

const iec60909 = 'IEC 60909-0';

/** Impedance of a transformer per line conductor from its rating plate. IEC 60909-0, transformers. */
export const transformerImpedanceOf = /* @__PURE__ */ formula({
  id: 'transformer-impedance',
  title: 'Impedance of the transformer per line conductor',
  inputs: ['transformerImpedanceVoltage', 'transformerVoltage', 'transformerRating'],
  output: 'transformerImpedance',
  expression: 'transformerImpedanceVoltage * transformerVoltage^2 / transformerRating',
  compute: ({ transformerImpedanceVoltage: u, transformerVoltage, transformerRating }) =>
    (u * transformerVoltage * transformerVoltage) / transformerRating,
  source: { document: iec60909, clause: 'transformers', provenance: 'two-sources' },
});

/** Resistance of a transformer per line conductor from its loss at rated current. IEC 60909-0, transformers. */
export const transformerResistanceOf = /* @__PURE__ */ formula({
  id: 'transformer-resistance',
  title: 'Resistance of the transformer per line conductor',
  inputs: ['transformerLoss', 'transformerVoltage', 'transformerRating'],
  output: 'transformerResistance',
  expression: 'transformerLoss * transformerVoltage^2 / transformerRating^2',
  compute: ({ transformerLoss, transformerVoltage, transformerRating }) =>
    (transformerLoss * transformerVoltage * transformerVoltage) / (transformerRating * transformerRating),
  source: { document: iec60909, clause: 'transformers', provenance: 'memory' },
});

/** Correction factor of the transformer impedance for the largest fault current. IEC 60909-0, transformers, K_T. */
export const transformerFactorOf = /* @__PURE__ */ formula({
  id: 'transformer-correction-factor',
  title: 'Correction factor of the transformer impedance, largest current only',
  inputs: ['maximumVoltageFactor', 'transformerReactanceRatio'],
  output: 'transformerFactor',
  expression: '0.95 * maximumVoltageFactor / (1 + 0.6 * transformerReactanceRatio)',
  compute: ({ maximumVoltageFactor, transformerReactanceRatio }) =>
    (0.95 * maximumVoltageFactor) / (1 + 0.6 * transformerReactanceRatio),
  source: { document: iec60909, clause: 'transformers, K_T', provenance: 'one-source' },
});

/** Impedance of the grid, referred to the low side of the transformer. IEC 60909-0, network feeders. */
export const gridImpedanceOf = /* @__PURE__ */ formula({
  id: 'grid-impedance',
  title: 'Impedance of the grid referred to the low side',
  inputs: ['voltageFactor', 'gridFaultCurrent', 'gridVoltage', 'transformerVoltage'],
  output: 'gridImpedance',
  expression: 'voltageFactor * transformerVoltage^2 / (sqrt(3) * gridFaultCurrent * gridVoltage)',
  compute: ({ voltageFactor, gridFaultCurrent, gridVoltage, transformerVoltage }) =>
    (voltageFactor * transformerVoltage * transformerVoltage) / (Math.sqrt(3) * gridFaultCurrent * gridVoltage),
  source: {
    document: iec60909,
    clause: 'network feeders',
    provenance: 'one-source',
    note: 'high side at gridVoltage; as in pandapower',
  },
});

/** Factor κ of the peak current from the ratio of resistance to reactance of the path. */
export const peakFactorOf = /* @__PURE__ */ formula({
  id: 'peak-factor',
  title: 'Factor of the peak current',
  inputs: ['resistance', 'reactance'],
  output: 'peakFactor',
  expression: '1.02 + 0.98 * exp(-3 * resistance / reactance)',
  compute: ({ resistance, reactance }) => 1.02 + 0.98 * Math.exp((-3 * resistance) / reactance),
  valid: { reactance: { above: 0 } },
  source: {
    document: iec60909,
    clause: 'peak current',
    provenance: 'one-source',
    note: 'stands in the documentation of the open network library pandapower',
  },
});

/** Peak of the fault current. IEC 60909-0, peak current. */
export const peakCurrentOf = /* @__PURE__ */ formula({
  id: 'peak-current',
  title: 'Peak of the fault current',
  inputs: ['peakFactor', 'faultCurrent'],
  output: 'peakCurrent',
  expression: 'peakFactor * sqrt(2) * faultCurrent',
  compute: ({ peakFactor, faultCurrent }) => peakFactor * Math.SQRT2 * faultCurrent,
  source: {
    document: iec60909,
    clause: 'peak current',
    provenance: 'one-source',
    note: 'stands in the documentation of the open network library pandapower',
  },
});

/** An impedance as plain data, Ω. */
export interface Impedance {
  /** Resistance R, Ω. */
  readonly resistance: number;
  /** Reactance X, Ω. */
  readonly reactance: number;
}

/** One element of a radial network, from the source on: grid, transformer, cable. @inline */
export interface RadialElement {
  readonly name: string;
  /** Impedance of one line conductor (positive sequence). */
  readonly line: Impedance;
  /** Zero-sequence impedance, where it is known; the returns are then not asked for. */
  readonly zero?: Impedance;
  /** Impedance of the neutral conductor; of a source whose loop stands as its line conductor, 0 Ω, stated. */
  readonly neutral?: Impedance;
  /** Impedance of the protective path; the same. */
  readonly protective?: Impedance;
}

/** A radial network up to the place of the fault. Motors that feed back are not covered. */
export interface RadialNetwork {
  /** Nominal voltage between lines U_n, V. */
  readonly lineVoltage: number;
  /** Voltage factor c. */
  readonly voltageFactor: number;
  /** The elements from the source to the place of the fault. */
  readonly elements: readonly RadialElement[];
}

const none: Impedance = { resistance: 0, reactance: 0 };

type Where = readonly (string | number)[];

/** What is wrong with an impedance: a resistance is never negative, a reactance finite. */
function impedanceProblems(z: Impedance | undefined, at: Where): readonly Problem[] {
  const { resistance, reactance } = z ?? { resistance: Number.NaN, reactance: Number.NaN };
  return [
    ...(Number.isFinite(resistance) && resistance >= 0
      ? []
      : [{ path: [...at, 'resistance'], message: `is ${resistance}; a resistance is from 0 Ω` }]),
    ...(Number.isFinite(reactance)
      ? []
      : [{ path: [...at, 'reactance'], message: `is ${reactance}; a reactance is a finite number of Ω` }]),
  ];
}

/** A way back that nobody states is no way of 0 Ω. */
const returnProblems = ({ zero }: RadialElement, at: Where, back: boolean, part: string): readonly Problem[] =>
  back && zero === undefined
    ? [{ path: [...at, part], message: 'is missing: the way back, or the zero sequence' }]
    : [];

function elementProblems(element: RadialElement, at: Where, back?: 'neutral' | 'protective'): readonly Problem[] {
  if (typeof element !== 'object' || element === null) return [{ path: at, message: 'is no element of a network' }];
  return (['line', 'zero', 'neutral', 'protective'] as const).flatMap((part) =>
    element[part] === undefined && part !== 'line'
      ? returnProblems(element, at, part === back, part)
      : impedanceProblems(element[part], [...at, part]),
  );
}

/** Refuses a network that cannot be, or whose way back is not stated: its currents would be nonsense, or not what they are. */
function refuse(network: RadialNetwork, back?: 'neutral' | 'protective'): RadialNetwork {
  if (typeof network !== 'object' || network === null || !Array.isArray(network.elements))
    throw invalidInput('the network', [{ path: ['elements'], message: 'must be a list' }]);
  const { lineVoltage, voltageFactor, elements } = network;
  const problems = elements.flatMap((e: RadialElement, i) => elementProblems(e, ['elements', i], back));
  if (!(Number.isFinite(lineVoltage) && lineVoltage > 0))
    problems.unshift({ path: ['lineVoltage'], message: `is ${lineVoltage}; it must be above 0 V` });
  if (!(voltageFactor > 0 && voltageFactor <= 1.2))
    problems.unshift({ path: ['voltageFactor'], message: `is ${voltageFactor}; it must be above 0 and at most 1.2` });
  if (problems.length > 0) throw invalidInput('the network', problems);
  return network;
}

/** Adds impedances. */
function total(parts: readonly Impedance[]): Impedance {
  return parts.reduce(
    (a, b) => ({ resistance: a.resistance + b.resistance, reactance: a.reactance + b.reactance }),
    none,
  );
}

/** Loop of one line conductor and a return: (2 Z_1 + Z_0)/3 where the zero sequence is known. */
function loopOf(element: RadialElement, back: 'neutral' | 'protective'): Impedance {
  const { line, zero } = element;
  if (zero)
    return {
      resistance: (2 * line.resistance + zero.resistance) / 3,
      reactance: (2 * line.reactance + zero.reactance) / 3,
    };
  return total([line, element[back] ?? none]);
}

const size = (z: Impedance) => Math.hypot(z.resistance, z.reactance);

function current(network: RadialNetwork, z: Impedance): number {
  const impedance = size(z);
  if (!(impedance > 0))
    throw new CalculationError('no-solution', 'the path of the fault has no impedance', {
      method: 'radial short circuit',
      values: { impedance },
    });
  return (network.voltageFactor * network.lineVoltage) / Math.sqrt(3) / impedance;
}

/**
 * Impedance of the path of a three-phase fault.
 * @param network the radial network up to the fault
 * @returns resistance and reactance, Ω
 * @throws CalculationError `invalid-input` with the path of each problem
 * @example
 * ```ts
 * import { threePhasePath } from 'ohmwright/physics';
 *
 * const network = {
 *   lineVoltage: 400,
 *   voltageFactor: 1.1,
 *   elements: [
 *     { name: 'supply', line: { resistance: 0.03, reactance: 0.04 } },
 *     {
 *       name: 'cable',
 *       line: { resistance: 0.06, reactance: 0 },
 *       neutral: { resistance: 0.06, reactance: 0 },
 *       protective: { resistance: 0.1, reactance: 0 },
 *     },
 *   ],
 * };
 * threePhasePath(network); // => { resistance: 0.09, reactance: 0.04 }
 * ```
 */
export const threePhasePath = (network: RadialNetwork): Impedance => total(refuse(network).elements.map((e) => e.line));
/**
 * Impedance of the path of a fault between line and neutral.
 * @param network the radial network up to the fault
 * @returns resistance and reactance, Ω
 * @throws CalculationError `invalid-input` with the path of each problem, a way back that is not stated among them
 * @example
 * ```ts
 * import { lineNeutralPath } from 'ohmwright/physics';
 *
 * const none = { resistance: 0, reactance: 0 };
 * const network = {
 *   lineVoltage: 400,
 *   voltageFactor: 1.1,
 *   elements: [
 *     { name: 'supply', line: { resistance: 0.03, reactance: 0.04 }, neutral: none, protective: none },
 *     {
 *       name: 'cable',
 *       line: { resistance: 0.06, reactance: 0 },
 *       neutral: { resistance: 0.06, reactance: 0 },
 *       protective: { resistance: 0.1, reactance: 0 },
 *     },
 *   ],
 * };
 * lineNeutralPath(network); // => { resistance: 0.15, reactance: 0.04 }
 * ```
 */
export const lineNeutralPath = (network: RadialNetwork): Impedance =>
  total(refuse(network, 'neutral').elements.map((e) => loopOf(e, 'neutral')));
/**
 * Impedance of the path of a fault between line and earth.
 * @param network the radial network up to the fault
 * @returns resistance and reactance, Ω
 * @throws CalculationError `invalid-input` with the path of each problem, a way back that is not stated among them
 * @example
 * ```ts
 * import { lineEarthPath } from 'ohmwright/physics';
 *
 * const none = { resistance: 0, reactance: 0 };
 * const network = {
 *   lineVoltage: 400,
 *   voltageFactor: 1.1,
 *   elements: [
 *     { name: 'supply', line: { resistance: 0.03, reactance: 0.04 }, neutral: none, protective: none },
 *     {
 *       name: 'cable',
 *       line: { resistance: 0.06, reactance: 0 },
 *       neutral: { resistance: 0.06, reactance: 0 },
 *       protective: { resistance: 0.1, reactance: 0 },
 *     },
 *   ],
 * };
 * lineEarthPath(network); // => { resistance: 0.19, reactance: 0.04 }
 * ```
 */
export const lineEarthPath = (network: RadialNetwork): Impedance =>
  total(refuse(network, 'protective').elements.map((e) => loopOf(e, 'protective')));

const method = 'impedances of grid, transformer and cables added as complex numbers; c U_n/√3 over their size';
const source = { document: iec60909, clause: 'radial networks', provenance: 'one-source' } as const;

/** Three-phase fault current of a radial network. IEC 60909-0, radial networks. */
export const threePhaseFault = /* @__PURE__ */ procedure({
  id: 'three-phase-fault',
  title: 'Three-phase fault current',
  output: 'faultCurrent',
  method,
  source,
  run: (network: RadialNetwork) => current(network, threePhasePath(network)),
});

/** Line-neutral fault current of a radial network. IEC 60909-0, radial networks. */
export const lineNeutralFault = /* @__PURE__ */ procedure({
  id: 'line-neutral-fault',
  title: 'Line-neutral fault current',
  output: 'faultCurrent',
  method,
  source,
  run: (network: RadialNetwork) => current(network, lineNeutralPath(network)),
});

/** Line-earth fault current of a radial network. IEC 60909-0, radial networks. */
export const lineEarthFault = /* @__PURE__ */ procedure({
  id: 'line-earth-fault',
  title: 'Line-earth fault current',
  output: 'faultCurrent',
  method,
  source,
  run: (network: RadialNetwork) => current(network, lineEarthPath(network)),
});

/** Line-to-line fault current of a radial network. IEC 60909-0, radial networks. */
export const lineLineFault = /* @__PURE__ */ procedure({
  id: 'line-line-fault',
  title: 'Line-to-line fault current',
  output: 'faultCurrent',
  method: '√3/2 of the three-phase fault current',
  source: {
    document: iec60909,
    clause: 'radial networks',
    provenance: 'one-source',
    note: 'stands in the documentation of the open network library pandapower, as c·U_n/(2·Z)',
  },
  run: (network: RadialNetwork) => (Math.sqrt(3) / 2) * current(network, threePhasePath(network)),
});

/**
 * An impedance from its size and the ratio of its parts.
 * @param impedance size, Ω, 0 and up
 * @param resistanceOverReactance R/X, 0 and up
 * @returns resistance and reactance, Ω
 * @throws CalculationError `invalid-input` for what is below 0 or not finite
 * @example
 * ```ts
 * import { splitImpedance } from 'ohmwright/physics';
 *
 * splitImpedance(5, 0.75); // => { resistance: 3, reactance: 4 }
 * ```
 */
export function splitImpedance(impedance: number, resistanceOverReactance: number): Impedance {
  const problems = Object.entries({ impedance, resistanceOverReactance }).flatMap(([name, value]) =>
    Number.isFinite(value) && value >= 0 ? [] : [{ path: [name], message: `is ${value}; it must be from 0` }],
  );
  if (problems.length > 0) throw invalidInput('the impedance', problems);
  const reactance = impedance / Math.hypot(1, resistanceOverReactance);
  return { resistance: resistanceOverReactance * reactance, reactance };
}

/**
 * An element with its resistances at another temperature, by the linear coefficient 0.004 per kelvin.
 * @param element impedances at 20 °C
 * @param temperature temperature of the conductors, °C, -60 to 1200
 * @returns the element at that temperature; reactances as they were
 * @throws CalculationError `invalid-input` for an element or a temperature that cannot be
 * @example
 * ```ts
 * import { lineNeutralFault, warmed } from 'ohmwright/physics';
 *
 * const source = { name: 'supply', line: { resistance: 0.2, reactance: 0.05 }, neutral: { resistance: 0, reactance: 0 } };
 * const cable = { name: 'cable', line: { resistance: 0.0616, reactance: 0 }, neutral: { resistance: 0.0616, reactance: 0 } };
 * const cold = { lineVoltage: 400, voltageFactor: 1.1, elements: [source, cable] };
 * const hot = { lineVoltage: 400, voltageFactor: 0.95, elements: [source, warmed(cable, 70)] };
 * lineNeutralFault(cold); // ≈ 776.8
 * lineNeutralFault(hot); // ≈ 624.3
 * ```
 */
export function warmed(element: RadialElement, temperature: number): RadialElement {
  const problems = elementProblems(element, []);
  // colder, the linear coefficient would leave no resistance at all
  if (problems.length === 0 && !(temperature >= -60 && temperature <= 1200))
    throw invalidInput('the temperature', [
      { path: ['temperature'], message: `is ${temperature} °C; it is from -60 to 1200 °C` },
    ]);
  if (problems.length > 0) throw invalidInput('the element', problems);
  const at = (z: Impedance): Impedance => ({ ...z, resistance: z.resistance * (1 + 0.004 * (temperature - 20)) });
  return {
    name: element.name,
    line: at(element.line),
    ...stated({
      zero: element.zero && at(element.zero),
      neutral: element.neutral && at(element.neutral),
      protective: element.protective && at(element.protective),
    }),
  };
}
