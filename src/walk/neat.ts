// Whether a value is one that somebody set, and not one that was reckoned: it has few digits.

/** Away with the last bits that 0.1 + 0.2 leaves. */
export const tidied = (value: number): number => Number(value.toPrecision(12));

const digitsOf = (value: number) =>
  String(Math.abs(tidied(value))).replace(/e.*$/, '').replace('.', '').replace(/^0+|0+$/g, '').length; // prettier-ignore

/** True for a value of no more digits than were said before; a whole number, or one and a half, may have three. */
export function wasGivenNeatly(value: number, said: number): boolean {
  return digitsOf(value) <= Math.max(tidied(value) % 0.5 === 0 ? 3 : 2, digitsOf(said));
}
