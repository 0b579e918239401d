import { formula, type Known, type Sheet } from '../../core/index.js';
import type { Cable, Stretch } from '../../installation/index.js';
import { ohmMillimetres, ohmsPerMetre, ratio, type VoltsPerAmpereMetre } from '../../units/index.js';
import { coreReactance } from '../iec-family/loop-impedance.js';
import { dropRateAtWorstAngle } from '../iec-family/voltage-drop.js';

/** Resistive part of the drop per ampere and metre from resistivity and area. IEC 60364-5-52 Annex G. */
export const dropRateOfResistivity = /* @__PURE__ */ formula({
  id: 'drop-rate-of-resistivity',
  title: 'Resistive part of the drop per ampere and metre',
  inputs: ['wayFactor', 'serviceResistivity', 'conductorArea'],
  output: 'dropRate',
  expression: 'wayFactor * serviceResistivity / conductorArea',
  compute: (v) => (1000 * v.wayFactor * v.serviceResistivity) / v.conductorArea,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex G', provenance: 'memory' },
});

/** Reactive part of the drop per ampere and metre. IEC 60364-5-52 Annex G. */
export const dropRateOfReactance = /* @__PURE__ */ formula({
  id: 'drop-rate-of-reactance',
  title: 'Reactive part of the drop per ampere and metre',
  inputs: ['wayFactor', 'reactancePerMetre'],
  output: 'dropRate',
  expression: 'wayFactor * reactancePerMetre',
  compute: ({ wayFactor, reactancePerMetre }) => wayFactor * reactancePerMetre,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex G', provenance: 'memory' },
});

/** Resistivities in normal service, 1.25 times those at 20 °C, Ω·mm²/m; a thousandth of it in Ω·mm. */
const inService = { copper: 0.0225, aluminium: 0.036 } as const;

/**
 * The drop per ampere and metre by Annex G: conductors at the resistivity of normal service, 0.08 mΩ/m, whatever the
 * insulation and the way of laying; three-phase between lines, single-phase go and return.
 */
export function annexGDropRate(
  sheet: Sheet,
  cable: Cable,
  _stretch: Stretch | undefined,
  system: 'single-phase' | 'three-phase',
  component: 'r' | 'x' | 'z',
): Known<VoltsPerAmpereMetre> {
  const way = (at: Sheet) =>
    system === 'three-phase'
      ? at.given('wayFactor', ratio(Math.sqrt(3)), 'balanced, between lines')
      : at.given('wayFactor', ratio(2), 'go and return');
  const resistive = (at: Sheet) =>
    at.step(dropRateOfResistivity, {
      wayFactor: way(at),
      serviceResistivity: at.given(
        'serviceResistivity',
        ohmMillimetres(inService[cable.material] / 1000),
        'IEC 60364-5-52:2009 Annex G: 1.25 times the resistivity at 20 °C, from memory',
      ),
      conductorArea: at.given('conductorArea', cable.area),
    });
  const reactive = (at: Sheet) =>
    at.step(dropRateOfReactance, {
      wayFactor: way(at),
      reactancePerMetre: at.given('reactancePerMetre', ohmsPerMetre(0.08e-3), coreReactance),
    });
  if (component === 'r') return resistive(sheet);
  if (component === 'x') return reactive(sheet);
  const r = sheet.part('Resistive part');
  resistive(r);
  const x = sheet.part('Reactive part');
  reactive(x);
  return sheet.step(dropRateAtWorstAngle, {
    resistiveRate: sheet.gather('sum', 'dropRate', 'resistiveRate', [r]),
    reactiveRate: sheet.gather('sum', 'dropRate', 'reactiveRate', [x]),
    temperatureCorrection: sheet.given('temperatureCorrection', ratio(1), 'resistivity of normal service'),
  });
}
