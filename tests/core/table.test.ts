import { expect, test } from 'vitest';
import type { Axis } from '../../src/core/axis.js';
import type { PrintedTable, TableDefinition } from '../../src/core/table.js';
import { CalculationError, squareMillimetres, table } from '../../src/index.js';

const axes: readonly Axis[] = [
  { name: 'method', labels: ['B', 'C'] },
  { name: 'conductorArea', unit: 'mm²', between: 'exact' },
];
const good: TableDefinition = {
  id: 'own/1',
  title: 'figures of our own',
  axes,
  columns: [['B'], ['C']],
  rows: [
    [1, 10, 11],
    [2.5, 20, null],
    [4, 30, 31],
  ],
  cell: 'tabulatedCapacity',
  unit: 'A',
  source: { document: 'Test rules of our own', provenance: 'definition' },
};
const made = (change: Partial<PrintedTable> = {}) => table({ ...good, ...change });
const at = (t: ReturnType<typeof made>, method: string, area: number) =>
  t.find({ method, conductorArea: area } as never);

test('exact, next-up, linear, and the first row below the first', () => {
  const rows = (between: 'exact' | 'next-up' | 'linear', below?: 'first') =>
    made({ axes: [axes[0] as Axis, { name: 'conductorArea', unit: 'mm²', between, ...(below ? { below } : {}) }] });
  expect([1, 1.5, 4, 5, 0.5].map((a) => at(rows('exact'), 'B', a))).toEqual([10, undefined, 30, undefined, undefined]);
  expect([1, 1.5, 4, 5, 0.5].map((a) => at(rows('next-up'), 'B', a))).toEqual([10, 20, 30, undefined, undefined]);
  expect(at(rows('linear'), 'B', 3.25)).toBe(25);
  expect(at(rows('linear'), 'B', 0.5)).toBeUndefined();
  expect(at(rows('linear', 'first'), 'B', 0.5)).toBe(10);
  expect(at(rows('linear'), 'B', 4.0001)).toBeUndefined();
  // no cell at one end: no line
  expect(at(rows('linear'), 'C', 2)).toBeUndefined();
});

test('what is not printed is not found, and the reason names what there is', () => {
  expect(at(made(), 'C', 2.5)).toBeUndefined();
  expect(at(made(), 'B', Number.NaN)).toBeUndefined();
  expect(at(made(), 'D', 1)).toBeUndefined();
  expect(() => made().get({ method: 'C', conductorArea: squareMillimetres(2.5) } as never)).toThrow(
    'has no cell for method C, conductorArea 2.5 mm²; it offers method B | C; conductorArea 1 mm² | 2.5 mm² | 4 mm²',
  );
  expect(made().offers('conductorArea')).toEqual([1, 2.5, 4]);
  expect(made().offers('nothing')).toEqual([]);
});

test('rows as text, with columns, with head lines, or with a column for every combination of labels', () => {
  const { columns: _, ...headless } = good;
  const text = `
    1   10 11
    2.5 20  -
    4   30 31`;
  const heads = `
    method  B  C
    1      10 11
    2.5    20  -
    4      30 31`;
  for (const t of [made({ rows: text }), table({ ...headless, rows: text }), table({ ...headless, rows: heads })]) {
    expect(t.columns).toEqual(good.columns);
    expect(t.rows).toEqual(good.rows);
  }
  const labelled = table({
    ...headless,
    axes: [
      { name: 'conductorArea', unit: 'mm²', between: 'exact' },
      { name: 'method', labels: ['B, in a wall', 'C'] },
    ],
    rows: 'conductorArea 1 2.5\nB, in a wall 10 20\nC 11 -',
  });
  expect(labelled.columns).toEqual([[1], [2.5]]);
  expect(labelled.rows).toEqual([
    ['B, in a wall', 10, 20],
    ['C', 11, null],
  ]);
});

test('what a form gives, a table of it need not say', () => {
  const { id, title, rows, ...form } = good;
  const own = table(
    { ...form, notes: ['of the form'] },
    { id, title, rows, source: { provenance: 'memory', clause: '1' } },
  );
  expect(own).toMatchObject({ id, title, rows, axes, columns: good.columns, notes: ['of the form'] });
  expect(own.source).toEqual({ document: 'Test rules of our own', provenance: 'memory', clause: '1' });
  expect(table(form, { id, title, rows, source: good.source, notes: ['its own'] }).notes).toEqual(['its own']);
});

test('cells in parts of the canonical unit', () => expect(at(made({ per: 1000 }), 'C', 4)).toBe(0.031));

const two: Axis = { name: 'ambientTemperature', unit: '°C', between: 'linear' };
test.each<[string, Partial<PrintedTable>, string]>([
  [
    'two straight lines',
    { axes: [two, { ...two, name: 'conductorArea' } as Axis], columns: [[1], [2]] },
    'one axis only',
  ],
  ['an unknown label', { columns: [['B'], ['D']] }, 'method has no D'],
  ['a column twice', { columns: [['B'], ['B']] }, 'repeats B'],
  [
    'a row twice',
    {
      rows: [
        [1, 10, 11],
        [1, 20, 21],
      ],
    },
    'repeats 1',
  ],
  ['a short row', { rows: [[1, 10]] }, 'has 1 cells, not 2'],
  ['a long row', { rows: [[1, 10, 11, 12]] }, 'has 3 cells, not 2'],
  ['a label for a number', { rows: [['x', 10, 11]] }, 'conductorArea has no x'],
  ['a NaN', { rows: [[1, Number.NaN, 11]] }, 'cell 0 is no number'],
  ['a short column', { columns: [[], ['B']] }, 'has 0 keys, not 1'],
  ['an axis twice', { axes: [axes[1] as Axis, axes[1] as Axis], columns: [[1], [2]] }, 'repeats conductorArea'],
  ['a label twice', { axes: [{ name: 'method', labels: ['B', 'C', 'B'] }, axes[1] as Axis] }, 'repeats a label'],
  ['no axis', { axes: [] }, 'has none'],
  ['a short line', { rows: '1 10 11\n2.5 20' }, 'conductorArea has no NaN'],
  ['a long line', { rows: '1 10 11\n2.5 20 21 22' }, 'conductorArea has no NaN'],
  ['a word for a number', { rows: '1 10 1l' }, 'cell 1 is no number'],
  ['a short head line', { rows: 'method B\n1 10 11' }, 'conductorArea has no NaN'],
  ['a head line with a foreign label', { rows: 'method B D\n1 10 11' }, 'method has no D'],
  [
    'head lines for some axes only',
    { axes: [{ name: 'loaded', labels: ['2'] }, ...axes], rows: 'loaded 2 2\n1 10 11' },
    'has 1 keys, not 2',
  ],
])('%s is refused on first use', (_, change, message) => {
  const faulty = made(change);
  let seen: unknown;
  try {
    at(faulty, 'B', 1);
  } catch (error) {
    seen = error;
  }
  expect(seen).toBeInstanceOf(CalculationError);
  expect((seen as CalculationError).code).toBe('invalid-input');
  expect((seen as CalculationError).message).toContain(message);
});
