import type { OptionPlan } from '../site/index.js';
import type { StageDemand } from '../site/stages.js';
import { type Block, grid, paragraph } from './block.js';
import { ampsOf } from './plan-supply.js';

const adviceWords: Readonly<Record<StageDemand['advice'], string>> = {
  carries: 'carries it',
  'limiter-helps': 'too small for it, unless a load control holds the charge points back',
  'too-small': 'too small without the charge points already',
  'not-determined': 'open: a fact is missing',
};

/** A row for every stage; those that come to the same share one, the first by its name. */
function alikeRows(
  stages: readonly StageDemand[],
  cellsOf: (stage: StageDemand) => readonly string[],
): readonly (readonly string[])[] {
  const rows = new Map<string, { readonly runs: string[]; readonly cells: readonly string[] }>();
  for (const stage of stages) {
    const cells = cellsOf(stage);
    const row = rows.get(cells.join('|')) ?? { runs: [], cells };
    row.runs.push(stage.run);
    rows.set(cells.join('|'), row);
  }
  return [...rows.values()].map(({ runs: [first = '', ...more], cells }) => [
    more.length > 1 ? `${first}, and ${more.length} more like it` : [first, ...more].join(', '),
    ...cells,
  ]);
}

/** Demand by stage of the tree: a line for every riser, floor and feeder. */
export function stageBlocks({ stages = [] }: OptionPlan): readonly Block[] {
  if (stages.length === 0) return [];
  const others = (s: StageDemand) =>
    s.byMethod
      .filter((m) => !m.governs)
      .map((m) => `${m.title}: ${ampsOf(m.demand)}`)
      .join('; ');
  return [
    ...grid(
      'Demand by stage, on the most loaded line',
      [
        'riser or feeder',
        'dwellings',
        'charge points',
        'demand',
        'without charge points',
        'carries',
        '',
        'by other methods',
      ],
      alikeRows(stages, (s) => [
        String(s.dwellings),
        String(s.points),
        ampsOf(s.demand),
        ampsOf(s.existing),
        ampsOf(s.limit),
        adviceWords[s.advice],
        others(s),
      ]),
      [1, 2, 3, 4, 5],
    ),
    paragraph(
      'A riser or feeder that no new charge point hangs on is no part of the verdict on the new work; where it is too small, tell the owner.',
    ),
  ];
}
