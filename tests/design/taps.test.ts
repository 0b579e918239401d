import { expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  assess,
  type Board,
  celsius,
  type Installation,
  isMissing,
  known,
  metres,
  type Stretch,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { chargePoint, circuit, house, stretch } from '../support/house.js';

const floor = (id: string, at?: number): Board => ({
  kind: 'board',
  id,
  ...(at === undefined ? {} : { at: metres(at) }),
  complete: known(true),
  noResidual: known(true),
  runs: [circuit({ id: `ev of ${id}`, feeds: [{ ...chargePoint, id: `point of ${id}` }] })],
});
/** A riser in two stretches of 10 m and 18 m with boards along it. */
const riser = (feeds: readonly Board[], lengths: readonly number[] = [10, 18]): Installation =>
  house(
    [
      circuit({
        id: 'riser',
        device: { ...circuit().device, rating: known(amperes(63)) },
        cable: { ...circuit().cable, area: known(squareMillimetres(16)) },
        stretches: lengths.map((length, i) => stretch({ name: `part ${i}`, length: known(metres(length)) })),
        feeds,
      }),
    ],
    { prospectiveCurrent: known(amperes(9000)) },
  );
const figures = (installation: Installation, run: string) =>
  assess(bs7671('2018+A2:2022'), installation, run).results.map((r) => [
    r.check,
    r.verdict,
    'value' in r ? r.value : 0,
  ]);

test('a board that is tapped along a riser is as far away as its tap: as at the end of so short a riser', () => {
  for (const [at, lengths] of [
    [6, [6]],
    [10, [10]],
    [14, [10, 4]],
    [28, [10, 18]],
  ] as const)
    expect(figures(riser([floor('low', at), floor('high')]), 'ev of low')).toEqual(
      figures(riser([floor('low', at), floor('high')], lengths), 'ev of low'),
    );
});

test('how far a tap is counts, whatever is known of the stretches on the way to it', () => {
  const parts = (first: Stretch['length']): Installation =>
    house(
      [
        circuit({
          id: 'riser',
          device: { ...circuit().device, rating: known(amperes(63)) },
          cable: { ...circuit().cable, area: known(squareMillimetres(16)) },
          stretches: [
            stretch({ name: 'first', length: first }),
            stretch({ name: 'in the loft', length: known(metres(18)), ambient: known(celsius(50)) }),
          ],
          feeds: [floor('low', 14), floor('high')],
        }),
      ],
      { prospectiveCurrent: known(amperes(9000)) },
    );
  const open = figures(parts(unknown('measure it')), 'ev of low');
  expect(open.some(([check]) => check === 'voltage-drop')).toBe(true);
  for (const first of [2, 7, 14, 30]) expect(figures(parts(known(metres(first))), 'ev of low')).toEqual(open);
});

test('the riser itself is judged whole, but for its drop', () => {
  const others = (feeds: readonly Board[]) =>
    figures(riser(feeds), 'riser').filter((r) => !JSON.stringify(r).includes('dropRatio'));
  expect(others([floor('low', 6), floor('high')])).toEqual(others([floor('low'), floor('high')]));
  expect(others([floor('low')]).length).toBeGreaterThan(5);
});

test('near the start the fault current is what the board sees, and a tap that nobody states is not taken for a far one', () => {
  const breaking = (low: Board, high?: Board) =>
    assess(bs7671('2018+A2:2022'), riser([low, ...(high ? [high] : [])], [28]), 'ev of low').results.find(
      (r) => r.check === 'breaking-capacity',
    )?.verdict;
  // 9 kA at the origin; 28 m of 16 mm² leave about 2.5 kA of it, 2 m some 8 kA, and the device breaks 6 kA
  expect(breaking(floor('low'))).toBe('pass');
  expect(breaking(floor('low', 28), floor('high'))).toBe('pass');
  // less than declared of the assembly may still do
  expect(breaking(floor('low', 1), floor('high'))).toBe('not-determined');
  expect(breaking(floor('low'), floor('high'))).toBe('not-determined');
});

test('the drop along a riser is that of its pieces, each with what is tapped beyond', () => {
  // 32 A at 10 m and 32 A at 28 m on 16 mm² twin and earth, 2.8 mV/A/m: (64 x 10 + 32 x 18) x 2.8 mV = 3.405 V; all of it
  // to the end would be 64 x 28 x 2.8 mV = 5.018 V
  const drop = (feeds: readonly Board[], run: string) => {
    const { figures } = assess(bs7671('2018+A2:2022'), riser(feeds), run);
    const along = figures?.dropAlong;
    if (along === undefined || isMissing(along)) throw new Error('no drop');
    return along.find((d) => d.run === 'riser')?.drop;
  };
  expect(drop([floor('low', 10), floor('high', 28)], 'riser')).toBeCloseTo(3.405, 2);
  // ahead of another circuit it carries no more than its device of 63 A: (63 x 10 + 32 x 18) x 2.8 mV
  expect(drop([floor('low', 10), floor('high', 28)], 'ev of high')).toBeCloseTo(3.377, 2);
  expect(drop([floor('low', 10), floor('high', 28)], 'ev of low')).toBeCloseTo(63 * 10 * 0.0028, 2);
  expect(drop([floor('low'), floor('high')], 'riser')).toBeCloseTo(5.018, 2);
});
