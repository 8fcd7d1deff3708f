// What a reader gave, as a sentence may quote it: short, on one line, and turning nothing round.

const LONGEST = 40; // characters

/**
 * What cannot be seen: control characters, halves of a surrogate pair, line ends, the empty Braille cell, and what Unicode
 * lets a face pass over (Default_Ignorable_Code_Point, UAX 44), marks that turn the direction among it. A joiner or
 * non-joiner between letters of scripts that are spelled with them (Unicode Standard, section 23.2) can be seen.
 */
export const UNSEEN =
  /[\p{Cc}\p{Cs}\u2028\u2029\u2800]|(?!(?<=(?![\p{sc=Latin}\p{sc=Greek}\p{sc=Cyrillic}])[\p{L}\p{M}])[\u200c\u200d](?=(?![\p{sc=Latin}\p{sc=Greek}\p{sc=Cyrillic}])\p{L}))\p{DI}/gu;

/**
 * A list or a record is shown by its brackets: writing out a deep one would exhaust the stack.
 * @example quotedGiven([1, 2]) // '[…]' (a list by its brackets)
 */
export function quotedGiven(given: unknown): string {
  if (typeof given === 'object' && given !== null) return Array.isArray(given) ? '[…]' : '{…}';
  const text = String(given ?? (given === null ? 'null' : 'nothing')).trim();
  const short = text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text;
  return short.replace(UNSEEN, '\ufffd');
}

/**
 * The sentence of what was given and cannot be used: the label, the text, why, and what is allowed.
 * @example wasGiven('Wort', 'x', 'it can be 1.') // 'Wort: “x” was given; it can be 1.' (what, and what is allowed)
 */
export function wasGiven(label: string | undefined, given: unknown, can: string, why?: string): string {
  const text = quotedGiven(given);
  const what = text === '' ? 'nothing was given' : `“${text}” was given`;
  return `${label ? `${label}: ` : ''}${what}${why === undefined ? '' : `, ${why}`}; ${can}`;
}
