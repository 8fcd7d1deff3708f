// Marking: not answered, unreadable, right, right but for rounding or unit, wrong — and what probably happened.
import { quotedGiven } from '../core/quoted-given.ts';
import { letterOfPlace, placesIn } from './letters.ts';
import { markNumber } from './mark-number.ts';
import { isNumberQuestion, isOrderQuestion, type Question } from './question.ts';
import type { Mark } from './verdict.ts';

const UNANSWERED: Mark = { verdict: 'unanswered', say: 'Not answered.' };
const unreadable = (given: string, allowed: string): Mark => ({
  verdict: 'unreadable',
  say: `“${quotedGiven(given)}” cannot be read; ${allowed}`,
});

/** Marks a written answer: a number with or without its unit, a letter, or letters in order. */
export function mark(question: Question, text: string): Mark {
  if (text.trim() === '') return UNANSWERED;
  if (isNumberQuestion(question))
    return (
      markNumber(question, text) ??
      unreadable(text, 'write a number, with a unit if you like: 1,250 L, 12,5 or 3/4.')
    );
  const letters = placesIn(text);
  if (isOrderQuestion(question)) {
    const { items, answer } = question;
    const isWhole =
      letters.length === items.length &&
      new Set(letters).size === items.length &&
      letters.every((place) => place >= 0 && place < items.length);
    if (!isWhole)
      return unreadable(
        text,
        `give each letter from A to ${letterOfPlace(items.length - 1)} once, in order.`,
      );
    const wrongPlaces = answer.filter((place, i) => place !== letters[i]).length;
    if (wrongPlaces === 0) return { verdict: 'right', say: 'Right.' };
    return {
      verdict: 'wrong',
      family: 'order',
      say:
        wrongPlaces === 2
          ? 'Two steps have changed places; the rest is right.'
          : `${wrongPlaces} of the ${items.length} steps are out of place.`,
    };
  }
  const { options, answer } = question;
  const chosen = options[letters[0] ?? -1];
  if (letters.length !== 1 || !chosen)
    return unreadable(text, `choose one letter from A to ${letterOfPlace(options.length - 1)}.`);
  return letters[0] === answer
    ? { verdict: 'right', say: `Right. ${chosen.why}` }
    : { verdict: 'wrong', family: 'choice', say: chosen.why };
}
