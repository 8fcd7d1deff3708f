// Kinds that ask what one would do: a scene, what would do in it and what would not, all in one tone; and what older sheets showed.
import type { Chance } from './seeded-random.ts';
import { choice, type ChoiceKind, type Option } from './choice.ts';

/** The generator from which what would not do sounds like what would: a careful person who does not know. */
export const ONE_TONE_SINCE = 7;

/** An option, and why it would do, or would not. */
export type JudgedOption = readonly [text: string, why: string];

/** What generators before that one show: those before the third the one `right`, later ones what `would` do. */
export interface Before {
  readonly right: JudgedOption;
  readonly others: readonly JudgedOption[];
  readonly would: readonly JudgedOption[];
}

interface Judged extends Omit<ChoiceKind, 'form' | 'ask'> {
  /** What happens, ending in a question that takes the place of either way of asking in the oldest sheets. */
  readonly scene: (chance: Chance) => string;
  /** Each of these would do by itself: no question shows two of them as right. */
  readonly would: readonly JudgedOption[];
  /** None of these would do, and each says why not. */
  readonly wouldNot: readonly JudgedOption[];
  readonly before: Before;
}

const options = (all: readonly JudgedOption[]): readonly Option[] =>
  all.map(([text, why]) => ({ text, why }));

/** What is asked of a prompt: one of those that would do among those that would not, or the other way round. */
export const judging = (
  prompt: string,
  would: readonly JudgedOption[],
  wouldNot: readonly JudgedOption[],
) => {
  const [right, ...rest] = options(would);
  return { prompt, right: right!, others: options(wouldNot), bothWays: { would: [right!, ...rest] } };
};

/** The same as generators before the seventh asked it. */
export const judgedBefore = (prompt: string, { right, others, would }: Before) => ({
  ...judging(prompt, would, others),
  right: options([right])[0]!,
});

/** Declares a kind that asks what one would do. */
export const judged = ({ scene, would, wouldNot, before, ...about }: Judged) =>
  choice({
    ...about,
    form: 'judgement',
    ask: (chance) =>
      chance.generator < ONE_TONE_SINCE
        ? judgedBefore(scene(chance), before)
        : judging(scene(chance), would, wouldNot),
  });
