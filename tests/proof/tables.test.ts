import { describe, expect, test } from 'vitest';
import type { Axis, NumberAxis } from '../../src/core/axis.js';
import { CalculationError, citation, type Table, termOf } from '../../src/index.js';
import { spellings } from '../../src/units/spellings.js';
import { definitions } from '../../src/verify/definitions.js';

type Keys = Record<string, string | number>;
const named = definitions.tables.map((t) => [t.id, t] as const);
const isNumbers = (axis: Axis): axis is NumberAxis => 'unit' in axis;

/** Every cell of a table as printed: its keys and the printed number, or null where the print has none. */
function* cellsOf(t: Table): Generator<readonly [keys: Keys, printed: number | null]> {
  for (const [row, ...cells] of t.rows)
    for (const [c, printed] of cells.entries()) {
      const at = [...(t.columns[c] ?? []), row as string | number];
      yield [Object.fromEntries(t.axes.map((a, i) => [a.name, at[i] as string | number])), printed as number | null];
    }
}

/** Asserts that a table refuses these keys, and says what was asked, what there is, and where it stands. */
function refused(t: Table, keys: Keys) {
  expect(t.find(keys as never)).toBeUndefined();
  let thrown: unknown;
  try {
    t.get(keys as never);
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toBeInstanceOf(CalculationError);
  const { code, message, detail } = thrown as CalculationError<'no-cell'>;
  expect(code).toBe('no-cell');
  expect(detail).toMatchObject({ table: t.id, source: citation(t.source), keys });
  expect(message.startsWith(citation(t.source))).toBe(true);
  for (const axis of t.axes) {
    expect(message).toContain(axis.name);
    expect(detail.offers[axis.name]).toEqual(t.offers(axis.name));
  }
}

/** Keys of some cell that the print has. */
const someKeys = (t: Table): Keys => {
  for (const [keys, printed] of cellsOf(t)) if (printed !== null) return keys;
  throw new Error(`${t.id} has no cell`);
};

describe.each(named)('%s', (_, t) => {
  test('every printed cell is found, in its unit and in the range of its role; what is not printed is refused', () => {
    const role = termOf(t.cell);
    expect(role?.unit).toBe(t.unit);
    let printedCells = 0;
    for (const [keys, printed] of cellsOf(t)) {
      if (printed === null) {
        refused(t, keys);
        continue;
      }
      printedCells++;
      const cell: number = t.get(keys as never);
      expect(cell).toBe(printed / (t.per ?? 1));
      expect(t.find(keys as never)).toBe(cell);
      const { least = -Infinity, most = Infinity, above = -Infinity } = role ?? {};
      expect(
        cell >= least && cell <= most && cell > above && Number.isFinite(cell),
        `${JSON.stringify(keys)}: ${cell}`,
      ).toBe(true);
    }
    expect(printedCells).toBeGreaterThan(0);
  });

  test('the unit of the print is the canonical one in the stated parts', () => {
    const all: readonly { text: string; factor: number }[] =
      (spellings as unknown as Record<string, never>)[t.unit] ?? [];
    if (t.printed === undefined) return expect(t.per ?? 1).toBe(1);
    expect(all.find((s) => s.text === t.printed)?.factor).toBeCloseTo(1 / (t.per ?? 1), 12);
  });

  test('beyond every axis it is refused, whatever is asked', () => {
    const keys = someKeys(t);
    for (const axis of t.axes) {
      const offers = t.offers(axis.name);
      const foreign: (string | number)[] = isNumbers(axis)
        ? [(offers.at(-1) as number) * 1.001 + 1e-6, Number.NaN, Number.POSITIVE_INFINITY]
        : ['__proto__', ' ', 'a label of another table'];
      for (const key of foreign) refused(t, { ...keys, [axis.name]: key });
      if (isNumbers(axis)) {
        const first = offers[0] as number;
        const under = first - Math.max(1e-6, Math.abs(first) * 1e-3);
        if (axis.below === 'first') {
          const at = t.find({ ...keys, [axis.name]: first } as never);
          for (const key of [under, -1e9]) expect(t.find({ ...keys, [axis.name]: key } as never)).toBe(at);
        } else for (const key of [under, -1e9, Number.NEGATIVE_INFINITY]) refused(t, { ...keys, [axis.name]: key });
      }
    }
  });

  test('between two numbers it does what its axis says, and cites the clause that allows it', () => {
    for (const axis of t.axes) {
      if (!isNumbers(axis)) continue;
      expect(axis.unit).toBe(termOf(axis.name)?.unit);
      if (axis.between !== 'exact') expect(axis.allowedBy).toMatch(/\S/);
      const offers = t.offers(axis.name) as readonly number[];
      for (const [keys] of cellsOf(t)) {
        const i = offers.indexOf(keys[axis.name] as number);
        const next = offers[i + 1];
        if (next === undefined) continue;
        const here = offers[i] as number;
        const at = (key: number) => t.find({ ...keys, [axis.name]: key } as never) as number | undefined;
        for (const share of [1e-3, 0.25, 0.5, 0.999]) {
          const key = here + (next - here) * share;
          const [a, b] = [at(here), at(next)];
          if (axis.between === 'exact') expect(at(key)).toBeUndefined();
          else if (axis.between === 'next-up') expect(at(key)).toBe(b);
          else if (a === undefined || b === undefined) expect(at(key)).toBeUndefined();
          else expect(at(key)).toBeCloseTo(a + (b - a) * share, 9);
        }
      }
    }
  });

  test('its definition is complete', () => {
    for (const text of [t.title, t.source.document]) expect(text).toMatch(/\S/);
    expect(t.title).not.toMatch(/(?<!d\.c)\.$/);
    expect(t.id).toMatch(/^[a-z0-9-]+(\/[a-z0-9.-]+)?$/);
    const places = new Set(
      [...cellsOf(t)].flatMap(([keys]) => {
        const at = t.axes.map((a) => String(keys[a.name]));
        const row = at.at(-1) as string;
        const column = at.slice(0, -1);
        return [...at, column.join(' '), `${column.join(' ')}, ${row}`];
      }),
    );
    for (const key of Object.keys(t.provenanceOf ?? {})) {
      const [, of = '', from, to] = /^(.+, )?([\d.]+) to ([\d.]+)$/.exec(key) ?? [];
      if (from === undefined) expect(places).toContain(key);
      else for (const end of [from, to]) expect(places).toContain(`${of}${end}`);
    }
  });
});

test('there are tables to prove', () => expect(named.length).toBeGreaterThan(80));
