import type { Records } from '../site/index.js';
import { type Block, caution, cautionsOnce, grid, heading, list, paragraph } from './block.js';
import { dutyWords } from './plan-checks.js';
import { fieldValue } from './plan-supply.js';
import { comparisonWords } from './sheet.js';
import { testSheetBlocks } from './test-sheet.js';

const rows = (fields: readonly { readonly title: string; readonly value?: string }[]) =>
  fields.map((f) => [f.title, f.value ?? 'not known']);

/**
 * The records of a job as blocks: data for certificates, test sheets with their judgement, duties, and the hand-over.
 * @param records records of a job
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
export function recordBlocks(records: Records): readonly Block[] {
  return cautionsOnce([
    heading(1, `Records: ${records.option}`),
    caution(records.code.standing),
    paragraph(
      'Data for certificates and forms, in a layout of our own. They are no certificate: that is issued by the person who inspected and tested.',
    ),
    heading(2, 'Supply and earthing'),
    ...grid('', ['field', 'entry'], rows(records.installation)),
    ...records.circuits.flatMap((c) => [
      heading(2, `Circuit of charge point ‘${c.point}’`),
      ...grid('', ['field', 'entry'], rows(c.fields)),
      ...testSheetBlocks(c.tests, 3),
      ...(c.judgement
        ? [
            ...grid(
              'Readings judged',
              ['reading', 'verdict', 'why'],
              c.judgement.results.map((r) => [r.title, { verdict: r.verdict }, comparisonWords(r)]),
            ),
            ...list(c.judgement.contradictions.map((x) => `${x.readings.join(' and ')}: ${x.meaning}`)),
            ...list(c.judgement.owing.map((o) => `still owing: ${o}`)),
          ]
        : []),
    ]),
    heading(2, 'Network operator'),
    paragraph(`Route: ${records.operator.route.replaceAll('-', ' ')}.`),
    ...list(records.operator.duties.map(dutyWords)),
    ...grid(
      '',
      ['field', 'entry'],
      records.operator.fields.map((f) => [
        f.title,
        'missing' in f ? `missing: ${f.missing}` : fieldValue(f.value, f.unit),
      ]),
    ),
    heading(2, 'For the householder'),
    ...list(records.handover),
  ]);
}
