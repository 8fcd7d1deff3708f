// Signs by number: what a talk shows of a quantity is named by words, and kept as a number that they come to.

const SLOTS = 20; // bits: a million numbers, of which a few thousand are learnt, so that two seldom fall together

/** A name as a number: Fowler, Noll and Vo's hash, 1a. */
export function numberOf(name: string): number {
  let number = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) number = Math.imul(number ^ name.charCodeAt(i), 0x01000193);
  return number;
}

/** The sign of a kind and what it is of, as a number of twenty bits; both mixed as in MurmurHash3. */
export function signOf(kind: number, of: number): number {
  let mixed = Math.imul(kind ^ Math.imul(of, 0xcc9e2d51), 0x85ebca6b);
  mixed ^= mixed >>> 13;
  return Math.imul(mixed, 0xc2b2ae35) >>> (32 - SLOTS);
}

const known = new Map<string, number>();
/** The sign of a name that is used again and again. */
export function signNamed(name: string): number {
  let sign = known.get(name);
  if (sign === undefined) known.set(name, (sign = signOf(0, numberOf(name))));
  return sign;
}

/** Takes a sign and how strongly it shows. */
export type Show = (sign: number, strength: number) => void;
