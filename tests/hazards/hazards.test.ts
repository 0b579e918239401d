import { describe, expect, test } from 'vitest';
import { chapters } from './chapters.js';

test('every hazard of the book has a name of its own', () => {
  const ids = chapters.flatMap((c) => c.hazards.map((h) => h.id));
  expect(ids.length).toBeGreaterThan(0);
  expect(new Set(ids).size).toBe(ids.length);
});

describe.each(chapters)('$title', ({ hazards }) => {
  test.each(hazards)('$id: must not pass, and its sound twin must', ({ check, unsafe, sound }) => {
    const told = unsafe.told();
    expect(told.verdict, unsafe.what).not.toBe('pass');
    if (check !== undefined) {
      const own = told.results.filter((r) => r.check === check);
      expect(
        own.some((r) => r.verdict === 'fail' || r.verdict === 'not-determined'),
        `${check} objects`,
      ).toBe(true);
    }
    const twin = sound.told();
    expect(
      twin.results.filter((r) => r.weight === 'rule' && (r.verdict === 'fail' || r.verdict === 'not-determined')),
      sound.what,
    ).toEqual([]);
    expect(twin.verdict, sound.what).toBe('pass');
  });
});
