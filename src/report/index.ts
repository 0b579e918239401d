/**
 * Reports as text, Markdown and HTML, and pictures as SVG. Nothing is computed here.
 *
 * @module ohmwright/report
 */
export type { Block, Cell } from './block.js';
export { type PlanReportOptions, planBlocks } from './plan.js';
export { type ProofSheetOptions, proofSheet, type Tick, type Ticks, ticksFor } from './proof-sheet.js';
export { recordBlocks } from './records.js';
export { renderHtml } from './render-html.js';
export { renderMarkdown } from './render-markdown.js';
export { renderText } from './render-text.js';
export { sheetBlocks } from './sheet.js';
export * from './svg/index.js';
export { testSheetBlocks } from './test-sheet.js';
