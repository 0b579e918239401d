/** What is offered with IEC 60364: its tables and formulas, and those of the documents that it leans on. */
export * from '../../products/iec60228/conductor-diameter.js';
export * from '../../products/iec60228/conductor-resistance.js';
export * from '../../products/iec60502/bedding-thickness.js';
export * from '../../products/iec60502/insulation-thickness.js';
export * from '../iec-family/definitions.js';
export { powerLawCapacity } from './annex-d.js';
export { dropRateOfReactance, dropRateOfResistivity } from './annex-g.js';
export * from './tables/index.js';
