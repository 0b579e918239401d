/** The symmetric system of a tree: rows of a node are coupled with rows of its ancestors and descendants only. */
export interface TreeSystem {
  /** Rows of each node. */
  readonly rows: Int32Array;
  /** Node above each node, or -1; nodes come after those above them. */
  readonly parent: Int32Array;
}

/** Work space of an elimination: for each node a front of its own rows and those of all nodes above it. */
export interface Fronts {
  /** Rows of the front of each node: its own first, then those of the front above. */
  readonly size: Int32Array;
  /** Where the matrix of each front begins. */
  readonly matrixAt: Int32Array;
  /** Where the vector of each front begins. */
  readonly vectorAt: Int32Array;
  /** The matrices, row by row. */
  readonly matrix: Float64Array;
  /** The vectors. */
  readonly vector: Float64Array;
}

/** Makes the work space. */
export function frontsOf({ rows, parent }: TreeSystem): Fronts {
  const m = rows.length;
  const [size, matrixAt, vectorAt] = [new Int32Array(m), new Int32Array(m), new Int32Array(m)];
  let [matrices, vectors] = [0, 0];
  for (let v = 0; v < m; v++) {
    size[v] = rows[v]! + (parent[v]! < 0 ? 0 : size[parent[v]!]!);
    matrixAt[v] = matrices;
    vectorAt[v] = vectors;
    matrices += size[v]! ** 2;
    vectors += size[v]!;
  }
  return { size, matrixAt, vectorAt, matrix: new Float64Array(matrices), vector: new Float64Array(vectors) };
}

/**
 * Factors the system by Cholesky's method from the leaves to the root: a node hands what is left of its front to the one
 * above, so there is no fill-in and the time is proportional to the number of nodes. Fill the fronts with what each node
 * adds itself; afterwards they hold the factor.
 */
export function factor({ rows, parent }: TreeSystem, { size, matrixAt, matrix }: Fronts): void {
  for (let v = rows.length - 1; v >= 0; v--) {
    const f = size[v]!;
    const at = matrixAt[v]!;
    const own = rows[v]!;
    for (let k = 0; k < own; k++) {
      const d = Math.sqrt(Math.max(matrix[at + k * f + k]!, 1e-300));
      matrix[at + k * f + k] = d;
      for (let i = k + 1; i < f; i++) matrix[at + i * f + k] = matrix[at + i * f + k]! / d;
      for (let j = k + 1; j < f; j++) {
        const a = matrix[at + j * f + k]!;
        if (a !== 0)
          for (let i = j; i < f; i++) matrix[at + i * f + j] = matrix[at + i * f + j]! - matrix[at + i * f + k]! * a;
      }
    }
    const up = parent[v]!;
    if (up < 0) continue;
    const g = size[up]!;
    for (let i = 0; i < g; i++)
      for (let j = 0; j <= i; j++) {
        const to = matrixAt[up]! + i * g + j;
        matrix[to] = matrix[to]! + matrix[at + (own + i) * f + own + j]!;
      }
  }
}

/**
 * Solves the factored system. Fill the vectors with what each node adds itself to its front.
 * @param solution receives the unknowns, node by node in the order of the rows
 */
export function solveFactored(
  { rows, parent }: TreeSystem,
  { size, matrixAt, vectorAt, matrix, vector }: Fronts,
  solution: Float64Array,
): void {
  const m = rows.length;
  for (let v = m - 1; v >= 0; v--) {
    const [f, at, to, own] = [size[v]!, matrixAt[v]!, vectorAt[v]!, rows[v]!];
    for (let k = 0; k < own; k++) {
      const y = vector[to + k]! / matrix[at + k * f + k]!;
      vector[to + k] = y;
      for (let i = k + 1; i < f; i++) vector[to + i] = vector[to + i]! - matrix[at + i * f + k]! * y;
    }
    const up = parent[v]!;
    if (up >= 0)
      for (let i = 0; i < size[up]!; i++)
        vector[vectorAt[up]! + i] = vector[vectorAt[up]! + i]! + vector[to + own + i]!;
  }
  let out = 0;
  for (let v = 0; v < m; v++) {
    const [f, at, to, own] = [size[v]!, matrixAt[v]!, vectorAt[v]!, rows[v]!];
    const up = parent[v]!;
    if (up >= 0) for (let i = 0; i < size[up]!; i++) vector[to + own + i] = vector[vectorAt[up]! + i]!;
    for (let k = own - 1; k >= 0; k--) {
      let y = vector[to + k]!;
      for (let i = k + 1; i < f; i++) y -= matrix[at + i * f + k]! * vector[to + i]!;
      vector[to + k] = y / matrix[at + k * f + k]!;
    }
    for (let k = 0; k < own; k++) solution[out++] = vector[to + k]!;
  }
}
