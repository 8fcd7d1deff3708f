// Whether a question of one's own may be asked: every number that it can draw is tried, and what is amiss is told in sentences.
import { formatNumber } from '../../core/format.ts';
import { isRefusal } from '../../core/refusal.ts';
import { doubtsOf } from './doubts.ts';
import { whyCannotBe, whyImpossible, isPossible, whyPassedOver } from './fit.ts';
import { readyToDraw, shownValue } from './own-kind.ts';
import { isNumberQuestion, type Question } from '../question.ts';
import type { OwnQuestion } from './own-question.ts';
import { unitIn } from './reckon.ts';

export const MOST_DRAWS = 20_000; // that are tried: more than that is no proof that a browser can give at once
const MOST_LEFT_OUT = 0.25; // part of the draws that may be passed over, since numbers meet by chance

export interface Proof {
  readonly isSound: boolean;
  /** How many draws were tried, and how many of them are never asked. */
  readonly tried: number;
  readonly leftOut: number;
  /** What is amiss, or what was left out and why; empty when nothing is. */
  readonly says: readonly string[];
  /** What may be a slip and may be meant: it keeps no question from being asked. */
  readonly doubts: readonly string[];
}

/** Every way to take one number from each list, in order. */
function* everyWay(grid: readonly (readonly number[])[]): Generator<readonly number[]> {
  const at = grid.map(() => 0);
  for (;;) {
    yield at.map((place, i) => grid[i]![place]!);
    let last = grid.length - 1;
    while (last >= 0 && ++at[last]! === grid[last]!.length) at[last--] = 0;
    if (last < 0) return;
  }
}

/** Pure alcohol is a part of the liquid it is in: of one volume no more can come. */
function moreThanLiquid(
  question: OwnQuestion,
  numbers: readonly number[],
  asked: Question,
): string | undefined {
  if (question.asks === 'choice' || question.of !== 'alcohol' || !isNumberQuestion(asked)) return undefined;
  const liquids = question.values.flatMap(({ kind, unit }, i) =>
    kind === 'volume' || kind === 'volume20' ? [unitIn(kind, unit)!.toCore(numbers[i]!)] : [],
  );
  return liquids.length === 1 && asked.answer > liquids[0]!
    ? 'there would be more pure alcohol than liquid'
    : undefined;
}

/** Tries every draw of a question. */
export function proofOfQuestion(question: OwnQuestion): Proof {
  const amiss = (...says: readonly string[]): Proof => ({
    isSound: false,
    tried: 0,
    leftOut: 0,
    says,
    doubts: [],
  });
  const made = readyToDraw(question);
  if (isRefusal(made)) return amiss(made.refused);
  const draws = made.grid.reduce((all, numbers) => all * numbers.length, 1);
  if (draws > MOST_DRAWS)
    return amiss(
      `The values can be drawn together in ${formatNumber(draws, 0)} ways, and at most ${formatNumber(MOST_DRAWS, 0)} are tried: take larger steps or shorter lists.`,
    );
  for (const [i, value] of question.values.entries()) {
    const toCore = unitIn(value.kind, value.unit)!.toCore;
    const bad = made.grid[i]!.find((each) => !isPossible(value.kind, toCore(each)));
    if (bad !== undefined)
      return amiss(`${value.name} cannot be ${shownValue(value, bad)}: ${whyCannotBe(value.kind)}.`);
  }
  const as = (numbers: readonly number[]) =>
    numbers
      .map((each, i) => `${question.values[i]!.name} ${shownValue(question.values[i]!, each)}`)
      .join(', ');
  const where = (numbers: readonly number[]) => (numbers.length === 0 ? '' : `With ${as(numbers)}: `);
  const reasons = new Map<string, { readonly first: string; count: number }>();
  let leftOut = 0;
  for (const numbers of everyWay(made.grid)) {
    const asked = made.with(numbers);
    const never = whyImpossible(asked) ?? moreThanLiquid(question, numbers, asked);
    if (never !== undefined) return { ...amiss(`${where(numbers)}${never}.`), tried: draws };
    const over = whyPassedOver(asked);
    if (over === undefined) continue;
    leftOut++;
    const sort = over.replace(/−?\d[\d,.]*/g, '#');
    const met = reasons.get(sort);
    if (met) met.count++;
    else reasons.set(sort, { first: `${where(numbers)}${over}`, count: 1 });
  }
  const isFit = leftOut <= MOST_LEFT_OUT * draws;
  const more = (count: number) => (count === 1 ? '; so does one more draw' : `; so do ${count} more draws`);
  const list = [...reasons.values()].map(
    ({ first, count }) => `${first}${count > 1 ? more(count - 1) : ''}.`,
  );
  const sum = isFit
    ? `${leftOut} of ${formatNumber(draws, 0)} draws ${leftOut === 1 ? 'is' : 'are'} never asked:`
    : `${formatNumber(leftOut, 0)} of ${formatNumber(draws, 0)} draws will not do, more than a quarter:`;
  return {
    isSound: isFit,
    tried: draws,
    leftOut,
    says: leftOut === 0 ? [] : [sum, ...list],
    doubts: doubtsOf(question),
  };
}
