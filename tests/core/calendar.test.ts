import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isCalendarDay } from '../../src/core/calendar.js';

// the calendar of ECMAScript: a day that is none moves on to one that is, or is no day at all
const isOne = (text: string): boolean => {
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
};

test('a day is one of the calendar', () => {
  const digits = (most: number) => fc.integer({ min: 0, max: most }).map((n) => String(n).padStart(2, '0'));
  const year = fc.integer({ min: 1000, max: 9999 }).map(String);
  fc.assert(
    fc.property(fc.oneof(year, fc.constantFrom('1900', '2000', '2024', '2026')), digits(14), digits(33), (y, m, d) => {
      const text = `${y}-${m}-${d}`;
      expect(isCalendarDay(text)).toBe(isOne(text));
    }),
    { numRuns: 2000, seed: 5 },
  );
  expect(['2026-2-3', '2026-02-30', '2026-02-03T00:00', 20260203, undefined].map(isCalendarDay)).not.toContain(true);
  expect(['2024-02-29', '2000-02-29', '2026-12-31'].map(isCalendarDay)).not.toContain(false);
});
