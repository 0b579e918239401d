import { test } from 'vitest';
import { amperes, atMost, metres, minus, ohms, plus, times, volts } from '../../src/index.js';

test('one unit adds, two do not', () => {
  plus(amperes(1), amperes(2));
  times(amperes(1), ohms(2));
  // @ts-expect-error a length is no current
  plus(amperes(1), metres(2));
  // @ts-expect-error a length is no current
  minus(amperes(1), metres(2));
  // @ts-expect-error a voltage is no current
  atMost(amperes(1), volts(2));
  // @ts-expect-error the trade has no name for volts times volts
  times(volts(1), volts(2));
});
