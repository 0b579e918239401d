/** Documented examples become tests that can fail. */
import { expect, test } from 'vitest';
import { equal, near, throws } from './support/claimed.js';
import { testFile } from './support/doc-examples.js';

test('claims of a block become checks, imports of all blocks are gathered', () => {
  const text = `/**
 * Words.
 * \`\`\`ts
 * import { a, b } from 'ohmwright';
 * a(1); // => 2
 * const x = a(2).map(
 *   (y) => y,
 * ); // => [{ y: 1 }]
 * b(x); // ≈ 1.09
 * a(-1); // throws out-of-range
 * \`\`\`
 */
\`\`\`ts
import { a, type C } from 'ohmwright';
\`\`\`
\`\`\`ts no-run
never();
\`\`\`
`;
  const lines = (testFile('src/a.ts', text) ?? '').split('\n').filter((line) => line !== '');
  expect(lines).toEqual([
    "import { test } from 'vitest';",
    "import * as claimed from '../support/claimed.js';",
    "import { a, b, type C } from 'ohmwright';",
    'void claimed;',
    "test('src/a.ts:3', async () => {",
    'claimed.equal(a(1), 2);',
    'const x = a(2).map(',
    '  (y) => y,',
    '); claimed.equal(x, [{ y: 1 }]);',
    'claimed.near(b(x), "1.09");',
    'await claimed.throws(async () => { a(-1); }, "out-of-range");',
    '});',
    "test('src/a.ts:13', async () => {",
    '});',
  ]);
  expect(testFile('src/b.ts', 'no block')).toBeUndefined();
});

test('a claim that does not hold fails', async () => {
  const coded = Object.assign(new Error('x'), { code: 'out-of-range' });
  const fail = () => {
    throw coded;
  };
  equal({ a: [0.1 + 0.2] }, { a: [0.3] });
  expect(() => equal({ a: [0.3001] }, { a: [0.3] })).toThrow();
  expect(() => equal(Number.NaN, 0)).toThrow();
  near(1.0866, '1.087');
  expect(() => near(1.0866, '1.086')).toThrow();
  await throws(fail, 'out-of-range');
  await expect(throws(fail, 'not-finite')).rejects.toThrow();
  await expect(throws(() => 1, 'out-of-range')).rejects.toThrow('nothing was thrown');
});
