import type { FormField } from '../demand/form.js';
import type { OptionPlan } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, list, paragraph } from './block.js';
import { cautionOf, cautionsOf, checkRow, checks, dutyWords } from './plan-checks.js';
import { gapsWords } from './sheet.js';
import { demandPicture } from './svg/index.js';
import type { ReportWords } from './words/pages.js';

/** A current, or that it is not known. */
export const ampsOf = (value: unknown, { long }: ReportWords): string =>
  typeof value === 'number' ? formatIn(value, 'A') : long.notKnown;

/** What an entry of a form is called. */
export const fieldTitle = (f: FormField, w: ReportWords): string => w.said(f.title, `field:${f.id}`);

/** An entry of a form, as a person writes it, or how it is found out. */
export function fieldValue(f: FormField, w: ReportWords): string {
  if ('missing' in f) return w.long.operator.missing(w.said(f.missing, `obtain:${f.id}`));
  const { value, unit } = f;
  if (typeof value === 'number') return formatIn(value, unit ?? '');
  if (typeof value === 'boolean') return value ? w.long.yes : w.long.no;
  // a word that stands for a choice
  return /^[a-z]+(-[a-z]+)+$/.test(value) ? w.long.label(value) : w.said(value, `entry:${f.id}`);
}

/** A word that names a limit. */
const limitName = (name: string, { long }: ReportWords): string =>
  (Object.hasOwn(long.limits, name) ? long.limits[name] : undefined) ?? name.replace(/([A-Z])/g, ' $1').toLowerCase();

const sumKnown = (values: readonly unknown[]): number | undefined =>
  values.every((v): v is number => typeof v === 'number') ? values.reduce((a, b) => a + b, 0) : undefined;

type Line = OptionPlan['supply']['demand']['methods'][number]['lines'][number];
/** What there would be without a load control, where it holds something back. */
const uncutOf = ({ demand, existing, charge }: Line): number | undefined => {
  const whole = sumKnown([existing, charge]);
  return whole !== undefined && typeof demand === 'number' && whole > demand + 1e-9 ? whole : undefined;
};

/** Demand by method and line, before and after the charge points; with a load control also what it holds back. */
export function demandTable({ supply: { demand } }: OptionPlan, w: ReportWords): readonly Block[] {
  const { supply: words } = w.long;
  const known = demand.methods.filter((m) => m.lines.length > 0);
  const limited = known.some((m) => m.lines.some((l) => uncutOf(l) !== undefined));
  return grid(
    words.known(demand.methods.length - known.length),
    limited ? words.limitedHead : words.knownHead,
    known.flatMap((m) =>
      m.lines.map((l) => {
        const uncut = uncutOf(l);
        return [
          w.said(m.title, `method:${m.method}`),
          l.line,
          ampsOf(l.existing, w),
          ampsOf(uncut ?? l.demand, w),
          ...(limited ? [ampsOf(l.demand, w)] : []),
        ];
      }),
    ),
    limited ? [2, 3, 4] : [2, 3],
  );
}

/** The demand by each method as a picture; nothing where none is known. */
export function demandFigure({ supply }: OptionPlan, w: ReportWords): readonly Block[] {
  const { demand } = supply;
  const bars = demand.methods.flatMap((m) => {
    const lines = m.lines.flatMap((l) =>
      typeof l.demand === 'number' ? [{ current: l.demand as number, uncut: uncutOf(l) ?? l.demand }] : [],
    );
    const [worst] = lines.sort((x, y) => y.current - x.current || y.uncut - x.uncut);
    const name = w.said(m.title, `method:${m.method}`);
    return worst ? [{ name, ...worst, governs: m.method === demand.governing.method }] : [];
  });
  const limits = [
    ...new Map(
      supply.results.flatMap((r) =>
        r.limit && r.limit.unit === 'A'
          ? [
              [
                `${r.limit.name} ${r.limit.value}`,
                { name: limitName(r.limit.name, w), current: r.limit.value },
              ] as const,
            ]
          : [],
      ),
    ).values(),
  ];
  if (bars.length === 0) return [];
  const { picture: title, pictureNote: caption } = w.long.supply;
  return [{ kind: 'figure', svg: demandPicture({ title, bars, limits, words: w.pictures }), caption }];
}

/** Whether the supply carries it, and whom to tell or to ask. */
export function supplyBlocks(option: OptionPlan, w: ReportWords): readonly Block[] {
  const { supply, control, notification } = option;
  const { demand } = supply;
  const { decision } = notification;
  const { supply: words, operator } = w.long;
  const method = (m: { readonly method: string; readonly title: string }) => w.said(m.title, `method:${m.method}`);
  return [
    heading(2, words.title),
    { kind: 'verdict', verdict: supply.overall.verdict, text: words.carries },
    paragraph(words.takenBy(method(demand.governing))),
    paragraph(words.order(w.said(demand.governedBy, 'order'))),
    paragraph(words.limiter(w.said(supply.limiter.because, 'limiter'))),
    ...grid(
      words.demand,
      words.demandHead,
      demand.methods.flatMap((m) =>
        m.lines.length > 0
          ? m.lines.map((l, i) => [
              method(m),
              l.line,
              ampsOf(l.existing, w),
              ampsOf(l.demand, w),
              i === 0 ? w.said(m.assumption, `assumption:${m.method}`) : '',
            ])
          : [
              [
                method(m),
                '',
                '',
                w.long.label(m.verdict),
                m.because === undefined ? gapsWords(m.gaps, w) : w.said(m.because, `because:${m.method}`),
              ],
            ],
      ),
      [2, 3],
    ),
    ...demand.cautions.map((c) => cautionOf(c, w)),
    ...demandFigure(option, w),
    ...checks([...supply.results, ...control], w),
    ...list(supply.settings.map((s) => words.setting(s.point, ampsOf(s.setting, w))).slice(0, 6)),
    heading(2, operator.title),
    paragraph(
      [operator.route(w.long.label(decision.route)), decision.meanwhile && w.said(decision.meanwhile, 'meanwhile')]
        .filter(Boolean)
        .join(' '),
    ),
    ...grid(
      operator.decides,
      operator.head,
      decision.results.map((r) => [operator.judged[r.verdict], ...checkRow(r, w).slice(1)]),
    ),
    ...decision.cautions.map((c) => cautionOf(c, w)),
    ...cautionsOf(decision.results, w),
    ...list(decision.duties.map((d) => dutyWords(d, w))),
    ...grid(
      operator.form,
      operator.formHead,
      notification.fields.map((f) => [fieldTitle(f, w), fieldValue(f, w)]),
    ),
  ];
}
