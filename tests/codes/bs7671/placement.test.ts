import { expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { known, metres, type Run, type Stretch, unknown } from '../../../src/index.js';
import { caseOf, circuit, house, stretch } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const armoured: Run['cable'] = { ...circuit().cable, construction: 'armoured', cores: 3, protective: 'core' };
const placed = (change: Partial<Stretch>, cable = armoured) =>
  judged(
    bs7671('2018+A2:2022'),
    'placement',
    caseOf(house([circuit({ cable, stretches: [stretch(change)] })]), 'ev'),
  ).map((r) => [r.check, r.verdict, r.weight]);
const ground = (depth?: number): Partial<Stretch> => ({
  method: known('D'),
  containment: 'buried',
  ...(depth === undefined ? {} : { depth: known(metres(depth)) }),
});

test('an armoured cable that lies shallow is remarked on: the clause has no depth in figures', () => {
  expect(placed(ground(0.1))).toEqual([
    ['cable-for-the-ground', 'pass', 'rule'],
    ['depth-in-the-ground', 'fail', 'advice'],
  ]);
  expect(placed(ground(0.5))[1]?.[1]).toBe('pass');
  expect(placed(ground())[1]?.[1]).toBe('not-determined');
});
test('a cable without armour is none for the ground, unless it lies in a duct', () => {
  const flat = circuit().cable;
  expect(placed(ground(0.6), flat)[0]).toEqual(['cable-for-the-ground', 'fail', 'rule']);
  expect(placed({ ...ground(0.6), containment: 'duct' }, flat)[0]?.[1]).toBe('pass');
  const { containment: _, ...unsaid } = ground(0.6);
  expect(placed(unsaid, flat)[0]?.[1]).toBe('not-determined');
});
test('twin and earth in the sun is remarked on', () => {
  const flat = circuit().cable;
  expect(placed({ outdoors: true, containment: 'clipped' }, flat)).toEqual([['cable-for-the-sun', 'fail', 'advice']]);
  expect(placed({ outdoors: true, containment: 'conduit' }, flat)).toEqual([]);
  expect(placed({ outdoors: true, containment: 'clipped' })).toEqual([]);
});
test('clipped says less than a method: without the method nobody knows that the whole section is above the ground', () => {
  const open: Partial<Stretch> = { method: unknown('see how it is fixed'), containment: 'clipped' };
  expect(placed(open, circuit().cable).map(([, verdict]) => verdict)).toEqual(['not-determined', 'not-determined']);
  expect(placed({ ...open, method: known('C') }, circuit().cable)).toEqual([]);
});
