// Words that a figure is meant roughly, or to the letter: about, just under, or so; exactly.

/** Words before a figure, any of which makes it a rough one. */
export const vague: ReadonlySet<string> = new Set('about around roughly approximately approx some nearly almost near under over circa ca c ~ ≈ maybe perhaps say call something like close upwards up least most than bit best pushing couple give odd'.split(' ')); // prettier-ignore

/** What makes a figure a rough one when it follows at once. */
export const vagueAfter =
  /^[\s,-]*(?:or so\b|ish\b|odd\b|give or take|or thereabouts|or thereabout|near enough|or near|more or less|roughly|\+)/i;

const exact: ReadonlySet<string> = new Set(['exactly', 'precisely', 'just']);
/** Words that may stand among vague ones, and say nothing by themselves. */
const filling: ReadonlySet<string> = new Set('a little shade touch good well of to in the region order somewhere it is not quite at an'.split(' ')); // prettier-ignore

/**
 * What the words before a figure say of it; undefined when they are no such words.
 * @example [vagueManner(['just', 'under']), vagueManner(['exactly'])] // ['about', 'exact'] (as people say it)
 */
export function vagueManner(words: readonly string[]): 'about' | 'exact' | 'plain' | undefined {
  const known = (word: string) =>
    vague.has(word) || exact.has(word) || filling.has(word) || /^[=:.]$/.test(word);
  if (!words.every(known)) return undefined;
  if (words.some((word) => vague.has(word))) return 'about';
  if (words.some((word) => exact.has(word))) return 'exact';
  return words.every((word) => /^[=:]$/.test(word)) ? 'plain' : undefined;
}
