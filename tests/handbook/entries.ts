import { type Check, type Formula, type Procedure, type Relation, type Table, termOf } from '../../src/index.js';
import type { Definition } from '../../src/verify/index.js';
import type { CaseFile } from '../support/evidence.js';
import type { PublishedCase } from '../support/published.js';
import { equationTex } from './tex.js';
import { axisWords, escaped, provenanceWords, rangeWords, sourceLine, symbolOf, unitWords } from './words.js';
import type { WorkedLine } from './worked.js';

/** What all entries draw on. */
export interface Matter {
  /** All files of published cases. */
  readonly files: readonly CaseFile[];
  /** A worked line for a formula. */
  readonly worked: WorkedLine;
  /** Where a definition is imported from: its name and the specifiers of the entries that have it. */
  readonly publicName: (d: Definition) => { readonly name: string; readonly entries: readonly string[] } | undefined;
}

/** The published figures that exercise a definition, one line for each place where they are printed. */
function compared(d: { readonly id: string }, files: readonly CaseFile[]): string {
  const places = files.flatMap(({ path, cases }) => {
    const own = cases.filter((c) => c.exercises.includes(d.id));
    const where = (c: PublishedCase) => `${c.source.document}, ${c.source.where}`;
    return [...new Set(own.map(where))].map((place) => ({ place, path, cases: own.filter((c) => where(c) === place) }));
  });
  const lines = places.map(({ place, path, cases }) => {
    const known = [...new Set(cases.map((c) => c.provenance))].map((p) => {
      const count = cases.filter((c) => c.provenance === p).length;
      return count === cases.length ? provenanceWords(p) : `${count} ${provenanceWords(p)}`;
    });
    const differ = cases.filter((c) => c.differs).length;
    const apart = differ > 0 ? `; ${differ} known to differ` : '';
    const figures = cases.length === 1 ? '1 figure' : `${cases.length} figures`;
    return `- ${escaped(place)}: ${figures} (${known.join(', ')}${apart}), [\`${path.split('/').pop()}\`](../../${path})`;
  });
  return lines.length === 0 ? 'Compared with no published figure.' : `Compared with:\n\n${lines.join('\n')}`;
}

const heading = (d: Definition, matter: Matter): string => {
  const found = matter.publicName(d);
  const from = found ? `\`${found.name}\` of ${found.entries.map((e) => `\`${e}\``).join(', ')}` : 'not public';
  return `<a id="${d.id.replace(/\W+/g, '-')}"></a>\n\n### ${escaped(d.title)}\n\n\`${d.id}\`, ${from}`;
};

const gives = (output: string): string => {
  const term = termOf(output);
  const unit = term?.unit === '1' ? 'a plain number' : `in ${term?.unit}`;
  return `Gives ${symbolOf(output)}, the ${escaped(term?.words ?? output)}, ${unit}.`;
};

/** The entry of a formula or a relation. */
export function formulaEntry(f: Formula | Relation, matter: Matter): string {
  const inputs = f.inputs.map((name) => {
    const term = termOf(name);
    const range = rangeWords({ ...term, ...(f.valid as Record<string, object> | undefined)?.[name] });
    return `| ${symbolOf(name)} | \`${name}\` | ${escaped(term?.words ?? '')} | ${unitWords(term?.unit ?? '')} | ${range} |`;
  });
  const solved =
    f.kind === 'relation'
      ? [`Solved for ${symbolOf(f.output)}; the terms sum to zero within ${f.tolerance} of the largest.`]
      : [];
  return [
    heading(f, matter),
    `$$\n${equationTex(f)}\n$$`,
    gives(f.output),
    ...solved,
    `| | input | | unit | range |\n| --- | --- | --- | --- | --- |\n${inputs.join('\n')}`,
    `Source: ${sourceLine(f.source)}`,
    `Worked: ${matter.worked(f)}`,
    compared(f, matter.files),
  ].join('\n\n');
}

/** The entry of a procedure. */
export function procedureEntry(p: Procedure, matter: Matter): string {
  return [
    heading(p, matter),
    gives(p.output),
    `Method: ${escaped(p.method)}${/\.$/.test(p.method) ? '' : '.'}`,
    `Source: ${sourceLine(p.source)}`,
    compared(p, matter.files),
  ].join('\n\n');
}

const cell = (v: string | number | null | undefined): string =>
  v === null || v === undefined ? '–' : escaped(String(v));

/** The entry of a table, with its cells as printed. */
export function tableEntry(t: Table, matter: Matter): string {
  const last = t.axes[t.axes.length - 1];
  const term = termOf(t.cell);
  const unit = t.printed ?? t.unit;
  const rowHead =
    last && 'unit' in last ? `${symbolOf(last.name)}${last.unit === '1' ? '' : `, ${last.unit}`}` : (last?.name ?? '');
  const heads = t.columns.map((c) => (c.length === 0 ? `${symbolOf(t.cell)}` : c.map(cell).join('<br>')));
  const cells = t.rows.reduce((sum, row) => sum + row.slice(1).filter((v) => v !== null).length, 0);
  const apart = Object.entries(t.provenanceOf ?? {}).map(([key, p]) => `- ${escaped(key)}: ${provenanceWords(p)}`);
  return [
    heading(t, matter),
    `A cell is ${symbolOf(t.cell)}, the ${escaped(term?.words ?? t.cell)}, ${unit === '1' ? 'a plain number' : `in ${unit}`}. ${cells} cells.`,
    `Axes:\n\n${t.axes.map((a) => `- ${axisWords(a)}`).join('\n')}`,
    `Source: ${sourceLine(t.source)}`,
    ...(apart.length > 0 ? [`Known otherwise:\n\n${apart.join('\n')}`] : []),
    ...(t.notes?.length ? [`Notes:\n\n${t.notes.map((n) => `- ${escaped(n)}`).join('\n')}`] : []),
    [
      `| ${rowHead} | ${heads.join(' | ')} |`,
      `| ---: |${heads.map(() => ' ---: |').join('')}`,
      ...t.rows.map((row) => `| ${row.map(cell).join(' | ')} |`),
    ].join('\n'),
    compared(t, matter.files),
  ].join('\n\n');
}

function requirement(c: Check): string {
  const role = (name: string) => `${symbolOf(name)} (${escaped(termOf(name)?.words ?? name)})`;
  switch (c.kind) {
    case 'at-most':
      return `Passes when ${role(c.value)} is at most ${role(c.limit)}.`;
    case 'at-least':
      return `Passes when ${role(c.value)} is at least ${role(c.limit)}.`;
    case 'within':
      return `Passes when ${role(c.value)} lies between ${role(c.least)} and ${role(c.most)}.`;
    case 'holds':
      return 'Passes when the statement holds.';
    case 'any-of':
      return 'Passes when any of its alternatives does.';
  }
}

/** The entry of a check. */
export function checkEntry(c: Check, matter: Matter): string {
  const weight = c.weight === 'rule' ? 'A rule: it decides the verdict.' : 'Advice: reported beside the verdict.';
  return [
    heading(c, matter),
    `${requirement(c)} ${weight}`,
    `Source: ${sourceLine(c.source)}`,
    ...(c.caution ? [`> **Caution.** ${escaped(c.caution)}`] : []),
  ].join('\n\n');
}
