import { expect } from 'vitest';
import type { PublishedCase } from './published.js';

/** Our figure agrees with the printed one; where the case says why the print differs, it has to differ. */
export function expectPublished(c: PublishedCase): void {
  const off = Math.abs(c.ours() - c.published);
  if (c.differs === undefined) expect(off).toBeLessThanOrEqual(c.tolerance);
  else expect(off).toBeGreaterThan(c.tolerance);
}
