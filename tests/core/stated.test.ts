import { expect, test } from 'vitest';
import { stated } from '../../src/core/index.js';

test('what is undefined is absent, what is false, zero or empty stays', () => {
  const kept: { readonly a?: number; readonly b?: boolean; readonly c?: string } = stated({
    a: undefined as number | undefined,
    b: false,
    c: '',
  });
  expect(Object.keys(kept)).toEqual(['b', 'c']);
  expect(stated({ zero: 0, none: null })).toEqual({ zero: 0, none: null });
});
