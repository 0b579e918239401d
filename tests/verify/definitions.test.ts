import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { definitions, isDefinition } from '../../src/verify/definitions.js';

const root = fileURLToPath(new URL('../../src/', import.meta.url));
const file = `${root}verify/definitions.ts`;
/** Folders that may hold definitions. */
const folders = ['physics', 'standards', 'installation', 'demand', 'charging', 'design', 'site'];
const paths = folders
  .flatMap((f) => readdirSync(root + f, { recursive: true, encoding: 'utf8' }).map((p) => `${f}/${p}`))
  .filter((p) => p.endsWith('.ts') && !p.endsWith('index.ts'))
  .sort();
const modules = await Promise.all(paths.map(async (path) => [path, await import(`${root}${path}`)] as const));
const holding = modules.filter(([, m]) => Object.values(m as object).some(isDefinition)).map(([path]) => path);

const nameOf = (path: string) =>
  path
    .replace('.ts', '')
    .replace(/[^a-z0-9]+(\w)/gi, (_, c: string) => c.toUpperCase())
    .replace(/^standards(.)/, (_, c: string) => c.toLowerCase());

if (process.env.DEFINITIONS === 'write') {
  const rest = readFileSync(file, 'utf8').replace(/^import \* as .*\n/gm, '');
  const imports = holding.map((p) => `import * as ${nameOf(p)} from '../${p.replace('.ts', '.js')}';\n`).join('');
  const list = `const modules: readonly object[] = [\n${holding.map((p) => `  ${nameOf(p)},\n`).join('')}];`;
  writeFileSync(file, imports + rest.replace(/const modules: readonly object\[\] = \[[^\]]*\];/, () => list));
}

test('every module that holds definitions is listed; `npm run definitions` lists them', () => {
  const listed = [...readFileSync(file, 'utf8').matchAll(/^import \* as \w+ from '\.\.\/(.*)\.js';$/gm)].map(
    (m) => `${m[1]}.ts`,
  );
  expect(listed.sort()).toEqual(holding);
  for (const path of holding) expect(readFileSync(file, 'utf8')).toMatch(new RegExp(`^  ${nameOf(path)},$`, 'm'));
});

const definers = 'formula|relation|procedure|table|comparison|span|membership|statement|alternatives';
/** Functions of one module that define and are called at its top: module, function. */
const makers: Readonly<Record<string, string>> = {
  'standards/iec-family/measured-loop.ts': 'measuredCheck',
  'demand/mounting.ts': 'height',
};

test('no definition in the source is missed', () => {
  const counted = paths.flatMap((path) => {
    const maker = makers[path];
    const call = new RegExp(
      `^(export )?const \\w+(: [^=]+)? =\\s+/\\* @__PURE__ \\*/ (${definers}${maker ? `|${maker}` : ''})\\b`,
      'gm',
    );
    const found = readFileSync(root + path, 'utf8').match(call) ?? [];
    return found.length > 0 ? [[path, found.length] as const] : [];
  });
  const collected = modules.flatMap(([path, m]) => {
    const own = new Set(Object.values(m as object).filter(isDefinition));
    return own.size > 0 ? [[path, own.size] as const] : [];
  });
  expect(collected).toEqual(counted);
  expect(counted.length).toBeGreaterThan(80);
});

test('a definition that is made below the top of a module would be missed: there is none', () => {
  const open = ['design/assess-at.ts', 'design/judge-readings.ts', 'standards/bs7671/code.ts'];
  for (const path of paths) {
    if (open.includes(path)) continue;
    const text = readFileSync(root + path, 'utf8').replace(/^\s*(\*|\/\/).*$/gm, '');
    const all = text.match(new RegExp(`(?<![.\\w])(${definers})(<[^(]*>)?\\(\\{`, 'g'))?.length ?? 0;
    const pure = text.match(new RegExp(`/\\* @__PURE__ \\*/ (${definers})(<[^(]*>)?\\(\\{`, 'g'))?.length ?? 0;
    expect([path, all - pure]).toEqual([path, makers[path] ? 1 : 0]);
  }
});

test('identifiers are unique, by kind', () => {
  for (const all of [definitions.formulas, definitions.tables, definitions.procedures, definitions.checks])
    expect(new Set(all.map((d) => d.id)).size).toBe(all.length);
});
