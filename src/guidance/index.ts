/**
 * Guides and handbooks: allowances for diversity, heights of charge points, earth electrodes, tables for testing.
 *
 * @module ohmwright/guidance
 */
export { buildingMounting } from './approved-document-m/heights.js';
export { electrodeInSoil } from './bs7430/electrode-in-soil.js';
export { codeOfPracticeMounting } from './charging-code-of-practice/heights.js';
export * from './collections.js';
export { buildingCurve, buildingCurveSecondReading } from './din18015/building-load.js';
export { frenchMounting } from './fr-accessibility/heights.js';
export { guideDwelling, guideHotel, guideShop, guideShopRecalled } from './on-site-guide/allowances.js';
export { smallestConduit, trunkingUse } from './on-site-guide/containment.js';
export { oneLineRule } from './on-site-guide/one-line-rule.js';
export { accessibleMounting } from './pas1899/heights.js';
