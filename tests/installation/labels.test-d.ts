/** Every label that a type of the installation allows is in the table that readers and the gate take theirs from. */
import { expectTypeOf, test } from 'vitest';
import type { Labels, labels } from '../../src/installation/labels.js';

type Left = { [K in keyof Labels]: Exclude<Labels[K][number], (typeof labels)[K][number]> }[keyof Labels];

test('no label of a type is left out of the table', () => {
  expectTypeOf<Left>().toEqualTypeOf<never>();
});
