import { formula, moving } from '../core/index.js';
import { type OhmMillimetres, ohmMillimetres } from '../units/index.js';

const definition = { document: 'Definition', provenance: 'definition' } as const;

/**
 * Conductor resistivity from a number of ohm square millimetres per metre, as the trade writes it.
 * @param value number of ohm square millimetres per metre, any finite number
 * @returns the quantity, Ω·mm
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ohmSquareMillimetresPerMetre } from 'ohmwright/physics';
 *
 * ohmSquareMillimetresPerMetre(0.017241); // => 1.7241e-05
 * ```
 */
export const ohmSquareMillimetresPerMetre = (value: number): OhmMillimetres => ohmMillimetres(value / 1000);

/** Current that a power takes on one phase, I = P / (U_0 cos φ). Physics: definition of active power. */
export const currentFromPower = /* @__PURE__ */ formula({
  id: 'current-from-power',
  title: 'Current of a single-phase load from its power',
  inputs: ['activePower', 'nominalVoltage', 'powerFactor'],
  output: 'designCurrent',
  expression: 'activePower / (nominalVoltage * powerFactor)',
  direction: { activePower: 1, nominalVoltage: -1, powerFactor: -1 },
  compute: ({ activePower, nominalVoltage, powerFactor }) => activePower / (nominalVoltage * powerFactor),
  valid: { activePower: { least: 0 }, powerFactor: { above: 0 } },
  source: definition,
});

/** Current that a balanced three-phase power takes in each line, I = P / (√3 U cos φ). Physics: definition of active power. */
export const currentFromThreePhasePower = /* @__PURE__ */ formula({
  id: 'current-from-three-phase-power',
  title: 'Current of a balanced three-phase load from its power',
  inputs: ['activePower', 'lineVoltage', 'powerFactor'],
  direction: { activePower: 1, lineVoltage: -1, powerFactor: -1 },
  output: 'designCurrent',
  expression: 'activePower / (sqrt(3) * lineVoltage * powerFactor)',
  compute: ({ activePower, lineVoltage, powerFactor }) => activePower / (Math.sqrt(3) * lineVoltage * powerFactor),
  valid: { activePower: { least: 0 }, powerFactor: { above: 0 } },
  source: definition,
});

/**
 * Resistance of a conductor of a length at 20 °C, R = ρL/S. Physics: definition of resistivity. The trade writes ρ in
 * Ω·mm²/m: `ohmSquareMillimetresPerMetre` takes it so.
 */
export const resistanceOfConductor = /* @__PURE__ */ moving({
  id: 'resistance-of-conductor',
  title: 'Resistance of a conductor from resistivity, length and area',
  moves: { conductorResistivity: 1, length: 1, conductorArea: -1 },
  output: 'resistance',
  expression: 'conductorResistivity * length / conductorArea',
  compute: ({ conductorResistivity, length, conductorArea }) => (1000 * conductorResistivity * length) / conductorArea,
  source: definition,
});

/**
 * Three-phase fault current at the terminals of a transformer from its plate, I_k = S / (√3 U u_k), with no impedance
 * before it. Physics: definition of the impedance voltage.
 */
export const transformerFaultCurrent = /* @__PURE__ */ moving({
  id: 'transformer-fault-current',
  title: 'Fault current at the terminals of a transformer, from its plate',
  moves: { transformerRating: 1, transformerVoltage: -1, transformerImpedanceVoltage: -1 },
  output: 'faultCurrent',
  expression: 'transformerRating / (sqrt(3) * transformerVoltage * transformerImpedanceVoltage)',
  compute: ({ transformerRating, transformerVoltage, transformerImpedanceVoltage }) =>
    transformerRating / (Math.sqrt(3) * transformerVoltage * transformerImpedanceVoltage),
  source: definition,
});
