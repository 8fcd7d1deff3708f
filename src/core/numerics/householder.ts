// Least squares by Householder’s reflections: safe where the normal equations would lose half the digits.

export interface Solved {
  /** The numbers that make the sum of squares least. */
  readonly solution: readonly number[];
  /** The inverse of the normal matrix, row by row: the covariance when each row has spread 1. */
  readonly covariance: readonly (readonly number[])[];
}

/**
 * The solution of rows · x ≈ right in the least-squares sense. There must be at least as many rows as unknowns, and
 * they must fix each of them: a column that the rows leave free stops it with a RangeError.
 * Source: Householder, Journal of the ACM 5, 339–342 (1958), from memory.
 * @example leastSquares([[1, 0], [1, 1], [1, 2]], [1, 3, 5]).solution // [1, 2] (the line 1 + 2x goes through all three)
 */
export function leastSquares(rows: readonly (readonly number[])[], right: readonly number[]): Solved {
  const unknowns = rows[0]?.length ?? 0;
  const columns = Array.from({ length: unknowns + 1 }, (_, j) =>
    Float64Array.from(rows, (row, i) => (j < unknowns ? row[j]! : right[i]!)),
  );
  const corner = new Float64Array(unknowns);
  for (let k = 0; k < unknowns; k++) {
    const column = columns[k]!;
    let squares = 0;
    for (let i = k; i < rows.length; i++) squares += column[i]! ** 2;
    if (!(squares > 0)) throw new RangeError(`The rows leave unknown ${k + 1} free.`);
    const length = column[k]! > 0 ? -Math.sqrt(squares) : Math.sqrt(squares);
    corner[k] = length;
    const head = column[k]! - length;
    column[k] = head;
    const half = -length * head; // half the square of the reflecting vector
    for (let j = k + 1; j <= unknowns; j++) {
      const other = columns[j]!;
      let along = 0;
      for (let i = k; i < rows.length; i++) along += column[i]! * other[i]!;
      along /= half;
      if (along !== 0) for (let i = k; i < rows.length; i++) other[i]! -= along * column[i]!;
    }
  }
  return { solution: backwards(columns, corner), covariance: covarianceOf(columns, corner) };
}

/** Solves the triangle that is left, from its last row up. */
function backwards(columns: readonly Float64Array[], corner: Float64Array): readonly number[] {
  const found = Array.from(corner, () => 0);
  for (let k = corner.length - 1; k >= 0; k--) {
    let rest = columns[corner.length]![k]!;
    for (let j = k + 1; j < corner.length; j++) rest -= columns[j]![k]! * found[j]!;
    found[k] = rest / corner[k]!;
  }
  return found;
}

/** The inverse of the triangle times its own transpose. */
function covarianceOf(
  columns: readonly Float64Array[],
  corner: Float64Array,
): readonly (readonly number[])[] {
  const size = corner.length;
  const inverse = Array.from({ length: size }, () => new Float64Array(size));
  for (let j = 0; j < size; j++) {
    inverse[j]![j] = 1 / corner[j]!;
    for (let i = j - 1; i >= 0; i--) {
      let sum = 0;
      for (let k = i + 1; k <= j; k++) sum += columns[k]![i]! * inverse[k]![j]!;
      inverse[i]![j] = -sum / corner[i]!;
    }
  }
  return inverse.map((row, i) =>
    inverse.map((other, j) => {
      let sum = 0;
      for (let k = Math.max(i, j); k < size; k++) sum += row[k]! * other[k]!;
      return sum;
    }),
  );
}
