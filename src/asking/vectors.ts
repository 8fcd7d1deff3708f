// Words as directions: words that stand in the same entries point the same way, so that one stands in for another a little.

const DIRECTIONS = 24; // kept; more told no more apart
const ROUNDS = 5; // of the subspace iteration, after which the directions stand still

type Row = ReadonlyMap<string, number>;

/** Makes columns of a matrix stand at right angles and of length one, the first before the later. */
function straighten(columns: readonly Float64Array[]): void {
  columns.forEach((column, i) => {
    for (const other of columns.slice(0, i)) {
      let along = 0;
      for (let k = 0; k < column.length; k++) along += column[k]! * other[k]!;
      for (let k = 0; k < column.length; k++) column[k]! -= along * other[k]!;
    }
    const length = Math.hypot(...column) || 1;
    for (let k = 0; k < column.length; k++) column[k]! /= length;
  });
}

/**
 * The directions of the texts and of words put together, by the largest singular values of the matrix of texts and words.
 * The start is fixed, so the same texts give the same directions.
 */
export function singularDirections(rows: readonly Row[]): {
  readonly of: (words: Row) => Float64Array;
  readonly texts: readonly Float64Array[];
} {
  const places = new Map<string, number>();
  for (const row of rows) for (const word of row.keys()) if (!places.has(word)) places.set(word, places.size);
  const sparse = rows.map((row) => [...row].map(([word, weight]) => [places.get(word)!, weight] as const));
  const columns = Array.from({ length: DIRECTIONS }, (_, d) =>
    Float64Array.from({ length: places.size }, (_each, w) => Math.sin((w + 1) * (d + 1) * 12.9898)),
  );
  const times = (column: Float64Array) => Float64Array.from(sparse, (row) => row.reduce((sum, [w, weight]) => sum + weight * column[w]!, 0)); // prettier-ignore
  straighten(columns);
  for (let round = 0; round < ROUNDS; round++) {
    columns.forEach((column) => {
      const texts = times(column);
      column.fill(0);
      sparse.forEach((row, t) => row.forEach(([w, weight]) => (column[w]! += weight * texts[t]!)));
    });
    straighten(columns);
  }
  const of = (words: Row): Float64Array => {
    const at = new Float64Array(DIRECTIONS);
    for (const [word, weight] of words) {
      const place = places.get(word);
      if (place !== undefined) columns.forEach((column, d) => (at[d]! += weight * column[place]!));
    }
    const length = Math.hypot(...at) || 1;
    return at.map((each) => each / length);
  };
  return { of, texts: rows.map(of) };
}
