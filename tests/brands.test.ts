/** Only `units` and `core` may turn a bare number into a quantity by a cast; all else goes through a constructor. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith('.ts'));
const text = (file: string) => readFileSync(`src/${file}`, 'utf8');

test('no cast to a quantity outside units and core', () => {
  const unit = /^export type (\w+) = Quantity</gm;
  const names = files
    .filter((f) => f.startsWith('units/'))
    .flatMap((f) => [...text(f).matchAll(unit)].map((m) => m[1]));
  const cast = new RegExp(`\\bas (?:\\w+\\.)?(?:Quantity<|(?:${names.join('|')})\\b)`);
  expect(names).toContain('Amperes');
  const found = files
    .filter((f) => !/^(units|core)\//.test(f))
    .flatMap((f) =>
      text(f)
        .split('\n')
        .flatMap((line, i) => (cast.test(line) ? [`src/${f}:${i + 1}: ${line.trim()}`] : [])),
    );
  expect(found).toEqual([]);
});
