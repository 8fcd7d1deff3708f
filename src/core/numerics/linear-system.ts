// A few linear equations, solved by Gauss’s elimination with the largest pivot first.

/**
 * The numbers that solve `matrix` × numbers = `right`; not finite where the equations do not settle them.
 * @example solveLinear([[2, 1], [1, -1]], [5, 1]) // [2, 1] (2 × 2 + 1 and 2 − 1)
 */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  const size = rows.length;
  for (let k = 0; k < size; k++) {
    const pivot = rows.slice(k).reduce((best, row) => (Math.abs(row[k]!) > Math.abs(best[k]!) ? row : best));
    rows.splice(rows.indexOf(pivot), 1);
    rows.splice(k, 0, pivot);
    for (const row of rows.slice(k + 1)) {
      const times = row[k]! / pivot[k]!;
      for (let j = k; j <= size; j++) row[j]! -= times * pivot[j]!;
    }
  }
  const found = rows.map(() => 0);
  for (let k = size - 1; k >= 0; k--) {
    const rest = found.reduce((sum, x, j) => sum + rows[k]![j]! * x, 0);
    found[k] = (rows[k]![size]! - rest) / rows[k]![k]!;
  }
  return found;
}
