import { expect, test } from 'vitest';
import { cellProvenance, weakestOf } from '../../src/core/provenance.js';
import { table } from '../../src/index.js';
import { definitions } from '../../src/verify/definitions.js';

test('the weakest of several', () => {
  expect(weakestOf(['two-sources', 'derived', 'definition'])).toBe('derived');
  expect(weakestOf(['one-source', 'memory', 'common-practice'])).toBe('memory');
  expect(weakestOf(['definition', 'definition'])).toBe('definition');
  expect(weakestOf([])).toBeUndefined();
});

const own = table({
  id: 'own/1',
  title: 'figures of our own',
  axes: [
    { name: 'method', labels: ['B', 'C'] },
    { name: 'conductorArea', unit: 'mm²', between: 'linear', allowedBy: 'ourselves', below: 'first' },
  ],
  columns: [['B'], ['C']],
  rows: [
    [1, 10, 11],
    [2.5, 20, null],
    [4, 30, 31],
    [6, 40, 41],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: { document: 'Test rules of our own', provenance: 'one-source' },
  provenanceOf: { '4': 'memory', C: 'two-sources', 'B, 6': 'definition' },
});
const at = (method: string, conductorArea: number) => cellProvenance(own, { method, conductorArea });

test('row, column and single cell; between two rows both count, below the first the first', () => {
  expect([at('B', 1), at('B', 4), at('B', 6)]).toEqual(['one-source', 'memory', 'definition']);
  expect([at('C', 1), at('C', 4)]).toEqual(['two-sources', 'two-sources']);
  expect([at('B', 2), at('B', 3), at('B', 5), at('B', 0.5)]).toEqual(['one-source', 'memory', 'memory', 'one-source']);
  expect([at('C', 2.5), at('B', 7), at('D', 1)]).toEqual([undefined, undefined, undefined]);
});

test('rows from one to another, of every column or of one', () => {
  const spanned = table({
    id: 'own/2',
    title: 'figures of our own',
    axes: [
      { name: 'method', labels: ['B', 'C'] },
      { name: 'conductorArea', unit: 'mm²', between: 'exact' },
    ],
    rows: '1 10 11\n2.5 20 21\n4 30 31\n6 40 41\n10 50 51',
    cell: 'tabulatedCapacity',
    unit: 'A',
    source: { document: 'Test rules of our own', provenance: 'one-source' },
    provenanceOf: { '2.5 to 6': 'memory', 'C, 4 to 10': 'two-sources' },
  });
  const found = (method: string) =>
    [1, 2.5, 4, 6, 10].map((conductorArea) => cellProvenance(spanned, { method, conductorArea }));
  expect(found('B')).toEqual(['one-source', 'memory', 'memory', 'memory', 'one-source']);
  expect(found('C')).toEqual(['one-source', 'memory', 'two-sources', 'two-sources', 'two-sources']);
});

test('every cell of every table has one, and no entry is without effect', () => {
  for (const t of definitions.tables) {
    const found = new Set<string | undefined>();
    for (const [row, ...cells] of t.rows)
      for (const [c, cell] of cells.entries()) {
        const keys = [...(t.columns[c] ?? []), row as string | number];
        const p = cellProvenance(t, Object.fromEntries(t.axes.map((a, i) => [a.name, keys[i] as string | number])));
        expect(p === undefined).toBe(cell === null);
        if (p) found.add(p);
      }
    for (const said of Object.values(t.provenanceOf ?? {})) expect([t.id, ...found]).toContain(said);
  }
});
