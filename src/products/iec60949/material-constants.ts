import { type Name, type PrintedTable, table } from '../../core/index.js';

/** A constant of the metals of conductors. */
const ofMetals = <O extends Name>(own: Pick<PrintedTable<readonly [], O>, 'id' | 'title' | 'rows' | 'cell' | 'unit'>) =>
  table({
    ...own,
    axes: [
      { name: 'property', labels: ['value'] },
      { name: 'metal', labels: ['copper', 'aluminium', 'lead', 'steel'] },
    ],
    source: {
      document: 'IEC 60364-5-54',
      clause: 'Annex A, Table A.54.1',
      provenance: 'memory',
      note: 'copper seen in one text',
    },
    provenanceOf: { copper: 'one-source' },
  });

/** Reciprocal of the temperature coefficient at 0 °C. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const reciprocalCoefficients = /* @__PURE__ */ ofMetals({
  id: 'iec60949/reciprocal-coefficient',
  title: 'Reciprocal of the temperature coefficient at 0 °C',
  rows: [
    ['copper', 234.5],
    ['aluminium', 228],
    ['lead', 230],
    ['steel', 202],
  ],
  cell: 'reciprocalCoefficient',
  unit: 'K',
});

/** Volumetric heat capacity of conductors. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const heatCapacities = /* @__PURE__ */ ofMetals({
  id: 'iec60949/heat-capacity',
  title: 'Volumetric heat capacity of conductors',
  rows: [
    ['copper', 0.00345],
    ['aluminium', 0.0025],
    ['lead', 0.00145],
    ['steel', 0.0038],
  ],
  cell: 'conductorHeatCapacity',
  unit: 'J/(K·mm³)',
});

/** Resistivity of conductors at 20 °C. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const conductorResistivities = /* @__PURE__ */ ofMetals({
  id: 'iec60949/resistivity',
  title: 'Resistivity of conductors at 20 °C',
  rows: [
    ['copper', 1.7241e-5],
    ['aluminium', 2.8264e-5],
    ['lead', 0.000214],
    ['steel', 0.000138],
  ],
  cell: 'conductorResistivity',
  unit: 'Ω·mm',
});

/** Material constant K of the adiabatic equation as printed. IEC 60949; IEC 60364-5-54 Table A.54.1. */
export const materialFactors = /* @__PURE__ */ ofMetals({
  id: 'iec60949/material-factor',
  title: 'Material constant K of the adiabatic equation as printed',
  rows: [
    ['copper', 226],
    ['aluminium', 148],
    ['lead', 41],
    ['steel', 78],
  ],
  cell: 'materialFactor',
  unit: 'A·√s/mm²',
});
