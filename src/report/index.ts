/**
 * Reports as text, Markdown and HTML, and pictures as SVG. Nothing is computed here.
 *
 * @module ohmwright/report
 */
export type { Block, Cell } from './block.js';
export { decisionHeadings, decisionRow } from './decision-row.js';
export { customerPage } from './pages/customer.js';
export { designFile } from './pages/design-file.js';
export { installerPage } from './pages/installer.js';
export { operatorPage } from './pages/operator.js';
export type { PageOptions } from './pages/parts.js';
export { testerPage } from './pages/tester.js';
export { type PlanReportOptions, planBlocks } from './plan.js';
export { type ProofSheetOptions, proofSheet, type Tick, type Ticks, ticksFor } from './proof-sheet.js';
export { recordBlocks } from './records.js';
export { renderFragment, renderHtml } from './render-html.js';
export { renderMarkdown } from './render-markdown.js';
export { renderText } from './render-text.js';
export { sheetBlocks } from './sheet.js';
export * from './svg/index.js';
export { testSheetBlocks } from './test-sheet.js';
export { englishWords, type ReportWords } from './words/pages.js';
