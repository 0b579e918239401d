import { test } from 'vitest';
import { expectPublished } from '../../support/expect-published.js';
import { cases } from './sheathed.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => expectPublished(c));
