import { describe, expect, test } from 'vitest';
import { type CableTables, cableTables } from '../../src/codes/bs7671/cable-tables.js';
import * as bs from '../../src/codes/bs7671/definitions.js';
import * as iec from '../../src/codes/iec60364/definitions.js';
import { definitions } from '../../src/verify/definitions.js';
import type { Printed } from './guards.js';
import { aluminiumCarriesLess, hotterCarriesMore, lawsOf } from './laws.js';

const title = (row: CableTables) => `${row.capacity.id} for ${row.construction} ${row.material} ${row.insulation}`;

describe('cable tables of BS 7671', () => {
  test.each(cableTables.map((row) => [title(row), row] as const))('%s', (_, row) => {
    expect(lawsOf(row)).toEqual([]);
  });

  // invented: the cable tables have no row for aluminium at 70 °C
  const aluminium: CableTables = {
    construction: 'armoured',
    material: 'aluminium',
    insulation: 'thermoplastic-70',
    capacity: bs.table4J4A,
    drop: bs.table4J4B,
  };
  const scaled = <T extends Printed>(table: T, by: (column: readonly (string | number)[]) => number): T => ({
    ...table,
    rows: table.rows.map(([key, ...cells]) => [
      key,
      ...cells.map((v, c) => (typeof v === 'number' ? Math.round(100 * v * by(table.columns[c] ?? [])) / 100 : v)),
    ]),
  });
  const met = (row: CableTables) => lawsOf(row, [...cableTables, row]).join('\n');

  test('aluminium at 70 °C with the figures of 90 °C is met, in every capacity and in the drop', () => {
    const { drop: _, ...capacityOnly } = aluminium;
    expect(met(capacityOnly)).toContain('hotter than bs7671/4j4a');
    expect(met(capacityOnly)).toContain('aluminium to bs7671/4d4a');
    expect(met({ ...aluminium, capacity: bs.table4D4A, material: 'copper' })).toContain('drop to resistance');
    expect(met(aluminium).split('\n').length).toBeGreaterThan(100);
  });

  test('with figures for 70 °C it passes: 1.22 times less in air, 1.17 in the ground, and resistances of 70 °C', () => {
    const capacity = scaled(bs.table4J4A, ([method]) => 1 / (method === 'D' ? 1.17 : 1.22));
    const drop = scaled(bs.table4J4B, () => (228 + 70) / (228 + 90));
    expect(met({ ...aluminium, capacity, drop })).toBe('');
  });
});

describe('cable tables of IEC 60364-5-52', () => {
  const of = (table: Printed, material: 'copper' | 'aluminium', temperature: 70 | 90) => {
    return { table, material, temperature };
  };

  test.each([
    [iec.tableB523, iec.tableB522],
    [iec.tableB525, iec.tableB524],
  ])('$id: both metals, beside the other insulation and each other', (hot, cool) => {
    for (const metal of ['copper', 'aluminium'] as const)
      expect(hotterCarriesMore(of(hot, metal, 90), of(cool, metal, 70), (c) => c.startsWith(metal))).toEqual([]);
    for (const table of [hot, cool])
      expect(
        aluminiumCarriesLess(table, table, (c) => (/^alu/.test(c) ? c.replace('aluminium', 'copper') : undefined)),
      ).toEqual([]);
  });

  test('free air: insulation and metal', () => {
    expect(hotterCarriesMore(of(iec.tableB5212, 'copper', 90), of(iec.tableB5210, 'copper', 70))).toEqual([]);
    expect(hotterCarriesMore(of(iec.tableB5213, 'aluminium', 90), of(iec.tableB5211, 'aluminium', 70))).toEqual([]);
    expect(aluminiumCarriesLess(iec.tableB5211, iec.tableB5210)).toEqual([]);
    expect(aluminiumCarriesLess(iec.tableB5213, iec.tableB5212)).toEqual([]);
  });
});

describe('tables of k', () => {
  // K and beta, IEC 60949
  const constants = { copper: [226, 234.5], aluminium: [148, 228], steel: [78, 202], lead: [41, 230] } as const;
  const named = new Map(definitions.tables.map((t) => [t.id, t]));
  const factors = definitions.tables.filter((t) => t.cell === 'adiabaticFactor');

  test('there are some', () => expect(factors.length).toBeGreaterThan(5));

  test.each(factors.map((t) => [t.id, t] as const))('%s is that of its temperatures', (id, t) => {
    const [initial, final] = [named.get(`${id}-initial`), named.get(`${id}-final`)];
    const off = t.columns.flatMap(([metal], c) =>
      t.rows.flatMap((row, r) => {
        const [k, from, to] = [row, initial?.rows[r], final?.rows[r]].map((cells) => cells?.[c + 1]);
        if (k === null && from === null && to === null) return [];
        const [factor, beta] = constants[metal as keyof typeof constants];
        const due = factor * Math.sqrt(Math.log((beta + Number(to)) / (beta + Number(from))));
        return Math.abs(Number(k) - due) <= 0.6 ? [] : [`${metal}, ${row[0]}: ${k}, due ${due}`];
      }),
    );
    expect(off).toEqual([]);
  });
});
