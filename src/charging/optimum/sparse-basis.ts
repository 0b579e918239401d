import { CalculationError } from '../../units/index.js';

/** Columns of a sparse matrix, one after another. */
export interface Columns {
  /** Where each column begins, and where the last one ends. */
  readonly starts: Int32Array;
  /** Row of each entry. */
  at: Int32Array;
  values: Float64Array;
}

/** A sparse vector with a place for every row: values by row, and the rows that may not be zero. */
export interface SparseVector {
  readonly values: Float64Array;
  /** Rows that may not be zero, each once. */
  readonly rows: number[];
  readonly marked: Uint8Array;
}

export const sparseVector = (rows: number): SparseVector => ({
  values: new Float64Array(rows),
  rows: [],
  marked: new Uint8Array(rows),
});

export function clear({ values, rows, marked }: SparseVector): void {
  for (const r of rows) {
    values[r] = 0;
    marked[r] = 0;
  }
  rows.length = 0;
}

/**
 * A basis of a linear programme: for each row the column that is basic there, variables before, slacks after them
 * (`variables + row`). Kept as triangular factors of the rows that are tight, and the changes since then. The bases of
 * schedules are nearly triangular, so that a change costs about as much as the limits on the way of a vehicle.
 */
export interface SparseBasis {
  /** The column that is basic at each row. */
  readonly head: Int32Array;
  /** Rows whose basic column is a variable, or was one since the factors were made. */
  readonly busy: readonly number[];
  /** Whether the changes since the factors were made cost more than to make them anew. */
  heavy(): boolean;
  /** Turns a column into its coordinates in the basis, in place. */
  ahead(vector: SparseVector): void;
  /** Turns costs of the basic columns, by row, into prices of the rows, in place; nothing outside `busy`. */
  back(costs: Float64Array): void;
  /** A column becomes basic at a row; `ahead` are its coordinates. */
  change(row: number, column: number, ahead: SparseVector): void;
  /** Factors the basis anew; basic columns may be assigned to other rows. */
  refresh(matrix: Columns): void;
}

/** Numbers one after another that grow as needed. */
interface Store {
  at: Int32Array;
  values: Float64Array;
  used: number;
}
const store = (): Store => ({ at: new Int32Array(1024), values: new Float64Array(1024), used: 0 });
function put(s: Store, at: number, value: number): void {
  if (s.used === s.at.length) {
    const [wider, values] = [new Int32Array(2 * s.used), new Float64Array(2 * s.used)];
    wider.set(s.at);
    values.set(s.values);
    [s.at, s.values] = [wider, values];
  }
  s.at[s.used] = at;
  s.values[s.used++] = value;
}

/** Changes after which a basis is factored anew in any case. */
const MOST_CHANGES = 80;
/** Entries below this are nothing. */
const DROP = 1e-14;
/** A pivot is at least this share of the largest of its column. */
const THRESHOLD = 0.1;

/** The basis of all slacks. */
export function sparseBasis(variables: number, rows: number): SparseBasis {
  const head = Int32Array.from({ length: rows }, (_, r) => variables + r);
  const busy: number[] = [];
  const isBusy = new Uint8Array(rows);
  // factors: for each pivot its row and value, the entries of U above it and of L below it
  let pivots: { row: number; value: number; upper: number; upperEnd: number; lower: number; lowerEnd: number }[] = [];
  const [upper, lower] = [store(), store()];
  const changes = store();
  let changed: { row: number; value: number; from: number; to: number }[] = [];

  const add = ({ values, rows: list, marked }: SparseVector, r: number, value: number) => {
    if (marked[r] === 0) {
      marked[r] = 1;
      list.push(r);
    }
    values[r] = values[r]! + value;
  };

  // for the factoring: columns by row, and how many open entries a row and a column have
  const [inRow, inColumn] = [new Int32Array(rows), new Int32Array(variables)];
  const byRow: number[][] = [];
  const [open, isPivot] = [new Uint8Array(rows), new Uint8Array(rows)];
  const taken = new Uint8Array(variables);
  const work = sparseVector(rows);

  const close = (column: number, row: number, value: number, fromUpper: number, fromLower: number) => {
    pivots.push({ row, value, upper: fromUpper, upperEnd: upper.used, lower: fromLower, lowerEnd: lower.used });
    head[row] = column;
    isPivot[row] = 1;
    isBusy[row] = 1;
    busy.push(row);
  };

  /** A column as it is becomes a pivot: what it has in rows with a pivot is above, the rest below. */
  const take = (column: number, row: number, place: number, { starts, at, values }: Columns) => {
    const [u, l, pivot] = [upper.used, lower.used, values[place]!];
    for (let k = starts[column]!; k < starts[column + 1]!; k++)
      if (k !== place) {
        if (isPivot[at[k]!]) put(upper, at[k]!, values[k]!);
        else put(lower, at[k]!, values[k]! / pivot);
      }
    close(column, row, pivot, u, l);
    taken[column] = 1;
    open[row] = 0;
  };

  /** Columns, then rows, that stand alone one after another are pivots as they are. */
  const peel = (columns: readonly number[], matrix: Columns) => {
    const { starts, at, values } = matrix;
    for (const j of columns) {
      inColumn[j] = 0;
      for (let k = starts[j]!; k < starts[j + 1]!; k++) {
        const r = at[k]!;
        if (!open[r]) continue;
        inColumn[j] = inColumn[j]! + 1;
        if (inRow[r] === 0) byRow[r] = [j];
        else byRow[r]!.push(j);
        inRow[r] = inRow[r]! + 1;
      }
    }
    const queue = columns.filter((j) => inColumn[j] === 1);
    for (let j = queue.pop(); j !== undefined; j = queue.pop()) {
      if (taken[j]) continue;
      let place = starts[j]!;
      while (place < starts[j + 1]! && !open[at[place]!]) place++;
      if (place === starts[j + 1]! || Math.abs(values[place]!) < 1e-9) continue;
      const row = at[place]!;
      take(j, row, place, matrix);
      for (const other of byRow[row]!)
        if (!taken[other]) {
          inColumn[other] = inColumn[other]! - 1;
          if (inColumn[other] === 1) queue.push(other);
        }
    }
    // rows that only one of the remaining columns uses
    const left = columns.filter((j) => !taken[j]);
    for (const j of columns) for (let k = starts[j]!; k < starts[j + 1]!; k++) inRow[at[k]!] = 0;
    const alone: number[] = [];
    for (const j of left) for (let k = starts[j]!; k < starts[j + 1]!; k++) inRow[at[k]!] = inRow[at[k]!]! + 1;
    for (const j of left)
      for (let k = starts[j]!; k < starts[j + 1]!; k++) if (open[at[k]!] && inRow[at[k]!] === 1) alone.push(at[k]!);
    for (let r = alone.pop(); r !== undefined; r = alone.pop()) {
      if (!open[r] || inRow[r] !== 1) continue;
      const j = byRow[r]!.find((other) => !taken[other])!;
      let [place, largest] = [-1, 0];
      for (let k = starts[j]!; k < starts[j + 1]!; k++) {
        if (at[k] === r) place = k;
        if (open[at[k]!]) largest = Math.max(largest, Math.abs(values[k]!));
      }
      if (Math.abs(values[place]!) < THRESHOLD * largest) continue;
      take(j, r, place, matrix);
      for (let k = starts[j]!; k < starts[j + 1]!; k++) {
        const other = at[k]!;
        inRow[other] = inRow[other]! - 1;
        if (open[other] && inRow[other] === 1) alone.push(other);
      }
    }
    const rest = left.filter((j) => !taken[j]);
    for (const j of left) for (let k = starts[j]!; k < starts[j + 1]!; k++) inRow[at[k]!] = 0;
    for (const j of columns) taken[j] = 0;
    return rest;
  };

  const refresh = (matrix: Columns) => {
    const { starts, at, values } = matrix;
    const columns: number[] = [];
    open.fill(1);
    for (let r = 0; r < rows; r++)
      if (head[r]! >= variables) open[head[r]! - variables] = 0;
      else columns.push(head[r]!);
    for (let r = 0; r < rows; r++) {
      isPivot[r] = 1 - open[r]!;
      if (!open[r]) head[r] = variables + r;
    }
    [upper.used, lower.used, changes.used] = [0, 0, 0];
    changed = [];
    pivots = [];
    for (const r of busy) isBusy[r] = 0;
    busy.length = 0;
    const rest = peel(columns, matrix);
    // the rest column by column, the shortest first, each with what those before it leave
    const begin = pivots.length;
    const length = (j: number) => starts[j + 1]! - starts[j]!;
    rest.sort((a, b) => length(a) - length(b) || a - b);
    for (const j of rest) for (let k = starts[j]!; k < starts[j + 1]!; k++) inRow[at[k]!] = inRow[at[k]!]! + 1;
    for (const column of rest) {
      clear(work);
      for (let k = starts[column]!; k < starts[column + 1]!; k++) add(work, at[k]!, values[k]!);
      for (let t = begin; t < pivots.length; t++) {
        const { row, lower: from, lowerEnd } = pivots[t]!;
        const x = work.values[row]!;
        if (x !== 0) for (let k = from; k < lowerEnd; k++) add(work, lower.at[k]!, -lower.values[k]! * x);
      }
      let largest = 0;
      for (const r of work.rows) if (!isPivot[r]) largest = Math.max(largest, Math.abs(work.values[r]!));
      if (largest < 1e-12)
        throw new CalculationError('not-converged', 'simplex method: the basis has become singular', {
          method: 'simplex method',
          iterations: pivots.length,
          residual: largest,
        });
      let [row, count] = [-1, Number.POSITIVE_INFINITY];
      for (const r of work.rows)
        if (!isPivot[r] && Math.abs(work.values[r]!) >= THRESHOLD * largest && inRow[r]! < count)
          [row, count] = [r, inRow[r]!];
      const [u, l, pivot] = [upper.used, lower.used, work.values[row]!];
      for (const r of work.rows) {
        const value = work.values[r]!;
        if (r === row || Math.abs(value) <= DROP) continue;
        if (isPivot[r]) put(upper, r, value);
        else put(lower, r, value / pivot);
      }
      close(column, row, pivot, u, l);
    }
    for (const j of rest) for (let k = starts[j]!; k < starts[j + 1]!; k++) inRow[at[k]!] = 0;
    clear(work);
  };

  return {
    head,
    busy,
    refresh,
    heavy: () => changes.used > 3 * (upper.used + lower.used + pivots.length) || changed.length >= MOST_CHANGES,
    ahead(vector) {
      const { values } = vector;
      for (const { row, lower: from, lowerEnd } of pivots) {
        const x = values[row]!;
        if (x !== 0) for (let k = from; k < lowerEnd; k++) add(vector, lower.at[k]!, -lower.values[k]! * x);
      }
      for (let t = pivots.length - 1; t >= 0; t--) {
        const { row, value, upper: from, upperEnd } = pivots[t]!;
        if (values[row] === 0) continue;
        const z = values[row]! / value;
        values[row] = z;
        for (let k = from; k < upperEnd; k++) add(vector, upper.at[k]!, -upper.values[k]! * z);
      }
      for (const { row, value, from, to } of changed) {
        if (values[row] === 0) continue;
        const z = values[row]! / value;
        values[row] = z;
        for (let k = from; k < to; k++) add(vector, changes.at[k]!, -changes.values[k]! * z);
      }
    },
    back(costs) {
      for (let e = changed.length - 1; e >= 0; e--) {
        const { row, value, from, to } = changed[e]!;
        let sum = costs[row]!;
        for (let k = from; k < to; k++) sum -= changes.values[k]! * costs[changes.at[k]!]!;
        costs[row] = sum / value;
      }
      for (const { row, value, upper: from, upperEnd } of pivots) {
        let sum = costs[row]!;
        for (let k = from; k < upperEnd; k++) sum -= upper.values[k]! * costs[upper.at[k]!]!;
        costs[row] = sum / value;
      }
      for (let t = pivots.length - 1; t >= 0; t--) {
        const { row, lower: from, lowerEnd } = pivots[t]!;
        let sum = costs[row]!;
        for (let k = from; k < lowerEnd; k++) sum -= lower.values[k]! * costs[lower.at[k]!]!;
        costs[row] = sum;
      }
    },
    change(row, column, { values, rows: list }) {
      const from = changes.used;
      for (const r of list) if (r !== row && Math.abs(values[r]!) > DROP) put(changes, r, values[r]!);
      changed.push({ row, value: values[row]!, from, to: changes.used });
      head[row] = column;
      if (isBusy[row]) return;
      isBusy[row] = 1;
      busy.push(row);
    },
  };
}
