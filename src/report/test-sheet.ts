import type { PlannedReading, TestSheet } from '../design/index.js';
import { formatIn } from '../units/index.js';
import { type Block, caution, grid, heading, paragraph } from './block.js';
import { gapWords } from './sheet.js';

const sides = { 'at-most': 'at most', 'at-least': 'at least', 'must-not-trip': 'must not trip' } as const;

const expected = (r: PlannedReading): string =>
  r.expected ? formatIn(r.expected.value, r.expected.unit) : r.gaps?.length ? r.gaps.map(gapWords).join('; ') : '';
const limits = (r: PlannedReading): string =>
  r.limits
    .filter((l) => !l.thumb)
    .map((l) => (l.amount ? `${sides[l.kind]} ${formatIn(l.amount.value, l.amount.unit)}` : sides[l.kind]))
    .join('; ');

/** Figures beside the one limit for the meter, by name: that of the table, and a rule of thumb. */
const notForTheMeter = ({ tabulated, limits: all }: PlannedReading): readonly string[] => [
  ...(tabulated
    ? [
        `The largest Z_s of the tables is ${formatIn(tabulated.value, tabulated.unit)}, for warm conductors: not for the meter`,
      ]
    : []),
  ...all.flatMap(({ thumb, by, amount }) =>
    thumb && amount ? [`By ${by}: ${formatIn(amount.value, amount.unit)}`] : [],
  ),
];

/**
 * The readings to expect, test by test, in the order in which the tests are done.
 * @param sheet a test sheet
 * @param level level of its heading
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
export function testSheetBlocks(sheet: TestSheet, level: 2 | 3 = 2): readonly Block[] {
  const rows = sheet.tests.flatMap((t) =>
    t.readings.map((r, i) => [
      i === 0 ? `${t.place}` : '',
      i === 0 ? `${t.kind.replaceAll('-', ' ')} (${t.state})` : '',
      [r.what, ...notForTheMeter(r), r.note].filter(Boolean).join('. ').replace(/\.\.+/g, '.'),
      expected(r),
      limits(r),
      '',
    ]),
  );
  const { gaps = [] } = sheet;
  if (gaps.length > 0)
    return [
      heading(level, `Tests of ${sheet.circuit}`),
      paragraph(`The tests of ${sheet.edition} are not entered here: ${gaps.map(gapWords).join('; ')}.`),
    ];
  return [
    heading(level, `Tests of ${sheet.circuit}, in order`),
    paragraph(
      `Edition ${sheet.edition}; conductors at ${formatIn(sheet.testTemperature, '°C')}; electronics ${sheet.electronics} during the insulation test. The last column is for the readings.`,
    ),
    ...grid('', ['no.', 'test', 'what', 'expected', 'limit', 'read'], rows),
    ...sheet.cautions.slice(1).map(caution),
  ];
}
