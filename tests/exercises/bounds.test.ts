// What a key prints as right is what the marking takes, in every unit: the ends themselves, and nothing a step beyond them.
import { describe, expect, test } from 'vitest';
import { unitsRead } from '../../src/core/units.ts';
import { boundsOf } from '../../src/exercises/bounds.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { mark } from '../../src/exercises/mark.ts';
import { isNumberQuestion, type NumberQuestion } from '../../src/exercises/question.ts';
import { allowedBy, answerInWords } from '../../src/exercises/wording.ts';
import { builtInHouse } from '../../src/house/figures.ts';

const DRAWS = 6;
const numbers = questionKinds.filter(({ form }) => ['calculation', 'estimate', 'curve'].includes(form));
const drawn = (id: string, seed: number): NumberQuestion => {
  const question = drawQuestion(
    questionKinds.find((kind) => kind.id === id)!,
    `bounds/${seed}`,
    builtInHouse,
  );
  if (!question || !isNumberQuestion(question)) throw new Error(`${id} draws no number`);
  return question;
};
/** The printed ends, as text, read from what a key says and from nothing else. */
function printed(question: NumberQuestion): readonly [string, string] {
  const said = allowedBy(question);
  const alone = /^(\S+).* alone$/.exec(said)?.[1];
  const [, low, high] = /^from (\S+) to (\S+)/.exec(said) ?? [];
  return alone === undefined ? [low!, high!] : [alone, alone];
}
const plain = (text: string) =>
  Number(
    text
      .replaceAll(',', '')
      .replace('−', '-')
      .replace(/[^\d.-].*$/, ''),
  );

describe.each(numbers.map(({ id }) => id))('%s', (id) => {
  test('the printed ends are right, and a step outside them is not, in every unit', () => {
    for (let seed = 0; seed < DRAWS; seed++) {
      const question = drawn(id, seed);
      const { answer, of, tolerance } = question;
      const [low, high] = printed(question);
      for (const end of [low, high])
        expect(mark(question, end).verdict, `${end} of ${low}–${high}`).toBe('right');
      expect(mark(question, answerInWords(question)).verdict, answerInWords(question)).toBe('right');
      expect(plain(low)).toBeLessThanOrEqual(plain(high));
      const step = 0.02 * tolerance;
      for (const unit of unitsRead(of)) {
        if (unit.unit === '') continue;
        const said = (value: number) => `${Number(unit.fromCore(value).toPrecision(13))} ${unit.unit}`;
        for (const end of [plain(low), plain(high)])
          expect(mark(question, said(end)).verdict, said(end)).toBe('right');
        for (const beyond of [plain(low) - step, plain(high) + step])
          expect(mark(question, said(beyond)).verdict, `${said(beyond)} for ${answer}`).not.toBe('right');
      }
      // Not much of what was meant to count is lost by printing it short.
      if (!question.whole) expect(plain(high) - plain(low)).toBeGreaterThan(tolerance);
    }
  });
});

test('whole things have one right number, rounded the way of the thing', () => {
  // By hand from the prompts: the youngest part gives the age; a part of a bottle is none; a part of a cask wants a cask.
  for (let seed = 0; seed < 20; seed++) {
    const vat = drawn('age-of-a-vatting', seed);
    const [made, half, tenth, rest] = vat.prompt.match(/\b20\d\d\b|\b199\d\b/g)!.map(Number) as [number, number, number, number]; // prettier-ignore
    // Filled in June and September: not yet full in April. Filled in February: full.
    const age = Math.min(made - half - 1, made - tenth - 1, made - rest);
    expect(answerInWords(vat)).toBe(`${age}\u00a0${age === 1 ? 'year' : 'years'}`);
    expect(allowedBy(vat)).toBe(`${answerInWords(vat)} alone`);
    for (const off of [-1, -0.4, 0.4, 1]) expect(mark(vat, String(age + off)).verdict).not.toBe('right');

    const casks = drawn('casks-a-year', seed);
    const [litres, mashes, weeks, size] = [
      /ends as ([\d,]+)/, /mash (\d+) times/, /for (\d+) weeks/, /casks of (\d+)/,
    ].map((part) => plain(part.exec(casks.prompt)![1]!)) as [number, number, number, number]; // prettier-ignore
    const needed = Math.ceil((litres * mashes * weeks) / size);
    expect(casks.answer).toBe(needed);
    expect(mark(casks, String(needed)).verdict).toBe('right');
    expect(mark(casks, String(needed - 1)).verdict).not.toBe('right');

    const bottles = drawn('bottles-from-a-hectare', seed);
    const [harvest, yieldOf, left, percent] = [
      /brings ([\d.]+)/, /tonne of malt ([\d.]+)/, /of which ([\d.]+)/, /cL at ([\d.]+)/,
    ].map((part) => plain(part.exec(bottles.prompt)![1]!)) as [number, number, number, number]; // prettier-ignore
    const full = Math.floor(Math.round(10 * harvest * 83 * yieldOf * left) / (700 * percent));
    expect(bottles.answer).toBe(full);
    expect(mark(bottles, String(full + 1)).verdict).not.toBe('right');
  }
});

test('ends are rounded inwards, to places that tell', () => {
  const about = (answer: number, tolerance: number, digits: number) =>
    boundsOf({ answer, tolerance, digits });
  expect(about(1234.5, 12.345, 1)).toEqual({ low: 1223, high: 1246, digits: 0 });
  expect(about(5.04, 0.06, 1)).toEqual({ low: 4.98, high: 5.1, digits: 2 });
  expect(about(433, 129.9, 0)).toEqual({ low: 310, high: 560, digits: 0 });
  expect(about(-21.4, 0.856, 1)).toEqual({ low: -22.2, high: -20.6, digits: 1 });
});
