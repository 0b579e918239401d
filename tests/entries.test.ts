/** The places that name the public entries agree with `entries.config.json`. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import pkg from '../package.json' with { type: 'json' };
import { entries } from './support/entries.js';

test('exports give each entry for import and require, types first', () => {
  const expected = entries.map(({ path, name }) => [
    path,
    {
      import: { types: `./dist/${name}.d.ts`, default: `./dist/${name}.js` },
      require: { types: `./dist/${name}.d.cts`, default: `./dist/${name}.cjs` },
    },
  ]);
  const schemas = ['survey', 'brief', 'prices', 'work-rules'].map((n) => [
    `./${n}.schema.json`,
    `./dist/${n}.schema.json`,
  ]);
  expect(pkg.exports).toEqual({
    ...Object.fromEntries([...expected, ...schemas]),
    './package.json': './package.json',
  });
  for (const way of Object.values(pkg.exports)) {
    if (typeof way !== 'string') expect(Object.values(way).map((w) => Object.keys(w)[0])).toEqual(['types', 'types']);
  }
});

test('typesVersions serves resolvers that do not read exports', () => {
  const names = entries.filter((e) => e.path !== '.').map((e) => e.name);
  expect(pkg.typesVersions).toEqual({ '*': Object.fromEntries(names.map((n) => [n, [`./dist/${n}.d.cts`]])) });
});

test.each(entries)('$path has its source, and says what it is', ({ source }) => {
  expect(existsSync(source)).toBe(true);
  expect(readFileSync(source, 'utf8')).toMatch(/^\/\*\*[\s\S]*?@module[\s\S]*?\*\//);
});
