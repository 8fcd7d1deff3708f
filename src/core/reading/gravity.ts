// A gravity as it is said: 1.058, 1058 or 58 degrees, and the pair of words ten fifty-eight.

const WHOLE = 500; // from here a number is a gravity times a thousand: 998, 1058
const DEGREES = [2, 200] as const; // degrees of gravity above water’s; no wort has a gravity of 2, nor 200 degrees

/**
 * A number with no unit as a gravity: 1.058 as it is, 1058 and 998 as thousandths, 58 and −2 as degrees above and below water.
 * @example [gravityFrom(1.058), gravityFrom(1058), gravityFrom(58)] // [1.058, 1.058, 1.058] (three ways to say it)
 */
export function gravityFrom(said: number): number {
  if (said > WHOLE) return said / 1000;
  const isDegrees = (said >= DEGREES[0] && said <= DEGREES[1]) || (said <= -1 && said >= -20);
  return isDegrees ? Number((1 + said / 1000).toFixed(9)) : said;
}
