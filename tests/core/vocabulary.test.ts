/** The vocabulary as an editor and a user's own roles meet it: what is shown, what is offered, what is refused. */
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';
import type { Term } from '../../src/core/vocabulary/index.js';
import { evaluate, formula, metres, type Name, recorder, vocabulary, writeSheet } from '../../src/index.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
// files that exist for the editor only
const calls = `${root}src/calls.ts`;
const ownRoles = `${root}src/own-roles.ts`;
const texts: Readonly<Record<string, string>> = {
  [calls]: `
import { formula, table, type Vocabulary } from './core/index.js';
const source = { document: 'a test', provenance: 'definition' } as const;
const length = formula({
  id: 'a', title: 'a', inputs: ['dropRate', 'designCurrent'], output: 'length', expression: 'dropRate / designCurrent',
  compute: (v) => v.dropRate / v.designCurrent, source,
});
const rows = table({
  id: 't', title: 't', axes: [{ name: 'conductorArea', unit: 'mm²', between: 'exact' }, { name: 'method', labels: ['C'] }],
  columns: [['C']], rows: [[1.5, 20]], cell: 'tabulatedCapacity', unit: 'A', source,
});
length({ designCurrent: 1 as never, });
rows.get({ conductorArea: 1 as never, });
export declare const every: Vocabulary;
`,
  [ownRoles]: `
import { formula, metres, ohms, silent, type Metres } from './index.js';
declare module './index.js' {
  interface Vocabulary {
    /** Width of a trench b_t, m, above 0. */
    trenchWidth: Metres;
  }
}
const wide = formula({
  id: 'a', title: 'a', inputs: ['trenchWidth', 'length'], output: 'length', expression: 'trenchWidth + length',
  compute: (v) => v.trenchWidth + v.length, source: { document: 'a test', provenance: 'definition' },
});
wide({ trenchWidth: metres(0.3), length: metres(2) });
silent().given('trenchWidth', metres(0.3));
// @ts-expect-error an impedance is no width
wide({ trenchWidth: ohms(0.3), length: metres(2) });
// @ts-expect-error this role nobody declared
silent().given('trenchHeight', metres(0.3));
`,
};

const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile).config,
  ts.sys,
  root,
);
const editor = ts.createLanguageService({
  fileExists: (file) => file in texts || ts.sys.fileExists(file),
  readFile: (file) => texts[file] ?? ts.sys.readFile(file),
  directoryExists: ts.sys.directoryExists,
  getCompilationSettings: () => options,
  getScriptFileNames: () => Object.keys(texts),
  getScriptVersion: () => '1',
  getScriptSnapshot: (file) => {
    const text = texts[file] ?? ts.sys.readFile(file);
    return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
  },
  getCurrentDirectory: () => root,
  getDefaultLibFileName: ts.getDefaultLibFilePath,
});

/** What an editor shows over the last place of a text in a file. */
const shown = (file: string, text: string): string => {
  const info = editor.getQuickInfoAtPosition(file, texts[file]?.lastIndexOf(text) ?? 0);
  return `${ts.displayPartsToString(info?.displayParts)} ${ts.displayPartsToString(info?.documentation)}`;
};
/** The keys that an editor offers behind the last place of a text in a file. */
const offered = (file: string, text: string): readonly string[] =>
  editor
    .getCompletionsAtPosition(file, (texts[file]?.lastIndexOf(text) ?? 0) + text.length, {})
    ?.entries.map(({ name }) => name) ?? [];
const problems = (file: string) =>
  editor.getSemanticDiagnostics(file).map((d) => ts.flattenDiagnosticMessageText(d.messageText, '\n'));

const range = ({ above, least, most }: Term): string => {
  const from = above === undefined ? least : `above ${above}`;
  if (from === undefined) return 'any';
  if (most !== undefined) return `${from} to ${most}`;
  return above === undefined ? `${from} and up` : from.toString();
};

test('the comment of each role says its words, symbol, unit and range, and reaches the type', () => {
  const program = editor.getProgram();
  const checker = program?.getTypeChecker();
  const file = program?.getSourceFile(calls);
  const every = file && checker?.getExportsOfModule(checker.getSymbolAtLocation(file)!)[0];
  const comments = checker?.getPropertiesOfType(checker.getTypeOfSymbol(every!)).flatMap((role) => {
    const comment = ts.displayPartsToString(role.getDocumentationComment(checker));
    return role.name === 'trenchWidth' ? [] : [[role.name, comment]];
  });
  const due = Object.entries(vocabulary).map(([name, term]) => {
    const words = term.words.charAt(0).toUpperCase() + term.words.slice(1);
    return [name, `${words} ${term.symbol}, ${term.unit}, ${range(term)}.`];
  });
  expect(due.length).toBeGreaterThan(300);
  expect(Object.fromEntries(comments ?? [])).toEqual(Object.fromEntries(due));
});

test('an editor shows the comment and the unit over an input, and offers the keys that are open', () => {
  expect(shown(calls, 'designCurrent: 1')).toBe(
    '(property) designCurrent: Quantity<"A"> Design current of the circuit I_b, A, 0 and up.',
  );
  expect(shown(calls, 'dropRate /')).toContain('Tabulated drop per ampere and metre (mV/A/m), V/(A·m), 0 and up.');
  expect(shown(calls, 'conductorArea: 1')).toContain('Quantity<"mm²">');
  expect(offered(calls, 'designCurrent: 1 as never, ')).toEqual(['dropRate']);
  expect(offered(calls, 'conductorArea: 1 as never, ')).toEqual(['method']);
});

test("a role of a user's own joins by declaration, with its unit and its comment", () => {
  expect(problems(ownRoles)).toEqual([]);
  expect(shown(ownRoles, 'trenchWidth: ohms')).toContain('Metres Width of a trench b_t, m, above 0.');
});

test('a sheet and a formula take a role that has no term', () => {
  const trenchWidth = 'trenchWidth' as Name;
  const doubled = formula({
    id: 'doubled',
    title: 'Twice the width',
    inputs: [trenchWidth],
    output: 'length',
    expression: '2 * trenchWidth',
    compute: (values) => 2 * (values as Record<string, number>).trenchWidth!,
    source: { document: 'a test', provenance: 'definition' },
  });
  const values = { trenchWidth: metres(0.3) } as never;
  expect(evaluate(doubled, values)).toBe(0.6);
  const sheet = recorder('A trench');
  sheet.step(doubled, { trenchWidth: sheet.given(trenchWidth, metres(0.3) as never) } as never);
  expect(writeSheet(sheet).lines).toMatchObject([
    { kind: 'given', gives: { name: 'trenchWidth', symbol: 'trenchWidth', value: 0.3, unit: '' } },
    { kind: 'step', gives: { name: 'length', value: 0.6, unit: 'm' } },
  ]);
});
