import type { PlannedReading } from '../../design/index.js';
import { OF_NOTHING } from '../../design/planned-reading.js';
import type { Plan, PointPlan } from '../../site/index.js';
import { formatIn, formatNumber } from '../../units/index.js';
import { type Block, grid, heading, list, paragraph } from '../block.js';
import { cautionOf } from '../plan-checks.js';
import { protectionOf } from '../plan-circuits.js';
import { gapsWords } from '../sheet.js';
import { readingWords } from '../test-sheet.js';
import type { ReportWords } from '../words/pages.js';
import { type Alike, alike, namesOf, type Page, type PageOptions, page, rangeOf } from './parts.js';

/** A reading with its test. */
interface Reading {
  readonly place: number;
  readonly state: 'dead' | 'live';
  readonly reading: PlannedReading;
}

const readingsOf = ({ tests }: PointPlan): readonly Reading[] =>
  tests.tests.flatMap(({ place, state, readings }) => readings.map((reading) => ({ place, state, reading })));

type Side = 'at-most' | 'at-least';
/** A limit for the meter, no rule of thumb. */
const limitOf = ({ limits }: PlannedReading, side: Side) =>
  limits.find((l) => l.kind === side && !l.thumb && l.by !== OF_NOTHING)?.amount;

/** The strictest limit of readings that are alike: as safe for each of them. */
function strictest(readings: readonly PlannedReading[], side: Side): string {
  const amounts = readings.flatMap((r) => limitOf(r, side) ?? []);
  const [any] = amounts;
  if (!any) return '';
  const values = amounts.map((a) => a.value);
  return formatIn(side === 'at-most' ? Math.min(...values) : Math.max(...values), any.unit);
}

/** What a good reading may be off what is expected: leads, temperature, the last digit. Common practice, no source. */
const OFF = 1.25;

/** Whether the strictest limits would refuse a good reading of one of the circuits: each then has limits of its own. */
function ownLimits(readings: readonly PlannedReading[]): boolean {
  const values = readings.flatMap((r) => r.expected?.value ?? []);
  const over = (side: Side) => readings.flatMap((r) => limitOf(r, side)?.value ?? []);
  const [least, most] = [over('at-least'), over('at-most')];
  if (values.length === 0 || new Set(least).size + new Set(most).size < 3) return false;
  return Math.min(...values) / OFF < Math.max(...least) || Math.max(...values) * OFF > Math.min(...most);
}

/** What is expected with its limits in one unit: 0.0362 Ω (0–0.122). */
function figureWithin(reading: PlannedReading, words: ReportWords): string {
  const [least, most] = (['at-least', 'at-most'] as const).map((side) => limitOf(reading, side));
  const plain = (value: number) => formatNumber(value);
  const figure = expected([reading], words);
  return least && most ? words.tester.figureWithin(figure, plain(least.value), plain(most.value)) : figure;
}

function expected(readings: readonly PlannedReading[], words: ReportWords): string {
  const amounts = readings.flatMap((r) => r.expected ?? []);
  const [any] = amounts;
  if (any)
    return rangeOf(
      amounts.map((a) => a.value),
      any.unit,
      words,
    );
  return gapsWords(readings[0]?.gaps, words);
}

/** Whether a reading is a figure; otherwise somebody looks, and says whether it is in order. */
const isFigure = ({ expected: e, limits, gaps }: PlannedReading): boolean =>
  e !== undefined || gaps !== undefined || limits.some((l) => l.amount);

/** What is said beside the figures: where Z_e is read, limits that are not for the meter, rules of thumb. */
function besides(readings: readonly Reading[], words: ReportWords): readonly string[] {
  const { tester: w } = words;
  const noted = (reading: PlannedReading) => {
    const { what, note } = readingWords(reading, words);
    return reading.id === 'externalLoop' && note ? [`${what}. ${note}`] : [];
  };
  return readings.flatMap(({ reading }) => [
    ...noted(reading),
    ...reading.limits.flatMap(({ thumb, amount, by }) =>
      thumb && amount ? [w.thumb(words.said(by, 'by'), formatIn(amount.value, amount.unit))] : [],
    ),
    ...(reading.tabulated ? [w.tabulated(formatIn(reading.tabulated.value, reading.tabulated.unit))] : []),
  ]);
}

/** A reading in short, the same in every form: by its identifier, whose end names a point, or what is read. */
function shortName(reading: PlannedReading, words: ReportWords): string {
  const { tester: w } = words;
  const { id, what, limits } = reading;
  const key = Object.hasOwn(w.readings, id) ? id : id.replace(/-.*$/, '');
  const name = Object.hasOwn(w.readings, key) ? w.readings[key] : undefined;
  // of the first residual current device, where it is, is told by nothing else
  const own = /^residual1At/.test(id)
    ? w.residual(words.said(what.replace(/^[^:]*: /, ''), `reading:${id}`))
    : words.said(what, `reading:${id}`);
  return name ?? (limits.some((l) => l.kind === 'must-not-trip') ? w.holds(own) : own);
}

function readingTable(
  readings: readonly Reading[],
  all: readonly (readonly Reading[])[],
  words: ReportWords,
  boxes: boolean,
) {
  const { head, done } = words.tester;
  const rows = readings.map(({ place, state, reading }, i) => {
    const same = all.flatMap((r) => r[i]?.reading ?? []);
    const again = readings[i - 1]?.place === place;
    const before = readings[i - 1]?.state === state;
    return [
      again ? '' : before ? `${place}` : `${place}, ${words.tester[state]}`,
      shortName(reading, words),
      isFigure(reading) ? expected(same, words) : done,
      ...(boxes || !ownLimits(same)
        ? [strictest(same, 'at-least'), strictest(same, 'at-most')]
        : [words.tester.below, words.tester.below]),
      ...(boxes ? [''] : []),
    ];
  });
  return grid('', boxes ? head : head.slice(0, -1), rows, [2, 3, 4], boxes ? [5] : []);
}

/** Circuits that are alike and have their boxes here; of more, each has a schedule of its own. */
const BOXED = 40;

/** Read at the origin, once for all circuits. */
const ofOrigin = ({ reading }: Reading): boolean => reading.id === 'externalLoop';

/** Boxes for circuits that are alike: a row for each, a column for each reading; expected figures that differ beside them. */
function boxesFor({ points }: Alike, state: 'dead' | 'live', words: ReportWords): readonly Block[] {
  const { tester: w } = words;
  const all = points.map((p) => readingsOf(p).filter((r) => r.state === state && !ofOrigin(r)));
  const columns = (all[0] ?? []).map(({ reading }, i) => {
    const figures = new Set(all.map((r) => expected([r[i]?.reading ?? reading], words)));
    const own = ownLimits(all.flatMap((r) => r[i]?.reading ?? []));
    return { name: shortName(reading, words), differs: figures.size > 1, own, i };
  });
  const head = columns.flatMap(({ name, differs, own }) =>
    differs ? [own ? w.within(name) : w.expected(name), name] : [name],
  );
  const cells = (readings: readonly Reading[]) =>
    columns.flatMap(({ differs, own, i }) => {
      const reading = readings[i]?.reading;
      if (!differs || !reading) return [''];
      return [own ? figureWithin(reading, words) : expected([reading], words), ''];
    });
  const start = 2;
  const boxes = columns.reduce<{ at: number; boxes: readonly number[] }>(
    ({ at, boxes: found }, { differs }) => ({ at: at + (differs ? 2 : 1), boxes: [...found, at + (differs ? 1 : 0)] }),
    { at: start, boxes: [] },
  ).boxes;
  return grid(
    w.boxes(w[state]),
    [w.point, w.line, ...head],
    points.map((p, k) => [p.point, p.run.lines.join(', '), ...cells(all[k] ?? [])]),
    [],
    boxes,
  );
}

/** The tests of circuits that are alike. */
function chapter(kind: Alike, { words }: Page): readonly Block[] {
  const { tester: w } = words;
  const { first, points } = kind;
  const { tests } = first;
  const one = points.length === 1;
  const title = one
    ? w.circuit(tests.circuit)
    : namesOf(
        points.map((p) => p.point),
        words,
      );
  if (tests.gaps && tests.gaps.length > 0) return [heading(2, title), paragraph(w.none(gapsWords(tests.gaps, words)))];
  const readings = readingsOf(first);
  const all = points.map(readingsOf);
  const own = readings.some((_, i) => ownLimits(all.flatMap((r) => r[i]?.reading ?? [])));
  const once = grid(
    w.once,
    [w.head[1] ?? '', w.head[2] ?? '', w.each],
    readings.filter(ofOrigin).map(({ reading }) => [shortName(reading, words), expected([reading], words), '']),
    [],
    [2],
  );
  return [
    heading(2, title),
    paragraph(
      `${protectionOf(first.run, words)}. ${w.state(formatIn(tests.testTemperature, '°C'), words.long.label(tests.electronics))}${one ? '' : ` ${w.across(own)}`}`,
    ),
    ...readingTable(readings, all, words, one),
    ...(one
      ? []
      : points.length > BOXED
        ? [...once, paragraph(w.manyBoxes(points.length))]
        : [...once, ...boxesFor(kind, 'dead', words), ...boxesFor(kind, 'live', words)]),
    ...list(besides(readings, words)),
  ];
}

/**
 * The page for the tester: what each test should read, its limits, and a box for each figure that is read.
 * @param plan a plan
 * @param options which option, and in which words
 * @returns blocks of one page or two, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { renderText, testerPage } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * const plan = planOf(readSurvey(survey), { ...inGreatBritain('2018+A2:2022'), lengths: false, remedies: false });
 * renderText(testerPage(plan)).includes('R_1+R_2'); // => true
 * ```
 */
export function testerPage(plan: Plan, options: PageOptions = {}): readonly Block[] {
  return page(
    plan,
    options,
    ({ tester }) => tester.title,
    ({ option, words }) => ({
      kind: 'answer',
      verdict: option.overall.verdict,
      words: words.tester.answer[option.overall.verdict],
      text: words.tester.byDesign,
    }),
    (of) => {
      const { option, words } = of;
      const [test] = option.points.map((p) => p.tests);
      return [
        ...(test?.cautions.slice(1) ?? []).map((c) => cautionOf(c, words)),
        ...alike(option.points).flatMap((kind) => chapter(kind, of)),
        paragraph(words.tester.signed),
      ];
    },
  );
}
