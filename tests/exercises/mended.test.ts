// What a sheet asks and tells can be redone: every printed sum by hand from its printed numbers, and the answer from the last of them.
import { describe, expect, test } from 'vitest';
import { drawQuestion, draw, GENERATOR } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { mark } from '../../src/exercises/mark.ts';
import { isNumberQuestion, type NumberQuestion } from '../../src/exercises/question.ts';
import { numbersShown } from '../../src/exercises/sound-question.ts';
import { answerInWords, askFor } from '../../src/exercises/wording.ts';
import { poolOf } from '../../src/exercises/worksheet.ts';
import { forms, levels, topics } from '../../src/exercises/topics.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const DRAWS = 12;
const drawn = (id: string): readonly NumberQuestion[] =>
  Array.from({ length: DRAWS }, (_, seed) =>
    drawQuestion(
      questionKinds.find((kind) => kind.id === id)!,
      `mended/${seed}`,
      builtInHouse,
    ),
  ).filter((question): question is NumberQuestion => question !== undefined && isNumberQuestion(question));
const current = questionKinds.filter(({ until }) => until === undefined);
const sums = current.filter(({ form }) => form === 'calculation');

/** What a printed sum comes to by its printed numbers; undefined for what is more than a sum. */
function byHand(sum: string): number | undefined {
  const plain = sum
    .replace(/(\d),(?=\d{3})/g, '$1')
    .replace(/[\u00a0\u202f]/g, ' ')
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('−', '-')
    .replace(/to the power (?:of )?/g, '**');
  if (!/[*/+-]/.test(plain) || !/^[\d\s.()*/+-]+$/.test(plain)) return undefined;
  try {
    return Number(Function(`return ${plain}`)());
  } catch {
    return undefined;
  }
}
/** Sums of a step that are numbers alone, each with its printed result; between stops, so that no part of a sum is taken for one. */
const sumsOf = (step: string) =>
  step.split(/[:;]|,\s/).flatMap((part) => {
    const sides = part.split(' = ');
    return sides.slice(1).flatMap((right, i) => {
      const result = /^(\d[\d,]*(?:\.\d+)?)(?!.*[÷×+−])/.exec(right)?.[1];
      return result === undefined ? [] : [{ sum: sides[i]!.trim(), result: result.replaceAll(',', '') }];
    });
  });

describe.each(sums.map(({ id }) => id))('%s', (id) => {
  test('every printed sum comes out by hand, to a unit of its last place', () => {
    for (const { working } of drawn(id))
      for (const { sum, result } of working.flatMap(sumsOf)) {
        const hand = byHand(sum);
        if (hand === undefined || !Number.isFinite(hand)) continue;
        const place = 10 ** -(result.split('.')[1]?.length ?? 0);
        const off = Math.abs(hand - Number(result));
        expect(off, `${sum} = ${result}, by hand ${hand}`).toBeLessThanOrEqual(
          Math.max(1.05 * place, 2e-5 * Math.abs(hand)),
        );
      }
  });
  test('the answer printed stands in the working', () => {
    for (const question of drawn(id)) {
      const [printed] = numbersShown(answerInWords(question));
      const near = 0.51 * 10 ** -question.digits;
      const told = numbersShown(question.working.join(' ; '));
      expect(
        told.some((number) => Math.abs(number - printed!) <= near),
        `${answerInWords(question)}: ${question.working.join(' › ')}`,
      ).toBe(true);
    }
  });
});

test('how finely to answer is said once, a difference is asked in degrees, and no prompt cites its source', () => {
  for (const { id } of current)
    for (const question of drawn(id)) {
      expect(question.prompt).not.toMatch(
        /\bto (?:one|two|\d) decimals?\?|\bto the (?:whole number|kilogram|litre|hundredth)\?|\bto a tenth[^?,.]*\?/,
      );
      expect(askFor(question)).not.toMatch(/\bK\b/);
      expect(answerInWords(question)).not.toMatch(/\bK\b/);
      expect(question.prompt).not.toMatch(/from memory|recalled|common practice/i);
    }
});

test('an answer has two figures or more, and an estimate two or fewer', () => {
  for (const { id } of current)
    for (const question of drawn(id)) {
      const figures = answerInWords(question).match(/[\d,.]+/)![0].replace(/\D/g, '').replace(/^0+/, ''); // prettier-ignore
      if (question.form === 'estimate') expect(figures.replace(/0+$/, '').length, id).toBeLessThanOrEqual(3);
      else if (question.of !== 'count' && !question.whole)
        expect(figures.length, `${id}: ${figures}`).toBeGreaterThan(1);
    }
});

test('casks to be lifted have the wood of casks of their size', () => {
  // Common practice: an empty cask weighs about 0.2 to 0.35 kg for each litre that it holds.
  for (const { prompt } of drawn('lifting')) {
    const [size, wood] = [/holds (\d+)/, /about (\d+)/].map((part) => Number(part.exec(prompt)![1]));
    expect(wood! / size!, prompt).toBeGreaterThanOrEqual(0.2);
    expect(wood! / size!, prompt).toBeLessThanOrEqual(0.36);
  }
});

test('no cask is followed to where it is spirit no longer, and level 1 asks for no steepness', () => {
  for (const { curve } of drawn('year-of-a-strength'))
    expect(Math.min(...curve!.columns[1]!.values)).toBeGreaterThan(30);
  for (const { id, level } of current)
    if (level === 1) for (const { prompt } of drawn(id)) expect(prompt).not.toMatch(/steepness|\ban S\b/);
});

test('kinds that asked what another asks are drawn for older sheets only', () => {
  const settings = { topics, forms, levels };
  const ids = (generator: number) => poolOf({ ...settings, generator }, questionKinds).map(({ id }) => id);
  const gone = ['weight-of-a-full-cask', 'real-attenuation'];
  expect(ids(2)).toEqual(expect.arrayContaining(gone));
  for (const id of gone) expect(ids(GENERATOR)).not.toContain(id);
});

test('a sheet of an older generator is asked as it was', () => {
  const lifted = questionKinds.find(({ id }) => id === 'carbon-dioxide-at-its-height')!;
  const prompt = (generator: number) => draw(lifted, 'as-it-was', builtInHouse, generator)!.question.prompt;
  expect(prompt(2)).toMatch(/along an S with a steepness of/);
  expect(prompt(3)).toMatch(/In its fastest hour/);
});

test('hours and minutes are read however they are written', () => {
  const run: NumberQuestion = { ...drawn('wash-run')[0]!, answer: 7.6, tolerance: 0.076, slips: [] };
  for (const text of ['7h36', '7 h 36', '7h36min', '7:36', '7 hours 36 minutes', '456 min', '7.6'])
    expect(mark(run, text).verdict, text).toBe('right');
});
