import { expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { known, squareMillimetres as mm2, ohms, type Supply, unknown } from '../../../src/index.js';
import type { EarthingConductorLaid } from '../../../src/installation/supply.js';
import { caseOf, circuit, house } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const judge = (change: Partial<Supply>) => {
  const results = judged(bs7671('2018+A2:2022'), 'earthing-and-bonding', caseOf(house([circuit()], change), 'ev'));
  return results.map((r) => [r.check, r.verdict, r.limit?.value]);
};
const water = (area: number) => [{ what: 'water', area: known(mm2(area)) }];

test('PME: Table 54.8 by the neutral, and the earthing conductor no smaller', () => {
  expect(judge({ bonding: water(10) })).toEqual([
    ['earthing-conductor', 'pass', 10],
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
test('by calculation where the cut-out clears an earth fault within 5 s, else by the table, BS 7671 543.1.1', () => {
  // BS 88-3, 100 A: 0.40 Ω printed for 5 s is 575 A; 0.95 × 230 V / 575 A = 0.38 Ω
  const smallest = (575 * Math.sqrt(5)) / 143;
  expect(smallest).toBeCloseTo(8.99, 2);
  const tns = (ze: number | null) =>
    judge({ system: known('TN-S'), externalImpedance: ze === null ? unknown() : known(ohms(ze)) })[0];
  expect(tns(0.379)?.[2]).toBeCloseTo(smallest, 9);
  expect(tns(0.381)?.[2]).toBe(16);
  // the table's 16 mm² are enough whatever the loop is; less may do, and is open until it is known
  expect(tns(null)).toEqual(['earthing-conductor', 'pass', 16]);
  expect(
    judge({ system: known('TN-S'), externalImpedance: unknown(), earthingConductor: known(mm2(10)) })[0]?.[1],
  ).toBe('not-determined');
});
test('below the least that is asked for anywhere nothing has to be known: 10 mm² under PME, 6 mm² without', () => {
  const open = { supplyNeutral: unknown(), tails: unknown() };
  const bonded = (area: number, change: Partial<Supply> = {}) =>
    judge({ ...open, ...change, bonding: water(area) })[1]?.slice(1);
  expect(bonded(6)).toEqual(['fail', 10]);
  expect(bonded(10)?.[0]).toBe('not-determined');
  const tns = { system: known('TN-S' as const) };
  expect(bonded(4, tns)).toEqual(['fail', 6]);
  expect(bonded(6, tns)?.[0]).toBe('not-determined');
  expect(bonded(4, { system: unknown() })?.[0]).toBe('not-determined');
});
test('what is not known is asked for', () => {
  expect(judge({ supplyNeutral: unknown() }).map((r) => r[1])).toEqual(['not-determined', 'not-determined']);
  // an empty list is none only where somebody says so
  expect(judge({ bonding: [] })[1]?.[1]).toBe('not-determined');
  expect(judge({ bonding: [], noExtraneousParts: known(true) })[1]?.[1]).toBe('not-required');
  expect(judge({ earthingConductorLaid: unknown(), bonding: water(10) })[0]?.[1]).toBe('not-determined');
});

test('on TT the way in which the earthing conductor is laid decides, BS 7671 542.3.1, Table 54.1', () => {
  const on = (laid: EarthingConductorLaid, area: number, ze: number | null = 60) =>
    judge({
      system: known('TT'),
      externalImpedance: ze === null ? unknown() : known(ohms(ze)),
      earthingConductor: known(mm2(area)),
      earthingConductorLaid: known(laid),
      bonding: [],
      noExtraneousParts: known(true),
    })[0];
  expect(on('buried', 16)).toEqual(['earthing-conductor', 'fail', 25]);
  expect(on('buried', 25)).toEqual(['earthing-conductor', 'pass', 25]);
  expect(on('buried-against-damage', 16)).toEqual(['earthing-conductor', 'fail', 25]);
  expect(on('buried-against-corrosion', 16)).toEqual(['earthing-conductor', 'pass', 16]);
  expect(on('buried-protected', 2.5)).toEqual(['earthing-conductor', 'pass', 2.5]);
  expect(on('above-ground', 2.5)).toEqual(['earthing-conductor', 'fail', 4]);
  expect(on('above-ground-protected', 2.5)).toEqual(['earthing-conductor', 'pass', 2.5]);
  // below 1 ohm the tails decide as well: 253 A for 1 s need 1.77 mm² at k = 143, but 2530 A need 17.7 mm²
  expect(Math.sqrt(253 ** 2 * 1) / 143).toBeLessThan(2.5);
  expect(on('above-ground', 6, 0.99)).toEqual(['earthing-conductor', 'fail', 16]);
  expect(on('above-ground', 6, 1)).toEqual(['earthing-conductor', 'pass', 4]);
  expect(on('above-ground', 6, null)?.[1]).toBe('not-determined');
});
test('a buried conductor of a TN supply has to meet Table 54.1 too', () => {
  const laid = { earthingConductorLaid: known('buried' as const), bonding: water(10) };
  expect(judge(laid)[0]).toEqual(['earthing-conductor', 'fail', 25]);
  expect(judge({ ...laid, earthingConductor: known(mm2(25)) })[0]).toEqual(['earthing-conductor', 'pass', 25]);
});
