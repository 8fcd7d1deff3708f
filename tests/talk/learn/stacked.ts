// Learns a whole reader: the first reading, then each further one from first readings of talks by authors that it had not seen.
import { weighedChances, weighedOf, type Chances } from '../../../src/talk/second-reading.ts';
import type { Model } from '../../../src/talk/match.ts';
import type { FirstModel } from '../../../src/talk/first-reading.ts';
import { firstOf, learnFirst } from './first.ts';
import { learnSecond } from './second.ts';
import type { LearntTalk } from './talks.ts';

export const FURTHER = 3; // readings after the first

/** First readings learnt from all talks but those of some authors, each learnt once. */
export function firstWithout(talks: readonly LearntTalk[]): (...authors: readonly string[]) => FirstModel {
  const models = new Map<string, FirstModel>();
  return (...authors) => {
    const key = [...new Set(authors)].sort().join();
    const known = models.get(key) ?? learnFirst(talks.filter(({ author }) => !authors.includes(author)));
    models.set(key, known);
    return known;
  };
}

/** The reader that is learnt from all talks but those of one author, or from all. */
export function learnReader(talks: readonly LearntTalk[], without = '', first = firstWithout(talks)): Model {
  const out = without === '' ? [] : [without];
  const seen = talks.filter(({ author }) => author !== without);
  const readings = seen.map(({ text, quantities, examples }) => ({ text, quantities, candidates: examples.map(({ candidates }) => candidates) }));
  const alone: Chances[] = seen.map((talk) => firstOf(first(...out, talk.author), talk));
  let now = alone;
  const further = Array.from({ length: FURTHER }, () => {
    const rows = readings.map((reading, i) => weighedOf(reading, alone[i]!, now[i]!));
    const weights = learnSecond(seen.flatMap(({ examples }, i) => examples.map(({ right }, k) => ({ rows: rows[i]![k]!, right }))));
    now = rows.map((all) => all.map((each) => weighedChances(each, weights)));
    return weights;
  });
  return { first: first(...out), further };
} // prettier-ignore
