// Answers a question: reckons with its numbers, or finds the entry that it means, or says that it does not know.
import { lineOf } from '../house/line-of.ts';
import type { House } from '../core/line/house.ts';
import type { Pace } from '../core/line/ledger.ts';
import { convert } from './convert.ts';
import type { AskedList, Entry } from './entry.ts';
import { fill, type Telling } from './holes.ts';
import { matcher } from './match.ts';
import { countryIn, quantitiesIn, wantedUnit } from './quantities.ts';
import type { Numbered, Reckoned, Reckoner } from './reckoned.ts';
import { otherWash, moreWork } from './in-proportion.ts';
import { kept, lossMoved } from './kept.ts';
import { scaled } from './scale.ts';
import { fromGravities, letDown, pureAlcohol, together } from './spirit-sums.ts';
import { whatIf } from './what-if.ts';
import { plain } from './words.ts';

export interface Answer extends Reckoned {
  /** The entry that was found; nothing where the answer was reckoned from the question’s own numbers. */
  readonly id?: string;
}
export interface NotKnown {
  /** Entries that come nearest, the nearest first. */
  readonly nearest: readonly Entry[];
}

/** From here a match is told as the answer; set by what strangers’ questions came to, see tests/asking. */
export const SURE = 0.5;
const NEAREST = 3;

const reckoners: readonly Reckoner[] = [letDown, together, fromGravities, pureAlcohol, kept, lossMoved, convert, scaled, otherWash, moreWork, whatIf];

const PACES: readonly (readonly [RegExp, Pace])[] = [
  [/\b(?:a|per|each|every|one|in a|this|last) year\b|\byearly\b|\bannual(?:ly)?\b|\bper annum\b/i, 'year'],
  [/\b(?:a|per|each|every|one|this) week\b|\bweekly\b/i, 'week'],
  [/\b(?:a|per|each|every|one|from a) (?:mash|batch|brew)\b/i, 'mash'],
  [/\b(?:a|per|each|every|one) tonn?e?\b/i, 'tonne'],
];
const paceIn = (text: string): Pace | undefined => PACES.find(([says]) => says.test(text))?.[1];

/** A question that only asks for what was told before in another unit. */
const FOLLOWS = /^(?:and |so |but |ok |what(?: is| s)? |whats |how (?:much|many) (?:is|s) |can you (?:say|tell me|give me) |tell me )*(?:that|this|it|those|the same)?(?: again)?\s*(?:in|as|into|to)\s+/;

export interface Asking {
  readonly question: string;
  readonly house: House;
  readonly telling?: Omit<Telling, 'line' | 'unit' | 'pace'>;
  /** The entry that was answered before. */
  readonly before?: string | undefined;
}

/** Makes one who answers from a list. */
export function answerer(list: AskedList): (asking: Asking) => Answer | NotKnown {
  const match = matcher(list);
  const withId = new Map(list.entries.map((entry) => [entry.id, entry]));

  return ({ question, house, telling: wishes = {}, before }) => {
    const line = lineOf(house);
    const country = countryIn(question);
    const wanted = wantedUnit(question, country ?? 'UK');
    const telling: Telling = { ...wishes, line, unit: wanted?.unit, pace: paceIn(question) };
    const tell = (entry: Entry): Answer => {
      const says = fill(entry.says, telling);
      const sum = entry.sum === undefined ? undefined : fill(entry.sum, telling);
      const paths = [...new Set([...says.paths, ...(sum?.paths ?? [])])];
      return { id: entry.id, says: says.text, ...(sum && { sum: sum.text }), at: entry.at, place: entry.place, paths }; // prettier-ignore
    };
    if (wanted && before !== undefined && FOLLOWS.test(plain(question)) && withId.has(before)) {
      const rest = quantitiesIn(question, country);
      if (rest.length === 0) return tell(withId.get(before)!);
    }
    if (!/\bwhy\b/i.test(question)) {
      const quantities = quantitiesIn(question, country ?? undefined);
      if (quantities.length > 0) {
        const asked: Numbered = { text: question, quantities, wanted, country, house, line, telling };
        for (const reckon of reckoners) {
          const found = reckon(asked);
          if (found) return found;
        }
      }
    }
    const matches = match(question);
    const [best] = matches;
    if (best && best.score >= SURE) return tell(best.entry);
    return { nearest: matches.slice(0, NEAREST).map(({ entry }) => entry) };
  };
}

/** True for an answer, false where nothing was known. */
export const isAnswer = (found: Answer | NotKnown): found is Answer => !('nearest' in found);
