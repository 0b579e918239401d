import { describe, expect, it } from 'vitest';
import { hasCode } from '../../src/index.js';
import { daysAfter } from '../../src/networks/due-dates.js';

describe('due dates', () => {
  it.each([
    ['2026-11-25', 28, '2026-12-23'],
    ['2024-02-01', 28, '2024-02-29'],
    ['2025-02-01', 28, '2025-03-01'],
    ['2026-12-31', 1, '2027-01-01'],
  ])('%s and %i days: %s', (day, days, due) => expect(daysAfter(day, days)).toBe(due));
  it.each(['2026-02-29', '2026-13-01', '25-11-2026', ''])('%s is no day', (day) => {
    let thrown: unknown;
    try {
      daysAfter(day, 28);
    } catch (error) {
      thrown = error;
    }
    expect(hasCode(thrown, 'invalid-input')).toBe(true);
  });
});
