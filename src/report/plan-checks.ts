import type { CheckResult } from '../core/index.js';
import { type Block, caution, grid } from './block.js';
import { comparisonWords } from './sheet.js';

/** A result as a row: verdict, requirement, figures, where it stands. */
export const checkRow = (r: CheckResult) => [
  { verdict: r.verdict },
  r.title,
  comparisonWords(r),
  [r.source.document, r.source.clause].filter(Boolean).join(' '),
];

/** What has to be done towards the network operator, and by when. */
export const dutyWords = (d: { readonly what: string; readonly when: string; readonly due?: string }): string =>
  `${d.what}, ${d.due ? `by ${d.due}` : d.when}`;

/** Results that were judged: rules, then advice, then what a person has to be told with them. */
export function checks(results: readonly CheckResult[]): readonly Block[] {
  const rules = results.filter((r) => r.verdict !== 'not-required' && r.weight === 'rule');
  const advice = results.filter((r) => r.verdict !== 'not-required' && r.weight === 'advice');
  const head = ['verdict', 'requirement', 'figures', 'where it stands'];
  return [
    ...grid('Rules', head, rules.map(checkRow)),
    ...grid('Advice', head, advice.map(checkRow)),
    ...cautionsOf(results),
  ];
}

/** What a person has to be told with results that were judged. */
export const cautionsOf = (results: readonly CheckResult[]): readonly Block[] =>
  results.flatMap((r) => (r.caution && r.verdict !== 'not-required' ? [caution(r.caution)] : []));
