// What a text from a link, a file or storage says in JSON, before it is known what it is.

export type Data = Readonly<Record<string, unknown>>;

/**
 * True of a record: neither a list nor nothing.
 * @example [isData({ a: 1 }), isData([1]), isData(null)] // [true, false, false] (a list and nothing are no records)
 */
export const isData = (given: unknown): given is Data =>
  typeof given === 'object' && given !== null && !Array.isArray(given);

/**
 * A value of a record's own, not of its prototype; −0 is 0, as a text writes it.
 * @example [ownValue({ a: -0 }, 'a'), ownValue({}, 'toString')] // [0, undefined] (its own alone)
 */
export function ownValue(data: Data, key: string): unknown {
  const value = Object.hasOwn(data, key) ? data[key] : undefined;
  return value === 0 ? 0 : value;
}

/**
 * What a text says; undefined where it is longer than `most` characters, or no JSON.
 * @example [jsonIn('[1]'), jsonIn('[1'), jsonIn('[1]', 2)] // [[1], undefined, undefined] (whole, broken, and one character too long)
 */
export function jsonIn(text: string, most = Infinity): unknown {
  try {
    return text.length > most ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}
