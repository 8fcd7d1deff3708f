// The answers to a number question that count as right: one pair of ends for the printed key, the marking and the exported test.
import type { NumberQuestion } from './question.ts';

export interface Bounds {
  readonly low: number;
  readonly high: number;
  /** Decimals that both ends have. */
  readonly digits: number;
}
type Judged = Pick<NumberQuestion, 'answer' | 'tolerance' | 'digits' | 'whole'>;

/** The decimal place of a tolerance's first figure, as a power of ten: −1 for 0.6, 1 for 25. */
const placeOf = (tolerance: number) => Math.floor(Math.log10(tolerance) + 1e-9);

/** Part of the answer by which a rounded one may be off and still have half its marks; a choice of this book’s. */
export const ROUNDED_BY = 0.03;

/**
 * The ends of what counts as right, in the kind's own unit: the tolerance about the answer, rounded inwards to a tenth of the
 * tolerance's size, so that both ends can be printed and are themselves right. Whole things have one right number.
 */
export function boundsOf({ answer, tolerance, digits, whole }: Judged): Bounds {
  if (whole) return { low: answer, high: answer, digits: 0 };
  const places = tolerance < 2 * 10 ** -digits ? digits + 1 : Math.min(digits, 1 - placeOf(tolerance));
  const toPlaces = (steps: number) => Number((steps / 10 ** places).toFixed(Math.max(0, places)));
  return {
    low: toPlaces(Math.ceil((answer - tolerance) * 10 ** places - 1e-6)),
    high: toPlaces(Math.floor((answer + tolerance) * 10 ** places + 1e-6)),
    digits: Math.max(0, places),
  };
}

/** Whether a number, in the kind's own unit, counts as right. */
export function isWithin(question: Judged, given: number): boolean {
  const { low, high } = boundsOf(question);
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high)); // what a unit's factor leaves over
  return given >= low - slack && given <= high + slack;
}

/** An estimate as it is told: to the first figure of its tolerance, for more would say more than was asked. */
export function roughly({ answer, tolerance, digits }: Judged): Readonly<{ answer: number; digits: number }> {
  const places = Math.min(digits, -placeOf(tolerance));
  return {
    answer: Number((Math.round(answer * 10 ** places) / 10 ** places).toFixed(Math.max(0, places))),
    digits: Math.max(0, places),
  };
}
