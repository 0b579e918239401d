import { formula, multiplied } from '../core/index.js';

/**
 * Reading between line and neutral at any point of a ring whose ends are cross-connected. Guidance Note 3, ring final
 * circuits.
 */
export const ringLineNeutral = /* @__PURE__ */ formula({
  id: 'ring-line-neutral',
  title: 'Reading on a ring, line and neutral cross-connected',
  inputs: ['ringLineResistance', 'ringNeutralResistance'],
  output: 'crossConnectedResistance',
  expression: '(ringLineResistance + ringNeutralResistance) / 4',
  compute: ({ ringLineResistance, ringNeutralResistance }) => (ringLineResistance + ringNeutralResistance) / 4,
  source: { document: 'Guidance Note 3', clause: 'ring final circuits', provenance: 'two-sources' },
});

/**
 * Largest reading between line and protective conductor of a cross-connected ring: its R_1+R_2. Guidance Note 3, ring
 * final circuits.
 */
export const ringLineProtective = /* @__PURE__ */ formula({
  id: 'ring-line-protective',
  title: 'Largest reading on a ring, line and protective conductor cross-connected',
  inputs: ['ringLineResistance', 'ringProtectiveResistance'],
  output: 'crossConnectedResistance',
  expression: '(ringLineResistance + ringProtectiveResistance) / 4',
  compute: ({ ringLineResistance, ringProtectiveResistance }) => (ringLineResistance + ringProtectiveResistance) / 4,
  source: { document: 'Guidance Note 3', clause: 'ring final circuits', provenance: 'two-sources' },
});

/**
 * End-to-end resistance of the protective conductor of a ring from that of the line, by nominal areas. Guidance Note
 * 3, ring final circuits.
 */
export const ringProtectiveByArea = /* @__PURE__ */ multiplied({
  id: 'ring-protective-by-area',
  title: 'End-to-end resistance of the protective conductor by nominal areas',
  times: ['ringLineResistance', 'conductorArea'],
  over: ['protectiveArea'],
  output: 'ringProtectiveResistance',
  source: {
    document: 'Guidance Note 3',
    clause: 'ring final circuits',
    provenance: 'two-sources',
    note: 'nominal areas: 1.67 for 2.5 and 1.5 mm², where the resistances of IEC 60228 give 1.633',
  },
});
