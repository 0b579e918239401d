/**
 * Sheets, plans and records as text, Markdown, HTML and SVG.
 *
 * @module
 */
export {};
