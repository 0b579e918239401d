import { citation } from '../core/index.js';
import type { ConditionLimit, OptionPlan, ToConfirm } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph } from './block.js';

/** To four digits, and never beyond the limit. */
function within(value: number, round: (n: number) => number): number {
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) - 3);
  return Number((round(value / step) * step).toPrecision(4));
}

function limitWords(c: ToConfirm, word: 'at least' | 'at most', limit: ConditionLimit | undefined): readonly string[] {
  if (!limit) return [];
  const { instead, advice } = limit;
  const because = `${limit.because.charAt(0).toLowerCase()}${limit.because.slice(1)}`;
  const built = instead
    ? `${instead.construction.replaceAll('-', ' ')} ${instead.area} mm² behind ${instead.rating} A instead`
    : advice
      ? `the rules are met, but no longer what is advised: ${because}`
      : `open: ${because}`;
  return [
    `${word} ${formatIn(within(limit.value, word === 'at most' ? Math.floor : Math.ceil), c.unit ?? '')}; ${word === 'at most' ? 'above' : 'below'} it ${built}`,
  ];
}

/** How far a fact may be from what was assumed; nothing where no limit was asked for. */
export const standsFor = (c: ToConfirm): string | undefined =>
  [...limitWords(c, 'at least', c.atLeast), ...limitWords(c, 'at most', c.atMost)].join('. ') || undefined;

/** The sheet that a person takes to the site: each assumed fact, how it is confirmed, and how far it may be off. */
export function conditionBlocks({ conditions }: OptionPlan): readonly Block[] {
  if (conditions.length === 0) return [];
  return [
    heading(2, 'To confirm on site before the work'),
    paragraph(
      'Nobody has looked at these. The option stands only as far as each of them is found as assumed, or within its limit with the others as assumed; the limits are no permission, and what is found is entered and judged anew.',
    ),
    ...grid(
      '',
      ['what', 'assumed', 'the design stands for', 'how', 'found', 'assumed after'],
      conditions.map((c) => [
        c.title,
        c.words,
        standsFor(c) ?? 'what is assumed',
        c.confirm,
        '',
        c.source?.provenance === 'common-practice' ? 'common practice, no source' : c.source ? citation(c.source) : '',
      ]),
    ),
  ];
}
