import type { CheckResult } from '../core/index.js';
import { type Block, type Cell, caution, grid } from './block.js';
import { comparisonWords } from './sheet.js';
import type { ReportWords } from './words/pages.js';

/** What a check asks for. */
export const titleOf = (r: CheckResult, w: ReportWords): string => w.said(r.title, `check:${r.check}`);

/** A result as a row: verdict, requirement, figures, where it stands. */
export const checkRow = (r: CheckResult, w: ReportWords): readonly Cell[] => [
  { verdict: r.verdict },
  titleOf(r, w),
  comparisonWords(r, w),
  w.said([r.source.document, r.source.clause].filter(Boolean).join(' '), 'source'),
];

/** What a result comes to in a line: its title and its figures. */
export const resultWords = (r: CheckResult, w: ReportWords): string =>
  w.long.named(titleOf(r, w), comparisonWords(r, w));

/** What has to be done towards the network operator, and by when. */
export const dutyWords = (
  d: { readonly what: string; readonly when: string; readonly due?: string },
  w: ReportWords,
): string => w.long.duty(w.said(d.what, 'duty'), d.due, w.said(d.when, 'duty'));

/** A caution of a rule or of a plan. */
export const cautionOf = (text: string, w: ReportWords): Block => caution(w.said(text, 'caution'));

/** Results that were judged: rules, then advice, then what a person has to be told with them. */
export function checks(results: readonly CheckResult[], w: ReportWords): readonly Block[] {
  const { head, rules, advice } = w.long;
  const rows = (weight: CheckResult['weight']) =>
    results.filter((r) => r.verdict !== 'not-required' && r.weight === weight).map((r) => checkRow(r, w));
  return [...grid(rules, head, rows('rule')), ...grid(advice, head, rows('advice')), ...cautionsOf(results, w)];
}

/** What a person has to be told with results that were judged. */
export const cautionsOf = (results: readonly CheckResult[], w: ReportWords): readonly Block[] =>
  results.flatMap((r) => (r.caution && r.verdict !== 'not-required' ? [cautionOf(r.caution, w)] : []));
