// Kinds that name a sign and ask what belongs to it: four things of one sort, each right as often as the others.
import { choice, type ChoiceKind, type Option } from './choice.ts';
import type { QuestionKind } from './question.ts';

/** One of the things, what may be said of it, and why the two belong together. */
export type MatchedThing = readonly [thing: string, signs: readonly string[], why: string];

interface Matched extends Omit<ChoiceKind, 'form' | 'ask'> {
  /** Groups of four or more; what is shown together is of one group, and no sign of it fits two. */
  readonly groups: readonly (readonly MatchedThing[])[];
  /** The question, around the sign. */
  readonly prompt: (sign: string) => string;
}

const SHOWN = 4;

/** Declares a kind by its groups of things and signs. */
export const matched = ({ groups, prompt, ...about }: Matched): QuestionKind =>
  choice({
    ...about,
    form: 'judgement',
    ask: (chance) => {
      const [right, ...others] = chance.shuffle(chance.pick(groups)).slice(0, SHOWN);
      const option = ([text, , why]: MatchedThing): Option => ({ text, why });
      return { prompt: prompt(chance.pick(right![1])), right: option(right!), others: others.map(option) };
    },
  });
