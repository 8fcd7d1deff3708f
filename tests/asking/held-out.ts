// How often a way of asking that the list has not got finds its entry: each eighth of the ways is held out in turn.
import { isAnswer } from '../../src/asking/answer-given.ts';
import { answerer } from '../../src/asking/answer.ts';
import type { AskedList, AskedEntry } from '../../src/asking/entry.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const FOLDS = 8;
const FEWEST = 4; // ways of an entry, of which one is held out

export interface HeldOut {
  readonly asked: number;
  readonly right: number;
  /** Told as if sure, from another place in the book than what was asked. */
  readonly wrong: number;
  readonly lost: readonly string[];
}

/** All ways of asking, each put to a list without it. */
export function heldOut({ entries, words }: AskedList): HeldOut {
  const unknown = new Set(entries.filter((entry) => entry.unknown).map(({ id }) => id));
  let [asked, right, wrong] = [0, 0, 0];
  const lost: string[] = [];
  for (let fold = 0; fold < FOLDS; fold++) {
    const isOut = (entry: AskedEntry, i: number) =>
      entry.asked.length >= FEWEST && i > 0 && i % FOLDS === fold;
    const answer = answerer({
      words,
      entries: entries.map((entry) => ({ ...entry, asked: entry.asked.filter((_, i) => !isOut(entry, i)) })),
    });
    for (const entry of entries)
      entry.asked.forEach((way, i) => {
        if (!isOut(entry, i)) return;
        asked++;
        const found = answer({ question: way, house: builtInHouse });
        const id = isAnswer(found) ? (found.id ?? 'reckoned') : '?';
        const isSame = id === entry.id || id === 'reckoned' || (entry.unknown === true && (id === '?' || unknown.has(id)));
        if (isSame) right++;
        else {
          if (isAnswer(found) && !found.meant && !unknown.has(id) && found.at !== entry.at) wrong++;
          lost.push(`${way} (${entry.id}) finds ${id}${isAnswer(found) && !found.meant ? '!' : ''}`);
        }
      });
  }
  return { asked, right, wrong, lost };
} // prettier-ignore
