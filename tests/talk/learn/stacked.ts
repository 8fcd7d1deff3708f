// Learns a whole reader: the first reading, then each further one from first readings of talks by authors that it had not seen.
import { weighedChances, weighedOf, type Chances } from '../../../src/talk/second-reading.ts';
import type { Model } from '../../../src/talk/match.ts';
import { shortlist } from '../../../src/talk/first-reading.ts';
import { roundedWeight, type LearntFirst } from '../../../src/talk/model-text.ts';
import { firstOf, learnFirst } from './first.ts';
import { learnSecond } from './second.ts';
import type { LearntTalk } from './talks.ts';

export const FURTHER = 3; // readings after the first

/** A first reading as rounded as what is shipped, so that the further ones learn from what they will see. */
const rounded = (first: LearntFirst): LearntFirst => ({
  size: Number(first.size.toFixed(3)),
  signs: new Map(
    [...first.signs].map(([sign, { parts, weights }]) => [
      sign,
      { parts, weights: weights.map(roundedWeight) },
    ]),
  ),
});

const GROUPS = 4; // of authors: the first reading of a group is learnt from the others

/** First readings learnt from all talks but those of some authors, each learnt once. */
export function firstWithout(talks: readonly LearntTalk[]): (...authors: readonly string[]) => LearntFirst {
  const models = new Map<string, LearntFirst>();
  return (...authors) => {
    const key = [...new Set(authors)].sort().join();
    const known =
      models.get(key) ?? rounded(learnFirst(talks.filter(({ author }) => !authors.includes(author))));
    models.set(key, known);
    return known;
  };
}

/** The reader that is learnt from all talks but those of some authors, or from all. */
export function learnReader(talks: readonly LearntTalk[], without: readonly string[] = [], first = firstWithout(talks)): Model & { readonly first: LearntFirst } {
  const seen = talks.filter(({ author }) => !without.includes(author));
  const authors = [...new Set(seen.map(({ author }) => author))].sort();
  const groupOf = (author: string) => authors.filter((_, i) => i % GROUPS === authors.indexOf(author) % GROUPS);
  const every = seen.map((talk) => firstOf(first(...without, ...groupOf(talk.author)), talk));
  const short = every.map((all) => all.map(shortlist));
  const readings = seen.map(({ text, quantities, examples }, i) => ({ text, quantities, candidates: examples.map(({ candidates }, k) => short[i]![k]!.map((place) => candidates[place]!)) }));
  const alone: Chances[] = every.map((all, i) => all.map((each, k) => short[i]![k]!.map((place) => each[place]!)));
  const rights = seen.map(({ examples }, i) => examples.map(({ right }, k) => short[i]![k]!.flatMap((place, at) => (right.includes(place) ? [at] : []))));
  let now = alone;
  const further = Array.from({ length: FURTHER }, () => {
    const rows = readings.map((reading, i) => weighedOf(reading, alone[i]!, now[i]!));
    const weights = learnSecond(seen.flatMap(({ examples }, i) => examples.map((_, k) => ({ rows: rows[i]![k]!, right: rights[i]![k]! }))));
    now = rows.map((all) => all.map((each) => weighedChances(each, weights)));
    return weights;
  });
  return { first: first(...without), further };
} // prettier-ignore
