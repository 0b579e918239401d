import { expect, test } from 'vitest';
import { known, squareMillimetres as mm2, type Supply, silent, unknown } from '../../../src/index.js';
import { earthingAndBonding } from '../../../src/standards/bs7671/rules/earthing-and-bonding.js';
import { caseOf, circuit, house } from '../../support/house.js';

const judge = (change: Partial<Supply>) => {
  const results = earthingAndBonding(caseOf(house([circuit()], change), 'ev'), {}, silent());
  return results.map((r) => [r.check, r.verdict, r.limit?.value]);
};
const water = (area: number) => [{ what: 'water', area: known(mm2(area)) }];

test('PME: Table 54.8 by the neutral, and the earthing conductor no smaller', () => {
  expect(judge({ bonding: water(10) })).toEqual([
    ['earthing-conductor', 'pass', 16],
    ['main-bonding-conductor', 'pass', 10],
  ]);
  expect(judge({ bonding: water(10), supplyNeutral: known(mm2(50)) })[1]).toEqual([
    'main-bonding-conductor',
    'fail',
    16,
  ]);
  expect(judge({ bonding: water(25), supplyNeutral: known(mm2(95)) })[0]).toEqual(['earthing-conductor', 'fail', 25]);
});
test('without PME: half the earthing conductor that is required, 6 to 25 mm²', () => {
  const tns = { system: known('TN-S' as const), tails: known(mm2(25)) };
  expect(judge({ ...tns, bonding: water(6) })[1]).toEqual(['main-bonding-conductor', 'fail', 8]);
  expect(judge({ ...tns, tails: known(mm2(10)), bonding: water(6) })[1]).toEqual(['main-bonding-conductor', 'pass', 6]);
});
test('what is not known is asked for', () => {
  expect(judge({ supplyNeutral: unknown() }).map((r) => r[1])).toEqual(['not-determined', 'not-determined']);
  expect(judge({ bonding: [] })[1]?.[1]).toBe('not-required');
  expect(judge({ system: known('TT' as const), bonding: water(10) })[0]?.[1]).toBe('not-determined');
});
