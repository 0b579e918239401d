import { table } from '../../core/index.js';
import { refuseNumbers } from '../../core/refuse-numbers.js';
import { type Amperes, type Ohms, ohms } from '../../units/index.js';

/** Current of a charging cable by its coding resistor. IEC 61851-1 Table B.2. */
export const cableCoding = /* @__PURE__ */ table({
  id: 'iec62196/cable-coding',
  title: 'Current of a charging cable by the resistor between proximity contact and protective conductor',
  axes: [
    { name: 'connection', labels: ['single-phase', 'three-phase'] },
    { name: 'codingResistance', unit: 'Ω', between: 'exact' },
  ],
  rows: `
    connection single-phase three-phase
    1500                 13          13
    680                  20          20
    220                  32          32
    100                  70          63`,
  cell: 'cableCurrent',
  unit: 'A',
  source: {
    document: 'IEC 61851-1',
    edition: '2017',
    clause: 'Annex B, Table B.2',
    provenance: 'two-sources',
    note: 'nominal resistances and 13, 20, 32, 63 A; 70 A single-phase from one text',
  },
  provenanceOf: { 'single-phase': 'one-source' },
});

/** What a point reads in a coding resistor. */
export type CableReading =
  | { readonly kind: 'cable'; readonly current: Amperes }
  | { readonly kind: 'no-cable' }
  | { readonly kind: 'error' }
  | { readonly kind: 'not-determined' };

/** Ranges in which a resistance counts as a nominal one, Ω. IEC 61851-1:2017 Table B.2, one text. */
const BANDS: readonly (readonly [least: number, most: number, nominal: number])[] = [
  [1100, 2460, 1500],
  [400, 936, 680],
  [164, 308, 220],
  [80, 140, 100],
];

/**
 * What a point reads in the coding resistor of a cable, by the ranges of IEC 61851-1:2017 Table B.2. Between the ranges
 * the document says nothing, and nothing is assumed: such a cable is `not-determined` and must not be charged through.
 * @param measured resistance, Ω, 0 and up
 * @param connection single-phase or three-phase
 * @returns the current of the cable, A, or that there is none, an error, or no telling
 * @throws CalculationError `invalid-input` where a reading is no number
 * @example
 * ```ts
 * import { ohms } from 'ohmwright';
 * import { readCable } from 'ohmwright/charging';
 *
 * readCable(ohms(230), 'single-phase'); // => { kind: 'cable', current: 32 }
 * readCable(ohms(350), 'single-phase'); // => { kind: 'not-determined' }
 * ```
 */
export function readCable(measured: Ohms, connection: 'single-phase' | 'three-phase'): CableReading {
  refuseNumbers('the resistance of a proximity contact', { measured });
  if (measured < 60) return { kind: 'error' };
  if (measured > 4500) return { kind: 'no-cable' };
  const band = BANDS.find(([least, most]) => measured >= least && measured <= most);
  if (!band) return { kind: 'not-determined' };
  return { kind: 'cable', current: cableCoding.get({ connection, codingResistance: ohms(band[2]) }) };
}
