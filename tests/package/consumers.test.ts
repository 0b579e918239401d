/** Programs that use the packed package: ES modules, CommonJS, and TypeScript in its two resolutions. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { entries } from '../support/entries.js';
import { install, type Project } from '../support/packed.js';

const tsc = join(process.cwd(), 'node_modules/typescript/bin/tsc');
/** The entries, each under a name that a variable may have. */
const named = entries.map(({ name, specifier }) => ({ name: name.replaceAll('-', '_'), specifier }));
const names = named.map(({ name }) => name);
const imports = named.map(({ name, specifier }) => `import * as ${name} from '${specifier}';`).join('\n');
const uses = `export const all = { ${names.join(', ')} };\n`;

let project: Project;
beforeAll(() => {
  project = install();
}, 60_000);
afterAll(() => project.remove());

test('the packed package is under 1.2 MB', () => {
  expect(project.size).toBeLessThan(1_200_000);
});

test('an editor shows what a member of a collection is, its unit, its range and its source', () => {
  const declared = readFileSync(join(project.dir, 'node_modules/ohmwright/dist/bs7671.d.cts'), 'utf8');
  expect(declared).toMatch(
    /\/\*\* Flat twin and earth, .*: A above 0\. BS 7671:[\d+:A]+, Table 4D5 \([a-z-]+\)\. \*\/\n +readonly "4D5": /,
  );
  const members = declared.match(/^ readonly (?:"[^"]+"|\w+): (?:Table|Formula|Comparison|Statement)\b.*$/gm) ?? [];
  expect(members.length).toBeGreaterThan(100);
  for (const member of members) expect(declared).toContain(` */\n${member}`);
});

/** The names that each entry exports, as one program sees them. */
const seen = (file: string): Record<string, string[]> => JSON.parse(project.run(process.execPath, file));
const report = `console.log(JSON.stringify(Object.fromEntries(Object.entries(all).map(([n, m]) => [n, Object.keys(m).filter((k) => k !== 'module.exports').sort()]))));\n`;

test('ES modules and CommonJS see the same exports', () => {
  project.write('esm.mjs', `${imports}\n${uses}${report}`);
  const requires = named.map(({ name, specifier }) => `const ${name} = require('${specifier}');`).join('\n');
  project.write('cjs.cjs', `${requires}\nconst all = { ${names.join(', ')} };\n${report}`);
  const esm = seen('esm.mjs');
  expect(Object.keys(esm)).toEqual(names);
  expect(seen('cjs.cjs')).toEqual(esm);
}, 60_000);

test('the CommonJS entries share one copy of each thing', () => {
  project.write(
    'shared.cjs',
    `const all = [${entries.map(({ specifier }) => `require('${specifier}')`).join(', ')}];
const [root, ...others] = all;
const twice = others.flatMap((m) => Object.keys(m).filter((k) => k in root && m[k] !== root[k]));
console.log(JSON.stringify(twice));`,
  );
  expect(JSON.parse(project.run(process.execPath, 'shared.cjs'))).toEqual([]);
}, 60_000);

test.each([
  ['node16', 'esm.mts', 'node16', 'node16'],
  ['node16 from CommonJS', 'cjs.cts', 'node16', 'node16'],
  ['a bundler', 'bundled.ts', 'esnext', 'bundler'],
])(
  'TypeScript compiles against the declarations: %s',
  (_, file, module, resolution) => {
    project.write(file, `${imports}\n${uses}`);
    const options = '--noEmit --strict --exactOptionalPropertyTypes --target es2022 --lib es2022';
    const args = [...options.split(' '), '--module', module, '--moduleResolution', resolution];
    expect(project.run(process.execPath, tsc, ...args, file)).toBe('');
  },
  120_000,
);

test("TypeScript takes a role of the user's own", () => {
  project.write(
    'own-role.mts',
    `import { formula, metres, ohms, type Metres } from 'ohmwright';
declare module 'ohmwright' {
  interface Vocabulary { trenchWidth: Metres }
}
const doubled = formula({
  id: 'doubled', title: 'Twice the width', inputs: ['trenchWidth'], output: 'length', expression: '2 * trenchWidth',
  compute: ({ trenchWidth }) => 2 * trenchWidth, source: { document: 'a test', provenance: 'definition' },
});
doubled({ trenchWidth: metres(0.3) });
// @ts-expect-error an impedance is no width
doubled({ trenchWidth: ohms(0.3) });
// @ts-expect-error this role nobody declared
doubled({ trenchHeight: metres(0.3) });
`,
  );
  const options = '--noEmit --strict --target es2022 --lib es2022 --module node16';
  expect(project.run(process.execPath, tsc, ...options.split(' '), 'own-role.mts')).toBe('');
}, 60_000);

test('the JSON Schemas of the documents are in the package, and say what the functions say', () => {
  project.write(
    'schemas.mjs',
    `import { createRequire } from 'node:module';
import { priceBookJsonSchema, surveyJsonSchema, workRulesJsonSchema } from 'ohmwright/io';
const files = createRequire(import.meta.url);
const all = { survey: surveyJsonSchema(), prices: priceBookJsonSchema(), 'work-rules': workRulesJsonSchema() };
console.log(JSON.stringify(Object.entries(all).map(([name, schema]) =>
  [name, JSON.stringify(files('ohmwright/' + name + '.schema.json')) === JSON.stringify(schema)])));`,
  );
  const same = JSON.parse(project.run(process.execPath, 'schemas.mjs'));
  expect(same).toEqual([
    ['survey', true],
    ['prices', true],
    ['work-rules', true],
  ]);
}, 60_000);
