/** Formulas, tables and checks of guides. */
export { buildingHeight, buildingHeights } from './approved-document-m/heights.js';
export * from './bs7430/soil-resistivity.js';
export { codeOfPracticeHeights, generalHeight } from './charging-code-of-practice/heights.js';
export { buildingLoad, buildingLoadSecondReading } from './din18015/building-load.js';
export { frenchHeight, frenchHeights } from './fr-accessibility/heights.js';
export * from './on-site-guide/7-2-7.js';
export * from './on-site-guide/a2.js';
export * from './on-site-guide/appendix-e.js';
export * from './on-site-guide/b7.js';
export { smallestConduit, trunkingUse } from './on-site-guide/containment.js';
export * from './on-site-guide/formulas.js';
export * from './on-site-guide/i1.js';
export * from './on-site-guide/i2.js';
export * from './on-site-guide/i3.js';
export { accessibleHeight, accessibleHeights } from './pas1899/heights.js';
