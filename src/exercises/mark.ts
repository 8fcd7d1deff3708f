// Marking: not answered, unreadable, right, right but for rounding or unit, wrong — and what probably happened.
import { format } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import { answerUnits } from './answer-units.ts';
import { readAnswer, type Reading } from './answer.ts';
import type { Family } from './families.ts';
import { isNumberQuestion, isOrderQuestion, type NumberQuestion, type Question } from './question.ts';

export type Verdict = 'unanswered' | 'unreadable' | 'right' | 'rounded' | 'unit' | 'wrong';

export interface Mark {
  readonly verdict: Verdict;
  /** One or two sentences for whoever answered. */
  readonly say: string;
  /** The family of a mistake that was recognised. */
  readonly family?: Family;
}

const points: Readonly<Record<Verdict, number>> = {
  unanswered: 0,
  unreadable: 0,
  right: 1,
  rounded: 0.5,
  unit: 0.5,
  wrong: 0,
};
/** What a verdict is worth: one, a half for a right number with a fault of form, or nothing. */
export const pointsOf = (verdict: Verdict): number => points[verdict];

const LETTERS = 'ABCDEFGHIJ';
export const letter = (place: number): string => LETTERS[place]!;

const UNANSWERED: Mark = { verdict: 'unanswered', say: 'Not answered.' };
const unreadable = (given: string, allowed: string): Mark => ({
  verdict: 'unreadable',
  say: `“${given.trim().length > 40 ? `${given.trim().slice(0, 40)}…` : given.trim()}” cannot be read; ${allowed}`,
});

/** The right answer as printed in a key. */
export function keyOf(question: Question): string {
  if (isNumberQuestion(question)) return format(question.answer, question.of, question.digits);
  return isOrderQuestion(question) ? question.answer.map(letter).join(' ') : letter(question.answer);
}

const inOwnUnit = ({ number, unit }: Reading) => (typeof unit === 'string' ? number : unit.toCore(number));
const near = (a: number, b: number, tolerance: number) => Math.abs(a - b) <= tolerance * (1 + 1e-9);

function markNumber(question: NumberQuestion, text: string): Mark {
  const { answer, of, tolerance, digits, slips } = question;
  const readings = readAnswer(text, of);
  if (readings.length === 0)
    return unreadable(text, 'write a number, with a unit if you like: 1,250 L, 12,5 or 3/4.');
  const said = kinds[of].unit === '' ? 'a plain number' : `in ${kinds[of].unit}`;
  const exact = readings.find((reading) => near(inOwnUnit(reading), answer, tolerance));
  if (exact && exact.unit !== 'other') return { verdict: 'right', say: 'Right.' };
  if (exact)
    return {
      verdict: 'unit',
      say: `The number is right, but “${exact.unitText}” is not its unit: it is ${said}.`,
    };

  if (readings.some((reading) => typeof reading.unit !== 'string' && near(reading.number, answer, tolerance)))
    return { verdict: 'unit', say: `The number is right ${said}, but another unit stands behind it.` };

  const values = readings.map(inOwnUnit);
  const recognised = slips
    .flatMap((slip) => values.map((value) => ({ slip, off: Math.abs(value - slip.value) })))
    .filter(
      ({ slip, off }) =>
        off <= Math.max(Math.min(tolerance, 0.01 * Math.abs(slip.value)), 0.6 * 10 ** -digits),
    )
    .sort((a, b) => a.off - b.off)[0]?.slip;
  if (recognised) return { verdict: 'wrong', family: recognised.family, say: recognised.say };

  const rounded = readings.some(
    (reading) =>
      reading.place < Math.abs(answer) &&
      near(
        inOwnUnit(reading),
        answer,
        0.5 * (inOwnUnit({ ...reading, number: reading.place }) || reading.place),
      ),
  );
  if (rounded && readings.some((reading) => near(inOwnUnit(reading), answer, 0.25 * Math.abs(answer))))
    return {
      verdict: 'rounded',
      say: `Right, but rounded too far: to ${digits === 0 ? 'the whole number' : `${digits} decimal${digits === 1 ? '' : 's'}`} it is ${format(answer, of, digits)}.`,
    };

  const elsewhere = answerUnits(of)
    .slice(1)
    .find((unit) => readings.some(({ number }) => near(unit.toCore(number), answer, tolerance)));
  if (elsewhere)
    return { verdict: 'unit', say: `That is right in ${elsewhere.unit}; say so, or give it ${said}.` };
  for (const value of values) {
    const tens = Math.log10(Math.abs(value / answer));
    if (
      value * answer > 0 &&
      Math.round(tens) !== 0 &&
      near(value / 10 ** Math.round(tens), answer, tolerance)
    )
      return {
        verdict: 'wrong',
        family: 'thousand',
        say: `The digits are right, but the size is ${Math.round(tens) > 0 ? 'too large' : 'too small'} by a factor of ${(10 ** Math.abs(Math.round(tens))).toLocaleString('en-GB')}: look at the units.`,
      };
    if (near(-value, answer, tolerance))
      return {
        verdict: 'wrong',
        family: 'sign',
        say: 'The size is right and the sign is not: look at which is taken from which.',
      };
  }
  return {
    verdict: 'wrong',
    say: 'That is not it. Follow the working step by step, and find where yours parts from it.',
  };
}

/** Marks a written answer: a number with or without its unit, a letter, or letters in order. */
export function mark(question: Question, text: string): Mark {
  if (text.trim() === '') return UNANSWERED;
  if (isNumberQuestion(question)) return markNumber(question, text);
  const letters = [...text.toUpperCase().replace(/[^A-Z]/g, '')].map((each) => LETTERS.indexOf(each));
  if (isOrderQuestion(question)) {
    const { items, answer } = question;
    const isWhole =
      letters.length === items.length &&
      new Set(letters).size === items.length &&
      letters.every((place) => place >= 0 && place < items.length);
    if (!isWhole)
      return unreadable(text, `give each letter from A to ${letter(items.length - 1)} once, in order.`);
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
    return unreadable(text, `choose one letter from A to ${letter(options.length - 1)}.`);
  return letters[0] === answer
    ? { verdict: 'right', say: `Right. ${chosen.why}` }
    : { verdict: 'wrong', family: 'choice', say: chosen.why };
}
