// A kind that tells several figures, most of them the house’s own, of which one breaks a limit.
import type { Line } from '../../../core/line/line.ts';
import type { SourceId } from '../../../core/sources.ts';
import type { Chance } from '../../seeded-random.ts';
import { choice, EVEN_WORDING_SINCE, type Option } from '../../choice.ts';
import type { QuestionKind } from '../../question.ts';
import type { Level, Topic } from '../../topics.ts';

/** The generator from which the strongest spirit of a run that is told as true is the house’s own. */
export const OWN_FIRST_SINCE = 6;

/** One thing told: as it can be, if this house allows it, and the ways in which it could never be. */
export interface ClaimPair {
  readonly can: Option | false;
  readonly cannot: readonly Option[];
  /** Both in the same words, so that only their figures tell, where those above differ in more: what generators from 3 on draw. False where this house allows none. */
  readonly alike?: { readonly can: Option; readonly cannot: Option } | false;
}

/** The claims that differ by their figures alone. */
const evenOf = (claims: readonly ClaimPair[]): readonly ClaimPair[] =>
  claims.flatMap(({ can, cannot, alike }) => {
    if (alike) return [{ can: alike.can, cannot: [alike.cannot] }];
    return alike === undefined && can && cannot.length > 0 ? [{ can, cannot }] : [];
  });

export interface ImpossibleKind {
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly level: Level;
  readonly sources: readonly SourceId[];
  /** Where the figures are heard, one by chance. */
  readonly scenes: readonly string[];
  /** Whether the amounts are told for one mash, a week or a year of the house. */
  readonly spans?: boolean;
  /** What is told; `mashes` is how many a span has. */
  readonly claims: (line: Line, chance: Chance, mashes: number) => readonly ClaimPair[];
}

/** An option from a sentence and its reason. */
export const optionOf = (text: string, why: string): Option => ({ text, why });

/** The claim made untrue is never shown as it can be, so that no option gives another away. */
export function impossible({ scenes, spans, claims, ...about }: ImpossibleKind): QuestionKind {
  return choice({
    ...about,
    form: 'impossible',
    ask: (chance, line) => {
      const [span, mashes] = chance.pick([
        ['one mash', 1],
        ['a week', line.house.mashesPerWeek],
        ['a year', line.pace.mashesPerYear],
      ] as const);
      const told = claims(line, chance, mashes);
      const all = chance.generator < EVEN_WORDING_SINCE ? told : evenOf(told);
      const wrong = chance.pick(all.filter(({ cannot }) => cannot.length > 0));
      return {
        prompt: `${chance.pick(scenes)} ${spans ? `Amounts are for ${span}, unless said otherwise. ` : ''}Which of these figures cannot be true?`,
        right: chance.pick(wrong.cannot),
        others: all.flatMap(({ can }, i) => (can && all[i] !== wrong ? [can] : [])),
      };
    },
  });
}
