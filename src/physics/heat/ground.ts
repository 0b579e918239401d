import { added, formula } from '../../core/index.js';

/** Thermal resistance of the soil around one buried cable or duct. IEC 60287-2-1. */
export const buriedResistance = /* @__PURE__ */ formula({
  id: 'buried-thermal-resistance',
  title: 'Thermal resistance of the soil around one buried cable',
  inputs: ['soilResistivity', 'burialDepth', 'cableDiameter'],
  output: 'soilThermalResistance',
  expression:
    'soilResistivity / (2 * 3.141592653589793) * log(2 * burialDepth / cableDiameter + sqrt((2 * burialDepth / cableDiameter)^2 - 1))',
  compute: ({ soilResistivity, burialDepth, cableDiameter }) => {
    const u = (2000 * burialDepth) / cableDiameter;
    return (soilResistivity / (2 * Math.PI)) * Math.log(u + Math.sqrt(u * u - 1));
  },
  valid: { burialDepth: { least: 0.2, most: 20 }, cableDiameter: { above: 0, most: 300 } },
  source: {
    document: 'IEC 60287-2-1',
    clause: 'single cable, laid direct',
    provenance: 'one-source',
    note: 'depth to the axis; soil that does not dry out; stands in an open library of IEC 60287 that cites its clauses',
  },
});

/**
 * What a neighbour of equal losses adds to the thermal resistance of a buried cable, by its image above the ground.
 * IEC 60287-2-1.
 */
export const neighbourResistance = /* @__PURE__ */ formula({
  id: 'neighbour-thermal-resistance',
  title: 'What a buried neighbour of equal losses adds',
  inputs: ['soilResistivity', 'burialDepth', 'neighbourOffset', 'neighbourDepth'],
  output: 'neighbourThermalResistance',
  expression:
    'soilResistivity / (4 * 3.141592653589793) * log((neighbourOffset^2 + (burialDepth + neighbourDepth)^2) / (neighbourOffset^2 + (burialDepth - neighbourDepth)^2))',
  compute: ({ soilResistivity, burialDepth, neighbourOffset: a, neighbourDepth }) =>
    (soilResistivity / (4 * Math.PI)) *
    Math.log((a ** 2 + (burialDepth + neighbourDepth) ** 2) / (a ** 2 + (burialDepth - neighbourDepth) ** 2)),
  valid: {
    burialDepth: { least: 0.2, most: 20 },
    neighbourDepth: { least: 0.2, most: 20 },
    neighbourOffset: { least: -100, most: 100 },
  },
  source: {
    document: 'IEC 60287-2-1',
    clause: 'groups of buried cables, equally loaded',
    provenance: 'memory',
    note: 'soil that does not dry out',
  },
});

/** Thermal resistance outside a cable that lies in the ground with others. IEC 60287-2-1. */
export const groundResistance = /* @__PURE__ */ added({
  id: 'ground-thermal-resistance',
  title: 'Thermal resistance outside a buried cable',
  plus: ['soilThermalResistance', 'neighboursThermalResistance'],
  output: 'externalThermalResistance',
  source: { document: 'IEC 60287-2-1', clause: 'groups of buried cables', provenance: 'memory' },
});
