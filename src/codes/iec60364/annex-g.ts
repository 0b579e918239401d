import { moving, multiplied } from '../../core/index.js';

/** Resistive part of the drop per ampere and metre from resistivity and area. IEC 60364-5-52 Annex G. */
export const dropRateOfResistivity = /* @__PURE__ */ moving({
  id: 'drop-rate-of-resistivity',
  title: 'Resistive part of the drop per ampere and metre',
  moves: { wayFactor: 1, serviceResistivity: 1, conductorArea: -1 },
  output: 'dropRate',
  expression: 'wayFactor * serviceResistivity / conductorArea',
  compute: (v) => (1000 * v.wayFactor * v.serviceResistivity) / v.conductorArea,
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex G', provenance: 'two-sources' },
});

/** Reactive part of the drop per ampere and metre. IEC 60364-5-52 Annex G. */
export const dropRateOfReactance = /* @__PURE__ */ multiplied({
  id: 'drop-rate-of-reactance',
  title: 'Reactive part of the drop per ampere and metre',
  times: ['wayFactor', 'reactancePerMetre'],
  output: 'dropRate',
  source: { document: 'IEC 60364-5-52', edition: '2009', clause: 'Annex G', provenance: 'two-sources' },
});
