// Readers for what came from a link, a file or storage: each gives what can be used, or tells why it cannot be.
import { quotedGiven, wasGiven } from '../quoted-given.ts';
import { isData, ownValue } from './data.ts';

/** Takes a sentence that names the field, what was given and what it can be. */
export type Tell = (problem: string) => void;
/** Reads one thing, called `what` in a sentence; undefined, and told of, where it is not what it can be. */
export type Reader<T> = (given: unknown, what: string, tell: Tell) => T | undefined;
/** What a reader reads. */
export type ReadBy<R> = R extends Reader<infer T> ? T : never;

/**
 * Reads without a word what is told of in one sentence for all of it.
 * @example quietly(number(0, 1), 2) // undefined (above its end)
 */
export const quietly = <T>(read: Reader<T>, given: unknown): T | undefined => read(given, '', () => undefined); // prettier-ignore

/**
 * Reads what passes a test; a sentence ends in what it `can` be.
 * @example [quietly(only((given) => given === 1, 'it can be 1.'), 1), quietly(only((given) => given === 1, 'it can be 1.'), 2)] // [1, undefined] (one passes)
 */
export const only =
  <T>(is: (given: unknown) => boolean, can: string): Reader<T> =>
  (given, what, tell) =>
    is(given) ? (given as T) : void tell(wasGiven(what, given, can));

/**
 * A number from `low` to `high`; −0 is 0, as a text writes it.
 * @example [quietly(number(0, 9), 9), quietly(number(0, 9), 9.5), quietly(number(0, 9), '9')] // [9, undefined, undefined] (the end counts, a text is no number)
 */
export const number =
  (low: number, high: number, can = `it can be from ${low} to ${high}.`): Reader<number> =>
  (given, what, tell) =>
    typeof given === 'number' && given >= low && given <= high
      ? given || 0
      : void tell(wasGiven(what, given, can));

/** @example [quietly(whole(0, 9), 3), quietly(whole(0, 9), 2.5)] // [3, undefined] (two and a half is not whole) */
export const whole = (low: number, high: number) =>
  also(number(low, high), Number.isInteger, `it can be a whole number from ${low} to ${high}.`);

/**
 * A text of so many characters at most that passes a test.
 * @example [quietly(text(3), 'oak'), quietly(text(3), 'butt')] // ['oak', undefined] (three characters, and four)
 */
export const text = (
  most: number,
  may = (_: string) => true,
  can = `it can have up to ${most} characters.`,
) => only<string>((given) => typeof given === 'string' && given.length <= most && may(given), can);

/**
 * A text of one form.
 * @example [quietly(written(/^\d{4}$/), '2026'), quietly(written(/^\d{4}$/), '26')] // ['2026', undefined] (four digits, and two)
 */
export const written = (form: RegExp, can = 'it is written otherwise.') =>
  text(Infinity, (given) => form.test(given), can);

/** @example [quietly(oneOf(['wash', 'spirit']), 'wash'), quietly(oneOf(['wash', 'spirit']), 'pot')] // ['wash', undefined] (one of the two) */
export const oneOf = <const T>(those: readonly T[]) =>
  only<T>((given) => those.includes(given as T), `it can be ${those.join(', ')}.`);

/**
 * What one reader reads, if it passes a test besides.
 * @example quietly(also(number(0, 9), (value) => value > 5, 'it can be above 5.'), 4) // undefined (a number, but not above five)
 */
export const also =
  <T>(read: Reader<T>, is: (value: T) => boolean, can: string): Reader<T> =>
  (given, what, tell) => {
    const value = read(given, what, tell);
    return value === undefined || is(value) ? value : void tell(wasGiven(what, given, can));
  };

/**
 * What one reader reads, made into something else.
 * @example quietly(readAs(number(0, 9), (value) => 2 * value), 4) // 8 (twice what was read)
 */
export const readAs =
  <T, M>(read: Reader<T>, make: (value: T) => M): Reader<M> =>
  (given, what, tell) => {
    const value = read(given, what, tell);
    return value === undefined ? undefined : make(value);
  };

/**
 * What a sentence calls by a name of its own, wherever it stands.
 * @example problemIn(called('Heart', number(0, 9)), 12, 'house, heart') // 'Heart: “12” was given; it can be from 0 to 9.' (its own name)
 */
export const called =
  <T>(name: string, read: Reader<T>): Reader<T> =>
  (given, _, tell) =>
    read(given, name, tell);

/**
 * The first thing that keeps a reader from reading, in a sentence; undefined where it reads.
 * @example [problemIn(number(0, 9), 4, 'Heart'), problemIn(number(0, 9), 12, 'Heart')] // [undefined, 'Heart: “12” was given; it can be from 0 to 9.'] (within, and above)
 */
export function problemIn(read: Reader<unknown>, given: unknown, what = ''): string | undefined {
  let first: string | undefined;
  read(given, what, (problem) => void (first ??= problem));
  return first;
}

/**
 * A list of `fewest` to `most` things, each of which can be read.
 * @example [quietly(list(number(0, 9), 2), [1, 2]), quietly(list(number(0, 9), 2), [1, 2, 3])] // [[1, 2], undefined] (two at most)
 */
export const list =
  <T>(each: Reader<T>, most: number, fewest = 0): Reader<readonly T[]> =>
  (given, what, tell) => {
    if (!Array.isArray(given) || given.length < fewest || given.length > most)
      return void tell(wasGiven(what, given, `it can be a list of ${fewest} to ${most}.`));
    const read = given.map((one, i) => each(one, `${what} ${i + 1}`, tell));
    return read.includes(undefined) ? undefined : (read as readonly T[]);
  };

type Fields = Readonly<Record<string, Reader<unknown>>>;
/** What a record of these fields reads to. */
export type Whole<F extends Fields, B extends Fields> = { readonly [K in keyof F]: ReadBy<F[K]> } & {
  readonly [K in keyof B]?: ReadBy<B[K]>;
};

/**
 * A record with all of these fields, and those `besides` that it has; what else it carries is left out.
 * @example quietly(record({ a: number(0, 9) }, { b: number(0, 9) }), { a: 1, c: 3 }) // { a: 1 } (b may be missing, c is left out)
 */
export const record =
  <F extends Fields, B extends Fields = Record<never, never>>(fields: F, besides?: B): Reader<Whole<F, B>> =>
  (given, what, tell) => {
    if (!isData(given)) return void tell(wasGiven(what, given, 'it can be a record.'));
    const has = Object.entries(besides ?? {}).filter(([name]) => ownValue(given, name) !== undefined);
    const read = [...Object.entries(fields), ...has].map(([name, field]) => [name, field(ownValue(given, name), what === '' ? name : `${what}, ${name}`, tell)]); // prettier-ignore
    return read.some(([, value]) => value === undefined) ? undefined : (Object.fromEntries(read) as Whole<F, B>); // prettier-ignore
  };

/**
 * A record with no key but these, and what a reader makes of it.
 * @example quietly(withNoOther(['a'], record({ a: number(0, 9) })), { a: 1, c: 3 }) // undefined (c is not among them)
 */
export const withNoOther =
  <T>(keys: readonly string[], read: Reader<T>): Reader<T> =>
  (given, what, tell) => {
    const odd = isData(given) ? Object.keys(given).find((key) => !keys.includes(key)) : undefined;
    return odd === undefined
      ? read(given, what, tell)
      : void tell(`${what && `${what}: `}“${quotedGiven(odd)}” is nothing that is known of it.`);
  };

/**
 * A record with all of these fields, those `besides` that it has, and no other.
 * @example quietly(closedRecord({ a: number(0, 9) }), { a: 1, c: 3 }) // undefined (c is no field of it)
 */
export const closedRecord = <F extends Fields, B extends Fields = Record<never, never>>(
  fields: F,
  besides?: B,
): Reader<Whole<F, B>> =>
  withNoOther([...Object.keys(fields), ...Object.keys(besides ?? {})], record(fields, besides));

type Kinds = Readonly<Record<string, Reader<object>>>;
/** What a record of one of these kinds reads to: the kind itself is its field `by`. */
type OneKind<B extends string, K extends Kinds> = {
  [N in keyof K]: ReadBy<K[N]> & { readonly [F in B]: N };
}[keyof K];

/**
 * A record of one of several kinds, which its own field `by` names.
 * @example quietly(recordByKind('is', { cask: record({ litres: number(0, 700) }) }), { is: 'cask', litres: 200 }) // { is: 'cask', litres: 200 } (read as the kind that it names)
 */
export const recordByKind =
  <B extends string, K extends Kinds>(by: B, kinds: K): Reader<OneKind<B, K>> =>
  (given, what, tell) => {
    const kind = isData(given) ? ownValue(given, by) : undefined;
    if (typeof kind !== 'string' || !Object.hasOwn(kinds, kind))
      return void tell(wasGiven(what, kind, `it can be ${Object.keys(kinds).join(', ')}.`));
    const read = kinds[kind]!(given, what, tell);
    return read && ({ [by]: kind, ...read } as OneKind<B, K>);
  };

/**
 * True of what a reader can read.
 * @example [canRead(number(0, 9), 4), canRead(number(0, 9), 12)] // [true, false] (within, and above)
 */
export const canRead = <T>(read: Reader<T>, given: unknown): given is T => quietly(read, given) !== undefined;

/**
 * Everything under a key of some form, as far as it can be read, and how many of its entries cannot be.
 * @example entriesIn({ a1: 1, a2: 99, b: 1 }, /^a/, number(0, 9)) // { sound: [['a1', 1]], lost: 2 } (one beyond its end, one under another key)
 */
export function entriesIn<T>(given: unknown, key: RegExp, each: Reader<T>) {
  const all = isData(given) ? Object.entries(given) : [];
  const sound = all.flatMap(([name, value]): [string, T][] => {
    const read = key.test(name) ? quietly(each, value) : undefined;
    return read === undefined ? [] : [[name, read]];
  });
  return { sound, lost: all.length - sound.length };
}
