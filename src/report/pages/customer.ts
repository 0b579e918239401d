import { pathTo } from '../../installation/index.js';
import { decimalOf } from '../../site/decision.js';
import type { Plan, PointPlan, PriceBook } from '../../site/index.js';
import { quotationOf } from '../../site/price.js';
import { wholeJob } from '../../site/whole-job.js';
import { formatIn } from '../../units/index.js';
import { type Block, caution, grid, heading, list, paragraph } from '../block.js';
import { fieldTitle } from '../plan-supply.js';
import { hoursWords } from '../plan-work.js';
import { factOf, obtainOf } from '../unknown.js';
import { alike, controlsOf, namesOf, type Page, type PageOptions, page, quotedNames, settingOf } from './parts.js';

/** What a customer can answer or photograph; everything else is found out by the firm. */
const forCustomer = (how: string | undefined): how is string =>
  how !== undefined && /customer|owner|photograph|\bbill\b|\bsay whether\b|letter/i.test(how);
/** Facts and entries that are asked on one page. */
const MOST = 10;

const kilowattHours = (wattHours: number): string => `${formatIn(wattHours / 1000, '1', 2)} kWh`;

/** Answers from the best. */
const ranks = { pass: 0, conditional: 1, 'not-determined': 2, fail: 3 } as const;

/** Charge points, what holds them back, and what is done beside. */
function get({ option, words: { customer: w }, words }: Page): readonly Block[] {
  const fields = option.notification.fields;
  const powerOf = (point: string): string | undefined => {
    const field = fields.find((f) => f.id === `${point}.power`);
    return field && 'value' in field && typeof field.value === 'number' ? formatIn(field.value, 'kW', 2) : undefined;
  };
  const points = alike(option.points).map(({ first, points: of }) =>
    w.point(
      namesOf(
        of.map((p) => p.point),
        words,
      ),
      settingOf(first) ?? words.installer.openQuantity,
      powerOf(first.point),
    ),
  );
  // of several the one for which it is tightest
  const timed = option.points.flatMap((p) => (p.chargeTime?.seconds === undefined ? [] : [{ ...p.chargeTime, ...p }]));
  const [slowest] = timed.sort((a, b) => Number(a.inTime) - Number(b.inTime) || (b.seconds ?? 0) - (a.seconds ?? 0));
  const busy = option.night?.vehicles.find((v) => v.busy && v.busy.after === undefined)?.busy;
  const controls = controlsOf(option.installation);
  return [
    heading(2, w.get),
    ...list([
      ...points,
      // the title says that there is a load control
      ...option.changes
        .filter((c) => !controls.some(({ name }) => c.includes(name)))
        .map((change) => w.beside(words.said(change, 'change'))),
      ...(controls.length > 0 ? [w.held] : []),
      ...(slowest?.seconds === undefined
        ? []
        : [w.charge(formatIn(slowest.seconds, 's', 2), formatIn(slowest.window, 's', 3), slowest.inTime === true)]),
      ...(busy ? [w.lacking(kilowattHours(busy.missing))] : []),
    ]),
  ];
}

function where({ option, words: { customer: w }, words }: Page): readonly Block[] {
  const boardsOf = (points: readonly PointPlan[]): string => {
    const boards = new Set(points.map(({ run }) => pathTo(option.installation, run.id)?.boards.at(-1)?.id ?? ''));
    return boards.size > 1 ? quotedNames([...boards], words).join(', ') : [...boards].join('');
  };
  const { outletHeight, mounting } = option.work;
  return [
    heading(2, w.where),
    ...list([
      ...alike(option.points).map((kind) =>
        w.route(
          namesOf(
            kind.points.map((p) => p.point),
            words,
          ),
          boardsOf(kind.points),
          kind.first.run.stretches.map((s) => s.name),
        ),
      ),
      ...(outletHeight?.state === 'known'
        ? [w.height(formatIn(outletHeight.value, 'm'), mounting && words.long.label(mounting))]
        : []),
    ]),
  ];
}

function cost({ option, words: { customer: w }, words }: Page, book: PriceBook | undefined): readonly Block[] {
  const decided = option.overall.verdict === 'pass' || option.overall.verdict === 'conditional';
  if (!book || !decided) return [heading(2, w.cost), paragraph(decided ? w.noPrice : w.undecided)];
  const { items, hours } = wholeJob(option);
  const { net, tax, total, open, currency } = quotationOf(items, hours, book);
  const money = (coins: number) => words.money(decimalOf(coins, currency), currency);
  return [
    heading(2, w.cost),
    ...grid(
      '',
      [w.price.line, w.price.amount],
      // what is left out makes a sum that nobody pays
      open.length > 0
        ? [[w.price.soFar, money(net)]]
        : [
            [w.price.net, money(net)],
            [w.price.tax, money(tax)],
            [w.price.total, money(total)],
          ],
      [1],
    ),
    ...(open.length > 0 ? [paragraph(w.price.open(open.map((what) => words.said(what, 'item')).join('; ')))] : []),
  ];
}

function need({ option, words }: Page): readonly Block[] {
  const { customer: w } = words;
  const open = option.unknown.filter((u) => u.decides);
  const asked = open.flatMap((u) =>
    forCustomer(u.obtain) ? [w.answerOf(factOf(u, words), obtainOf(u, words) ?? '')] : [],
  );
  const entries = option.notification.fields.flatMap((f) =>
    'missing' in f && forCustomer(f.missing)
      ? [
          f.missing.includes('customer')
            ? fieldTitle(f, words)
            : w.entry(fieldTitle(f, words), words.said(f.missing, `obtain:${f.id}`)),
        ]
      : [],
  );
  const named = [...asked, ...entries].slice(0, MOST);
  const rest = open.length - Math.min(asked.length, MOST);
  const titles = new Set(option.conditions.map((c) => c.title));
  return [
    heading(2, w.need),
    ...list([
      ...named,
      ...(rest > 0 ? [w.more(rest)] : []),
      ...option.beforeWork.flatMap((b) => w.before[b.id] ?? []),
      w.off,
      ...(titles.size > 0 ? [w.confirmed(titles.size)] : []),
    ]),
  ];
}

/**
 * The page for the customer: the answer, what they get and where, when, what it costs, and what is needed from them.
 * @param plan a plan
 * @param options which option, in which words, and the prices of the firm
 * @returns blocks of one page or two, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { customerPage, renderText } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * const plan = planOf(readSurvey(survey), { ...inGreatBritain('2018+A2:2022'), lengths: false, remedies: false });
 * renderText(customerPage(plan)).includes('YES, IT CAN BE DONE'); // => true
 * ```
 */
export function customerPage(plan: Plan, options: PageOptions = {}): readonly Block[] {
  return page(
    plan,
    options,
    ({ customer }) => customer.title,
    ({ option, words }) => ({
      kind: 'answer',
      verdict: option.overall.verdict,
      words: words.customer.answer[option.overall.verdict],
      text: `${words.said(option.title, `option:${option.id}`)}.`,
    }),
    (of) => {
      const { option, words } = of;
      const { customer: w } = words;
      // what is no worse an answer than this one
      const others = plan.options.filter(
        (o) => o !== option && ranks[o.overall.verdict] <= ranks[option.overall.verdict],
      ).length;
      const seen = [...new Set(plan.observations.map((o) => o.run))];
      return [
        ...get(of),
        ...where(of),
        heading(2, w.when),
        ...list([w.after[option.notification.decision.route], w.hours(hoursWords(option.hours, words))]),
        ...cost(of, options.prices),
        ...need(of),
        ...(others > 0 ? [paragraph(w.others(others))] : []),
        ...(seen.length > 0 ? [heading(2, w.seen), paragraph(w.seenWords(seen.join(', ')))] : []),
        caution(words.notInstallation),
      ];
    },
  );
}
