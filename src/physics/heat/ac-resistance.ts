import { formula } from '../../core/index.js';

/** Argument of skin and proximity effect of a solid or stranded round conductor. IEC 60287-1-1. */
export const skinArgument = /* @__PURE__ */ formula({
  id: 'skin-argument',
  title: 'Argument of skin and proximity effect',
  inputs: ['frequency', 'resistancePerMetre'],
  output: 'skinArgument',
  expression: 'sqrt(8e-7 * 3.141592653589793 * (frequency / hertz) / (resistancePerMetre / perMetre))',
  constants: { hertz: [1, 'Hz'], perMetre: [1, 'Ω/m'] },
  compute: ({ frequency, resistancePerMetre }) => Math.sqrt((8e-7 * Math.PI * frequency) / resistancePerMetre),
  valid: { resistancePerMetre: { above: 0 } },
  source: {
    document: 'IEC 60287-1-1',
    clause: 'skin effect',
    provenance: 'one-source',
    note: 'k_s = k_p = 1: solid, stranded or compacted wires, round or sector-shaped; stands in an open library of IEC 60287 that cites its clauses',
  },
});

/** Share that skin effect adds to the resistance. IEC 60287-1-1. */
export const skinFactor = /* @__PURE__ */ formula({
  id: 'skin-factor',
  title: 'Share that skin effect adds to the resistance',
  inputs: ['skinArgument'],
  output: 'skinFactor',
  expression:
    'skinArgument <= 2.8 ? skinArgument^4 / (192 + 0.8 * skinArgument^4) : skinArgument <= 3.8 ? -0.136 - 0.0177 * skinArgument + 0.0563 * skinArgument^2 : 0.354 * skinArgument - 0.733',
  compute: ({ skinArgument: x }) =>
    x <= 2.8 ? x ** 4 / (192 + 0.8 * x ** 4) : x <= 3.8 ? -0.136 - 0.0177 * x + 0.0563 * x ** 2 : 0.354 * x - 0.733,
  source: {
    document: 'IEC 60287-1-1',
    clause: 'skin effect',
    provenance: 'memory',
    note: 'only the form up to 2.8 was seen in another text',
  },
});

/** Share that proximity effect adds in two conductors; the shape leaves two thirds in sectors. IEC 60287-1-1. */
export const proximityOfTwo = /* @__PURE__ */ formula({
  id: 'proximity-factor-two',
  title: 'Share that proximity effect adds, two conductors',
  inputs: ['skinArgument', 'conductorDiameter', 'conductorSpacing', 'shapeShare'],
  output: 'proximityFactor',
  expression:
    'shapeShare * 2.9 * skinArgument^4 / (192 + 0.8 * skinArgument^4) * (conductorDiameter / conductorSpacing)^2',
  compute: ({ skinArgument: x, conductorDiameter, conductorSpacing, shapeShare }) =>
    ((shapeShare * 2.9 * x ** 4) / (192 + 0.8 * x ** 4)) * (conductorDiameter / conductorSpacing) ** 2,
  valid: { skinArgument: { least: 0, most: 2.8 } },
  source: { document: 'IEC 60287-1-1', clause: 'proximity effect', provenance: 'memory' },
});

/** Share that proximity effect adds in three conductors; the shape leaves two thirds in sectors. IEC 60287-1-1. */
export const proximityOfThree = /* @__PURE__ */ formula({
  id: 'proximity-factor-three',
  title: 'Share that proximity effect adds, three conductors',
  inputs: ['skinArgument', 'conductorDiameter', 'conductorSpacing', 'shapeShare'],
  output: 'proximityFactor',
  expression:
    'shapeShare * skinArgument^4 / (192 + 0.8 * skinArgument^4) * (conductorDiameter / conductorSpacing)^2 * (0.312 * (conductorDiameter / conductorSpacing)^2 + 1.18 / (skinArgument^4 / (192 + 0.8 * skinArgument^4) + 0.27))',
  compute: ({ skinArgument: x, conductorDiameter, conductorSpacing, shapeShare }) => {
    const q = x ** 4 / (192 + 0.8 * x ** 4);
    const r = (conductorDiameter / conductorSpacing) ** 2;
    return shapeShare * q * r * (0.312 * r + 1.18 / (q + 0.27));
  },
  valid: { skinArgument: { least: 0, most: 2.8 } },
  source: {
    document: 'IEC 60287-1-1',
    clause: 'proximity effect',
    provenance: 'one-source',
    note: 'stands in an open library of IEC 60287 that cites its clauses, two thirds for sectors as well',
  },
});

/** Resistance to alternating current. IEC 60287-1-1. */
export const acResistance = /* @__PURE__ */ formula({
  id: 'ac-resistance',
  title: 'Resistance to alternating current',
  inputs: ['resistancePerMetre', 'skinFactor', 'proximityFactor'],
  output: 'acResistancePerMetre',
  expression: 'resistancePerMetre * (1 + skinFactor + proximityFactor)',
  compute: ({ resistancePerMetre, skinFactor, proximityFactor }) =>
    resistancePerMetre * (1 + skinFactor + proximityFactor),
  source: {
    document: 'IEC 60287-1-1',
    clause: 'alternating-current resistance',
    provenance: 'one-source',
    note: 'stands in an open library of IEC 60287 that cites its clauses',
  },
});
