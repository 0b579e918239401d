import type { CheckResult } from '../../core/index.js';
import { kindsOfNames, runsOfNames } from '../../core/names.js';
import { type Board, type ChargePoint, type Installation, pathsOf, type Run } from '../../installation/index.js';
import { eachPoint } from '../../site/alike-plans.js';
import type { OptionPlan, Plan, PointPlan } from '../../site/index.js';
import type { PriceBook } from '../../site/price.js';
import { formatIn } from '../../units/index.js';
import { type Block, dayWords, heading, paragraph, worded } from '../block.js';
import { cautionOf } from '../plan-checks.js';
import { circuitWords, earthingOf } from '../plan-circuits.js';
import { englishWords, type ReportWords } from '../words/pages.js';

/** What a page is made from beside the plan. */
export interface PageOptions {
  /** Place of the option, from 0; the first when absent. */
  readonly option?: number;
  /** Words of the page; English when absent. */
  readonly words?: ReportWords;
  /** Prices of the firm, for the customer; no price is named without them. */
  readonly prices?: PriceBook;
}

/** What every page is made from. */
export interface Page {
  readonly plan: Plan;
  readonly option: OptionPlan;
  readonly words: ReportWords;
}

/** A page that begins with what it is, what was judged, the answer, and how the edition stands. */
export function page(
  plan: Plan,
  { option: place = 0, words = englishWords }: PageOptions,
  title: (words: ReportWords) => (job: string) => string,
  answer: (page: Page) => Extract<Block, { kind: 'answer' }>,
  blocks: (page: Page) => readonly Block[],
): readonly Block[] {
  const { about, code } = plan;
  const option = plan.options[place];
  const top = [heading(1, title(words)(about.title))];
  const standing = cautionOf(code.standing, words);
  const judged = paragraph(
    words.judged(about.reference, dayWords(about.date, words), `${code.name}:${code.edition}`, about.invented === true),
  );
  if (!option) return worded([...top, paragraph(words.noOption), judged, standing], words);
  const of = { plan, option, words };
  return worded([...top, answer(of), judged, standing, ...blocks(of)], words);
}

/** A text with a capital letter. */
export const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** Every load control, from the origin on. */
export const controlsOf = (installation: Installation): readonly NonNullable<Board['control']>[] =>
  [
    installation.board,
    ...pathsOf(installation).flatMap(({ run }) => run.feeds.filter((o): o is Board => o.kind === 'board')),
  ].flatMap(({ control }) => control ?? []);

/** The charge points that a circuit feeds. */
export const chargePointsOf = ({ feeds }: Run): readonly ChargePoint[] =>
  feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');

/** Current that the charge point of a plan is set to. */
export function settingOf({ run }: Pick<PointPlan, 'run'>): string | undefined {
  const [setting] = chargePointsOf(run).flatMap(({ setting: s }) => (s.state === 'known' ? [s.value] : []));
  return setting === undefined ? undefined : formatIn(setting, 'A');
}

/** Charge points whose circuits are built alike and end alike. */
export interface Alike {
  /** The first of them. */
  readonly first: PointPlan;
  readonly points: readonly PointPlan[];
}

/** What two charge points have in common that stand in one chapter: everything but names, lengths and the line. */
const likeness = (p: PointPlan): string =>
  JSON.stringify([
    circuitWords(p, englishWords),
    earthingOf(p, englishWords) ?? '',
    p.earthing.map((e) => [e.arrangement, e.possible]),
    settingOf(p) ?? '',
    p.run.lines.length,
    p.run.stretches.map((s) => [s.name, s.method, s.containment, s.depth]),
    p.assessment.aspects,
    p.tests.tests.map((t) => t.readings.length),
  ]);

/** Charge points that are alike, together, in the order of the first of each kind. */
export function alike(points: readonly PointPlan[]): readonly Alike[] {
  const found = new Map<string, PointPlan[]>();
  for (const p of eachPoint(points)) {
    const key = likeness(p);
    found.set(key, [...(found.get(key) ?? []), p]);
  }
  return [...found.values()].map((of) => ({ first: of[0] as PointPlan, points: of }));
}

/** Runs of names up to which each is written; of more the first and the last of all. */
const MOST_RUNS = 8;

/** Names in quotes, with runs of numbers as one: ‘bay 1’ to ‘bay 24’ (24). */
export function quotedNames(names: readonly string[], { several }: ReportWords): readonly string[] {
  const quoted = (name: string | undefined) => `‘${name ?? ''}’`;
  const runs = runsOfNames(kindsOfNames(names).flat());
  return (runs.length > MOST_RUNS ? [runs.flat()] : runs).flatMap((run) =>
    run.length > 2 ? [several(quoted(run[0]), quoted(run.at(-1)), run.length)] : run.map(quoted),
  );
}

/** Charge points by name, with runs of numbers as one. */
export const namesOf = (names: readonly string[], words: ReportWords): string =>
  words.points(quotedNames(names, words), names.length);

const ranks: Readonly<Record<string, number>> = {
  fail: 0,
  'not-determined': 1,
  conditional: 2,
  pass: 3,
  'not-required': 4,
};

/** Of results of one check the worst: over the sections of a route, and over circuits that are alike. */
export function worstOfEach(results: readonly CheckResult[]): readonly CheckResult[] {
  const worst = new Map<string, CheckResult>();
  for (const r of results) {
    const before = worst.get(r.check);
    const worse =
      !before ||
      (ranks[r.verdict] ?? 0) < (ranks[before.verdict] ?? 0) ||
      (r.verdict === before.verdict &&
        (r.margin ?? Number.POSITIVE_INFINITY) < (before.margin ?? Number.POSITIVE_INFINITY));
    if (worse) worst.set(r.check, r);
  }
  return [...worst.values()];
}

/** A quantity that may be the same everywhere, or run over a range. */
export function rangeOf(values: readonly number[], unit: string, words: ReportWords): string {
  const [least, most] = [Math.min(...values), Math.max(...values)].map((v) => formatIn(v, unit));
  return least === most ? (least ?? '') : words.range(least ?? '', most ?? '');
}
