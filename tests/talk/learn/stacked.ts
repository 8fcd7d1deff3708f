// Learns a whole reader: the first reading, then each further one from first readings of talks by authors that it had not seen.
import { weighedChances } from '../../../src/talk/network.ts';
import { weighedOf, type Chances } from '../../../src/talk/second-reading.ts';
import type { Model } from '../../../src/talk/match.ts';
import { shortlist } from '../../../src/talk/first-reading.ts';
import { roundedWeight, type LearntFirst } from '../../../src/talk/model-text.ts';
import { countBoth, type Together } from '../../../src/talk/told-together.ts';
import { TUNED_ON } from '../tuned-on.ts';
import { firstOf, learnFirst } from './first.ts';
import { learnSecond } from './second.ts';
import type { LearntTalk } from './talks.ts';

export const FURTHER = 2; // readings after the first

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

const GROUPS = 7; // of authors, each of which is left out as one

/** The authors of talks in groups; those that are only learnt from are in none. */
export function groupsOf(talks: readonly { readonly author: string }[]): readonly (readonly string[])[] {
  const authors = [...new Set(talks.map(({ author }) => author))].filter((each) => each !== TUNED_ON).sort();
  return Array.from({ length: GROUPS }, (_, group) => authors.filter((_, i) => i % GROUPS === group));
}

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

/** Which figures are told together, counted in all talks but those of some authors. */
export function togetherWithout(talks: readonly LearntTalk[]): (...authors: readonly string[]) => Together {
  const told = new Map<string, Together>();
  return (...authors) => {
    const key = [...authors].sort().join();
    const own = talks.filter(({ author }) => author !== TUNED_ON && !authors.includes(author));
    const counted = told.get(key) ?? countBoth(own.map(({ examples }) => examples.map(({ label }) => label)));
    told.set(key, counted);
    return counted;
  };
} // prettier-ignore

/** A function that learns the reader from all talks but those of a group of authors, or from all. The first reading of each talk, from which the further ones are learnt, is by one that has not learnt from its author. */
export function readerWithout(talks: readonly LearntTalk[], first = firstWithout(talks)): (group?: readonly string[]) => Model & { readonly first: LearntFirst } {
  const groups = groupsOf(talks);
  const groupOf = (author: string) => groups.find((group) => group.includes(author))!;
  const told = talks.filter(({ author }) => author !== TUNED_ON);
  const every = told.map((talk) => firstOf(first(...groupOf(talk.author)), talk));
  const short = every.map((all) => all.map(shortlist));
  const readings = told.map(({ text, quantities, examples }, i) => ({ text, quantities, candidates: examples.map(({ candidates }, k) => short[i]![k]!.map((place) => candidates[place]!)) }));
  const alone: Chances[] = every.map((all, i) => all.map((each, k) => short[i]![k]!.map((place) => each[place]!)));
  const rights = told.map(({ examples }, i) => examples.map(({ right }, k) => short[i]![k]!.flatMap((place, at) => (right.includes(place) ? [at] : []))));
  const together = togetherWithout(talks);
  const pairs = told.map(({ author }) => together(...groupOf(author)));
  const once = readings.map((reading, i) => weighedOf(reading, alone[i]!, alone[i]!, pairs[i]));
  return (group = []) => {
    const seen = told.flatMap(({ author }, i) => (group.includes(author) ? [] : [i]));
    let rows = new Map(seen.map((i) => [i, once[i]!]));
    const further = Array.from({ length: FURTHER }, (_, reading) => {
      const weights = learnSecond(seen.flatMap((i) => rights[i]!.map((right, k) => ({ rows: rows.get(i)![k]!, candidates: readings[i]!.candidates[k]!, right }))));
      if (reading + 1 < FURTHER) rows = new Map(seen.map((i) => [i, weighedOf(readings[i]!, alone[i]!, rows.get(i)!.map((each, k) => weighedChances(each, readings[i]!.candidates[k]!, weights)), pairs[i])]));
      return weights;
    });
    return { first: first(...group), further, together: together(...group) };
  };
} // prettier-ignore
