// The name of a house: one line of letters and signs, whatever a file, a link or a field gives.
import { shown, UNSEEN } from '../core/shown.ts';

const LONGEST = 80; // UTF-16 units
const LINE_ENDS = /[\t\n\v\f\r\u2028\u2029]/g;
const HEAPED = /(\p{M}{3})\p{M}+/gu; // more marks on one letter would be drawn over the lines around it

/** A text as a name: what cannot be seen is left out, and what is too long. */
export function plainName(text: string): string {
  return text
    .replace(LINE_ENDS, ' ')
    .replace(HEAPED, '$1')
    .replace(UNSEEN, '')
    .slice(0, LONGEST)
    .replace(/\p{Cs}$/u, '');
}

/** What is wrong with a name, or nothing. */
export function nameProblem(given: unknown): string | undefined {
  if (typeof given === 'string' && given.trim() !== '' && plainName(given) === given) return undefined;
  const what = shown(given) === '' ? 'nothing' : `“${shown(given)}”`;
  return `The name of the house: ${what} was given; it can have up to ${LONGEST} characters on one line, at least one of them a letter or sign, and none that cannot be seen.`;
}
