import type { Plan } from '../site/index.js';
import { type Block, grid, heading } from './block.js';
import { hoursWords } from './plan-work.js';
import type { ReportWords } from './words/pages.js';

/** What could be put right, or done another way: a line for each combination that was assessed and passes, or is open. */
export function remedyBlocks({ remedies }: Plan, w: ReportWords): readonly Block[] {
  if (remedies.length === 0) return [];
  const { label } = w.long;
  return [
    heading(2, w.long.remedies),
    ...grid(
      w.long.remediesNote,
      w.long.remediesHead,
      remedies.map((o) => [
        { verdict: o.verdict },
        o.remedies.map((r) => w.said(r.what, `remedy:${r.id}`)).join('; '),
        o.subjectTo.map((fact) => w.said(fact, 'fact')).join('; '),
        o.route === o.routeBefore ? label(o.route) : w.long.insteadOf(label(o.route), label(o.routeBefore)),
        hoursWords(o.hours, w),
      ]),
    ),
  ];
}
