// The part “facts”: what a house says of itself beside its figures. Read strictly; what cannot be used is told of by its label.
import { isData } from '../../core/reading/data.ts';
import { number, oneOf, only, problemIn, text, type Reader } from '../../core/reading/given.ts';
import { allowedInWords } from '../../core/format.ts';
import { UNSEEN, quotedGiven, wasGiven } from '../../core/quoted-given.ts';
import { factIds, factKind, isFactId, type Fact, type FactId, type Facts } from '../facts.ts';
import { fewProblems } from '../few-problems.ts';
import type { HousePart } from './part.ts';

export const MOST_WORDS = 300; // characters of what a house says of one fact
const SEEN = /[\p{L}\p{N}]/u;
const HEAPED = /\p{M}{4}/u; // more marks on one letter would be drawn over the lines around it

/** Words as they are kept: on one line, without spaces around them. */
export const wordsToKeep = (text: string): string => text.replace(/\s+/g, ' ').trim();

const wordsOfFact = text(
  MOST_WORDS,
  (words) => words === wordsToKeep(words) && SEEN.test(words) && !HEAPED.test(words) && words.search(UNSEEN) < 0,
  `words can have up to ${MOST_WORDS} characters on one line, none that cannot be seen.`,
); // prettier-ignore

/** Reads the choice or the number of a fact. */
function choiceOfFact(id: FactId): Reader<string | number> {
  const { choices, ppm } = factKind(id);
  if (choices !== undefined) return oneOf(Object.keys(choices));
  if (ppm !== undefined) return number(...ppm.range, allowedInWords('ppm', ppm.range));
  return only(() => false, 'it is given in words alone.');
}

/** What is wrong with the words of a fact, or nothing. */
export const wordsProblem = (id: FactId, words: unknown): string | undefined => problemIn(wordsOfFact, words, factKind(id).label); // prettier-ignore

/** What is wrong with the choice or the number of a fact, or nothing. */
export const choiceProblem = (id: FactId, is: unknown): string | undefined => problemIn(choiceOfFact(id), is, factKind(id).label); // prettier-ignore

const checks = { is: choiceProblem, words: wordsProblem } as const;

/** Reads one fact; undefined when nothing of it can be used. */
function readFact(id: FactId, data: unknown, tell: (problem: string) => void): Fact | undefined {
  if (!isData(data)) return void tell(wasGiven(factKind(id).label, data, 'this is no fact.'));
  const strange = Object.keys(data).filter((key) => !Object.hasOwn(checks, key));
  strange.forEach((key) =>
    tell(`${factKind(id).label}: “${quotedGiven(key)}” is nothing that a fact holds.`),
  );
  const sound = (Object.keys(checks) as (keyof typeof checks)[]).filter((key) => {
    if (!Object.hasOwn(data, key)) return false;
    const problem = checks[key](id, data[key]);
    if (problem !== undefined) tell(problem);
    return problem === undefined;
  });
  if (sound.length === 0) return undefined;
  return Object.fromEntries(sound.map((key) => [key, data[key] === 0 ? 0 : data[key]])); // −0 is 0, as a text writes it
}

export const factsPart: HousePart<Facts> = {
  id: 'facts',
  title: 'Fact sheet',
  empty: {},
  read(data) {
    if (!isData(data)) return { value: {}, problems: ['Fact sheet: this is no fact sheet.'] };
    const problems: string[] = [];
    const tell = (problem: string) => void problems.push(problem);
    Object.keys(data)
      .filter((id) => !isFactId(id))
      .forEach((id) => tell(`Fact sheet: “${quotedGiven(id)}” is not a fact that this handbook keeps.`));
    const read = factIds
      .filter((id) => Object.hasOwn(data, id))
      .map((id) => [id, readFact(id, data[id], tell)] as const);
    return {
      value: Object.fromEntries(read.filter(([, fact]) => fact !== undefined)),
      problems: fewProblems(problems),
    };
  },
};

/** The facts with one of them given otherwise; one of which nothing is said is left out. */
export function withFact(
  given: Facts,
  id: FactId,
  change: { is?: Fact['is'] | undefined; words?: string | undefined },
): Facts {
  const { [id]: before, ...others } = given;
  const kept = Object.entries({ ...before, ...change }).filter(([, value]) => value !== undefined);
  return kept.length === 0 ? others : { ...others, [id]: Object.fromEntries(kept) };
}
