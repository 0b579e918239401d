import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { definitions, isDefinition } from '../../src/verify/definitions.js';

const root = fileURLToPath(new URL('../../src/', import.meta.url));
const paths = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((p) => p.endsWith('.ts') && !/(^|\/)(index|definitions)\.ts$/.test(p))
  .sort();
const modules = await Promise.all(paths.map(async (path) => [path, await import(`${root}${path}`)] as const));
const found = new Set<unknown>(Object.values(definitions).flat());

test('every definition that a module holds is found', () => {
  const missed = modules.flatMap(([path, m]) =>
    Object.entries(m as object).flatMap(([name, value]) =>
      isDefinition(value) && !found.has(value) ? [`${name} (${path}) is in no definitions.ts`] : [],
    ),
  );
  expect(missed).toEqual([]);
  expect(found.size).toBeGreaterThan(400);
});

const definers =
  'formula|relation|procedure|table|kTable|comparison|span|statement|alternatives|rule|advice|moving|multiplied|added';
/** Functions that define, and are called at the top of modules: module, function. */
const makers: Readonly<Record<string, string>> = {
  'codes/bs7671/tables/k-table.ts': 'kTable',
  'codes/bs7671/residual-checks.ts': 'ofThirty',
  'codes/bs7671/measured-loop.ts': 'measuredCheck',
  'products/iec60949/material-constants.ts': 'ofMetals',
  'codes/bs7671/clauses.ts': 'shared\\.\\w+',
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
  // a table with corrections of a user is no definition of its own; a check that codes share is one where a code cites it;
  // relations and procedures are made by what makes formulas
  const open = [
    'design/judge-readings.ts',
    'core/attested.ts',
    'codes/iec-family/checks.ts',
    'core/formula.ts',
    'core/check-forms.ts',
    'core/arithmetic.ts',
  ];
  for (const path of paths) {
    if (open.includes(path)) continue;
    const text = readFileSync(root + path, 'utf8').replace(/^\s*(\*|\/\/).*$/gm, '');
    const all = text.match(new RegExp(`(?<![.\\w])(${definers})(<[^(]*>)?\\(\\{`, 'g'))?.length ?? 0;
    const pure = text.match(new RegExp(`/\\* @__PURE__ \\*/ (${definers})(<[^(]*>)?\\(\\{`, 'g'))?.length ?? 0;
    expect([path, all - pure]).toEqual([path, /^\w+$/.test(makers[path] ?? '') ? 1 : 0]);
  }
});

test('identifiers are unique, by kind', () => {
  for (const all of [definitions.formulas, definitions.tables, definitions.procedures, definitions.checks])
    expect(new Set(all.map((d) => d.id)).size).toBe(all.length);
});
