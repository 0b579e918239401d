import { between, type Fact } from '../../core/index.js';
import type { OhmMetres, Ohms } from '../../units/index.js';
import { soilResistivities } from './soil-resistivity.js';

/** A kind of soil that the table of typical resistivities lists. */
export type Soil = (typeof soilResistivities.axes)[1]['labels'][number];

/**
 * Resistance to earth of an electrode in soil of a named kind: a range, because the bands of soil are wide. The electrode
 * is measured after installing. BS 7430; IEEE 142, typical resistivities.
 * @param soil kind of soil, as the table of typical resistivities lists it
 * @param resistanceAt resistance in Ω of the electrode at a resistivity in Ω·m; grows with it
 * @returns the resistance between both ends of the band, Ω
 * @throws CalculationError `no-cell` for a soil that is not listed
 * @example
 * ```ts
 * import { metres } from 'ohmwright';
 * import { rodResistance } from 'ohmwright/physics';
 * import { electrodeInSoil } from 'ohmwright/guidance';
 *
 * const rod = { electrodeLength: metres(1.2), electrodeDiameter: metres(0.0142) };
 * const found = electrodeInSoil('clay', (earthResistivity) => rodResistance({ ...rod, earthResistivity }));
 * found.least; // ≈ 1.46
 * found.most; // ≈ 73.2
 * ```
 */
export function electrodeInSoil(
  soil: Soil,
  resistanceAt: (earthResistivity: OhmMetres) => Ohms,
): Extract<Fact<Ohms>, { state: 'between' }> {
  const at = (end: 'least' | 'most') => resistanceAt(soilResistivities.get({ end, soil }));
  return between(at('least'), at('most'), `typical band of ${soil}; to be measured after installing`);
}
