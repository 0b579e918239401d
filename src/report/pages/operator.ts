import type { CheckResult } from '../../core/index.js';
import type { FormField } from '../../demand/form.js';
import { pointsOfPlan } from '../../site/alike-plans.js';
import type { Plan } from '../../site/index.js';
import { formatIn } from '../../units/index.js';
import { type Block, type Cell, grid, heading, list, paragraph } from '../block.js';
import { cautionOf, dutyWords, titleOf } from '../plan-checks.js';
import { fieldTitle, fieldValue } from '../plan-supply.js';
import { comparisonWords } from '../sheet.js';
import type { ReportWords } from '../words/pages.js';
import { halfHourBlocks } from './half-hours.js';
import { namesOf, type PageOptions, page, worstOfEach } from './parts.js';

/** The figures of a condition, or how to obtain what is not known. */
const figuresOf = (r: CheckResult, words: ReportWords): string =>
  r.value && r.limit
    ? [r.value, r.limit].map((a) => formatIn(a.value, a.unit)).join(' / ')
    : (r.gaps ?? [])
        .flatMap((g) => (g.kind === 'fact' && g.obtain ? [words.said(g.obtain, `obtain:${g.fact}`)] : []))
        .join('; ') || comparisonWords(r, words);

/** A row for each kind of device that is entered alike, with what is entered of it; the rest of the form before it. */
function form(fields: readonly FormField[], points: readonly string[], words: ReportWords): readonly Block[] {
  const { operator: w } = words;
  const ofDevice = (f: FormField): string | undefined => points.find((p) => f.id.startsWith(`${p}.`));
  const rest = fields.filter((f) => ofDevice(f) === undefined);
  const devices = points.flatMap((point) => {
    const own = fields.filter((f) => ofDevice(f) === point);
    return own.length === 0 ? [] : [{ point, own }];
  });
  const columnOf = (f: FormField, point: string): string =>
    words.said(f.title.startsWith(`${point}: `) ? f.title.slice(point.length + 2) : f.title, `field:${f.id}`);
  const kinds = new Map<string, { names: string[]; cells: readonly string[] }>();
  for (const { point, own } of devices) {
    const cells = own.map((f) => fieldValue(f, words));
    const kind = kinds.get(cells.join('\n')) ?? { names: [], cells };
    kind.names.push(point);
    kinds.set(cells.join('\n'), kind);
  }
  const [any] = devices;
  return [
    heading(2, w.form),
    ...grid(
      '',
      w.formHead,
      rest.map((f): readonly Cell[] => [fieldTitle(f, words), fieldValue(f, words)]),
    ),
    ...(any
      ? grid(
          w.devices,
          [w.device, ...any.own.map((f) => columnOf(f, any.point))],
          [...kinds.values()].map(({ names, cells }) => [namesOf(names, words), ...cells]),
        )
      : []),
  ];
}

/**
 * The page for the network operator: whether it is told or asked first, by when, and the entries of its form.
 * @param plan a plan
 * @param options which option, and in which words
 * @returns blocks of one page or two, for any of the renderers
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { operatorPage, renderText } from 'ohmwright/report';
 * import { planOf } from 'ohmwright/site';
 *
 * const plan = planOf(readSurvey(survey), { ...inGreatBritain('2018+A2:2022'), lengths: false, remedies: false });
 * renderText(operatorPage(plan)).includes('APPLICATION BEFORE THE WORK'); // => true
 * ```
 */
export function operatorPage(plan: Plan, options: PageOptions = {}): readonly Block[] {
  return page(
    plan,
    options,
    ({ operator }) => operator.title,
    ({ option, words }) => {
      const { route, meanwhile, duties } = option.notification.decision;
      return {
        kind: 'answer',
        verdict: route === 'not-determined' ? 'not-determined' : 'pass',
        words: words.operator.answer[route],
        text:
          meanwhile === undefined
            ? `${duties.length === 1 ? duties.map((d) => dutyWords(d, words)).join() : words.said(option.title, `option:${option.id}`)}.`
            : words.said(meanwhile, 'meanwhile'),
      };
    },
    ({ option, words }) => {
      const { operator: w } = words;
      const { decision, fields } = option.notification;
      // of several lines the worst
      const judged = worstOfEach(decision.results.filter((r) => r.verdict !== 'not-required'));
      const open = judged.filter((r) => r.verdict !== 'pass');
      const met = judged.length - open.length;
      return [
        ...(decision.duties.length > 1 || decision.meanwhile
          ? [heading(2, w.duties), ...list(decision.duties.map((d) => dutyWords(d, words)))]
          : []),
        ...form(fields, option.points.flatMap(pointsOfPlan), words),
        ...halfHourBlocks(option, words),
        heading(2, w.decides),
        ...grid(
          '',
          w.decidesHead,
          open.map((r) => [w.judged[r.verdict], titleOf(r, words), figuresOf(r, words)]),
        ),
        ...(met > 0 ? [paragraph(w.met(met))] : []),
        // the first is of the rules as a whole
        ...decision.cautions.slice(0, 1).map((c) => cautionOf(c, words)),
      ];
    },
  );
}
