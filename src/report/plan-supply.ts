import type { OptionPlan } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, caution, grid, heading, list, paragraph } from './block.js';
import { cautionsOf, checkRow, checks, dutyWords } from './plan-checks.js';
import { gapWords } from './sheet.js';
import { demandPicture } from './svg/index.js';

/** A condition that is not met sends the notice another way: it is no fault of the work. */
export const conditionWords = {
  pass: 'met',
  fail: 'not met',
  conditional: 'met on conditions',
  'not-determined': 'open',
  'not-required': 'does not apply',
} as const;

/** A current, or that it is not known. */
export const ampsOf = (value: unknown): string => (typeof value === 'number' ? formatIn(value, 'A') : 'not known');

/** An entry of a form, as a person writes it. */
export const fieldValue = (value: string | number | boolean, unit?: string): string =>
  typeof value === 'number'
    ? formatIn(value, unit ?? '')
    : typeof value === 'boolean'
      ? value
        ? 'yes'
        : 'no'
      : plain(value);
/** A word that stands for a choice, without its hyphens. */
const plain = (value: string): string => (/^[a-z]+(-[a-z]+)+$/.test(value) ? value.replaceAll('-', ' ') : value);
const words = (name: string): string =>
  name
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .replace('cut out', 'cut-out');

const sumKnown = (values: readonly unknown[]): number | undefined =>
  values.every((v): v is number => typeof v === 'number') ? values.reduce((a, b) => a + b, 0) : undefined;

/** The demand by each method as a picture; nothing where none is known. */
export function demandFigure({ supply }: OptionPlan): readonly Block[] {
  const { demand } = supply;
  const bars = demand.methods.flatMap((m) => {
    const lines = m.lines.flatMap((l) =>
      typeof l.demand === 'number'
        ? [{ current: l.demand as number, uncut: sumKnown([l.existing, l.charge]) ?? l.demand }]
        : [],
    );
    const [worst] = lines.sort((x, y) => y.current - x.current || y.uncut - x.uncut);
    return worst ? [{ name: m.title, ...worst, governs: m.method === demand.governing.method }] : [];
  });
  const limits = [
    ...new Map(
      supply.results.flatMap((r) =>
        r.limit && r.limit.unit === 'A'
          ? [[`${r.limit.name} ${r.limit.value}`, { name: words(r.limit.name), current: r.limit.value }] as const]
          : [],
      ),
    ).values(),
  ];
  if (bars.length === 0) return [];
  return [
    {
      kind: 'figure',
      svg: demandPicture({ title: 'Maximum demand by method, worst line', bars, limits }),
      caption: 'The governing method is marked.',
    },
  ];
}

/** Whether the supply carries it, and whom to tell or to ask. */
export function supplyBlocks(option: OptionPlan): readonly Block[] {
  const { supply, control, notification } = option;
  const { demand } = supply;
  const { decision } = notification;
  return [
    heading(2, 'Supply'),
    { kind: 'verdict', verdict: supply.overall.verdict, text: 'the supply carries house and charge points' },
    paragraph(`The demand is taken by: ${demand.governing.title}. The order: ${demand.governedBy}.`),
    paragraph(`Load limiter: ${supply.limiter.because}.`),
    ...grid(
      'Maximum demand by each method',
      ['method', 'line', 'without charge points', 'with charge points', 'assumptions'],
      demand.methods.flatMap((m) =>
        m.lines.length > 0
          ? m.lines.map((l, i) => [m.title, l.line, ampsOf(l.existing), ampsOf(l.demand), i === 0 ? m.assumption : ''])
          : [[m.title, '', '', m.verdict.replace('-', ' '), m.because ?? (m.gaps ?? []).map(gapWords).join('; ')]],
      ),
      [2, 3],
    ),
    ...demand.cautions.map(caution),
    ...demandFigure(option),
    ...checks([...supply.results, ...control]),
    ...list(
      supply.settings
        .map(
          (s) => `Largest setting of charge point ‘${s.point}’ that fits without a load limiter: ${ampsOf(s.setting)}`,
        )
        .slice(0, 6),
    ),
    heading(2, 'Network operator'),
    paragraph(`Route: ${decision.route.replaceAll('-', ' ')}.${decision.meanwhile ? ` ${decision.meanwhile}` : ''}`),
    ...grid(
      'What decides the route',
      ['', 'condition', 'figures', 'where it stands'],
      decision.results.map((r) => [conditionWords[r.verdict], ...checkRow(r).slice(1)]),
    ),
    ...decision.cautions.map(caution),
    ...cautionsOf(decision.results),
    ...list(decision.duties.map(dutyWords)),
    ...grid(
      'For the form, in a layout of our own',
      ['field', 'entry'],
      notification.fields.map((f) => [f.title, 'missing' in f ? `missing: ${f.missing}` : fieldValue(f.value, f.unit)]),
    ),
  ];
}
