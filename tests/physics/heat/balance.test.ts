import { expect, test } from 'vitest';
import { cases } from './balance.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
  expect(Math.abs(c.ours() - c.published)).toBeLessThanOrEqual(c.tolerance);
});
