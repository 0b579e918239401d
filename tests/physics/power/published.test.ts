import { expect, test } from 'vitest';
import { expectPublished } from '../../support/expect-published.js';
import { cases as loads } from './loads.cases.js';
import { cases as rings } from './rings.cases.js';
import { cases as supply } from './supply.cases.js';

const cases = [...supply, ...loads, ...rings];

test('there are cases', () => expect(cases.length).toBeGreaterThan(100));
test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => expectPublished(c));
