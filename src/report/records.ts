import type { Records } from '../site/index.js';
import { type Block, cautionsOnce, grid, heading, list, paragraph, worded } from './block.js';
import { cautionOf, dutyWords, titleOf } from './plan-checks.js';
import { fieldTitle, fieldValue } from './plan-supply.js';
import { comparisonWords } from './sheet.js';
import { testSheetBlocks } from './test-sheet.js';
import { englishWords, type ReportWords } from './words/pages.js';

const rows = (
  fields: readonly { readonly id: string; readonly title: string; readonly value?: string }[],
  w: ReportWords,
) =>
  fields.map((f) => [
    w.said(f.title, `field:${f.id}`),
    f.value === undefined ? w.long.notKnown : w.said(f.value, `entry:${f.id}`),
  ]);

/**
 * The records of a job as blocks: data for certificates, test sheets with their judgement, duties, and the hand-over.
 * @param records records of a job
 * @param words words of the report; English when absent
 * @returns blocks, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { recordBlocks } from 'ohmwright/report';
 * import { planOf, recordsOf } from 'ohmwright/site';
 *
 * const records = recordsOf(planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')));
 * records && recordBlocks(records)[0]?.kind; // => 'heading'
 * ```
 */
export function recordBlocks(records: Records, words: ReportWords = englishWords): readonly Block[] {
  const { records: w } = words.sheet;
  const blocks = [
    heading(1, w.title(words.said(records.option, 'option'))),
    cautionOf(records.code.standing, words),
    paragraph(w.note),
    heading(2, w.supply),
    ...grid('', w.head, rows(records.installation, words)),
    ...records.circuits.flatMap((c) => [
      heading(2, w.circuit(c.point)),
      ...grid('', w.head, rows(c.fields, words)),
      ...testSheetBlocks(c.tests, 3, words),
      ...(c.judgement
        ? [
            ...grid(
              w.judged,
              w.judgedHead,
              c.judgement.results.map((r) => [titleOf(r, words), { verdict: r.verdict }, comparisonWords(r, words)]),
            ),
            ...list(
              c.judgement.contradictions.map((x) =>
                w.contradiction(x.readings, words.said(x.meaning, 'contradiction')),
              ),
            ),
            ...list(c.judgement.owing.map((o) => w.owing(words.said(o, 'owing')))),
          ]
        : []),
    ]),
    heading(2, words.long.operator.title),
    paragraph(words.long.operator.route(words.long.label(records.operator.route))),
    ...list(records.operator.duties.map((d) => dutyWords(d, words))),
    ...grid(
      '',
      w.head,
      records.operator.fields.map((f) => [fieldTitle(f, words), fieldValue(f, words)]),
    ),
    heading(2, w.householder),
    ...list(records.handover.map((text) => words.said(text, 'handover'))),
  ];
  return worded(cautionsOnce(blocks), words);
}
