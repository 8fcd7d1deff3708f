// Marking a number: right, right but for rounding or unit, or wrong, with the mistake that leads to it.
import { format, formatNumber } from '../core/format.ts';
import { kinds } from '../core/kinds.ts';
import { onlyNamed } from '../core/measures.ts';
import { dimensionNamed } from '../core/reading/unit-named.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { unitsRead } from '../core/units.ts';
import { readAnswer, type AnswerRead } from './answer.ts';
import { isWithin, ROUNDED_BY } from './bounds.ts';
import { notReadAs } from './unit-not-read.ts';
import type { Mark } from './verdict.ts';
import type { NumberQuestion, Slip } from './question.ts';

const CLOSE = 0.01; // part of the answer by which one may be off in a unit that it does not name

const near = (a: number, b: number, tolerance: number) => Math.abs(a - b) <= tolerance * (1 + 1e-9);
const inOwnUnit = ({ number, unit }: AnswerRead) => (typeof unit === 'string' ? number : unit.toCore(number));

/** How far from a known mistake's number an answer may lie and be taken for it. */
export const reachOf = ({ tolerance, digits }: NumberQuestion, { value }: Slip): number =>
  Math.max(Math.min(tolerance, 0.01 * Math.abs(value)), 0.6 * 10 ** -digits);

/** The known mistake that a reading comes from, the nearest when there are several. */
function slipOf(question: NumberQuestion, reading: AnswerRead): Slip | undefined {
  const off = (slip: Slip) => Math.abs(inOwnUnit(reading) - slip.value);
  return question.slips
    .filter((slip) => off(slip) <= reachOf(question, slip))
    .sort((a, b) => off(a) - off(b))[0];
}

/** A right number with another unit behind it, or one that is right in a unit that was not named. */
function unitFault(question: NumberQuestion, reading: AnswerRead): Mark | undefined {
  const { answer, of, tolerance } = question;
  const said = kinds[of].unit === '' ? 'a plain number' : `in ${kinds[of].unit}`;
  if (reading.unit !== 'none')
    return isWithin(question, reading.number)
      ? {
          verdict: 'unit',
          say:
            reading.unit === 'other'
              ? `The number is right, but “${quotedGiven(reading.unitText)}” is not its unit: it is ${said}.`
              : `The number is right ${said}, but another unit stands behind it.`,
        }
      : undefined;
  // Which unit was meant is told by the digits, so a rough answer is not taken for one.
  const close = Math.min(tolerance, CLOSE * Math.abs(answer));
  const other = unitsRead(of)
    .slice(1)
    .find((unit) => !onlyNamed.has(unit.unit) && near(unit.toCore(reading.number), answer, close));
  return other && { verdict: 'unit', say: `That is right in ${other.unit}; say so, or give it ${said}.` };
}

function roundingFault(question: NumberQuestion, reading: AnswerRead): Mark | undefined {
  const { answer, of, digits, tolerance, whole } = question;
  const given = inOwnUnit(reading);
  if (whole)
    return near(given, answer, tolerance)
      ? { verdict: 'rounded', say: `Near, but here it is rounded ${whole}: ${format(answer, of, digits)}.` }
      : undefined;
  const half = Math.abs(inOwnUnit({ ...reading, number: reading.number + reading.place / 2 }) - given);
  if (!near(given, answer, half) || !near(given, answer, ROUNDED_BY * Math.abs(answer))) return undefined;
  const asked = digits === 0 ? 'the whole number' : `${digits} decimal${digits === 1 ? '' : 's'}`;
  return {
    verdict: 'rounded',
    say: `Right, but rounded too far: to ${asked} it is ${format(answer, of, digits)}.`,
  };
}

/** The right digits in the wrong size, or with the wrong sign. */
function sizeFault({ answer, tolerance }: NumberQuestion, reading: AnswerRead): Mark | undefined {
  const given = inOwnUnit(reading);
  if (near(-given, answer, tolerance))
    return {
      verdict: 'wrong',
      family: 'sign',
      say: 'The size is right and the sign is not: look at which is taken from which.',
    };
  const tens = Math.round(Math.log10(Math.abs(given / answer)));
  if (!Number.isFinite(tens) || tens === 0 || !near(given / 10 ** tens, answer, tolerance)) return undefined;
  return {
    verdict: 'wrong',
    family: 'thousand',
    say: `The digits are right, but the size is too ${tens > 0 ? 'large' : 'small'} by a factor of ${formatNumber(10 ** Math.abs(tens), 0)}: look at the units.`,
  };
}

/** What one reading of an answer is worth; undefined when nothing is recognised in it. */
function markReading(question: NumberQuestion, reading: AnswerRead): Mark | undefined {
  if (reading.unit !== 'other' && isWithin(question, inOwnUnit(reading)))
    return { verdict: 'right', say: 'Right.' };
  const isUnitWritten = reading.unit !== 'none';
  const unit = unitFault(question, reading);
  if (unit && isUnitWritten) return unit;
  // A size in a unit that nobody knows says nothing of the sum: no mistake is read into it.
  if (reading.unit === 'other' && dimensionNamed(reading.unitText) === undefined)
    return { verdict: 'unreadable', say: notReadAs(reading.unitText, question.of) };
  const slip = slipOf(question, reading);
  if (slip) return { verdict: 'wrong', family: slip.family, say: slip.say };
  return roundingFault(question, reading) ?? unit ?? sizeFault(question, reading);
}

/** Whether a lone comma or point before three digits, taken for the other, makes an answer right. */
function isRightSwapped(question: NumberQuestion, text: string): boolean {
  if (text.match(/[.,]/g)?.length !== 1 || !/[.,]\d{3}(?!\d)/.test(text)) return false;
  const swapped = readAnswer(
    text.replace(/[.,]/, (sign) => (sign === ',' ? '.' : ',')),
    question.of,
  );
  return swapped !== undefined && markReading(question, swapped)?.verdict === 'right';
}

/** Marks a written number; undefined when there is no number in the text. */
export function markNumber(question: NumberQuestion, text: string): Mark | undefined {
  const reading = readAnswer(text, question.of);
  if (!reading) return undefined;
  if (reading.unsaid !== undefined)
    return { verdict: 'unreadable', say: `“${quotedGiven(text)}” was given, ${reading.unsaid}.` };
  const marked = markReading(question, reading);
  if (marked?.verdict !== 'right' && marked?.family === undefined && isRightSwapped(question, text))
    return {
      verdict: 'unit',
      say: `The digits are right, but “${quotedGiven(text)}” is read as ${formatNumber(reading.number, 3).replace(/\.000$/, '')}: a comma before three digits groups thousands, and a point is a decimal point.`,
    };
  return (
    marked ?? {
      verdict: 'wrong',
      say: 'That is not it. Follow the working step by step, and find where yours parts from it.',
    }
  );
}
