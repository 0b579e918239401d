import { describe, expect, test } from 'vitest';
import { conduitTermsLong } from '../../src/guidance/definitions.js';
import { smallestConduit, trunkingUse } from '../../src/guidance/index.js';
import { hasCode, squareMillimetres } from '../../src/index.js';
import { expectPublished } from '../support/expect-published.js';
import { cases } from './containment.cases.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => expectPublished(c));

// the law that a reader of the table found in it, one cell of which the print rounds otherwise
test('the terms of long runs fall with the length, doubled for each bend', () => {
  const law = { 16: [6000, 30], 20: [10_000, 31], 25: [19_000, 33], 32: [36_000, 36] } as const;
  let cells = 0;
  for (const conduitDiameter of [16, 20, 25, 32] as const)
    for (const bends of [0, 1, 2, 3, 4])
      for (const length of conduitTermsLong.offers('length') as readonly number[]) {
        const term = conduitTermsLong.find({ bends, conduitDiameter, length } as never);
        if (term === undefined) continue;
        cells++;
        const [over, plus] = law[conduitDiameter];
        const odd = conduitDiameter === 16 && length * 2 ** bends === 4 ? 1 : 0;
        expect(term - odd).toBe(Math.round(over / (plus + length * 2 ** bends)));
      }
  expect(cells).toBe(200);
});

describe('conduit', () => {
  const cables = [{ conductorArea: squareMillimetres(4), conductor: 'stranded', count: 6 }] as const;

  test('a bend or a longer run needs no less', () => {
    const at = (length: number, bends: number) => smallestConduit({ cables, length, bends });
    expect(at(3, 0)).toBe(20);
    // 6 times 43 are 258: more than 233, less than 422
    expect(at(3, 2)).toBe(25);
    expect(at(3.2, 0)).toBe(20);
    expect(at(10, 2)).toBe(25);
    expect(at(5, 3)).toBe(25);
  });

  test('what cannot be drawn in, or is not in the guide, is refused', () => {
    const code = (run: () => unknown) => {
      try {
        return run();
      } catch (error) {
        return hasCode(error, 'invalid-input')
          ? error.detail.problems.map((p) => p.path.join('.'))
          : (error as { code: string }).code;
      }
    };
    expect(code(() => smallestConduit({ cables: [{ ...cables[0], count: 200 }], length: 3, bends: 0 }))).toBe(
      'no-solution',
    );
    expect(code(() => smallestConduit({ cables, length: 8, bends: 4 }))).toBe('no-solution');
    expect(code(() => smallestConduit({ cables, length: 0, bends: 5 }))).toEqual(['length', 'bends']);
    expect(code(() => smallestConduit({ cables: [], length: 1, bends: 0 }))).toEqual(['cables']);
    expect(
      code(() =>
        smallestConduit({ cables: [{ ...cables[0], conductorArea: squareMillimetres(35) }], length: 1, bends: 0 }),
      ),
    ).toBe('no-cell');
  });

  test('trunking: 62 cables of 4 mm² fit into 50 by 50 mm, 63 do not', () => {
    const use = (count: number) =>
      trunkingUse({ cables: [{ ...cables[0], count }], insulation: 'thermoplastic', size: '50x50' });
    expect(use(62)).toBeLessThanOrEqual(1);
    expect(use(63)).toBeGreaterThan(1);
  });
});
