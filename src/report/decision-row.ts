import type { Decision } from '../site/index.js';
import { englishWords, type ReportWords } from './words/pages.js';

/**
 * The headings of a spreadsheet of decisions.
 * @param words words of the headings; English when absent
 * @returns the headings, in the order of `decisionRow`
 * @example
 * ```ts
 * import { decisionHeadings } from 'ohmwright/report';
 *
 * decisionHeadings()[0]; // => 'Reference'
 * ```
 */
export const decisionHeadings = (words: ReportWords = englishWords): readonly string[] => Object.values(words.decision);

/**
 * A row of a spreadsheet of decisions.
 * @param reference reference of the job
 * @param told the decision, answers that somebody should look at again, and what was wrong with the input
 * @param words words of the cells, each of which passes through `said`; English when absent
 * @returns cells, in the order of `decisionHeadings`
 * @example
 * ```ts
 * import { decisionRow } from 'ohmwright/report';
 *
 * decisionRow('A-2', { problem: 'mainFuse: is missing' }).at(-1); // => 'mainFuse: is missing'
 * ```
 */
export function decisionRow(
  reference: string,
  told: { readonly decision?: Decision | undefined; readonly questions?: readonly string[]; readonly problem?: string },
  words: ReportWords = englishWords,
): readonly string[] {
  const { decision: d, questions = [], problem = '' } = told;
  const [least = '', likely = '', most = ''] = (d?.hours ?? []).map((h) => h.toFixed(1));
  const said = (text: string, id: string) => (text === '' ? '' : words.said(text, `decision:${id}`));
  const all = (texts: readonly string[] = [], id = '') => texts.map((text) => said(text, id)).join('; ');
  const cells: Readonly<Record<keyof ReportWords['decision'], string>> = {
    reference,
    verdict: said(d?.verdict ?? '', 'verdict'),
    option: said(d?.option ?? '', 'option'),
    operator: said(d?.operator ?? '', 'operator'),
    cable: said(d?.cable ?? '', 'cable'),
    device: said(d?.device ?? '', 'device'),
    least,
    likely,
    most,
    net: d?.net ?? '',
    currency: d?.net === undefined ? '' : (d.currency ?? ''),
    unpriced: all(d?.unpriced, 'unpriced'),
    conditions: all(d?.conditions, 'condition'),
    missing: all(d?.missing, 'missing'),
    questions: questions.map((q) => said(q, 'question')).join(' '),
    problem: said(problem, 'problem'),
  };
  return Object.keys(words.decision).map((column) => cells[column as keyof typeof cells]);
}
