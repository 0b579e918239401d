import { vocabulary } from '../../src/index.js';
import { isDefinition, sortDefinitions } from '../../src/verify/definitions.js';
import type { Definition } from '../../src/verify/index.js';
import { type CaseFile, withoutCase } from '../support/evidence.js';
import { checkEntry, formulaEntry, type Matter, procedureEntry, tableEntry } from './entries.js';
import { type PagePlan, pageOf, pagePlans } from './pages.js';
import { escaped, rangeWords, symbolOf, unitWords } from './words.js';
import { workedLines } from './worked.js';

/** A module with what it exports. */
export type Module = readonly [path: string, exports: Readonly<Record<string, unknown>>];

const written = '<!-- Written by `npm run handbook` from the definitions; not to be edited by hand. -->';
const caution =
  '> Figures and rules of BS 7671 are those of 2018+A2 and +A3, withdrawn on 15 October 2026. The text of A4:2026 was not available. The edition in force, local codes and licensed practice go before anything printed here.';
const plural = (n: number, what: string) => `${n} ${what}${n === 1 ? '' : 's'}`;

interface Page extends PagePlan {
  readonly definitions: readonly Definition[];
}

/** Each definition on its page, in the order of the modules. */
function pagesOf(modules: readonly Module[]): readonly Page[] {
  const seen = new Set<unknown>();
  const pages = new Map<string, { plan: PagePlan; definitions: Definition[] }>();
  for (const [path, exports] of modules)
    for (const value of Object.values(exports)) {
      if (!isDefinition(value) || seen.has(value)) continue;
      seen.add(value);
      const plan = pageOf(path);
      const page = pages.get(plan.name) ?? { plan, definitions: [] };
      pages.set(plan.name, page);
      page.definitions.push(value);
    }
  const order = (p: PagePlan) => {
    const place = pagePlans.indexOf(p);
    return place < 0 ? pagePlans.length : place;
  };
  return [...pages.values()]
    .sort((a, b) => order(a.plan) - order(b.plan))
    .map(({ plan, definitions }) => ({ ...plan, definitions }));
}

/** A table is looked for by its number. */
const clauseOf = (d: Definition): string =>
  d.kind === 'table' && d.source.clause?.startsWith('Table') ? `, ${escaped(d.source.clause)}` : '';
const link = (d: Definition, page = ''): string =>
  `[${escaped(d.title)}${clauseOf(d)}](${page}#${d.id.replace(/\W+/g, '-')})`;

function pageText(page: Page, matter: Matter): string {
  const { formulas, procedures, tables, checks } = sortDefinitions(page.definitions);
  const sections: readonly (readonly [string, readonly Definition[], readonly string[]])[] = [
    ['Formulas', formulas, formulas.map((f) => formulaEntry(f, matter))],
    ['Procedures', procedures, procedures.map((p) => procedureEntry(p, matter))],
    ['Tables', tables, tables.map((t) => tableEntry(t, matter))],
    ['Checks', checks, checks.map((c) => checkEntry(c, matter))],
  ];
  const held = sections.filter(([, all]) => all.length > 0);
  return [
    written,
    `# ${page.title}`,
    '[Handbook](README.md)',
    caution,
    held.map(([name, all]) => `- ${name}\n${all.map((d) => `  - ${link(d)}`).join('\n')}`).join('\n'),
    ...held.flatMap(([name, , entries]) => [`## ${name}`, ...entries]),
  ].join('\n\n');
}

function indexText(pages: readonly Page[], files: readonly CaseFile[]): string {
  const all = sortDefinitions(pages.flatMap((p) => p.definitions));
  const pageOfDefinition = new Map(pages.flatMap((p) => p.definitions.map((d) => [d, `${p.name}.md`] as const)));
  const lacking = (what: string, list: readonly Definition[]) => {
    const without = withoutCase(list, files);
    return `### ${what}\n\n${without.length} of ${list.length}.\n\n${without.map((d) => `- ${link(d, pageOfDefinition.get(d))}`).join('\n')}`;
  };
  const rows = pages.map((p) => {
    const { formulas, procedures, tables, checks } = sortDefinitions(p.definitions);
    const counts = [formulas, procedures, tables, checks].map((l) => l.length || '').join(' | ');
    return `| [${p.title}](${p.name}.md) | ${counts} |`;
  });
  const sum = [all.formulas, all.procedures, all.tables, all.checks].map((l) => l.length).join(' | ');
  return [
    written,
    '# Handbook',
    'Every formula, procedure, table and check of the library: what it says, where it comes from and with which outside figures it is compared. It is written from the same definitions that compute.',
    caution,
    `| page | formulas | procedures | tables | checks |\n| --- | ---: | ---: | ---: | ---: |\n${rows.join('\n')}\n| **all** | ${sum} |`,
    '[Symbols](symbols.md) lists every role with its symbol, unit and range.',
    '## How to read it',
    [
      '- An expression is typeset from the text that the code is proven against; constants stand in it as numbers with units, temperatures as plain kelvins.',
      '- A worked line is a published case where there is one. Else it says that it is not published, and whether its inputs come from a plan of an invented survey or were stated for the purpose.',
      '- A table shows its cells as the document prints them, a dash where it prints none.',
      '- "Seen in two independent texts", "seen in one text", "from memory, not seen", "derived", "common practice": how well a figure is known. What rests on memory has to be compared with the publication before it is relied on.',
      '- Tests read the published figures from the file that is named, and compare each within half or one of its last printed place.',
    ].join('\n'),
    '## Without a published case',
    `${plural(
      files.reduce((n, f) => n + f.cases.length, 0),
      'published figure',
    )} in ${plural(files.length, 'file')} are compared. What follows is exercised by none of them; formulas are still proven against their expression with units, and tables against the laws that their figures obey.`,
    lacking('Formulas', all.formulas),
    lacking('Procedures', all.procedures),
    lacking('Tables', all.tables),
  ].join('\n\n');
}

function symbolsText(): string {
  const rows = Object.entries(vocabulary)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(
      ([name, t]) =>
        `| \`${name}\` | ${symbolOf(name)} | ${escaped(t.words)} | ${unitWords(t.unit)} | ${rangeWords(t)} |`,
    );
  return [
    written,
    '# Symbols',
    '[Handbook](README.md)',
    'Every role that a quantity plays, by its name in the code. Formulas may narrow a range.',
    `| name | symbol | role | unit | range |\n| --- | --- | --- | --- | --- |\n${rows.join('\n')}`,
  ].join('\n\n');
}

/**
 * The handbook: text by file name.
 * @param root folder of the project, with a slash at its end
 * @param modules modules of the source, by path from `src/`
 * @param entries public entries, by specifier
 * @param files all files of published cases
 */
export function handbook(
  root: string,
  modules: readonly Module[],
  entries: readonly Module[],
  files: readonly CaseFile[],
): Readonly<Record<string, string>> {
  const names = new Map<unknown, { name: string; entries: string[] }>();
  const note = (specifier: string, name: string, value: unknown): void => {
    const known = names.get(value);
    if (known?.name === name) known.entries.push(specifier);
    else if (!known) names.set(value, { name, entries: [specifier] });
  };
  for (const [specifier, exports] of entries) {
    for (const [name, value] of Object.entries(exports)) note(specifier, name, value);
    // what is no name of its own is a member of a collection
    for (const [name, members] of Object.entries(exports))
      if (/(Formulas|Tables|Checks)$/.test(name))
        for (const [key, value] of Object.entries(members as object))
          note(specifier, /^[a-z]\w*$/i.test(key) ? `${name}.${key}` : `${name}['${key}']`, value);
  }
  const matter: Matter = { files, worked: workedLines(root, files), publicName: (d) => names.get(d) };
  const pages = pagesOf(modules);
  return Object.fromEntries(
    [
      ['README', indexText(pages, files)] as const,
      ['symbols', symbolsText()] as const,
      ...pages.map((p) => [p.name, pageText(p, matter)] as const),
    ].map(([name, text]) => [`${name}.md`, `${text}\n`]),
  );
}
