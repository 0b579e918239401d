import type { Formula, Relation } from '../../src/core/index.js';
import { termOf } from '../../src/index.js';

/** An ordinary value of a unit, invented. */
const ofUnit: Readonly<Record<string, number>> = {
  A: 32,
  V: 230,
  Ω: 0.25,
  'Ω/m': 0.003,
  'V/(A·m)': 0.0073,
  m: 20,
  mm: 20,
  'mm²': 6,
  'm²': 0.5,
  W: 7400,
  VA: 7400,
  var: 1000,
  Wh: 30_000,
  '°C': 20,
  K: 40,
  s: 1,
  'A²s': 30_000,
  'K·m/W': 2.5,
  'W/m': 20,
  Ω·m: 100,
  '1': 0.8,
  '°': 20,
  Hz: 50,
  'A·√s/mm²': 115,
  '1/K': 0.00393,
  'm²/s': 5e-7,
};

/** An ordinary value of a role, invented, where that of its unit is none. */
const ofRole: Readonly<Record<string, number>> = {
  arithmeticSumCurrent: 96,
  armourResistance: 0.08,
  burialDepth: 0.6,
  conductorTemperature: 70,
  connectedCurrent: 100,
  controlLimit: 80,
  controllerPeriod: 2,
  cableCurrent: 20,
  deviceMultiple: 3,
  earthElectrode: 21,
  electrodeDiameter: 0.016,
  electrodeLength: 2.4,
  electrodeResistance: 12,
  existingDemand: 40,
  faultCurrent: 1500,
  firstElectrodeResistance: 24,
  gridFaultCurrent: 15_000,
  gridVoltage: 11_000,
  groupedCircuits: 4,
  inverseConstant: 0.14,
  inverseExponent: 0.02,
  inverseOffset: 0,
  lawCoefficient: 15,
  lawDeduction: 0,
  lawDeductionExponent: 0,
  lawExponent: 0.625,
  maximumVoltageFactor: 1.1,
  measuredImpedance: 0.6,
  meterPeriod: 1,
  mutualResistance: 3,
  operatingTemperature: 70,
  operatingTime: 20,
  otherLineCurrents: 40,
  parallelConductors: 2,
  pathShare: 0.6,
  peakFactor: 1.2,
  pointVoltage: 225,
  pointsSharing: 4,
  preloadMultiple: 0.5,
  reactance: 0.02,
  reactiveRate: 0.0003,
  resistance: 0.04,
  ringProtectiveResistance: 0.42,
  rodCount: 3,
  rodFactor: 1.66,
  rodSpacing: 3,
  secondElectrodeResistance: 30,
  sharedCapacity: 100,
  singleRodResistance: 45,
  sourceElectrodeResistance: 5,
  spacingRatio: 0.12,
  stripWidth: 0.025,
  sourceFactor: 1,
  thresholdMultiple: 1.13,
  thermalTimeConstant: 100,
  touchVoltage: 40,
  transformerLoss: 4600,
  transformerRating: 500_000,
  transformerReactanceRatio: 0.045,
  transformerVoltage: 400,
  vectorSumCurrent: 20,
  vehicleReaction: 5,
  voltageDrop: 5,
  voltageFactor: 1.1,
  windowUpper: 253,
  worstOtherLoad: 40,
};

/** Where an ordinary value has no result in one formula. */
const ofFormula: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'open-pen-touch-voltage-held-power': { electrodeResistance: 1 },
};

/**
 * Inputs of a formula that neither a published case nor a plan of an invented survey calls.
 * @param f the formula or relation
 */
export function statedInputs(f: Formula | Relation): Readonly<Record<string, number>> {
  const value = (name: string): number => {
    const term = termOf(name);
    return ofFormula[f.id]?.[name] ?? ofRole[name] ?? ofUnit[term?.unit ?? '1'] ?? 1;
  };
  return Object.fromEntries(f.inputs.map((name) => [name, value(name)]));
}
