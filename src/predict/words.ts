// What comes of a move, in words.
import { format } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import type { ForeseenAmount, Predict } from './define.ts';
import { directions, type Guess, type GuessOutcome, type GuessDirection } from './judge.ts';

/** An amount as the reader sees it. */
export const amountInWords = ({ kind, digits }: ForeseenAmount, value: number): string =>
  kind === 'temperatureDifference'
    ? format(value, kind, digits).replace('K', 'degrees')
    : format(value, kind, digits);

/** The unit in which a number is guessed. */
export const unitOfGuess = ({ kind }: ForeseenAmount): string =>
  kind === 'temperatureDifference' ? 'degrees Celsius' : kinds[kind].unit;

/** How a direction is said of what is watched. */
export function wordOf(predict: Predict, way: GuessDirection): string {
  if (way === 'same') return 'the same';
  const [more, less] = (predict.way === 'direction' && predict.words) || ['more', 'less'];
  return way === 'more' ? more : less;
}

/** The directions to choose from, each with its word. */
export const directionChoices = (predict: Predict) =>
  directions.map((way) => [way, wordOf(predict, way)] as const);

/** A guess, or the answer, in words. */
export function guessText(predict: Predict, guess: Guess): string {
  if (typeof guess !== 'number') return wordOf(predict, guess);
  return amountInWords(predict.way === 'place' ? predict.moves : predict.gives, guess);
}

/** What came of the move: “Pure alcohol in the heart: 592.5 L before, 592.5 L after.” */
export function outcomeText(predict: Predict, { before, after, answer }: GuessOutcome): string {
  const { moves, gives } = predict;
  if (predict.way === 'direction')
    return `${gives.label}: ${amountInWords(gives, before)} before, ${amountInWords(gives, after)} after.`;
  return predict.way === 'number'
    ? `${gives.label}: ${amountInWords(gives, after)}.`
    : `${moves.label}: ${amountInWords(moves, answer as number)}.`;
}
