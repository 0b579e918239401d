/** Whatever a plain caller hands to an entry, it is told what is wrong: no raw error of the language reaches it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as charging from '../../src/charging/index.js';
import * as networks from '../../src/networks/index.js';
import * as curves from '../../src/physics/time-current.js';
import { CalculationError } from '../../src/units/index.js';

const nonsense = fc.oneof(
  fc.constantFrom<unknown>(undefined, null, Number.NaN, Number.POSITIVE_INFINITY, -1, 0, 1, '', 'nonsense', true),
  fc.constantFrom<unknown>([], {}, [null], [undefined], [1, 'x'], () => 1, Symbol.iterator, 10n, new Date(0)),
  fc.constantFrom<unknown>({ kind: 'nonsense' }, { points: null, nodes: null }, { points: [null], nodes: [null] }),
  fc.constantFrom<unknown>({ state: 'known' }, { fast: [null], slow: 3 }, { days: ['x'], periods: [null] }),
  fc.constantFrom<unknown>({ toString: true }, [Object.create(null)], { id: { toString: 1 } }),
  fc.anything({ maxDepth: 2, maxKeys: 4 }),
);
const entries: Readonly<Record<string, Readonly<Record<string, unknown>>>> = { charging, networks, curves };
const functions = Object.entries(entries).flatMap(([entry, members]) =>
  Object.entries(members).flatMap(([name, member]) => (typeof member === 'function' ? [{ entry, name, member }] : [])),
);

it('knows the functions of these entries', () => {
  expect(functions.map((f) => f.name)).toEqual(
    expect.arrayContaining(['allocate', 'timeAt', 'gateBounds', 'readMeterPoint']),
  );
});

describe.each(functions)('$entry: $name', ({ member }) => {
  it('says what is wrong with nonsense, or has an answer', () => {
    fc.assert(
      fc.property(fc.array(nonsense, { maxLength: 4 }), (given) => {
        try {
          (member as (...all: unknown[]) => unknown)(...given);
        } catch (error) {
          expect(error).toBeInstanceOf(CalculationError);
        }
      }),
      { numRuns: 150 },
    );
  });
});
