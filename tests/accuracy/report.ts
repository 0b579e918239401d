import { cellProvenance } from '../../src/core/provenance.js';
import type { Provenance, Table } from '../../src/index.js';
import { pagePlans } from '../handbook/pages.js';
import { escaped, provenanceWords } from '../handbook/words.js';
import { sizeBySize } from '../physics/heat/size-by-size.js';
import type { CrossCheck, CrossResult } from '../support/cross-check.js';
import type { PublishedCase } from '../support/published.js';
import { type SlipScore, slipScores, type Topic, topics } from './matter.js';

/** The topic whose deviations are printed size by size. */
const heatTitle = pagePlans.find((p) => p.name === 'heat-balance')?.title;

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
const plural = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;
const fixed = (value: number, places: number) => {
  const text = value.toFixed(places);
  return /^-0(\.0+)?$/.test(text) ? text.slice(1) : text;
};
const percent = (share: number, places = 0) => `${fixed(100 * share, places)} %`;
const rowsOf = (head: readonly string[], rows: readonly (readonly (string | number)[])[]) =>
  [
    `| ${head.join(' | ')} |`,
    `|${head.map((h) => (/^(published|ours|difference|cases|agree|differ|cross|formulas|without|cells|mean|spread|from|to|slips|noticed)\b/.test(h) ? ' ---: |' : ' --- |')).join('')}`,
    ...rows.map((row) => `| ${row.join(' | ')} |`),
  ].join('\n');

/** What a published figure came to. */
export interface Outcome {
  readonly case: PublishedCase;
  readonly ours: number;
  readonly difference: number;
  readonly verdict: 'agrees' | 'differs, explained' | 'DISAGREES';
}

/** Compares a published figure with ours. */
export function outcomeOf(c: PublishedCase): Outcome {
  const ours = c.ours();
  const difference = ours - c.published;
  const near = Math.abs(difference) <= c.tolerance;
  const explained = c.differs !== undefined;
  return {
    case: c,
    ours,
    difference,
    verdict:
      near && !explained ? 'agrees' : !near && explained && Number.isFinite(ours) ? 'differs, explained' : 'DISAGREES',
  };
}

/** Decimal places that show a difference of a tenth of what is allowed; what lies below is rounding. */
const placesFor = ({ tolerance, published }: PublishedCase) =>
  tolerance === 0
    ? (String(published).split('.')[1]?.length ?? 0)
    : Math.min(12, Math.max(0, Math.ceil(-Math.log10(tolerance)) + 1));

function caseRows(outcomes: readonly Outcome[]): string {
  return rowsOf(
    ['what', 'source', 'how well known', 'published', 'ours', 'difference', 'verdict'],
    outcomes.map(({ case: c, ours, difference, verdict }) => {
      const places = placesFor(c);
      return [
        escaped(c.about),
        escaped(`${c.source.document}: ${c.source.where}`),
        c.provenance === 'derived' ? 'worked out apart, our own pack' : provenanceWords(c.provenance),
        `${c.published} ${c.unit}`.trim(),
        fixed(ours, places),
        fixed(difference, places),
        c.differs === undefined ? verdict : `${verdict}: ${escaped(c.differs)}`,
      ];
    }),
  );
}

const spread = ({ differences }: CrossResult): readonly string[] => {
  if (!differences || differences.length === 0) return ['', '', '', ''];
  const mean = sum(differences) / differences.length;
  const deviation = Math.sqrt(sum(differences.map((d) => (d - mean) ** 2)) / differences.length);
  return [mean, deviation, Math.min(...differences), Math.max(...differences)].map((d) => percent(d, 1));
};

/** A cross-check with what it came to. */
export interface Crossed {
  readonly check: CrossCheck;
  readonly result: CrossResult;
}

const crossRows = (all: readonly Crossed[]) =>
  rowsOf(
    ['what', 'against', 'demanded', 'cases', 'agree', 'mean difference', 'spread', 'from', 'to'],
    all.map(({ check, result }) => [
      escaped(check.about),
      escaped(check.against),
      escaped(check.demanded),
      result.compared,
      result.agreed,
      ...spread(result),
    ]),
  );

/** How well the printed cells of a table are known. */
export function cellsByProvenance(t: Table): ReadonlyMap<Provenance, number> {
  const found = new Map<Provenance, number>();
  for (const [row, ...cells] of t.rows)
    for (const [c, cell] of cells.entries()) {
      if (cell === null) continue;
      const at = [...(t.columns[c] ?? []), row as string | number];
      const p = cellProvenance(t, Object.fromEntries(t.axes.map((a, i) => [a.name, at[i] as string | number])));
      if (p) found.set(p, (found.get(p) ?? 0) + 1);
    }
  return found;
}

const cellsOf = (t: Table) => sum([...cellsByProvenance(t).values()]);
const recalledOf = (t: Table) => cellsByProvenance(t).get('memory') ?? 0;
const order: readonly Provenance[] = [
  'attested',
  'two-sources',
  'one-source',
  'derived',
  'definition',
  'common-practice',
  'memory',
];
const mixture = (t: Table) => {
  const cells = cellsByProvenance(t);
  const held = order.filter((p) => cells.has(p));
  return held.map((p) => (held.length === 1 ? provenanceWords(p) : `${cells.get(p)} ${provenanceWords(p)}`)).join('; ');
};

const tableRows = (tables: readonly Table[], exercised: Exercised, slips: ReadonlyMap<string, readonly SlipScore[]>) =>
  rowsOf(
    ['table', 'cells', 'how well known', 'published figures', 'slips of a digit', 'noticed, %'],
    tables.map((t) => {
      const score = slips.get(t.id)?.[0];
      return [
        `${escaped(t.title)}, \`${t.id}\``,
        cellsOf(t),
        mixture(t),
        exercised.get(t.id)?.length ?? 0,
        score?.slips ?? 'not measured',
        score?.noticed ?? '',
      ];
    }),
  );

type Exercised = ReadonlyMap<string, readonly PublishedCase[]>;

/** The published figures that exercise each definition. */
function exercisedBy(all: readonly PublishedCase[]): Exercised {
  const found = new Map<string, PublishedCase[]>();
  for (const c of all) for (const id of c.exercises) found.set(id, [...(found.get(id) ?? []), c]);
  return found;
}

/** How many calculations some figures are of: what the same document has by the same definitions counts once. */
const timesOf = (outcomes: readonly Outcome[], among: (c: PublishedCase) => boolean): number =>
  new Set(
    outcomes
      .filter((o) => among(o.case))
      .map(({ case: c }) => `${c.source.document}: ${[...c.exercises].sort().join()}`),
  ).size;

const named = (
  all: readonly { readonly id: string; readonly title: string; readonly source: { readonly provenance: Provenance } }[],
) => all.map((f) => `- ${escaped(f.title)}, \`${f.id}\`: ${provenanceWords(f.source.provenance)}`).join('\n');

const weak: readonly Provenance[] = ['memory', 'common-practice'];
const isSeen = (c: PublishedCase) => c.provenance === 'one-source' || c.provenance === 'two-sources';
const seenFor = (id: string, exercised: Exercised) => (exercised.get(id) ?? []).filter(isSeen).length;

/** What a topic holds that rests on memory or custom, and what speaks for it. */
function unverified(topic: Topic, exercised: Exercised, slips: ReadonlyMap<string, readonly SlipScore[]>): string[] {
  const { formulas, procedures, tables, checks } = topic.definitions;
  const support = (id: string) => {
    const seen = seenFor(id, exercised);
    return seen > 0
      ? `; ${plural(seen, 'published figure')} seen elsewhere ${seen === 1 ? 'exercises' : 'exercise'} it`
      : '';
  };
  const line = (kind: string, d: { id: string; title: string; source: { provenance: Provenance } }) =>
    `- ${kind}: ${escaped(d.title)}, \`${d.id}\`: ${provenanceWords(d.source.provenance)}${support(d.id)}`;
  const weakOnes = <T extends { source: { provenance: Provenance } }>(all: readonly T[]) =>
    all.filter((d) => weak.includes(d.source.provenance));
  return [
    ...weakOnes(formulas).map((f) => line('formula', f)),
    ...weakOnes(procedures).map((p) => line('procedure', p)),
    ...weakOnes(checks).map((c) => line('check', c)),
    ...tables.flatMap((t) => {
      const cells = cellsByProvenance(t);
      const held = weak.filter((p) => cells.has(p));
      if (held.length === 0) return [];
      const noticed = slips.get(t.id)?.[0]?.noticed;
      const guarded = noticed === undefined ? '' : `; ${noticed} % of slips of a digit would be noticed`;
      const counts = held.map((p) => `${cells.get(p)} ${provenanceWords(p)}`).join(', ');
      return [`- table: ${escaped(t.title)}, \`${t.id}\`: of ${cellsOf(t)} cells ${counts}${guarded}${support(t.id)}`];
    }),
  ];
}

/** The whole report, with what a test has to look at. */
export interface Report {
  readonly text: string;
  readonly outcomes: readonly Outcome[];
  readonly crossed: readonly Crossed[];
}

/** Writes the report: always the same for the same source. */
export function accuracyReport(): Report {
  const all = topics();
  const slips = slipScores();
  const exercised = exercisedBy(all.flatMap((t) => t.cases));
  const parts = all.map((topic) => ({
    topic,
    outcomes: topic.cases.map(outcomeOf),
    crossed: topic.crossChecks.map((check) => ({ check, result: check.run() })),
  }));
  const outcomes = parts.flatMap((p) => p.outcomes);
  const crossed = parts.flatMap((p) => p.crossed);
  const tables = all.flatMap((t) => t.definitions.tables);
  const formulas = all.flatMap((t) => t.definitions.formulas);
  const checks = all.flatMap((t) => t.definitions.checks).filter((c) => c.kind !== 'holds' && c.kind !== 'any-of');
  const checksWithout = checks.filter((c) => !exercised.has(c.id));
  const others = all.flatMap((t) => [...t.definitions.procedures, ...t.definitions.checks]);
  const cells = sum(tables.map(cellsOf));
  const recalledCells = sum(tables.map(recalledOf));
  const recalled = [...formulas, ...others].filter((d) => weak.includes(d.source.provenance));
  const without = formulas.filter((f) => !exercised.has(f.id));
  const defined = without.filter((f) => f.source.provenance === 'definition');
  const withoutSeen = formulas.filter((f) => seenFor(f.id, exercised) === 0);
  const of = (verdict: Outcome['verdict']) => outcomes.filter((o) => o.verdict === verdict).length;
  const knownHow = (p: Provenance) => outcomes.filter((o) => o.case.provenance === p).length;
  const [figures, factors, rest] = slips.get('all') as readonly SlipScore[];
  const scores = [
    figures
      ? `${figures.noticed} % of ${figures.slips} slips of one digit in the tables of capacity and voltage drop`
      : '',
    factors ? `${factors.noticed} % of ${factors.slips} in those of rating factors` : '',
    rest ? `${rest.noticed} % of ${rest.slips} in all others` : '',
  ].filter(Boolean);

  const summary = [
    `- Seen in print: ${knownHow('two-sources') + knownHow('one-source')} figures (${knownHow('two-sources')} in two texts), of ${timesOf(outcomes, isSeen)} calculations.`,
    `- Worked out apart, by a pack of calculations of this project’s own making, which no outside text confirms: ${knownHow('derived')} figures. A formula that was run over one table counts once: these are ${timesOf(outcomes, (c) => c.provenance === 'derived')} calculations.`,
    `- Recalled, so that agreement shows that the code does what was recalled and no more: ${knownHow('memory')} figures, of ${timesOf(outcomes, (c) => c.provenance === 'memory')} calculations.`,
    `- Of all ${outcomes.length}, ${of('agrees')} agree within the last printed place, ${of('differs, explained')} differ for a reason that is stated beside them, ${of('DISAGREES')} disagree.`,
    `- ${plural(crossed.length, 'cross-check')} against another way of computing: ${sum(crossed.map((c) => c.result.agreed))} of ${sum(crossed.map((c) => c.result.compared))} cases agree as demanded.`,
    `- ${plural(formulas.length, 'formula')}: the code of each is compared with its written expression, evaluated with units by a general library, at random values and at every edge (1e-12 of the result; what is solved by iteration, by its residual). ${withoutSeen.length} of them are exercised by no figure seen in print; ${without.length} of these by none at all, ${without.length - defined.length} of which are no definitions.`,
    `- ${plural(cells, 'printed cell')} in ${plural(tables.length, 'table')}: ${recalledCells} (${percent(recalledCells / cells)}) are recalled, not seen. The guards would notice ${scores.join(' and ')}; that finds slips of typing, not of memory.`,
    `- ${plural(recalled.length, 'formula, procedure or check', 'formulas, procedures and checks')} of ${formulas.length + others.length} rest on memory or custom. [What is not verified](#what-is-not-verified) names every one.`,
  ];

  const overview = rowsOf(
    [
      'topic',
      'cases',
      'agree',
      'differ, explained',
      'cross-checks',
      'formulas',
      'without a figure',
      'cells',
      'from memory',
    ],
    parts.map(({ topic, outcomes: own }) => [
      topic.title,
      own.length || '',
      own.filter((o) => o.verdict === 'agrees').length || '',
      own.filter((o) => o.verdict !== 'agrees').length || '',
      topic.crossChecks.length || '',
      topic.definitions.formulas.length || '',
      topic.definitions.formulas.filter((f) => !exercised.has(f.id)).length || '',
      sum(topic.definitions.tables.map(cellsOf)) || '',
      sum(topic.definitions.tables.map(recalledOf)) || '',
    ]),
  );

  const sections = parts.flatMap(({ topic, outcomes: own, crossed: checks }) => {
    const { tables: held } = topic.definitions;
    if (own.length + checks.length + held.length === 0) return [];
    return [
      `## ${topic.title}`,
      ...(own.length > 0 ? ['Figures from elsewhere:', caseRows(own)] : []),
      ...(checks.length > 0 ? ['Another way of computing:', crossRows(checks)] : []),
      ...(topic.title === heatTitle ? sizeBySize() : []),
      ...(held.length > 0 ? ['Tables:', tableRows(held, exercised, slips)] : []),
    ];
  });

  const doubts = parts.flatMap(({ topic }) => {
    const lines = unverified(topic, exercised, slips);
    return lines.length > 0 ? [`### ${topic.title}`, lines.join('\n')] : [];
  });

  const text = [
    '<!-- Written by `npm run accuracy`; not to be edited by hand. -->',
    '# Accuracy',
    'What the figures of this library were compared with, and what nobody has compared yet. Every number here is computed from the definitions, the published cases and the tests; none is typed. First what was seen in print, then what was worked out apart by this project itself, then what is recalled: the three are not of one worth.',
    '> Figures and rules of BS 7671 are those of 2018+A2 and +A3, withdrawn on 15 October 2026. The text of A4:2026 was not available. The edition in force, local codes and licensed practice go before anything printed here.',
    summary.join('\n'),
    'A figure is that of a document, or of a calculation made apart from the library; where the source is recalled, agreement shows that the code does what was recalled and no more. "Ours" shows one place more than is compared. A difference counts as none within half or one of the last printed place.',
    overview,
    ...sections,
    '## What is not verified',
    'Everything that rests on memory or on the custom of the trade. It has to be compared with the publication before it is relied on.',
    ...doubts,
    '## Formulas without a figure from elsewhere',
    `${without.length} of ${formulas.length}, of which ${defined.length} are true by definition or by the laws of physics. They are proven against their expressions, which shows that the code says what is written, not that what is written is right.`,
    named(without.filter((f) => !defined.includes(f))),
    'True by definition:',
    named(defined),
    '## Formulas whose figures were worked out apart or recalled',
    `${withoutSeen.length - without.length} of ${formulas.length}: no figure that was seen in print exercises them.`,
    named(withoutSeen.filter((f) => exercised.has(f.id))),
    '## Checks without a figure from elsewhere',
    `${checksWithout.length} of ${checks.length} checks that compare figures. What they compare is exercised where it is computed; the comparison itself by tests alone.`,
    named(checksWithout),
  ].join('\n\n');
  return { text: `${text}\n`, outcomes, crossed };
}
