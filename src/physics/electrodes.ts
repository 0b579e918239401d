import { formula } from '../core/index.js';
import { CalculationError } from '../units/index.js';

/** Resistance of a vertical rod. BS 7430. */
export const rodResistance = /* @__PURE__ */ formula({
  id: 'rod-resistance',
  title: 'Resistance of a vertical rod',
  inputs: ['earthResistivity', 'electrodeLength', 'electrodeDiameter'],
  output: 'singleRodResistance',
  expression:
    'earthResistivity / (2 * 3.141592653589793 * electrodeLength) * (log(8 * electrodeLength / electrodeDiameter) - 1)',
  compute: ({ earthResistivity, electrodeLength: l, electrodeDiameter }) =>
    (earthResistivity / (2 * Math.PI * l)) * (Math.log((8 * l) / electrodeDiameter) - 1),
  source: { document: 'BS 7430', clause: 'vertical rod', provenance: 'one-source' },
});

/** Ratio of spacing resistance to rod resistance, α. BS 7430. */
export const rodSpacingRatio = /* @__PURE__ */ formula({
  id: 'rod-spacing-ratio',
  title: 'Ratio of spacing resistance to rod resistance',
  inputs: ['earthResistivity', 'singleRodResistance', 'rodSpacing'],
  output: 'spacingRatio',
  expression: 'earthResistivity / (2 * 3.141592653589793 * singleRodResistance * rodSpacing)',
  compute: ({ earthResistivity, singleRodResistance, rodSpacing }) =>
    earthResistivity / (2 * Math.PI * singleRodResistance * rodSpacing),
  source: { document: 'BS 7430', clause: 'rods in parallel', provenance: 'one-source' },
});

/** Resistance of equal rods in parallel. BS 7430. */
export const parallelRods = /* @__PURE__ */ formula({
  id: 'parallel-rods',
  title: 'Resistance of rods in parallel',
  inputs: ['singleRodResistance', 'rodFactor', 'spacingRatio', 'rodCount'],
  output: 'electrodeResistance',
  expression: 'singleRodResistance * (1 + rodFactor * spacingRatio) / rodCount',
  compute: ({ singleRodResistance, rodFactor, spacingRatio, rodCount }) =>
    (singleRodResistance * (1 + rodFactor * spacingRatio)) / rodCount,
  source: {
    document: 'BS 7430',
    provenance: 'one-source',
    clause: 'rods in parallel',
    note: 'for a spacing of at least the length of a rod; stands in a worked earthing calculation after BS 7430',
  },
});

/** Resistance of a plate, both faces in the soil. BS 7430. */
export const plateResistance = /* @__PURE__ */ formula({
  id: 'plate-resistance',
  title: 'Resistance of a buried plate',
  inputs: ['earthResistivity', 'plateArea'],
  output: 'electrodeResistance',
  expression: 'earthResistivity / 4 * sqrt(3.141592653589793 / plateArea)',
  compute: ({ earthResistivity, plateArea }) => (earthResistivity / 4) * Math.sqrt(Math.PI / plateArea),
  source: { document: 'BS 7430', provenance: 'memory', clause: 'plate' },
});

/**
 * Resistance of a straight horizontal wire, with end terms. Dwight, calculation of resistances to ground, 1936, buried
 * wire.
 */
export const wireResistance = /* @__PURE__ */ formula({
  id: 'wire-resistance',
  title: 'Resistance of a straight horizontal wire',
  inputs: ['earthResistivity', 'electrodeLength', 'electrodeDiameter', 'burialDepth'],
  output: 'electrodeResistance',
  expression:
    'earthResistivity / (2 * 3.141592653589793 * electrodeLength) * (log(4 * electrodeLength^2 / (electrodeDiameter * burialDepth)) - 2 + 2 * burialDepth / electrodeLength - burialDepth^2 / electrodeLength^2 + burialDepth^4 / (2 * electrodeLength^4))',
  compute: ({ earthResistivity, electrodeLength: l, electrodeDiameter: d, burialDepth: h }) => {
    const x = h / l;
    return (earthResistivity / (2 * Math.PI * l)) * (Math.log((4 * l * l) / (d * h)) - 2 + 2 * x - x ** 2 + x ** 4 / 2);
  },
  source: {
    document: 'Dwight, calculation of resistances to ground, 1936',
    clause: 'buried wire',
    provenance: 'memory',
  },
});

/**
 * Resistance of a straight horizontal strip, as a wire of half its width in diameter. An older form for strip with the
 * constant -1 gives 3.6 to 4.9 % too little and is not offered.
 */
export const stripResistance = /* @__PURE__ */ formula({
  id: 'strip-resistance',
  title: 'Resistance of a straight horizontal strip, as a wire',
  inputs: ['earthResistivity', 'electrodeLength', 'stripWidth', 'burialDepth'],
  output: 'electrodeResistance',
  expression:
    'earthResistivity / (2 * 3.141592653589793 * electrodeLength) * (log(8 * electrodeLength^2 / (stripWidth * burialDepth)) - 2 + 2 * burialDepth / electrodeLength - burialDepth^2 / electrodeLength^2 + burialDepth^4 / (2 * electrodeLength^4))',
  compute: ({ earthResistivity, electrodeLength: l, stripWidth: w, burialDepth: h }) => {
    const x = h / l;
    return (earthResistivity / (2 * Math.PI * l)) * (Math.log((8 * l * l) / (w * h)) - 2 + 2 * x - x ** 2 + x ** 4 / 2);
  },
  source: { document: 'physics', clause: 'thin strip as a wire of half its width', provenance: 'derived' },
});

/** Resistance of a buried ring of wire. */
export const ringResistance = /* @__PURE__ */ formula({
  id: 'ring-resistance',
  title: 'Resistance of a buried ring',
  inputs: ['earthResistivity', 'ringDiameter', 'electrodeDiameter', 'burialDepth'],
  output: 'electrodeResistance',
  expression:
    'earthResistivity / (2 * 3.141592653589793^2 * ringDiameter) * (log(8 * ringDiameter / electrodeDiameter) + log(2 * ringDiameter / burialDepth))',
  compute: ({ earthResistivity, ringDiameter: r, electrodeDiameter: d, burialDepth: h }) =>
    (earthResistivity / (2 * Math.PI ** 2 * r)) * (Math.log((8 * r) / d) + Math.log((2 * r) / h)),
  source: {
    document: 'Dwight, calculation of resistances to ground, 1936',
    clause: 'ring of wire',
    provenance: 'memory',
  },
});

/** Resistance of a buried grid, without its depth. IEEE 80, resistance of a grid, first form. */
export const gridResistance = /* @__PURE__ */ formula({
  id: 'grid-resistance',
  title: 'Resistance of a buried grid',
  inputs: ['earthResistivity', 'plateArea', 'electrodeLength'],
  output: 'electrodeResistance',
  expression: '0.443 * earthResistivity / sqrt(plateArea) + earthResistivity / electrodeLength',
  compute: ({ earthResistivity, plateArea, electrodeLength }) =>
    (0.443 * earthResistivity) / Math.sqrt(plateArea) + earthResistivity / electrodeLength,
  source: { document: 'IEEE 80', clause: 'resistance of a grid, first form', provenance: 'memory' },
});

/** Resistance of a buried grid with its depth. IEEE 80, resistance of a grid at a depth. */
export const gridResistanceAtDepth = /* @__PURE__ */ formula({
  id: 'grid-resistance-at-depth',
  title: 'Resistance of a buried grid at a depth',
  inputs: ['earthResistivity', 'plateArea', 'electrodeLength', 'burialDepth'],
  output: 'electrodeResistance',
  expression:
    'earthResistivity * (1 / electrodeLength + (1 + 1 / (1 + burialDepth * sqrt(20 / plateArea))) / sqrt(20 * plateArea))',
  compute: ({ earthResistivity, plateArea: a, electrodeLength, burialDepth: h }) =>
    earthResistivity * (1 / electrodeLength + (1 + 1 / (1 + h * Math.sqrt(20 / a))) / Math.sqrt(20 * a)),
  source: { document: 'IEEE 80', clause: 'resistance of a grid at a depth', provenance: 'memory' },
});

/** Mutual resistance of two compact electrodes that are far apart against their size. */
export const mutualResistanceOf = /* @__PURE__ */ formula({
  id: 'mutual-resistance',
  title: 'Mutual resistance of two distant electrodes',
  inputs: ['earthResistivity', 'rodSpacing'],
  output: 'mutualResistance',
  expression: 'earthResistivity / (2 * 3.141592653589793 * rodSpacing)',
  compute: ({ earthResistivity, rodSpacing }) => earthResistivity / (2 * Math.PI * rodSpacing),
  source: { document: 'physics', clause: 'point on the surface of uniform soil', provenance: 'definition' },
});

/** Resistance of two electrodes in parallel with their mutual resistance. */
export const twoElectrodes = /* @__PURE__ */ formula({
  id: 'two-electrodes',
  title: 'Resistance of two electrodes in parallel, with mutual resistance',
  inputs: ['firstElectrodeResistance', 'secondElectrodeResistance', 'mutualResistance'],
  output: 'electrodeResistance',
  expression:
    '(firstElectrodeResistance * secondElectrodeResistance - mutualResistance^2) / (firstElectrodeResistance + secondElectrodeResistance - 2 * mutualResistance)',
  compute: ({ firstElectrodeResistance: a, secondElectrodeResistance: b, mutualResistance: m }) =>
    (a * b - m * m) / (a + b - 2 * m),
  source: { document: 'physics', provenance: 'definition' },
});

const MOST_RODS = 1e6;
/**
 * Factor λ of rods in a straight line when all take the same current, 2/n Σ (n-k)/k.
 * @param rods number of rods, a whole number from 2 to a million
 * @returns the factor; 0 below 2 rods
 * @throws CalculationError `out-of-range` for what is no finite number, and above a million
 * @example
 * ```ts
 * import { lineOfRodsFactor } from 'ohmwright/physics';
 *
 * lineOfRodsFactor(2); // => 1
 * ```
 */
export function lineOfRodsFactor(rods: number): number {
  if (!(Number.isFinite(rods) && rods <= MOST_RODS))
    throw new CalculationError('out-of-range', `rods is ${rods}; it is a number of rods`, {
      quantity: 'rods',
      value: rods,
      unit: '',
      bounds: { most: MOST_RODS },
      source: 'line-of-rods-factor',
    });
  let sum = 0;
  for (let k = 1; k < rods; k++) sum += (rods - k) / k;
  return rods < 2 ? 0 : (2 / rods) * sum;
}
