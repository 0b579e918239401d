import { type Name, termOf } from '../core/index.js';
import { counts, labels, overcurrentTypes } from '../installation/index.js';

/** Values that are tried of a quantity: what surveys find, from small to large, in canonical units. */
const tried: Readonly<Record<string, readonly number[]>> = {
  externalImpedance: [0.1, 0.35, 0.8, 2],
  prospectiveCurrent: [300, 1500, 6000, 16_000],
  deviceRating: [60, 80, 100, 125],
  breakingCapacity: [3000, 6000, 10_000, 16_000],
  tailsArea: [16, 25],
  earthingConductorArea: [6, 10, 16],
  supplyNeutralArea: [25, 35, 70],
  bondingArea: [6, 10],
  length: [2, 15, 40],
  insulatedLength: [0, 0.2, 1],
  ambientTemperature: [20, 30, 40],
  soilResistivity: [1, 2.5, 3],
  depth: [0.02, 0.1, 0.6],
  terminalTemperature: [60, 70, 90],
  thirdHarmonic: [0, 0.1, 0.3],
  residualOperatingCurrent: [0.03, 0.1, 0.3],
  electrodeResistance: [20, 100, 300],
  chargeCurrent: [0.001, 0.0035, 0.01],
  disconnectionTime: [0, 0.04, 0.3],
  demand: [20, 50, 90],
  controlLimit: [40, 60, 80],
};
const triedCounts: Readonly<Record<string, readonly number[]>> = {
  coresLoaded: [2, 3, 4],
  circuits: [1, 2, 4],
  pieces: [0, 1, 2],
  groupingFactor: [0.8, 1],
};

/** Values that may be answered of a fact. */
export function valuesOf(what: string): readonly unknown[] {
  if (what === 'yes') return [true, false];
  if (what === 'overcurrentKind')
    return Object.entries(overcurrentTypes).map(([standard, [type]]) => (type ? { standard, type } : { standard }));
  if (what in labels) return labels[what as keyof typeof labels];
  if (what in counts) return triedCounts[what] ?? [];
  return termOf(what as Name) ? (tried[what] ?? []) : [];
}
