/** Bounds that a small change of the code moved without a test noticing, once: each side of each. */
import { expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { amperes, assess, type CheckResult, known, milliamperes, ohms, type Run } from '../../../src/index.js';
import { circuit, house, load, plainBreaker } from '../../support/house.js';

const code = bs7671('2018+A2:2022');
const all = (results: readonly CheckResult[]): readonly CheckResult[] =>
  results.flatMap((r) => [r, ...all(r.alternatives ?? [])]);
const verdict = (installation: Parameters<typeof assess>[1], check: string) =>
  all(assess(code, installation, 'ev', {}).results).find((r) => r.check === check)?.verdict;

test('on TT the loop times the rated residual current is at most 50 V: 411.5.3', () => {
  const residual: Run['residual'] = [
    { position: 'origin-of-circuit', type: known('A'), rating: known(milliamperes(30)) },
  ];
  const of = (loop: number) =>
    verdict(
      house([circuit({ residual, feeds: [load(20)] })], {
        system: known('TT'),
        externalImpedance: known(ohms(loop)),
        electrode: { resistance: known(ohms(loop - 21)) },
      }),
      'touch-voltage-at-residual-current',
    );
  // 50 V over 30 mA is 1667 Ω
  expect([of(1640), of(1700)]).toEqual(['pass', 'fail']);
});

test('of a cooker of which nobody says whether it has a socket-outlet, that is asked from 32 A to 63 A alone: 411.3.2.2', () => {
  const of = (rating: number, withSocket?: boolean) =>
    verdict(
      house(
        [
          circuit({
            device: { ...plainBreaker, rating: known(amperes(rating)) },
            feeds: [load(20, { purpose: 'cooking', ...(withSocket === undefined ? {} : { withSocket }) })],
          }),
        ],
        { externalImpedance: known(ohms(0.2)) },
      ),
      'automatic-disconnection',
    );
  // behind a type B breaker the loop decides: the same for 0.4 s and 5 s
  expect([of(32), of(32, true), of(32, false)]).toEqual(['pass', 'pass', 'pass']);
  expect([of(40, true), of(40, false)]).toEqual(['pass', 'pass']);
  expect(of(40)).toBe('not-determined');
});
