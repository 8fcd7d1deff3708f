// An entry of the list as an answer, its holes filled for the house.
import type { Answer } from './answer-given.ts';
import type { AskedEntry } from './entry.ts';
import { fillHoles, type Telling } from './holes.ts';

/** An entry as an answer. */
export function tellEntry(entry: AskedEntry, telling: Telling): Omit<Answer, 'question'> {
  const says = fillHoles(entry.says, telling);
  const sum = entry.sum === undefined ? undefined : fillHoles(entry.sum, telling);
  return {
    id: entry.id,
    says: says.text,
    ...(sum && { sum: sum.text }),
    at: entry.at,
    place: entry.place,
    rests: entry.rests,
    paths: [...new Set([...says.paths, ...(sum?.paths ?? [])])],
    inUnit: says.inUnit,
  };
}
