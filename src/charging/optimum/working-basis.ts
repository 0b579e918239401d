import { CalculationError } from '../../units/index.js';

/** Entries of a row or column of a sparse matrix. */
export interface Entries {
  /** Columns of a row, or rows of a column. */
  readonly at: number[];
  readonly values: number[];
}

/**
 * The inverse of the part of a basis that matters: the columns that are basic by the rows that are tight. Rows with slack
 * are not in it, so that it is as small as the number of limits that bind.
 */
export interface WorkingBasis {
  /** Basic columns, by place. */
  readonly columns: number[];
  /** Tight rows, by place. */
  readonly rows: number[];
  /** Place of each column, or -1. */
  readonly placeOfColumn: Int32Array;
  /** Place of each row, or -1. */
  readonly placeOfRow: Int32Array;
  /** Inverse times a column. */
  ahead(column: Entries): Float64Array;
  /** Inverse times the unit column of the tight row at a place. */
  aheadUnit(place: number): Float64Array;
  /** A row times the inverse. */
  across(row: Entries): Float64Array;
  /** Values of the tight rows at these costs of the columns. */
  prices(costs: Float64Array): Float64Array;
  replaceColumn(place: number, column: number, ahead: Float64Array): void;
  replaceRow(place: number, row: number, across: Float64Array): void;
  /** A column becomes basic and a row tight. */
  add(column: number, row: number, ahead: Float64Array, across: Float64Array, pivot: number): void;
  /** A column ceases to be basic and a row to be tight. */
  remove(columnPlace: number, rowPlace: number): void;
  /** Computes the inverse anew. */
  refresh(matrix: readonly Entries[]): void;
}

/** An empty basis for a matrix of so many columns and rows. */
export function workingBasis(columnCount: number, rowCount: number): WorkingBasis {
  const columns: number[] = [];
  const rows: number[] = [];
  const placeOfColumn = new Int32Array(columnCount).fill(-1);
  const placeOfRow = new Int32Array(rowCount).fill(-1);
  let stride = 16;
  let inverse = new Float64Array(stride * stride);
  const grow = () => {
    const wider = new Float64Array(4 * stride * stride);
    for (let p = 0; p < stride; p++) wider.set(inverse.subarray(p * stride, (p + 1) * stride), 2 * p * stride);
    [inverse, stride] = [wider, 2 * stride];
  };
  const at = (p: number, q: number) => inverse[p * stride + q]!;

  /** Adds a multiple of a row of the inverse to the others, so that the pivot becomes a unit column. */
  const eliminateBy = (place: number, ahead: Float64Array) => {
    const size = rows.length;
    const own = inverse.subarray(place * stride, place * stride + size);
    const pivot = ahead[place]!;
    for (let q = 0; q < size; q++) own[q] = own[q]! / pivot;
    for (let p = 0; p < size; p++) {
      const factor = ahead[p]!;
      if (p === place || factor === 0) continue;
      const other = inverse.subarray(p * stride, p * stride + size);
      for (let q = 0; q < size; q++) other[q] = other[q]! - factor * own[q]!;
    }
  };

  return {
    columns,
    rows,
    placeOfColumn,
    placeOfRow,
    ahead({ at: list, values }) {
      const size = rows.length;
      const out = new Float64Array(size);
      for (let k = 0; k < list.length; k++) {
        const q = placeOfRow[list[k]!]!;
        const value = values[k]!;
        if (q >= 0) for (let p = 0; p < size; p++) out[p] = out[p]! + value * inverse[p * stride + q]!;
      }
      return out;
    },
    aheadUnit: (place) => Float64Array.from(columns, (_, p) => at(p, place)),
    across({ at: list, values }) {
      const size = rows.length;
      const out = new Float64Array(size);
      for (let k = 0; k < list.length; k++) {
        const p = placeOfColumn[list[k]!]!;
        const value = values[k]!;
        if (p >= 0) for (let q = 0; q < size; q++) out[q] = out[q]! + value * inverse[p * stride + q]!;
      }
      return out;
    },
    prices(costs) {
      const size = rows.length;
      const out = new Float64Array(size);
      for (let p = 0; p < size; p++) {
        const cost = costs[columns[p]!]!;
        if (cost !== 0) for (let q = 0; q < size; q++) out[q] = out[q]! + cost * inverse[p * stride + q]!;
      }
      return out;
    },
    replaceColumn(place, column, ahead) {
      eliminateBy(place, ahead);
      placeOfColumn[columns[place]!] = -1;
      columns[place] = column;
      placeOfColumn[column] = place;
    },
    replaceRow(place, row, across) {
      const size = rows.length;
      const pivot = across[place]!;
      for (let p = 0; p < size; p++) {
        const own = inverse.subarray(p * stride, p * stride + size);
        const value = own[place]! / pivot;
        if (value !== 0) for (let q = 0; q < size; q++) own[q] = own[q]! - across[q]! * value;
        own[place] = value;
      }
      placeOfRow[rows[place]!] = -1;
      rows[place] = row;
      placeOfRow[row] = place;
    },
    add(column, row, ahead, across, pivot) {
      const size = rows.length;
      if (size === stride) grow();
      for (let p = 0; p < size; p++) {
        const factor = ahead[p]! / pivot;
        const own = inverse.subarray(p * stride, p * stride + size + 1);
        if (factor !== 0) for (let q = 0; q < size; q++) own[q] = own[q]! + factor * across[q]!;
        own[size] = -factor;
      }
      for (let q = 0; q < size; q++) inverse[size * stride + q] = -across[q]! / pivot;
      inverse[size * stride + size] = 1 / pivot;
      placeOfColumn[column] = columns.push(column) - 1;
      placeOfRow[row] = rows.push(row) - 1;
    },
    remove(columnPlace, rowPlace) {
      const last = rows.length - 1;
      const own = inverse.slice(columnPlace * stride, columnPlace * stride + last + 1);
      const pivot = own[rowPlace]!;
      for (let p = 0; p <= last; p++) {
        const factor = at(p, rowPlace) / pivot;
        if (p === columnPlace || factor === 0) continue;
        const other = inverse.subarray(p * stride, p * stride + last + 1);
        for (let q = 0; q <= last; q++) other[q] = other[q]! - factor * own[q]!;
      }
      inverse.copyWithin(columnPlace * stride, last * stride, last * stride + last + 1);
      for (let p = 0; p < last; p++) inverse[p * stride + rowPlace] = at(p, last);
      placeOfColumn[columns[columnPlace]!] = -1;
      placeOfRow[rows[rowPlace]!] = -1;
      const [column, row] = [columns.pop()!, rows.pop()!];
      if (columnPlace < last) {
        columns[columnPlace] = column;
        placeOfColumn[column] = columnPlace;
      }
      if (rowPlace < last) {
        rows[rowPlace] = row;
        placeOfRow[row] = rowPlace;
      }
    },
    refresh(matrix) {
      const size = rows.length;
      // Gauss and Jordan with the largest pivot of each column, on the matrix beside the identity
      const work = new Float64Array(2 * size * size);
      const width = 2 * size;
      columns.forEach((column, p) => {
        const { at: list, values } = matrix[column]!;
        for (let k = 0; k < list.length; k++) {
          const q = placeOfRow[list[k]!]!;
          if (q >= 0) work[q * width + p] = work[q * width + p]! + values[k]!;
        }
        work[p * width + size + p] = 1;
      });
      for (let p = 0; p < size; p++) {
        let best = p;
        for (let q = p + 1; q < size; q++)
          if (Math.abs(work[q * width + p]!) > Math.abs(work[best * width + p]!)) best = q;
        const pivot = work[best * width + p]!;
        if (Math.abs(pivot) < 1e-12)
          throw new CalculationError('not-converged', 'simplex method: the basis has become singular', {
            method: 'simplex method',
            iterations: size,
            residual: Math.abs(pivot),
          });
        if (best !== p) {
          const own = work.slice(p * width, (p + 1) * width);
          work.copyWithin(p * width, best * width, (best + 1) * width);
          work.set(own, best * width);
        }
        const own = work.subarray(p * width, (p + 1) * width);
        for (let k = p; k < width; k++) own[k] = own[k]! / pivot;
        for (let q = 0; q < size; q++) {
          const factor = work[q * width + p]!;
          if (q === p || factor === 0) continue;
          const other = work.subarray(q * width, (q + 1) * width);
          for (let k = p; k < width; k++) other[k] = other[k]! - factor * own[k]!;
        }
      }
      for (let p = 0; p < size; p++) inverse.set(work.subarray(p * width + size, (p + 1) * width), p * stride);
    },
  };
}
