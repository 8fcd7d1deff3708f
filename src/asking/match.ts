// Which entry a question means: rare words count for more than common ones, and a word misspelt is taken for its like.
import { mender } from './alike.ts';
import { clausesOf } from './clauses.ts';
import type { AskedList, Entry } from './entry.ts';
import { reader, sortOf, type Sort } from './words.ts';

export interface Match {
  readonly entry: Entry;
  /** 0–1 and a little above, where the sort of thing asked for fits. */
  readonly score: number;
}

/** Weights of the score, found on questions of strangers; tests/asking/strangers.test.ts measures what they come to. */
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

/** One way of asking: its entry, what its words weigh and the sort of thing that it asks for. */
interface Way {
  readonly entry: number;
  readonly weight: number;
  readonly sort: Sort | undefined;
}

const isFaint = (word: string) => word.startsWith('~');

/** How much each word of an entry is its own: 1 for one that all its ways of asking have, less for one that few have. */
function sharesOf(ways: readonly (readonly string[])[]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const way of ways) for (const word of way) shares.set(word, (shares.get(word) ?? 0) + 1 / ways.length);
  return new Map([...shares].map(([word, share]) => [word, RARELY + (1 - RARELY) * Math.sqrt(share)]));
}

const gather = <T>(lists: Map<string, T[]>, word: string, item: T) =>
  lists.has(word) ? lists.get(word)!.push(item) : lists.set(word, [item]);

const fitOf = (asked: Sort | undefined, way: Sort | undefined): number => {
  if (asked === way) return asked === undefined ? SAME_SORT / 2 : SAME_SORT;
  return asked === undefined || way === undefined ? 0 : -OTHER_SORT;
};

/** Makes a matcher of a list; the list is read once. */
export function matcher({ entries, words }: AskedList): (question: string) => readonly Match[] {
  const { read } = reader(words);
  const withoutHoles = (text: string) => text.replace(/\{[^}]*\}|<[^>]*>/g, ' ');
  const asked = entries.map((entry) => entry.asked.map(read));
  const entriesWith = new Map<string, (readonly [entry: number, share: number])[]>();
  const waysWith = new Map<string, number[]>();
  const ways: Way[] = [];
  const counts = new Map<string, number>();
  const shares = asked.map(sharesOf);
  for (const each of shares) for (const word of each.keys()) counts.set(word, (counts.get(word) ?? 0) + 1);

  const weightOf = (word: string): number => {
    const count = counts.get(word);
    if (count === undefined) return isFaint(word) ? 0 : UNKNOWN * Math.log(1 + entries.length);
    return Math.log(1 + entries.length / count) * (isFaint(word) ? FAINT : 1);
  };
  entries.forEach(({ asked: texts, says }, entry) => {
    for (const [word, share] of shares[entry]!) gather(entriesWith, word, [entry, share] as const);
    for (const word of read(withoutHoles(says)))
      if (!shares[entry]!.has(word)) gather(entriesWith, word, [entry, FROM_ANSWER] as const);
    asked[entry]!.forEach((way, i) => {
      for (const word of way) gather(waysWith, word, ways.length);
      ways.push({
        entry,
        weight: way.reduce((sum, word) => sum + weightOf(word), 0),
        sort: sortOf(texts[i]!),
      });
    });
  });
  const mended = mender(counts.keys());

  /** Scores of all entries for one wording, and how much it says. */
  function scores(wording: string): { readonly each: Float64Array; readonly weight: number } {
    const bag = new Float64Array(entries.length);
    const shared = new Float64Array(ways.length);
    let known = 0;
    let strange = 0;
    for (const said of read(wording)) {
      const word = counts.has(said) ? said : mended(said);
      if (word === undefined) {
        strange += weightOf(said);
        continue;
      }
      const weight = weightOf(word);
      const counted = weight * (word === said ? 1 : LIKE);
      known += weight;
      for (const [entry, share] of entriesWith.get(word)!) bag[entry]! += counted * share;
      for (const way of waysWith.get(word)!) shared[way]! += counted;
    }
    const best = new Float64Array(entries.length);
    if (known === 0) return { each: best, weight: 0 };
    const all = known + Math.min(strange, STRANGE * known);
    const sort = sortOf(wording);
    ways.forEach(({ entry, weight, sort: own }, way) => {
      if (shared[way] === 0) return;
      const alike = (2 * shared[way]!) / (all + weight);
      best[entry] = Math.max(best[entry]!, alike + (alike > WHOLE ? VERY_WORDS : 0) + fitOf(sort, own) / WAY);
    });
    return { each: best.map((way, entry) => WAY * way + (BAG * bag[entry]!) / all), weight: known };
  }

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
