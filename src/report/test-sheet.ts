import type { PlannedReading, TestSheet } from '../design/index.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph } from './block.js';
import { cautionOf } from './plan-checks.js';
import { gapsWords } from './sheet.js';
import { englishWords, type ReportWords } from './words/pages.js';

const expected = (r: PlannedReading, w: ReportWords): string =>
  r.expected ? formatIn(r.expected.value, r.expected.unit) : gapsWords(r.gaps, w);
const limits = (r: PlannedReading, { sheet: { tests } }: ReportWords): string =>
  r.limits
    .filter((l) => !l.thumb)
    .map((l) =>
      l.amount ? tests.limit(tests.sides[l.kind], formatIn(l.amount.value, l.amount.unit)) : tests.sides[l.kind],
    )
    .join('; ');

/** Figures beside the one limit for the meter, by name: that of the table, and a rule of thumb. */
const notForTheMeter = ({ tabulated, limits: all }: PlannedReading, w: ReportWords): readonly string[] => [
  ...(tabulated ? [w.sheet.tests.tabulated(formatIn(tabulated.value, tabulated.unit))] : []),
  ...all.flatMap(({ thumb, by, amount }) =>
    thumb && amount ? [w.sheet.tests.thumb(w.said(by, 'by'), formatIn(amount.value, amount.unit))] : [],
  ),
];

/** What is read, and what is said with it. */
export const readingWords = ({ id, what, note }: PlannedReading, w: ReportWords) => ({
  what: w.said(what, `reading:${id}`),
  note: note && w.said(note, `note:${id}`),
});

/**
 * The readings to expect, test by test, in the order in which the tests are done.
 * @param sheet a test sheet
 * @param level level of its heading
 * @param words words of the sheet; English when absent
 * @returns blocks, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { testSheetBlocks } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * const sheet = planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')).options[0]?.points[0]?.tests;
 * sheet && testSheetBlocks(sheet)[0]?.kind; // => 'heading'
 * ```
 */
export function testSheetBlocks(
  sheet: TestSheet,
  level: 2 | 3 = 2,
  words: ReportWords = englishWords,
): readonly Block[] {
  const { tests: w } = words.sheet;
  const rows = sheet.tests.flatMap((t) =>
    t.readings.map((r, i) => {
      const { what, note } = readingWords(r, words);
      return [
        i === 0 ? `${t.place}` : '',
        i === 0 ? w.kind(words.long.label(t.kind), words.tester[t.state]) : '',
        [what, ...notForTheMeter(r, words), note].filter(Boolean).join('. ').replace(/\.\.+/g, '.'),
        expected(r, words),
        limits(r, words),
        '',
      ];
    }),
  );
  const { gaps = [] } = sheet;
  if (gaps.length > 0)
    return [heading(level, w.title(sheet.circuit)), paragraph(w.none(sheet.edition, gapsWords(gaps, words)))];
  return [
    heading(level, w.inOrder(sheet.circuit)),
    paragraph(w.state(sheet.edition, formatIn(sheet.testTemperature, '°C'), words.long.label(sheet.electronics))),
    ...grid('', w.head, rows),
    ...sheet.cautions.slice(1).map((c) => cautionOf(c, words)),
  ];
}
