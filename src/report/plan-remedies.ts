import type { Plan } from '../site/index.js';
import { type Block, grid, heading } from './block.js';
import { hoursWords } from './plan-work.js';

/** What could be put right, or done another way: a line for each combination that was assessed and passes, or is open. */
export function remedyBlocks({ remedies }: Plan): readonly Block[] {
  if (remedies.length === 0) return [];
  return [
    heading(2, 'What can be put right'),
    ...grid(
      'Each assessed as a whole; hours of the whole job, likely and least to most',
      ['verdict', 'what is done', 'subject to', 'operator', 'hours'],
      remedies.map((o) => [
        { verdict: o.verdict },
        o.remedies.map((r) => r.what).join('; '),
        o.subjectTo.join('; '),
        o.route === o.routeBefore
          ? o.route.replaceAll('-', ' ')
          : `${o.route.replaceAll('-', ' ')} in place of ${o.routeBefore.replaceAll('-', ' ')}`,
        hoursWords(o.hours),
      ]),
    ),
  ];
}
