import { expect, test } from 'vitest';
import { expectPublished } from '../../support/expect-published.js';
import { cases } from './supply.cases.js';

test('there are cases', () => expect(cases.length).toBeGreaterThan(40));
test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => expectPublished(c));
