import { expect, test } from 'vitest';
import { expectPublished } from '../../support/expect-published.js';
import { cases } from './protection.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
  expectPublished(c);
});

test('every case has a name of its own', () => expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length));
