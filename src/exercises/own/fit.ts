// Whether the numbers of a question of one's own will do: what can never be, and what is passed over when numbers meet by chance.
import { format, formatNumber } from '../../core/format.ts';
import type { KindName } from '../../core/kinds.ts';
import { isNumberQuestion, type Question } from '../question.ts';
import { isSoundQuestion, numbersShown, tellsSize } from '../sound-question.ts';

const APART = 2; // tolerances by which a mistake must miss the answer

/** What can be of a kind at all, as far as the kind itself says: shares of a whole end, amounts do not fall below nought. */
export function isPossible(kind: KindName, value: number): boolean {
  if (!Number.isFinite(value)) return false;
  if (/^(strength|massPercent|percent|nitrogen)$/.test(kind)) return value >= 0 && value <= 100;
  if (/^(share|moleFraction)$/.test(kind)) return value >= 0 && value <= 1;
  if (kind === 'temperature') return value >= -273.15;
  if (kind === 'gravity') return value > 0.7 && value < 1.7; // from pure alcohol to the heaviest syrup
  return /[dD]ifference|points|money|ratio|degreesProof/.test(kind) || value >= 0;
}

/** Why a value that is not possible is none: what the kind can be. */
export function whyCannotBe(kind: KindName): string {
  if (/^(strength|massPercent|percent|nitrogen)$/.test(kind))
    return 'a percentage of a whole is from 0 to 100';
  if (/^(share|moleFraction)$/.test(kind)) return 'a part of a whole is from 0 to 1';
  if (kind === 'temperature') return 'nothing is colder than −273.15 °C';
  if (kind === 'gravity')
    return 'a gravity is from 0.7 to 1.7, with water at 1; a number of things has a unit of its own in the list';
  return 'it cannot be less than nought';
}

const number = (value: number) => formatNumber(Number(value.toPrecision(6)), Math.abs(value) >= 1000 ? 0 : 3);

/** Why numbers can never be asked, whatever else is drawn; undefined when they can. */
export function whyImpossible(question: Question): string | undefined {
  if (!isNumberQuestion(question)) return undefined;
  const { answer, of, digits, slips } = question;
  if (!Number.isFinite(answer))
    return 'the formula has no answer: it divides by nought, or takes a root or a logarithm that is none';
  if (!isPossible(of, answer))
    return `the answer would be ${format(answer, of, digits)}, which cannot be: ${whyCannotBe(of)}`;
  const place = slips.findIndex(({ value }) => !Number.isFinite(value));
  return place < 0 ? undefined : `mistake ${place + 1} has no answer`;
}

/** Why numbers are passed over; undefined when they are asked. */
export function whyPassedOver(question: Question): string | undefined {
  if (!isNumberQuestion(question))
    return isSoundQuestion(question) ? undefined : 'two options would read alike';
  const { answer, tolerance, of, digits, slips, prompt } = question;
  const told = format(answer, of, digits);
  if (answer === 0) return 'the answer would be nought';
  for (const [i, { value }] of slips.entries()) {
    if (Math.abs(value - answer) <= APART * tolerance)
      return `mistake ${i + 1} leads to ${number(value)}, too near the answer ${told} to be told from it`;
    const j = slips.findIndex((other, at) => at < i && Math.abs(other.value - value) <= tolerance);
    if (j >= 0)
      return `mistakes ${j + 1} and ${i + 1} lead to ${number(slips[j]!.value)} and ${number(value)}, too near to be told apart`;
  }
  if (numbersShown(prompt).some((each) => each.toFixed(digits) === answer.toFixed(digits)))
    return `the wording gives the answer away: ${told} stands in it`;
  if (!tellsSize(question)) return `rounded as asked, ${told} would not tell how large the answer is`;
  return isSoundQuestion(question)
    ? undefined
    : 'the answer or a mistake is too large, or too near to another';
}
