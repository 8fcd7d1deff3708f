// A text that is a number in figures and nothing else.
import { tokensOf } from './tokens.ts';

/**
 * The number in a text, or undefined when there is none or more than that; commas and points by the one rule.
 * @example [parseNumber('−1,250.5'), parseNumber('two')] // [-1250.5, undefined] (figures alone)
 */
export function parseNumber(text: string): number | undefined {
  const [, sign, digits] = /^\s*([-+−–]?)\s*(\S.*?)[.,]?\s*$/s.exec(text) ?? [];
  if (digits === undefined || digits.length > 100) return undefined;
  const tokens = tokensOf(digits.replace(/^[.,](?=\d)/, '0.'));
  const [figure] = tokens;
  if (tokens.length !== 1 || !/^\d/.test(figure!.text) || figure!.value === undefined) return undefined;
  return (sign === '-' || sign === '−' || sign === '–' ? -1 : 1) * figure!.value + 0;
}
