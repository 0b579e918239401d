import { formula, multiplied } from '../../core/index.js';

/** Distance between the axes of touching cores. Geometry. */
export const coreSpacing = /* @__PURE__ */ formula({
  id: 'core-spacing',
  title: 'Distance between the axes of touching cores',
  inputs: ['conductorDiameter', 'insulationThickness'],
  output: 'conductorSpacing',
  expression: 'conductorDiameter + 2 * insulationThickness',
  compute: ({ conductorDiameter, insulationThickness }) => conductorDiameter + 2 * insulationThickness,
  source: { document: 'Geometry', provenance: 'definition' },
});

/** Thickness of the insulation over the diameter of the conductor. Geometry. */
export const insulationRatioOf = /* @__PURE__ */ multiplied({
  id: 'insulation-ratio',
  title: 'Thickness of the insulation over the diameter of the conductor',
  times: ['insulationThickness'],
  over: ['conductorDiameter'],
  output: 'insulationRatio',
  source: { document: 'Geometry', provenance: 'definition' },
});

/** Radius of the circle around the conductors of laid-up cores. Geometry. */
export const sectorRadiusOf = /* @__PURE__ */ formula({
  id: 'sector-radius',
  title: 'Radius of the circle around the conductors',
  inputs: ['laidUpDiameter', 'insulationThickness'],
  output: 'sectorRadius',
  expression: 'laidUpDiameter / 2 - insulationThickness',
  compute: ({ laidUpDiameter, insulationThickness }) => laidUpDiameter / 2 - insulationThickness,
  source: { document: 'Geometry', provenance: 'definition' },
});

/** Distance of the axis of a round conductor from that of the cable. Geometry. */
export const coreAxisRadiusOf = /* @__PURE__ */ formula({
  id: 'core-axis-radius',
  title: 'Distance of the axis of a conductor from that of the cable',
  inputs: ['laidUpDiameter', 'conductorSpacing'],
  output: 'coreAxisRadius',
  expression: '(laidUpDiameter - conductorSpacing) / 2',
  compute: ({ laidUpDiameter, conductorSpacing }) => (laidUpDiameter - conductorSpacing) / 2,
  source: { document: 'Geometry', provenance: 'definition' },
});

/** Mean diameter of one layer of armour wires. Geometry. */
export const armourMeanDiameterOf = /* @__PURE__ */ formula({
  id: 'armour-mean-diameter',
  title: 'Mean diameter of the armour',
  inputs: ['laidUpDiameter', 'beddingThickness', 'armourWireDiameter'],
  output: 'armourMeanDiameter',
  expression: 'laidUpDiameter + 2 * beddingThickness + armourWireDiameter',
  compute: ({ laidUpDiameter, beddingThickness, armourWireDiameter }) =>
    laidUpDiameter + 2 * beddingThickness + armourWireDiameter,
  source: { document: 'Geometry', provenance: 'definition' },
});

/** Diameter over two to five round cores that touch each other around the axis. Geometry. */
export const laidUpDiameterOfRound = /* @__PURE__ */ formula({
  id: 'laid-up-diameter-round',
  title: 'Diameter over laid-up round cores',
  inputs: ['coreCount', 'conductorSpacing'],
  output: 'laidUpDiameter',
  expression: 'conductorSpacing * (1 + 1 / sin(3.141592653589793 / coreCount))',
  compute: ({ coreCount, conductorSpacing }) => conductorSpacing * (1 + 1 / Math.sin(Math.PI / coreCount)),
  valid: { coreCount: { least: 2, most: 5 } },
  source: { document: 'Geometry', provenance: 'definition' },
});

/**
 * Diameter over laid-up sector-shaped cores: the circle that holds the areas of the conductors, each inside straight
 * walls of insulation. Geometry.
 */
export const laidUpDiameterOfSectors = /* @__PURE__ */ formula({
  id: 'laid-up-diameter-sectors',
  title: 'Diameter over laid-up sector-shaped cores',
  inputs: ['coreCount', 'conductorDiameter', 'insulationThickness'],
  output: 'laidUpDiameter',
  expression:
    '2 * insulationThickness + 2 * (coreCount * insulationThickness / 3.141592653589793 + sqrt((coreCount * insulationThickness / 3.141592653589793)^2 + coreCount * conductorDiameter^2 / 4))',
  compute: ({ coreCount: n, conductorDiameter, insulationThickness: t }) => {
    const walls = (n * t) / Math.PI;
    return 2 * t + 2 * (walls + Math.sqrt(walls ** 2 + (n * conductorDiameter ** 2) / 4));
  },
  valid: { coreCount: { least: 2, most: 4 } },
  source: {
    document: 'Geometry',
    provenance: 'derived',
    note: 'corners of the sectors and the crossing of the walls are left out',
  },
});
