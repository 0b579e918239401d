/** What reaches a page that imports a part of the packed package. */
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import * as bs7671 from '../../src/codes/bs7671/index.js';
import * as heat from '../../src/physics/heat/index.js';
import * as physics from '../../src/physics/index.js';
import * as power from '../../src/physics/power/index.js';
import { entries } from '../support/entries.js';
import { bundle, install, type Project } from '../support/packed.js';

/** Every formula that an entry gives, with what its definition itself weighs as text. */
const formulas = Object.entries({ physics, heat, power, bs7671 }).flatMap(([path, entry]) =>
  Object.entries(entry).flatMap(([name, it]) =>
    typeof it === 'function' && 'kind' in it && it.kind === 'formula'
      ? [
          {
            name,
            from: `ohmwright/${path}`,
            definition: JSON.stringify({ ...it }).length,
            expression: it.expression.length,
          },
        ]
      : [],
  ),
);

/** The guard of results and the error that it throws, which all formulas share. */
const GUARD = 370;
/** Characters of a definition and its arithmetic from which on a formula weighs more than 620 bytes compressed, whatever its guard. */
const LONG = 680;

let asPublished: Project;
let withoutTheHint: Project;
beforeAll(() => {
  asPublished = install();
  withoutTheHint = install((manifest) => {
    delete manifest.sideEffects;
  });
}, 60_000);
afterAll(() => {
  asPublished?.remove();
  withoutTheHint?.remove();
});

describe.each([
  ['as published', () => asPublished],
  ['with sideEffects deleted from its package.json', () => withoutTheHint],
])('%s', (_, project) => {
  test('a formula comes alone: no other, no table, no vocabulary, no units', async () => {
    expect(formulas.length).toBeGreaterThan(20);
    const weighed = await Promise.all(
      formulas.map(async ({ name, from, definition, expression }) => {
        const { text } = await bundle(project(), `export { ${name} } from '${from}';`);
        return {
          name,
          bytes: text.length,
          beside: text.length - definition,
          allowed: 150 + GUARD + expression,
          compressed: gzipSync(text).length,
          // what a formula says of itself, its arithmetic besides: some say more than others
          most: definition + expression > LONG ? 700 : 620,
        };
      }),
    );
    // beside its definition: what makes it callable (85 bytes), what guards its result, and its own arithmetic, about as
    // long as the expression
    expect(weighed.filter(({ beside, allowed }) => beside > allowed)).toEqual([]);
    expect(weighed.filter(({ compressed, most }) => compressed > most)).toEqual([]);
    expect(weighed.filter(({ most }) => most > 620).length).toBeLessThan(5);
  }, 60_000);

  test.each(entries.filter(({ path }) => path !== './io' && path !== './verify' && path !== './testing'))(
    'a bare import of $specifier is nothing',
    async ({ specifier }) => {
      const { text } = await bundle(project(), `import '${specifier}';`);
      expect(text).toBe('');
    },
  );
});

test.each([
  ['mathjs', './verify'],
  ['zod', './io'],
  ['fast-check', './testing'],
])(
  '%s is reached from no entry but %s',
  async (library, home) => {
    const reached = await Promise.all(
      entries.map(async ({ path, specifier }) => {
        const { inputs } = await bundle(asPublished, `export * from '${specifier}';`, false);
        return inputs.some((file) => file.includes(`node_modules/${library}/`)) ? [path] : [];
      }),
    );
    expect(reached.flat().filter((path) => path !== home)).toEqual([]);
  },
  60_000,
);
