import type { Worse } from '../../core/index.js';

/** Directions of a check that a hotter or more loaded conductor makes worse. */
export const loadAndHeat: Worse = {
  designCurrent: 'up',
  ambientTemperature: 'up',
  groundTemperature: 'up',
  circuitsInGroup: 'up',
  soilResistivity: 'up',
  insulatedLength: 'up',
};

/** Directions of a check that a longer, hotter or more loaded conductor makes worse. */
export const lengthLoadAndHeat: Worse = /* @__PURE__ */ (() => ({ ...loadAndHeat, length: 'up' as const }))();
