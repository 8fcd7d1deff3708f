// Things to choose among whose values lie so far apart that none can be taken for another.

export interface Valued<T> {
  readonly of: T;
  readonly value: number;
}

/** The first of some things, at most so many, whose values all lie apart from each other, each with its value. */
export function firstApart<T>(
  things: readonly T[],
  most: number,
  valueOf: (thing: T) => number,
  areApart: (one: number, other: number) => boolean,
): readonly Valued<T>[] {
  const found: Valued<T>[] = [];
  for (const of of things) {
    if (found.length === most) break;
    const value = valueOf(of);
    if (found.every((other) => areApart(value, other.value))) found.push({ of, value });
  }
  return found;
}
