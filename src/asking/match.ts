// Which entry a question means: rare words count for more than common ones, and a word misspelt is taken for its like.
import type { AskedList, Entry } from './entry.ts';
import { reader, sortOf, type Sort } from './words.ts';

export interface Match {
  readonly entry: Entry;
  /** 0–1 and a little above, where the sort of thing asked for fits. */
  readonly score: number;
}

/** Weights of the score, found on questions of strangers; `tests/asking` measures what they come to. */
const WAY = 0.4; // of the nearest way of asking
const BAG = 0.6; // of all words of an entry together
const RARELY = 0.5; // of a word that next to none of an entry’s ways of asking have
const FROM_ANSWER = 0.5; // a word that only the answer holds, beside one that is asked with
const UNKNOWN = 0.75; // weight of a word that no entry holds, of the rarest word’s
const SAME_SORT = 0.08;
const OTHER_SORT = 0.06;
const FAINT = 0.4; // of what a word like how, is or you weighs, beside a word that names a thing
const STRANGE = 1.2; // words that no entry holds count for no more than so many times those that some do
const ASKING = 0.97; // a part that asks, beside the whole
const TELLING = 0.85; // one that does not
const SHORT = 0.4; // what a part loses that says next to nothing of the whole
const WHOLE = 0.999; // from here a question is asked in the very words of the list
const VERY_WORDS = 0.3; // what that is worth
const LIKE = 0.8; // a word that is only like another

const ASKS = /\?|\b(?:how|what|why|where|when|which|who|is|are|can|could|do|does|did|will|would|should)\b/i;

/** Parts of what was said, and whether each asks something by itself. */
export function clausesOf(question: string): readonly { readonly text: string; readonly asks: boolean }[] {
  const parts = question
    .split(/(?<=[.?!;:])\s+|\s+[–—-]\s+|,\s+|\b(?:because|but|and then|so)\b/i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length < 2) return [];
  const isMarked = parts.some((part) => part.includes('?'));
  return parts.map((text) => ({ text, asks: (isMarked ? /\?|^(?:how|what|why|is|can|do|does)\b/i : ASKS).test(text) })); // prettier-ignore
}

interface Way {
  readonly words: ReadonlySet<string>;
  readonly weight: number;
  readonly sort: Sort | undefined;
}

const trigrams = (word: string): Set<string> => {
  const padded = `^${word}$`;
  return new Set([...padded].slice(2).map((_, i) => padded.slice(i, i + 3)));
};

/** How alike two words are by their groups of three letters, 0–1. */
function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let shared = 0;
  for (const gram of a) if (b.has(gram)) shared++;
  return (2 * shared) / (a.size + b.size);
}
const ALIKE = 0.55; // from here a word is taken for the other

/** True when a letter was left out, added, changed or swapped with its neighbour, once. */
function isSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  const [restA, restB] = [a.slice(i), b.slice(i)];
  return (
    restA.slice(1) === restB ||
    restA === restB.slice(1) ||
    restA.slice(1) === restB.slice(1) ||
    (restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2))
  );
}

/** How much each word of an entry is its own: 1 for one that all its ways of asking have, less for one that few have. */
function sharesOf(ways: readonly (readonly string[])[]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const way of ways) for (const word of way) shares.set(word, (shares.get(word) ?? 0) + 1 / ways.length);
  return new Map([...shares].map(([word, share]) => [word, RARELY + (1 - RARELY) * Math.sqrt(share)]));
}

/** Makes a matcher of a list; the list is read once. */
export function matcher({ entries, words }: AskedList): (question: string) => readonly Match[] {
  const { read } = reader(words);
  const withoutHoles = (text: string) => text.replace(/\{[^}]*\}|<[^>]*>/g, ' ');
  const bags = entries.map(({ asked, says }) => ({
    asked: sharesOf(asked.map(read)),
    said: new Set(read(withoutHoles(says))),
  }));
  const counts = new Map<string, number>();
  for (const { asked } of bags) for (const word of asked.keys()) counts.set(word, (counts.get(word) ?? 0) + 1);
  const rarest = Math.log(1 + entries.length);
  const weightOf = (word: string) => {
    const count = counts.get(word);
    const isFaint = word.startsWith('~');
    if (count === undefined) return isFaint ? 0 : UNKNOWN * rarest;
    return Math.log(1 + entries.length / count) * (isFaint ? FAINT : 1);
  };
  const ways = entries.map(({ asked }) =>
    asked.map((text): Way => {
      const words = new Set(read(text));
      return { words, weight: [...words].reduce((sum, word) => sum + weightOf(word), 0), sort: sortOf(text) };
    }),
  );
  const vocabulary = [...counts.keys()].map((word) => ({ word, grams: trigrams(word) }));

  /** The word of the list that a word not in it is taken for. */
  const mended = (word: string): string | undefined => {
    if (word.length < 4 || /[\d~]/.test(word)) return undefined;
    const grams = trigrams(word);
    let best: string | undefined;
    let most = ALIKE;
    for (const each of vocabulary) {
      if (each.word[0] !== word[0] || Math.abs(each.word.length - word.length) > 2 || /[\d~]/.test(each.word)) continue;
      const alike = likeness(grams, each.grams) + (isSlip(word, each.word) && each.word.length > 3 ? 0.3 : 0);
      if (alike > most) [best, most] = [each.word, alike];
    }
    return best;
  };

  /** Scores of all entries for one wording, and how much it says. */
  const scores = (wording: string): { readonly each: readonly number[]; readonly weight: number } => {
    const asked = read(wording).map((word) => {
      if (counts.has(word)) return { word, sure: 1, weight: weightOf(word) };
      const other = mended(word);
      return other === undefined
        ? { word, sure: 0, weight: weightOf(word) }
        : { word: other, sure: LIKE, weight: weightOf(other) };
    });
    const known = asked.reduce((sum, { sure, weight }) => sum + (sure > 0 ? weight : 0), 0);
    const strange = asked.reduce((sum, { sure, weight }) => sum + (sure > 0 ? 0 : weight), 0);
    if (known === 0) return { each: entries.map(() => 0), weight: 0 };
    const all = known + Math.min(strange, STRANGE * known);
    const sort = sortOf(wording);
    const each = entries.map((_, i) => {
      let bag = 0;
      for (const { word, sure, weight } of asked)
        bag += weight * sure * (bags[i]!.asked.get(word) ?? (bags[i]!.said.has(word) ? FROM_ANSWER : 0));
      let best = 0;
      for (const way of ways[i]!) {
        let shared = 0;
        for (const { word, sure, weight } of asked) if (way.words.has(word)) shared += weight * sure;
        if (shared === 0) continue;
        const fits = sort === way.sort ? (sort === undefined ? SAME_SORT / 2 : SAME_SORT) : sort === undefined || way.sort === undefined ? 0 : -OTHER_SORT; // prettier-ignore
        const alike = (2 * shared) / (all + way.weight);
        best = Math.max(best, alike + (alike > WHOLE ? VERY_WORDS : 0) + fits / WAY);
      }
      return WAY * best + (BAG * bag) / all;
    });
    return { each, weight: known };
  };

  return (question) => {
    const whole = scores(question);
    const parts = clausesOf(question).map(({ text, asks }) => {
      const { each, weight } = scores(text);
      const share = Math.min(1, weight / (whole.weight || 1));
      return { each, counts: (asks ? ASKING : TELLING) * (1 - SHORT * (1 - share)) };
    });
    return entries
      .map((entry, i): Match => ({
        entry,
        score: Math.max(whole.each[i]!, ...parts.map(({ each, counts }) => each[i]! * counts)),
      }))
      .sort((a, b) => b.score - a.score);
  };
}
