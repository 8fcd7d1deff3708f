// Which entry a question means: several signs of likeness, weighed as was learnt from the list itself, and how sure that is.
import { wordMender } from './misspelt.ts';
import { clausesOf } from './clauses.ts';
import type { AskedList, AskedEntry } from './entry.ts';
import { singularDirections } from './vectors.ts';
import { plainQuestion, wordReader, sortOf, type Sort } from './words.ts';

export interface EntryMatch {
  readonly entry: AskedEntry;
  /** How likely it is meant, 0–1, if one of the list is. */
  readonly chance: number;
  /** What of the question’s words it holds, 0–1, and more where it is asked in these very words. */
  readonly score: number;
}

const RARELY = 0.5; // of a word that next to none of an entry’s ways of asking have
const FROM_ANSWER = 0.5; // a word that only the answer holds, beside one that is asked with
const UNKNOWN = 0.75; // weight of a word that no entry holds, of the rarest word’s
const FAINT = 0.4; // of what a word like how, is or you weighs, beside a word that names a thing
const STRANGE = 1.2; // words that no entry holds count for no more than so many times those that some do
const ASKING = 0.97; // a part that asks, beside the whole
const TELLING = 0.85; // one that does not
const SHORT = 0.4; // what a part loses that says next to nothing of the whole
const LESS_ASKING = 0.3; // what a part that asks loses of its sum of signs, beside the whole
const LESS_TELLING = 1.5; // one that does not
const LESS_SHORT = 1.5; // and one that says next to nothing of the whole
const LEAST = 0.15; // of the whole, that a part must say to count
const WHOLE = 0.999; // from here a question is asked in the very words of the list
const LONG_WORD = 6; // letters of a word that is mended before its ending is taken off
const LIKE = 0.8; // a word that is only like another

/** The signs, in the order of their weights. */
export const MATCHING_SIGNS = [
  'way',
  'next',
  'bag',
  'pairs',
  'letters',
  'meaning',
  'sort',
  'other',
  'whole',
  'section',
] as const;
/** Weights of the signs, by which ways of asking that were held out are found most likely; `whole` is set by hand, as none of those is whole. */
export const WEIGHTS: readonly number[] = [1.42, 1.36, 5.26, 1.75, 6.99, 5.2, 0.87, -1.11, 4, 1.48];

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

const pairsOf = (words: readonly string[]) => words.slice(1).map((word, i) => `${words[i]!} ${word}`);
const lettersOf = (text: string): readonly string[] => {
  const padded = ` ${text} `;
  return [...new Set([...padded].slice(3).map((_, i) => padded.slice(i, i + 4)))];
};

/** Makes a matcher of a list; the list is read once. */
export function questionMatcher({ entries, words, passages = [] }: AskedList): {
  readonly match: (question: string) => readonly EntryMatch[];
  /** The signs of each entry for a wording; all the signs of one entry, then those of the next. */
  readonly signsOf: (wording: string) => { readonly signs: Float64Array; readonly weight: number };
} {
  const { read } = wordReader(words);
  const withoutHoles = (text: string) => text.replace(/\{[^}]*\}|<[^>]*>/g, ' ');
  const asked = entries.map((entry) => entry.asked.map(read));
  const entriesWith = new Map<string, (readonly [entry: number, share: number])[]>();
  const waysWith = new Map<string, number[]>();
  const pairsWith = new Map<string, Set<number>>();
  const lettersWith = new Map<string, number[]>();
  const ways: Way[] = [];
  const wayLetters: number[] = [];
  const counts = new Map<string, number>();
  const shares = asked.map(sharesOf);
  for (const each of shares) for (const word of each.keys()) counts.set(word, (counts.get(word) ?? 0) + 1);

  const weightOf = (word: string): number => {
    const count = counts.get(word);
    if (count === undefined) return isFaint(word) ? 0 : UNKNOWN * Math.log(1 + entries.length);
    return Math.log(1 + entries.length / count) * (isFaint(word) ? FAINT : 1);
  };
  const rows: Map<string, number>[] = [];
  entries.forEach(({ asked: texts, says }, entry) => {
    const row = new Map<string, number>();
    for (const [word, share] of shares[entry]!) {
      gather(entriesWith, word, [entry, share] as const);
      row.set(word, weightOf(word) * share);
    }
    for (const word of read(withoutHoles(says)))
      if (!shares[entry]!.has(word)) {
        gather(entriesWith, word, [entry, FROM_ANSWER] as const);
        if (counts.has(word)) row.set(word, FROM_ANSWER * weightOf(word));
      }
    rows.push(row);
    asked[entry]!.forEach((way, i) => {
      for (const word of way) gather(waysWith, word, ways.length);
      for (const pair of pairsOf(way))
        pairsWith.set(pair, (pairsWith.get(pair) ?? new Set<number>()).add(entry));
      const letters = lettersOf(texts[i]!.toLowerCase());
      for (const each of letters) gather(lettersWith, each, ways.length);
      wayLetters.push(letters.length);
      ways.push({
        entry,
        weight: way.reduce((sum, word) => sum + weightOf(word), 0),
        sort: sortOf(texts[i]!),
      });
    });
  });
  const sectionsWith = new Map<string, number[]>();
  const sections = new Map<string, Set<string>>();
  for (const { at, title, text } of passages) {
    const held = sections.get(at) ?? new Set<string>();
    for (const word of read(withoutHoles(`${title} ${text}`))) held.add(word);
    sections.set(at, held);
  }
  entries.forEach(({ at }, entry) => {
    for (const word of sections.get(at) ?? []) if (!isFaint(word)) gather(sectionsWith, word, entry);
  });
  const mended = wordMender(counts.keys());
  // A word misspelt near its end is mended before its ending is taken off.
  const wholeWords = new Set(
    entries.flatMap((entry) => entry.asked.flatMap((way) => plainQuestion(way).split(' '))),
  );
  const mendedWhole = wordMender(wholeWords);
  const mendAll = (wording: string): string =>
    plainQuestion(wording)
      .split(' ')
      .map((word) => {
        if (word.length < LONG_WORD || wholeWords.has(word)) return word;
        const said = read(word);
        if (said.every((each) => counts.has(each) || mended(each) !== undefined)) return word;
        return mendedWhole(word.replace(/sh[uoe]n$/, 'tion')) ?? word;
      })
      .join(' ');
  const meaning = singularDirections(rows);
  const N = MATCHING_SIGNS.length;

  function signsOf(wording: string): { readonly signs: Float64Array; readonly weight: number } {
    const bag = new Float64Array(entries.length);
    const shared = new Float64Array(ways.length);
    const inSection = new Float64Array(entries.length);
    const signs = new Float64Array(entries.length * N);
    const row = new Map<string, number>();
    let known = 0;
    let strange = 0;
    const said = read(mendAll(wording));
    for (const each of said) {
      const word = counts.has(each) ? each : mended(each);
      if (word === undefined) {
        strange += weightOf(each);
        continue;
      }
      const weight = weightOf(word);
      const counted = weight * (word === each ? 1 : LIKE);
      known += weight;
      row.set(word, weight);
      for (const [entry, share] of entriesWith.get(word)!) bag[entry]! += counted * share;
      for (const way of waysWith.get(word)!) shared[way]! += counted;
      for (const entry of sectionsWith.get(word) ?? []) inSection[entry]! += counted;
    }
    if (known === 0) return { signs, weight: 0 };
    const all = known + Math.min(strange, STRANGE * known);
    const sort = sortOf(wording);
    const letters = lettersOf(wording.toLowerCase());
    const lettersShared = new Float64Array(ways.length);
    for (const each of letters) {
      const list = lettersWith.get(each);
      if (list) for (const way of list) lettersShared[way]! += 1;
    }
    const sortsOf = new Float64Array(entries.length * 2);
    ways.forEach(({ entry, weight, sort: own }, way) => {
      const at = entry * N;
      const like = (2 * lettersShared[way]!) / (letters.length + wayLetters[way]! || 1);
      signs[at + 4] = Math.max(signs[at + 4]!, like);
      sortsOf[2 * entry + (own === sort ? 1 : 0)]! += 1;
      if (shared[way] === 0) return;
      const alike = (2 * shared[way]!) / (all + weight);
      if (alike > signs[at]!) [signs[at + 1], signs[at]] = [signs[at]!, alike];
      else if (alike > signs[at + 1]!) signs[at + 1] = alike;
      if (alike > WHOLE) signs[at + 8] = 1;
    });
    const pairs = pairsOf(said);
    for (const pair of pairs) {
      const holders = pairsWith.get(pair);
      if (holders) for (const entry of holders) signs[entry * N + 3]! += Math.log(1 + entries.length / holders.size) / (pairs.length * 6); // prettier-ignore
    }
    const direction = meaning.of(row);
    entries.forEach((_, entry) => {
      const at = entry * N;
      signs[at + 2] = bag[entry]! / all;
      signs[at + 9] = inSection[entry]! / all;
      const text = meaning.texts[entry]!;
      let cosine = 0;
      for (let d = 0; d < text.length; d++) cosine += text[d]! * direction[d]!;
      signs[at + 5] = Math.max(0, cosine);
      const [others, same] = [sortsOf[2 * entry]!, sortsOf[2 * entry + 1]!];
      if (sort !== undefined) signs[at + 6] = same / (same + others);
      if (sort !== undefined && same === 0) signs[at + 7] = 1;
    });
    return { signs, weight: known };
  }

  const told = (signs: Float64Array, entry: number): number => {
    let sum = 0;
    for (let i = 0; i < N; i++) sum += WEIGHTS[i]! * signs[entry * N + i]!;
    return sum;
  };

  return {
    signsOf,
    match(question) {
      const whole = signsOf(question);
      const sums = entries.map((_, entry) => told(whole.signs, entry));
      const held = entries.map((_, entry) => whole.signs[entry * N]!);
      for (const { text, asks } of clausesOf(question)) {
        const part = signsOf(text);
        const share = Math.min(1, part.weight / (whole.weight || 1));
        if (share < LEAST) continue;
        const counts = (asks ? ASKING : TELLING) * (1 - SHORT * (1 - share));
        entries.forEach((_, entry) => {
          sums[entry] = Math.max(
            sums[entry]!,
            told(part.signs, entry) - (asks ? LESS_ASKING : LESS_TELLING) - LESS_SHORT * (1 - share),
          );
          held[entry] = Math.max(held[entry]!, part.signs[entry * N]! * counts);
        });
      }
      const most = Math.max(...sums);
      const all = sums.reduce((total, sum) => total + Math.exp(sum - most), 0);
      return entries
        .map((entry, i): EntryMatch => ({ entry, chance: Math.exp(sums[i]! - most) / all, score: held[i]! }))
        .sort((a, b) => b.chance - a.chance);
    },
  };
}
