import { describe, expect, it } from 'vitest';
import * as bs from '../../../src/codes/bs7671/definitions.js';
import * as iec from '../../../src/codes/iec60364/definitions.js';
import { squareMillimetres as mm2, ratio, type SquareMillimetres } from '../../../src/index.js';

// Where prints differ from one another, from their own law, or look alike: each by name, with the figure that is kept.

const sizes = [1, 1.5, 2.5, 4, 6, 10, 16].map(mm2);
const flat = (size: SquareMillimetres) => bs.table4D5.get({ method: 'C', conductorArea: size });
const single = (size: SquareMillimetres) =>
  bs.table4D1A.get({ method: 'C', loaded: '2', formation: 'flat-touching', conductorArea: size });
const multicore = (size: SquareMillimetres) => bs.table4D2A.get({ method: 'C', loaded: '2', conductorArea: size });

describe('columns that are easily taken for one another', () => {
  it('column C of 4D5, of 4D1A and of 4D2A', () => {
    expect(sizes.map(flat)).toEqual([16, 20, 27, 37, 47, 64, 85]);
    expect(sizes.map(single)).toEqual([15.5, 20, 27, 37, 47, 65, 87]);
    expect(sizes.map(multicore)).toEqual([15, 19.5, 27, 36, 46, 63, 85]);
  });

  it('column A of 4D5 is not that of 4D2A up to 4 mm², nor at 10 mm²', () => {
    const differ = sizes.filter(
      (s) =>
        bs.table4D5.get({ method: 'A', conductorArea: s }) !==
        bs.table4D2A.get({ method: 'A', loaded: '2', conductorArea: s }),
    );
    expect(differ).toEqual([1, 1.5, 2.5, 4, 10]);
  });

  it('two-core figures of 4F3A and of the capacity tables: a cord carries less', () => {
    expect(bs.table4F3A.get({ system: 'single-phase', conductorArea: mm2(1.5) })).toBeLessThan(
      bs.table4D2A.get({ method: 'E', loaded: '2', conductorArea: mm2(1.5) }),
    );
  });
});

describe('conflicts of the prints', () => {
  it('4B1 at 25 °C: 1.03 and 1.02, where IEC and the heat balance have 1.06 and 1.04', () => {
    for (const [insulation, british, international, most] of [
      ['thermoplastic-70', 1.03, 1.06, 70],
      ['thermosetting-90', 1.02, 1.04, 90],
    ] as const) {
      const keys = { insulation, ambientTemperature: 25 as never };
      expect(bs.table4B1.get(keys)).toBe(british);
      expect(iec.tableB5214.get(keys)).toBe(international);
      expect(Math.sqrt((most - 25) / (most - 30))).toBeCloseTo(international, 2);
    }
  });

  it('4D1A, method A, two loaded, 2.5 mm²: 20 A, where IEC has 19.5 A', () => {
    const keys = { conductorArea: mm2(2.5) };
    expect(bs.table4D1A.get({ method: 'A', loaded: '2', formation: 'enclosed', ...keys })).toBe(20);
    expect(iec.tableB522.get({ material: 'copper', method: 'A1', ...keys })).toBe(19.5);
  });

  it('4D5, method 103, 4 mm²: 17.5 A, where half of method C is 18.5 A', () => {
    expect(bs.table4D5.get({ method: '103', conductorArea: mm2(4) })).toBe(17.5);
    for (const size of sizes.filter((s) => s !== 4))
      expect(bs.table4D5.get({ method: '103', conductorArea: size })).toBe(Math.round(flat(size)) / 2);
  });

  it('4E1A at 50 mm², three loaded: method C 209 A above method F in trefoil 207 A', () => {
    const keys = { loaded: '3', conductorArea: mm2(50) } as const;
    expect(bs.table4E1A.get({ method: 'C', formation: 'flat-or-trefoil', ...keys })).toBe(209);
    expect(bs.table4E1A.get({ method: 'F', formation: 'trefoil', ...keys })).toBe(207);
  });

  it('4E4A, two cores of 4 mm² in the ground: 43 A is kept, another copy has 46 A', () => {
    expect(bs.table4E4A.get({ method: 'D', loaded: '2', conductorArea: mm2(4) })).toBe(43);
  });

  it('4F2A, single-core, 185 mm² and from 400 mm² up: of two prints the lower capacity is kept', () => {
    for (const [size, maker, distributor] of [
      [185, 564, 567],
      [400, 885, 924],
      [500, 1017, 1062],
      [630, 1190, 1242],
    ] as const) {
      const kept = bs.table4F2A.get({ build: 'single-core', loaded: '2', conductorArea: mm2(size) });
      expect(kept).toBe(Math.min(maker, distributor));
    }
  });

  it('4F2B, two cores of 25 mm²: of two prints the larger drop is kept, which class 5, tinned, at 90 °C confirms', () => {
    const of = (component: 'r' | 'z') =>
      1000 * bs.table4F2B.get({ system: 'single-phase', build: 'multicore', component, conductorArea: mm2(25) });
    expect([of('r'), of('z')]).toEqual([2.03, 2.04].map((v) => expect.closeTo(v, 9)));
    expect(of('r') / (2 * 0.795 * (1 + 0.00393 * 70))).toBeCloseTo(1, 2);
  });

  it('B.52.2, 2.5 mm²: in ducts 29 A above direct in the ground 28 A', () => {
    const keys = { material: 'copper', conductorArea: mm2(2.5) } as const;
    expect(iec.tableB522.get({ method: 'D1', ...keys })).toBe(29);
    expect(iec.tableB522.get({ method: 'D2', ...keys })).toBe(28);
  });

  it('4C1 and 4C4 for one perforated tray: 0.77 and 0.79 for four, 0.73 and 0.76 for six cables', () => {
    const tray = { support: 'perforated tray', spacing: 'touching', trays: '1' } as const;
    for (const [n, layer, free] of [
      [3, 0.82, 0.82],
      [4, 0.77, 0.79],
      [6, 0.73, 0.76],
    ] as const) {
      const circuitsInGroup = ratio(n);
      expect(bs.table4C1.get({ arrangement: 'single-layer-tray', circuitsInGroup })).toBe(layer);
      expect(bs.table4C4.get({ ...tray, circuitsInGroup })).toBe(free);
    }
  });

  it('4B3 and B.52.16: the factors of 0.8 K·m/W there stand at 0.7 K·m/W here', () => {
    const at = (t: { readonly rows: readonly (readonly (string | number | null)[])[] }) => t.rows[1];
    expect(at(bs.table4B3)).toEqual([0.8, 1.2, 1.62]);
    expect(at(iec.tableB5216)).toEqual([0.7, 1.2, 1.62]);
  });

  it('4C2 and 4C3 end at six circuits, where B.52.18 and B.52.19 go on to twenty', () => {
    for (const [british, international] of [
      [bs.table4C2, iec.tableB5218],
      [bs.table4C3Multicore, iec.tableB5219Multicore],
      [bs.table4C3SingleCore, iec.tableB5219SingleCore],
    ] as const) {
      expect(british.offers('circuitsInGroup').at(-1)).toBe(6);
      expect(international.offers('circuitsInGroup').at(-1)).toBe(20);
    }
  });
});
