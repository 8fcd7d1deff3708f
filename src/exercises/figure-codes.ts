// A figure in a text as two codes, digit for digit, and back.
import { formatNumber } from '../core/format.ts';
import { CODES_COUNT } from './codes.ts';

/** A figure as a text prints it. */
export const FIGURE = /\d+(?:,\d{3})*(?:\.\d+)?/g;

const MOST = 2 ** 20; // digits as a whole number are below it: six digits, and zeros
const POWERS = 16; // tens by which the digits are multiplied: from −8, as decimals, to 7
const LEAST = -8;

/** The codes of a figure; two noughts for one that they cannot tell digit for digit, such as a year or one of seven digits. */
export function codesOfFigure(figure: string): readonly [number, number] {
  const [whole, decimals] = figure.replaceAll(',', '').split('.') as [string, string?];
  const zeros = decimals === undefined ? /0*$/.exec(whole)![0].length % whole.length : 0;
  const digits = Number((whole + (decimals ?? '')).slice(0, whole.length + (decimals?.length ?? 0) - zeros));
  const power = zeros - (decimals?.length ?? 0) - LEAST;
  if (digits >= MOST || power < 0 || power >= POWERS) return [0, 0];
  const [high, low] = [(power * MOST) / CODES_COUNT + Math.floor(digits / CODES_COUNT), digits % CODES_COUNT];
  return figureOf(high, low) === figure ? [high, low] : [0, 0];
}

/** The figure of two codes; undefined for two noughts. */
export function figureOf(high: number, low: number): string | undefined {
  if (high === 0 && low === 0) return undefined;
  const power = Math.floor((high * CODES_COUNT) / MOST) + LEAST;
  const digits = ((high * CODES_COUNT) % MOST) + low;
  return formatNumber(Number(`${digits}e${power}`), Math.max(0, -power));
}
