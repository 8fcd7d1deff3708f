// The terms of the glossary as things that may be asked, where the list has none of its own for them.
import type { AskedEntry } from './entry.ts';
import { plainQuestion } from './words.ts';

export interface Term {
  readonly id: string;
  readonly term: string;
  readonly says: string;
}

const LONGEST = 45; // words of what is said in one breath

/** Entries for the terms that no way of asking names yet. */
export function termsAsked(terms: readonly Term[], entries: readonly AskedEntry[]): readonly AskedEntry[] {
  const asked = new Set(entries.flatMap((entry) => entry.asked.map(plainQuestion)));
  const ids = new Set(entries.map((entry) => entry.id));
  return terms.flatMap(({ id, term, says }): AskedEntry[] => {
    const ways = [
      `what is ${term}`,
      `what is a ${term}`,
      `what are ${term}`,
      `what's ${term}`,
      `what does ${term} mean`,
      `what are ${term}s`,
      `explain ${term}`,
      `${term} meaning`,
      term,
    ];
    if (
      ids.has(id) ||
      ways.some((way) => asked.has(plainQuestion(way))) ||
      says.split(/\s+/).length > LONGEST
    )
      return [];
    return [
      {
        id: `term-${id}`,
        asked: [`what is ${term}`, `what does ${term} mean`, `explain ${term}`, `${term} meaning`],
        says,
        at: `glossary/#${id}`,
        place: `Glossary: ${term}`,
      },
    ];
  });
}
