/// <reference types="vite/types/importMeta.d.ts" />
/** Every public name says what a reader of its doc comment has to know. */
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { type Definition, isDefinition } from '../src/verify/definitions.js';
import { type PublicName, publicNames } from './support/public-names.js';

const root = fileURLToPath(new URL('../', import.meta.url));
// by a pattern, so that a run over what changed knows that this test reads the source
const modules = import.meta.glob<Record<string, unknown>>('../src/**/*.ts');
const names = publicNames(root);
const functions = names.filter((n) => n.kind === 'function');

/** Functions that need no example of their own, and why. */
const withoutExample: readonly { readonly why: string; readonly holds: (n: PublicName) => boolean }[] = [
  { why: 'draws random values: there is no one value to show', holds: (n) => n.result.includes('Arbitrary<') },
];

/** Functions whose `throw` is no error of theirs. */
const rethrows: Readonly<Record<string, string>> = {
  judgeMainFuse: 'hands on what is not an error of the library',
};

const lower = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ');
const lacking = (all: readonly PublicName[], what: (n: PublicName) => boolean): string[] =>
  all.filter(what).map((n) => `${n.name} (${n.file})`);

test('there are names to look at, of every kind', () => {
  expect(functions.length).toBeGreaterThan(150);
  expect(names.filter((n) => n.kind === 'definition').length).toBeGreaterThan(350);
  expect(Object.keys(modules).length).toBeGreaterThan(100);
});

test('a first sentence', () => {
  expect(lacking(names, (n) => !/^[\p{Lu}`].*?[.:](\s|$)/su.test(n.doc))).toEqual([]);
});

test('the unit of every member that is a quantity', () => {
  const members = names.flatMap((n) => n.quantities.map((m) => ({ ...m, where: `${n.name}.${m.name}: ${m.doc}` })));
  expect(members.length).toBeGreaterThan(100);
  expect(members.filter((m) => m.unit !== '1' && !m.doc.includes(m.unit)).map((m) => m.where)).toEqual([]);
});

test('a definition names its source', async () => {
  const named = new Map<string, Definition>();
  for (const [path, load] of Object.entries(modules))
    if (/(?<!verify)\/definitions\.ts$/.test(path))
      for (const [name, value] of Object.entries(await load())) if (isDefinition(value)) named.set(name, value);
  const silent = lacking(
    names.filter((n) => n.kind === 'definition'),
    (n) => {
      const source = named.get(n.name)?.source;
      if (!source) return true;
      const { document, clause } = source;
      return (
        !/^(physics|binomial|convolution)/.test(document) &&
        !lower(n.doc).includes(lower(document)) &&
        !(clause && lower(n.doc).includes(lower(clause)))
      );
    },
  );
  expect(silent).toEqual([]);
});

test('every parameter; a quantity with its unit and its range', () => {
  const open = functions.flatMap((n) =>
    n.parameters.flatMap((p) => {
      const where = `${n.name}(${p.name}: ${p.type}) ${p.doc ?? 'says nothing'}`;
      if (!p.doc) return [where];
      if (p.unit === undefined) return [];
      const unit = p.unit === '1' ? /, 1\b|plain number/ : undefined;
      const hasUnit = unit ? unit.test(p.doc) : p.doc.includes(`, ${p.unit}`);
      return hasUnit && /\d|\bany\b|above|one that/.test(p.doc.replace(p.unit, '')) ? [] : [where];
    }),
  );
  expect(open).toEqual([]);
});

test('the result; a quantity with its unit', () => {
  const open = functions.flatMap((n) => {
    const text = n.tags.returns?.[0];
    if (!text) return [`${n.name}: ${n.result}`];
    if (n.resultUnit === undefined) return [];
    const fits = n.resultUnit === '1' ? /1|plain number|ratio/.test(text) : text.includes(n.resultUnit);
    return fits ? [] : [`${n.name}: ${n.result}, ${text}`];
  });
  expect(open).toEqual([]);
});

test('what it throws, where it or what it calls throws, with the code', () => {
  const open = functions.filter((n) => n.throws && !Object.hasOwn(rethrows, n.name));
  expect(lacking(open, (n) => !/`[a-z-]+`|as `?\w+`? does/.test(n.tags.throws?.join(' ') ?? ''))).toEqual([]);
});

test('an example that is run, or a reason why there is none', () => {
  const open = functions.filter((n) => !withoutExample.some((r) => r.holds(n)));
  expect(lacking(open, (n) => !n.tags.example?.some((e) => /\/\/ (=>|≈|throws) /.test(e)))).toEqual([]);
  // no reason without a use
  for (const { why, holds } of withoutExample) expect([why, functions.some(holds)]).toEqual([why, true]);
  for (const name of Object.keys(rethrows)) expect(functions.map((n) => n.name)).toContain(name);
});
