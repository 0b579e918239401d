import { table } from '../../core/index.js';

/** Reciprocal of the temperature coefficient at 0 °C. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const reciprocalCoefficients = /* @__PURE__ */ table({
  id: 'iec60949/reciprocal-coefficient',
  title: 'Reciprocal of the temperature coefficient at 0 °C',
  axes: [
    { name: 'property', labels: ['value'] },
    { name: 'metal', labels: ['copper', 'aluminium', 'lead', 'steel'] },
  ],
  rows: [
    ['copper', 234.5],
    ['aluminium', 228],
    ['lead', 230],
    ['steel', 202],
  ],
  cell: 'reciprocalCoefficient',
  unit: 'K',
  source: {
    document: 'IEC 60364-5-54',
    clause: 'Annex A, Table A.54.1',
    provenance: 'memory',
    note: 'copper seen in one text',
  },
  provenanceOf: { copper: 'one-source' },
});

/** Volumetric heat capacity of conductors. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const heatCapacities = /* @__PURE__ */ table({
  id: 'iec60949/heat-capacity',
  title: 'Volumetric heat capacity of conductors',
  axes: [
    { name: 'property', labels: ['value'] },
    { name: 'metal', labels: ['copper', 'aluminium', 'lead', 'steel'] },
  ],
  rows: [
    ['copper', 0.00345],
    ['aluminium', 0.0025],
    ['lead', 0.00145],
    ['steel', 0.0038],
  ],
  cell: 'conductorHeatCapacity',
  unit: 'J/(K·mm³)',
  source: {
    document: 'IEC 60364-5-54',
    clause: 'Annex A, Table A.54.1',
    provenance: 'memory',
    note: 'copper seen in one text',
  },
  provenanceOf: { copper: 'one-source' },
});

/** Resistivity of conductors at 20 °C. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const conductorResistivities = /* @__PURE__ */ table({
  id: 'iec60949/resistivity',
  title: 'Resistivity of conductors at 20 °C',
  axes: [
    { name: 'property', labels: ['value'] },
    { name: 'metal', labels: ['copper', 'aluminium', 'lead', 'steel'] },
  ],
  rows: [
    ['copper', 1.7241e-5],
    ['aluminium', 2.8264e-5],
    ['lead', 0.000214],
    ['steel', 0.000138],
  ],
  cell: 'conductorResistivity',
  unit: 'Ω·mm',
  source: {
    document: 'IEC 60364-5-54',
    clause: 'Annex A, Table A.54.1',
    provenance: 'memory',
    note: 'copper seen in one text',
  },
  provenanceOf: { copper: 'one-source' },
});

/** Material constant K of the adiabatic equation as printed. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const materialFactors = /* @__PURE__ */ table({
  id: 'iec60949/material-factor',
  title: 'Material constant K of the adiabatic equation as printed',
  axes: [
    { name: 'property', labels: ['value'] },
    { name: 'metal', labels: ['copper', 'aluminium', 'lead', 'steel'] },
  ],
  rows: [
    ['copper', 226],
    ['aluminium', 148],
    ['lead', 41],
    ['steel', 78],
  ],
  cell: 'materialFactor',
  unit: 'A·√s/mm²',
  source: {
    document: 'IEC 60364-5-54',
    clause: 'Annex A, Table A.54.1',
    provenance: 'memory',
    note: 'copper seen in one text',
  },
  provenanceOf: { copper: 'one-source' },
});
