import type { OptionPlan } from '../site/index.js';
import type { StageDemand } from '../site/stages.js';
import { type Block, grid, paragraph } from './block.js';
import { ampsOf } from './plan-supply.js';
import type { ReportWords } from './words/pages.js';

/** A row for every stage; those that come to the same share one, the first by its name. */
function alikeRows(
  stages: readonly StageDemand[],
  cellsOf: (stage: StageDemand) => readonly string[],
  w: ReportWords,
): readonly (readonly string[])[] {
  const rows = new Map<string, { readonly runs: string[]; readonly cells: readonly string[] }>();
  for (const stage of stages) {
    const cells = cellsOf(stage);
    const row = rows.get(cells.join('|')) ?? { runs: [], cells };
    row.runs.push(stage.run);
    rows.set(cells.join('|'), row);
  }
  return [...rows.values()].map(({ runs: [first = '', ...more], cells }) => [
    more.length > 1 ? w.long.stages.like(first, more.length) : [first, ...more].join(', '),
    ...cells,
  ]);
}

/** Demand by stage of the tree: a line for every riser, floor and feeder. */
export function stageBlocks({ stages = [] }: OptionPlan, w: ReportWords): readonly Block[] {
  if (stages.length === 0) return [];
  const { stages: words } = w.long;
  const others = (s: StageDemand) =>
    s.byMethod
      .filter((m) => !m.governs)
      .map((m) => w.long.named(w.said(m.title, 'method'), ampsOf(m.demand, w)))
      .join('; ');
  return [
    ...grid(
      words.title,
      words.head,
      alikeRows(
        stages,
        (s) => [
          String(s.dwellings),
          String(s.points),
          ampsOf(s.demand, w),
          ampsOf(s.existing, w),
          ampsOf(s.limit, w),
          words.advice[s.advice],
          others(s),
        ],
        w,
      ),
      [1, 2, 3, 4, 5],
    ),
    paragraph(words.note),
  ];
}
