import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { definitions, isDefinition } from '../../src/verify/definitions.js';

const root = fileURLToPath(new URL('../../src/', import.meta.url));
const file = `${root}verify/definition-list.ts`;
/** Folders that may hold definitions. */
const folders = [
  'physics',
  'codes',
  'products',
  'networks',
  'guidance',
  'installation',
  'demand',
  'charging',
  'design',
  'site',
];
const paths = folders
  .flatMap((f) => readdirSync(root + f, { recursive: true, encoding: 'utf8' }).map((p) => `${f}/${p}`))
  .filter((p) => p.endsWith('.ts') && !p.endsWith('index.ts'))
  .sort();
const modules = await Promise.all(paths.map(async (path) => [path, await import(`${root}${path}`)] as const));
/** What each module defines itself: names, each definition once. */
const seen = new Set<unknown>();
const holding = modules.flatMap(([path, m]) => {
  const names = Object.entries(m as object).flatMap(([name, value]) => {
    if (!isDefinition(value) || seen.has(value)) return [];
    seen.add(value);
    return [name];
  });
  return names.length > 0 ? [{ path, names }] : [];
});

const localName = (path: string, name: string) =>
  holding.filter((m) => m.names.includes(name)).length === 1
    ? name
    : `${path.replace(/^(codes|products|networks|guidance)\//, '').replace('.ts', '')}-${name}`.replace(
        /[^a-z0-9]+(\w)/gi,
        (_, c: string) => c.toUpperCase(),
      );

if (process.env.DEFINITIONS === 'write') {
  const imports = holding.map(({ path, names }) => {
    const list = names.map((n) => (localName(path, n) === n ? n : `${n} as ${localName(path, n)}`)).join(', ');
    return `import { ${list} } from '../${path.replace('.ts', '.js')}';\n`;
  });
  const list = holding.flatMap(({ path, names }) => names.map((n) => `  ${localName(path, n)},\n`));
  // names, not namespaces: a bundler cannot drop the object that a namespace becomes
  writeFileSync(
    file,
    `${imports.join('')}\n\n/** Every definition of the library; written by \`npm run definitions\`. */\nexport const everyDefinition: readonly unknown[] = [\n${list.join('')}];\n`,
  );
}

test('every definition is listed; `npm run definitions` lists them', async () => {
  const { everyDefinition } = await import(file);
  expect(new Set(everyDefinition)).toEqual(seen);
  expect(everyDefinition.length).toBe(seen.size);
});

const definers = 'formula|relation|procedure|table|comparison|span|membership|statement|alternatives';
/** Functions of one module that define and are called at its top: module, function. */
const makers: Readonly<Record<string, string>> = {
  'codes/iec-family/measured-loop.ts': 'measuredCheck',
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
  const open = ['design/assess-at.ts', 'design/judge-readings.ts', 'codes/iec-family/closed-rules.ts'];
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
