// What a reader gave, as a sentence may quote it: short, on one line, and turning nothing round.

const LONGEST = 40; // characters

/** Control characters, halves of a surrogate pair, line ends, and marks that turn the direction of what follows. */
export const UNSEEN = /[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** A list or a record is shown by its brackets: writing out a deep one would exhaust the stack. */
export function shown(given: unknown): string {
  if (typeof given === 'object' && given !== null) return Array.isArray(given) ? '[…]' : '{…}';
  const text = String(given ?? (given === null ? 'null' : 'nothing')).trim();
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return short.replace(UNSEEN, '\ufffd');
}
