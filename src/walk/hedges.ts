// Words that say a figure is not to the letter, the side on which they put it, and their counterparts on the other.

/** Where the true figure lies from what is said: below it, above it, about it, on it; or bounded by it. */
export type HedgeSide = 'under' | 'over' | 'about' | 'exact' | 'most' | 'least';

interface Pair {
  readonly under: string;
  readonly over: string;
}
const sided: readonly Pair[] = [
  { under: 'only just under', over: 'only just over' },
  { under: 'just under', over: 'just over' },
  { under: 'just below', over: 'just above' },
  { under: 'just short of', over: 'just over' },
  { under: 'a little under', over: 'a little over' },
  { under: 'a little less than', over: 'a little more than' },
  { under: 'a shade under', over: 'a shade over' },
  { under: 'a touch under', over: 'a touch over' },
  { under: 'a bit under', over: 'a bit over' },
  { under: 'a bit less than', over: 'a bit more than' },
  { under: 'slightly under', over: 'slightly over' },
  { under: 'slightly less than', over: 'slightly more than' },
  { under: 'well under', over: 'well over' },
  { under: 'less than', over: 'more than' },
  { under: 'getting on for', over: 'just over' },
  { under: 'not quite', over: 'just over' },
  { under: 'nearly', over: 'just over' },
  { under: 'nearly', over: 'a good' },
  { under: 'nearly', over: 'over' },
  { under: 'nearly', over: 'rather more than' },
  { under: 'almost', over: 'just over' },
  { under: 'under', over: 'over' },
  { under: 'below', over: 'above' },
];
const others: Readonly<Record<Exclude<HedgeSide, 'under' | 'over'>, string>> = {
  about:
    'something like|somewhere around|somewhere near|in the region of|of the order of|give or take|more or less|approximately|approx\\.?|roughly|around|about|circa|ca?\\.|close to|maybe|perhaps|some|say',
  exact: 'exactly|precisely|bang on|dead on',
  most: 'no more than|at most',
  least: 'no less than|no fewer than|at least|upwards of',
};
const byLength = [...new Set(sided.flatMap(({ under, over }) => [under, over]))].sort((a, b) => b.length - a.length); // prettier-ignore
const spaced = (words: string) => words.replaceAll(' ', '\\s+');
const plain = Object.values(others).map(spaced).join('|');
const all = `${byLength.map(spaced).join('|')}|${plain}`;
const signs = '[~≈約]'; // about, in signs
const leading = new RegExp(`^(?:(?:${all})(?![\\wà-ÿ])|${signs})\\s*`, 'i');
const behind = new RegExp(`(?:(?<![\\wà-ÿ-])(?:${all})(?![\\wà-ÿ])|${signs})\\s*$`, 'i');
const trailing =
  /[\s,-]+(?:or\s+so|or\s+thereabouts?|give\s+or\s+take|more\s+or\s+less|near\s+enough|ish|roughly)$/i;
const following = /^[\s,-]+(?:or\s+so|or\s+thereabouts?|give\s+or\s+take|more\s+or\s+less|near\s+enough|ish|roughly)(?![\wà-ÿ]|\s+\d)/i; // prettier-ignore

const single = (words: string) => words.trim().replace(/\s+/g, ' ').toLowerCase();

/** The side of a hedge as said. */
export function sideOf(hedge: string): HedgeSide {
  const words = single(hedge);
  if (sided.some(({ under }) => under === words)) return 'under';
  if (sided.some(({ over }) => over === words)) return 'over';
  const found = Object.entries(others).find(([, says]) => new RegExp(`^(?:${says})$`).test(words));
  return (found?.[0] as HedgeSide | undefined) ?? 'about';
}

/** The hedge as one would say it of a figure on the other side. */
export function counterpart(hedge: string): string {
  const words = single(hedge);
  const pair = sided.find(({ under, over }) => under === words || over === words);
  return !pair ? hedge : pair.under === words ? pair.over : pair.under;
}

/** Words of a quantity without its hedge, and the hedge as it stands before and behind, spaces included. */
export function withoutHedge(words: string): { before: string; bare: string; after: string } {
  const before = leading.exec(words)?.[0] ?? '';
  const rest = words.slice(before.length);
  const after = trailing.exec(rest)?.[0] ?? '';
  return { before, bare: rest.slice(0, rest.length - after.length), after };
}

const duration = /^(?:over|under|above|below)$/; // "over six weeks" is how long, "above 78 °C" a bound

/**
 * How far the hedge of a quantity reaches out of its own words, in a text: characters before it and behind it.
 * `isPlain` where "over" may mean something else, as before a time or a heat.
 */
export function hedgeAround(text: string, start: number, end: number, isPlain = false): { before: number; after: number } {
  const before = behind.exec(text.slice(Math.max(0, start - 40), start))?.[0] ?? '';
  const words = single(before);
  const isOther = (isPlain && duration.test(words)) || (words === 'a good' && text.slice(start, end).includes('-')); // "a good eight-hour run"
  return {
    before: isOther ? 0 : before.length,
    after: following.exec(text.slice(end, end + 40))?.[0].length ?? 0,
  };
} // prettier-ignore
