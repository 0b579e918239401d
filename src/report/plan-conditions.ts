import { citation } from '../core/index.js';
import type { ConditionLimit, OptionPlan, ToConfirm } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph } from './block.js';
import type { ReportWords } from './words/pages.js';

/** To four digits, and never beyond the limit. */
function within(value: number, round: (n: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 3);
  return Number((round(value / step) * step).toPrecision(4));
}

/** What is built, or no longer holds, where a fact is beyond its limit. */
function otherwise({ instead, advice, because }: ConditionLimit, w: ReportWords): string {
  const { conditions } = w.long;
  if (!instead) return (advice ? conditions.advised : conditions.open)(w.said(because, 'check'));
  const { construction, area, rating } = instead;
  return conditions.instead(w.long.label(construction), formatIn(area, 'mm²'), formatIn(rating, 'A'));
}

/** How far a fact may be from what was assumed; nothing where no limit was asked for. */
export function standsFor(c: ToConfirm, w: ReportWords): string | undefined {
  const { atLeast, atMost } = w.long.conditions;
  const amount = ({ value }: ConditionLimit, round: (n: number) => number) =>
    formatIn(within(value, round), c.unit ?? '');
  const limits = [
    ...(c.atLeast ? [atLeast(amount(c.atLeast, Math.ceil), otherwise(c.atLeast, w))] : []),
    ...(c.atMost ? [atMost(amount(c.atMost, Math.floor), otherwise(c.atMost, w))] : []),
  ];
  return limits.join('. ') || undefined;
}

/** What is assumed, what it is taken to be, and how it is confirmed. */
export const conditionWords = (c: ToConfirm, w: ReportWords) => ({
  title: w.said(c.title, 'condition'),
  assumed: w.said(c.words, 'assumed'),
  confirm: w.said(c.confirm, 'confirm'),
});

/** The sheet that a person takes to the site: each assumed fact, how it is confirmed, and how far it may be off. */
export function conditionBlocks({ conditions }: OptionPlan, w: ReportWords): readonly Block[] {
  if (conditions.length === 0) return [];
  const { conditions: words } = w.long;
  return [
    heading(2, words.title),
    paragraph(words.note),
    ...grid(
      '',
      words.head,
      conditions.map((c) => {
        const { title, assumed, confirm } = conditionWords(c, w);
        const source =
          c.source?.provenance === 'common-practice'
            ? words.practice
            : c.source
              ? w.said(citation(c.source), 'source')
              : '';
        return [title, assumed, standsFor(c, w) ?? words.asAssumed, confirm, '', source];
      }),
    ),
  ];
}
