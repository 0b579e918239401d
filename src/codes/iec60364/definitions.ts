/** What is offered with IEC 60364: its tables and formulas, and those of the documents that it leans on. */
export * from '../iec-family/definitions.js';
export { powerLawCapacity } from './annex-d.js';
export { dropRateOfReactance, dropRateOfResistivity } from './annex-g.js';
export * from './tables/index.js';
