import { expect, test } from 'vitest';
import { cases } from './charge-time.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
  const off = Math.abs(c.ours() - c.published);
  if (c.differs === undefined) expect(off).toBeLessThanOrEqual(c.tolerance);
  else expect(off).toBeGreaterThan(c.tolerance);
});
