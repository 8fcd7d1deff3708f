// How likely what was asked is answered by the best match: entries that answer nearly the same stand for each other, a little or wholly.
import type { AskedEntry, AskedList } from './entry.ts';
import type { EntryMatch } from './match.ts';
import { wordReader } from './words.ts';

const NEXT = 8; // matches that are weighed
const ONE_PLACE = 0.4; // how far two answers of one place in the book are one
const SAME_WORDS = 1.5; // times what two answers share of their words, a rare word more than a common one
const MANY = 'using/'; // a place that leads to many things

/** Makes one who says how likely the first of some matches, or one that answers like it, is what was asked. */
export function kinOf({ entries, words }: AskedList): (matches: readonly EntryMatch[]) => number {
  const { read } = wordReader(words);
  const said = new Map(entries.map(({ id, says }) => [id, new Set(read(says).filter((word) => !word.startsWith('~')))]));
  const counts = new Map<string, number>();
  for (const own of said.values()) for (const word of own) counts.set(word, (counts.get(word) ?? 0) + 1);
  const weightOf = (all: Iterable<string>) => [...all].reduce((sum, word) => sum + Math.log(entries.length / counts.get(word)!), 0);
  const alike = (one: AskedEntry, other: AskedEntry): number => {
    const [mine, theirs] = [said.get(one.id)!, said.get(other.id)!];
    const shared = (2 * weightOf([...mine].filter((word) => theirs.has(word)))) / (weightOf(mine) + weightOf(theirs) || 1);
    return Math.min(1, (one.at === other.at && one.at !== MANY ? ONE_PLACE : 0) + SAME_WORDS * shared);
  };
  return ([best, ...others]) =>
    best === undefined ? 0 : others.slice(0, NEXT - 1).reduce((sum, { entry, chance }) => sum + chance * alike(best.entry, entry), best.chance);
} // prettier-ignore
