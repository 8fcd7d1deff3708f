// The name of a house: one line of letters and signs, whatever a file, a link or a field gives.
import { quotedGiven, UNSEEN } from '../core/quoted-given.ts';
import { canRead, text } from '../core/reading/given.ts';

const LONGEST = 80; // UTF-16 units
const LONGEST_READ = 100_000; // UTF-16 units of a text that are looked at, what is left out among them
const GAPS = /[\s\u2028\u2029]+/gu; // spaces of any width, and line ends
const SEEN = /[\p{L}\p{N}\p{P}\p{S}]/u;
const HEAPED = /(\p{M}{3})\p{M}+/gu; // more marks on one letter would be drawn over the lines around it

/** A text as a name: what cannot be seen is left out, and what is too long; empty when nothing is left that can be seen. */
export function plainName(text: string): string {
  const plain = text
    .slice(0, LONGEST_READ)
    .replace(GAPS, ' ')
    .replace(UNSEEN, '')
    .replace(GAPS, ' ')
    .replace(HEAPED, '$1')
    .trim()
    .slice(0, LONGEST)
    .replace(/\p{Cs}$/u, '')
    .trim();
  return SEEN.test(plain) ? plain : '';
}

/** A name that an older build let pass, told from one that reads the same. */
export const visibleName = (name: string): string => name.replace(UNSEEN, '\ufffd');

/** Reads the name of a house that can stand as it is given. */
export const houseName = text(
  LONGEST,
  (given) => given !== '' && plainName(given) === given,
  'it can be a name on one line.',
);

/** What is wrong with a name, or nothing. */
export function nameProblem(given: unknown): string | undefined {
  if (canRead(houseName, given)) return undefined;
  const what = quotedGiven(given) === '' ? 'nothing' : `“${quotedGiven(given)}”`;
  return `The name of the house: ${what} was given; it can have up to ${LONGEST} characters on one line, at least one of them a letter or sign, and none that cannot be seen.`;
}
