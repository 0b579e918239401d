import { describe, expect, test } from 'vitest';
import * as bs from '../../../src/codes/bs7671/definitions.js';
import { tableB7, tableI2 } from '../../../src/guidance/definitions.js';
import { amperes, celsius, ohms, seconds, squareMillimetres, type Table, volts } from '../../../src/index.js';
import { customaryImpedances } from '../../../src/networks/definitions.js';
import * as products from '../../../src/products/definitions.js';

const tables = (Object.values(bs) as readonly unknown[]).filter(
  (v): v is Table => typeof v === 'object' && v !== null && 'kind' in v && v.kind === 'table',
);

describe('tables', () => {
  test('each printed cell is read back, and each has a source', () => {
    expect(tables.length).toBeGreaterThan(50);
    for (const t of tables) {
      expect(t.source.document, t.id).not.toBe('');
      const last = t.axes[t.axes.length - 1]?.name as string;
      for (const [key, ...cells] of t.rows)
        cells.forEach((cell, c) => {
          const keys = Object.fromEntries(t.axes.slice(0, -1).map((a, i) => [a.name, t.columns[c]?.[i]]));
          const found = t.find({ ...keys, [last]: key } as never);
          if (cell === null) return;
          expect(found, `${t.id} ${String(key)}`).toBeCloseTo((cell as number) / (t.per ?? 1), 12);
        });
    }
  });
  test('identifiers are unique', () => expect(new Set(tables.map((t) => t.id)).size).toBe(tables.length));
});

describe('bands and edges of the protection tables', () => {
  test('Table 41.1: each band reaches up to its row', () => {
    const at = (u: number) => bs.table411.get({ system: 'TN', current: 'AC', nominalVoltage: volts(u) });
    expect([at(110), at(120), at(121), at(230), at(231), at(400), at(401)]).toEqual([
      0.8, 0.8, 0.4, 0.4, 0.2, 0.2, 0.1,
    ]);
    expect(bs.table411.find({ system: 'TN', current: 'AC', nominalVoltage: volts(1001) })).toBeUndefined();
    expect(bs.table411.get({ system: 'TT', current: 'AC', nominalVoltage: volts(230) })).toBe(0.2);
  });
  test('Table 54.8 and the class limits reach below their first row', () => {
    expect(bs.table548.get({ metal: 'copper', supplyNeutralArea: squareMillimetres(16) })).toBe(10);
    expect(bs.table548.get({ metal: 'copper', supplyNeutralArea: squareMillimetres(36) })).toBe(16);
    const limit = (rating: number) =>
      products.energyLimits.find({
        type: 'B',
        energyClass: '3',
        breakingCapacity: amperes(6000),
        deviceRating: amperes(rating),
      });
    expect([limit(6), limit(16), limit(20), limit(32), limit(40), limit(50)]).toEqual([
      35000,
      35000,
      45000,
      45000,
      54000,
      undefined,
    ]);
  });
  test('a fuse has no current for a time that is not printed', () => {
    const at = (t: number, rating: number) =>
      bs.fuseOperatingCurrents.find({ device: 'BS 88-3', operatingTime: seconds(t), deviceRating: amperes(rating) });
    expect([at(0.4, 32), at(5, 32), at(1, 32), at(0.4, 63)]).toEqual([239.6, 140.2, undefined, undefined]);
  });
  test('the gates of gG fuses two steps apart agree: the 1.6 to 1 rule', () => {
    const ratings = products.ggGates.offers('deviceRating') as number[];
    ratings.slice(0, -2).forEach((rating, i) => {
      const most = products.ggGates.get({ gate: 'most-0.1s', deviceRating: amperes(rating) });
      const least = products.ggGates.get({ gate: 'least-0.1s', deviceRating: amperes(ratings[i + 2] as number) });
      expect(least).toBe(most);
    });
  });
  test('armour: area times resistance is near that of steel', () => {
    for (const cores of [2, 3, 4, 5])
      for (const area of products.armourAreas.offers('conductorArea') as number[]) {
        const keys = { cores: cores as never, conductorArea: squareMillimetres(area) };
        const [a, r] = [products.armourAreas.find(keys), products.armourResistances.find(keys)];
        if (a === undefined || r === undefined) continue;
        expect(a * r * 1e3).toBeGreaterThan(130);
        expect(a * r * 1e3).toBeLessThan(180);
      }
  });
  test('the guide never asks for less than class 3 needs, but for one printed figure', () => {
    const less: string[] = [];
    for (const type of ['B', 'C'] as const)
      for (const capacity of [3000, 6000])
        for (const rating of [16, 32, 40]) {
          const keys = { type, breakingCapacity: amperes(capacity), deviceRating: amperes(rating) };
          const need = Math.sqrt(products.energyLimits.get({ ...keys, energyClass: '3' })) / 115;
          if (tableB7.get(keys) < need) less.push(`${type}${rating} ${capacity}`);
        }
    expect(less).toEqual(['B16 3000']);
  });
  test('guide factors are those of the linear coefficient', () => {
    for (const t of tableI2.offers('testTemperature') as number[])
      expect(tableI2.get({ conductor: 'copper', testTemperature: celsius(t) })).toBeCloseTo(1 + 0.004 * (t - 20), 2);
  });
  test('customary external impedances', () => {
    expect(customaryImpedances.get({ supply: 'up to 100 A', system: 'TN-C-S' })).toBe(ohms(0.35));
  });
});
