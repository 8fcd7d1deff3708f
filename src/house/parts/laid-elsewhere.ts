// The part of each year's fillings that a house lays elsewhere, as its register of casks says: read apart from it, as a line hangs on it and on nothing else there.

/** The part, %; 0 where the register says nothing sound of it. */
export function laidElsewhere(stock: unknown): number {
  const { elsewhereShare: share } = (stock ?? {}) as { readonly elsewhereShare?: unknown };
  return typeof share === 'number' && share >= 0 && share <= 100 ? share : 0;
}
