/** Formulas and tables that the codes share. */
export * from './capacity.js';
export * from './conductor-temperature.js';
export * from './e52-1.js';
export { ratedCurrents } from './rated-currents.js';
export * from './voltage-drop.js';
