import { expect, test } from 'vitest';
import { cases } from './demand.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
  const off = Math.abs(c.ours() - c.published);
  if (c.differs === undefined) expect(off).toBeLessThanOrEqual(c.tolerance);
  else expect(off).toBeGreaterThan(c.tolerance);
});

test('every case has a name of its own', () => expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length));
