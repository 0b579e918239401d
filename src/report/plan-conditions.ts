import { citation } from '../core/index.js';
import type { ConditionLimit, OptionPlan, ToConfirm } from '../site/index.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph } from './block.js';

function limitWords(c: ToConfirm, word: string, limit: ConditionLimit | undefined): readonly string[] {
  if (!limit) return [];
  const { instead } = limit;
  const built = instead
    ? `${instead.construction.replaceAll('-', ' ')} ${instead.area} mm² behind ${instead.rating} A instead`
    : `open: ${limit.because.charAt(0).toLowerCase()}${limit.because.slice(1)}`;
  return [
    `${word} ${formatIn(Number(limit.value.toPrecision(4)), c.unit ?? '')}; ${word === 'at most' ? 'above' : 'below'} it ${built}`,
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
