import { formula, type Table } from '../../core/index.js';
import {
  type Amperes,
  amperes,
  CalculationError,
  formatIn,
  ratio,
  type SquareMillimetres,
  squareMillimetres,
} from '../../units/index.js';
import { tableD521 } from './tables/d52-1.js';

/** Capacity by a power law of the conductor's area. IEC 60364-5-52 Annex D. */
export const powerLawCapacity = /* @__PURE__ */ formula({
  id: 'power-law-capacity',
  title: 'Capacity by a power law of the area',
  inputs: ['conductorArea', 'lawCoefficient', 'lawExponent', 'lawDeduction', 'lawDeductionExponent'],
  output: 'computedCapacity',
  expression:
    'one * (lawCoefficient * (conductorArea / square)^lawExponent - lawDeduction * (conductorArea / square)^lawDeductionExponent)',
  constants: { one: [1, 'A'], square: [1, 'mm²'] },
  compute: (v) =>
    v.lawCoefficient * v.conductorArea ** v.lawExponent - v.lawDeduction * v.conductorArea ** v.lawDeductionExponent,
  valid: {
    conductorArea: { least: 1, most: 630 },
    lawCoefficient: { above: 0 },
    lawExponent: { above: 0, most: 1 },
    lawDeduction: { least: 0, most: 0.001 },
    lawDeductionExponent: { least: 0, most: 2.5 },
  },
  source: {
    document: 'IEC 60364-5-52',
    edition: '2009',
    clause: 'Annex D',
    provenance: 'memory',
    note: 'checks a table and serves between its sizes; a tabulated capacity comes first',
  },
});

/** A column of Annex B as the coefficients of Annex D name it, such as `B.52.2 copper A1`. */
export type AnnexDColumn = (typeof tableD521)['axes'][1]['labels'][number] extends infer L
  ? L extends `${infer Stem} up to ${string}` | `${infer Stem} from ${string}`
    ? Stem
    : L
  : never;

type Segment = (typeof tableD521)['axes'][1]['labels'][number];

/** What the law of a column gives for a size. @inline */
export interface AnnexDCapacity {
  /** Unrounded, A. */
  readonly computed: Amperes;
  /** To the nearest 0.5 A up to 20 A, to the nearest 1 A above, as the tables print it, A. */
  readonly printed: Amperes;
}

const labels = (): readonly Segment[] => (tableD521 as Table).offers('column') as readonly Segment[];

/** The part of the law that serves a size: some columns have two. */
function segmentOf(column: string, area: number): Segment | undefined {
  return labels().find((label) => {
    const [, stem, way, end] = /^(.*?)(?: (up to|from) ([\d.]+) mm²)?$/.exec(label) ?? [];
    if (stem !== column) return false;
    return way === undefined || (way === 'up to' ? area <= Number(end) : area >= Number(end));
  });
}

/**
 * The capacity that the power law of a column of Annex B gives, as a checksum on a tabulated one and between sizes; it
 * is computed and never overrules a table. Methods B1 and B2 follow it up to 120 mm² only.
 * @param column table, metal and method, such as `B.52.2 copper A1`
 * @param conductorArea S, mm², 1.5 to 300 (methods A to D) or 1.5 to 630; 50 mm² enters as 47.5
 * @returns the capacity, A, unrounded and as printed
 * @throws CalculationError `no-cell` for a column without a law, `out-of-range` for a size outside it
 * @example
 * ```ts
 * import { squareMillimetres } from 'ohmwright';
 * import { annexDCapacity } from 'ohmwright/iec60364';
 *
 * annexDCapacity('B.52.2 copper C', squareMillimetres(6)).printed; // => 46
 * annexDCapacity('B.52.2 copper C', squareMillimetres(7)).printed; // => 51
 * ```
 */
export function annexDCapacity(column: AnnexDColumn, conductorArea: SquareMillimetres): AnnexDCapacity {
  const bounds = { least: 1.5, most: mostOf(column) };
  const segment = segmentOf(column, conductorArea);
  if (segment === undefined) throw tableD521.explain({ coefficient: 'a', column: column as Segment });
  if (!(conductorArea >= bounds.least && conductorArea <= bounds.most))
    throw new CalculationError(
      'out-of-range',
      `the law of ${column} serves ${bounds.least} to ${bounds.most} mm², not ${formatIn(conductorArea, 'mm²')} (IEC 60364-5-52:2009, Annex D)`,
      {
        quantity: 'conductorArea',
        value: conductorArea,
        unit: 'mm²',
        bounds,
        source: 'IEC 60364-5-52:2009, Annex D',
      },
    );
  return lawAt(segment, conductorArea);
}

/** The largest size that a column is printed for, or follows its law to. */
function mostOf(column: string): number {
  if (/ B[12]$/.test(column)) return 120;
  return / (A[12]|C|D1)$/.test(column) ? 300 : 630;
}

/** @internal The law of a column at any size, for tables of the same basis; undefined where there is none. */
export function lawAtSize(column: string, conductorArea: SquareMillimetres): AnnexDCapacity | undefined {
  const segment = segmentOf(column, conductorArea);
  return segment === undefined ? undefined : lawAt(segment, conductorArea);
}

function lawAt(column: Segment, conductorArea: SquareMillimetres): AnnexDCapacity {
  const of = (coefficient: 'a' | 'm' | 'b' | 'n') => tableD521.find({ coefficient, column }) ?? ratio(0);
  const computed = powerLawCapacity({
    conductorArea: conductorArea === 50 ? squareMillimetres(47.5) : conductorArea,
    lawCoefficient: of('a'),
    lawExponent: of('m'),
    lawDeduction: of('b'),
    lawDeductionExponent: of('n'),
  });
  return { computed, printed: amperes(computed <= 20 ? Math.round(computed * 2) / 2 : Math.round(computed)) };
}
