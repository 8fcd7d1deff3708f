// Whether a value is one that somebody set, and not one that was reckoned: it has few digits.

/** Away with the last bits that 0.1 + 0.2 leaves. */
export const withoutNoise = (value: number): number => Number(value.toPrecision(12));

const digitsOf = (value: number) =>
  String(Math.abs(withoutNoise(value))).replace(/e.*$/, '').replace('.', '').replace(/^0+|0+$/g, '').length; // prettier-ignore

const decimalsIn = (value: number) => (String(withoutNoise(value)).split('.')[1] ?? '').length;

/** True for a value of no more digits, and decimals where there were any, than were said before; a whole number, or one and a half, may have three. */
export function wasGivenNeatly(value: number, said: number): boolean {
  const decimals = decimalsIn(said);
  if (decimals > 0 && decimalsIn(value) > decimals) return false;
  return digitsOf(value) <= Math.max(withoutNoise(value) % 0.5 === 0 ? 3 : 2, digitsOf(said));
}
