// Every kind of question, over many seeds: sound, marked right by its own answer in every unit and format, told apart from its known mistakes.
import { GENERATOR } from '../../src/exercises/draw.ts';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../src/calculators/index.ts';
import { kinds as quantityKinds } from '../../src/core/kinds.ts';
import { unitsRead } from '../../src/core/units.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { fetchKinds, ifHere, kindsOf, whenHere } from '../../src/exercises/kinds/fetched-kinds.ts';
import { kindsText, type Listed } from '../../src/exercises/kinds/list.ts';
import { letterOfPlace } from '../../src/exercises/letters.ts';
import { mark } from '../../src/exercises/mark.ts';
import {
  isChoiceQuestion,
  isNumberQuestion,
  isOrderQuestion,
  type NumberQuestion,
  type Question,
  type QuestionKind,
} from '../../src/exercises/question.ts';
import { randomHouse } from '../../src/exercises/random-house.ts';
import { numbersShown } from '../../src/exercises/sound-question.ts';
import { forms, levels, topics } from '../../src/exercises/topics.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { newDraws, withNewDraws } from '../new-draws.ts';

const SEEDS = Number(process.env['SEEDS'] ?? 60); // npm run seeds draws 10,000 of each kind
const NEW = 6;

/** A number as people write it; the digits are enough to tell it from its neighbours. */
function* written(value: number, unit: string): Generator<string> {
  const plain = Number(value.toPrecision(12)).toString();
  if (plain.includes('e')) return void (yield `${plain} ${unit}`);
  const [whole, decimals] = plain.split('.') as [string, string?];
  const grouped = (mark: string) => whole.replace(/\B(?=(\d{3})+$)/g, mark);
  yield plain;
  yield `${plain} ${unit}`.trim();
  yield `${grouped('\u202f')}${decimals ? `.${decimals}` : ''} ${unit}`.trim();
  yield `${grouped(',')}${decimals ? `.${decimals}` : ''} ${unit}`.trim();
  if (decimals && decimals.length !== 3) yield `${grouped(' ')},${decimals} ${unit}`.trim();
}

function checkNumber(question: NumberQuestion): void {
  const { answer, of, digits, slips, prompt, tolerance } = question;
  expect(Number.isFinite(answer)).toBe(true);
  const isRight = (text: string) =>
    expect(mark(question, text), `${prompt}\n“${text}” for ${answer}`).toMatchObject({ verdict: 'right' });
  for (const unit of unitsRead(of)) {
    const [, ...withUnit] = [...written(unit.fromCore(answer), unit.unit)];
    for (const text of withUnit) isRight(text.replace(/^-/, '−'));
  }
  for (const text of written(answer, quantityKinds[of].unit)) isRight(text);
  isRight(answer.toFixed(digits));
  for (const slip of slips) {
    expect(Math.abs(slip.value - answer), `${prompt}: ${slip.say}`).toBeGreaterThan(tolerance);
    const text = Number(slip.value.toPrecision(12)).toString();
    expect(mark(question, text), `${prompt}\n“${text}”`).toMatchObject({
      verdict: 'wrong',
      family: slip.family,
      say: slip.say,
    });
  }
  expect(
    numbersShown(prompt).some((shown) => shown.toFixed(digits) === answer.toFixed(digits)),
    prompt,
  ).toBe(false);
}

function checkLetters(question: Question): void {
  if (isOrderQuestion(question)) {
    const right = question.answer.map(letterOfPlace);
    expect(mark(question, right.join(', ')).verdict).toBe('right');
    expect(mark(question, [...right].reverse().join('')).verdict).toBe('wrong');
  } else if (isChoiceQuestion(question)) {
    question.options.forEach(({ text, why }, i) => {
      expect(text.length * why.length).toBeGreaterThan(0);
      expect(mark(question, letterOfPlace(i)).verdict).toBe(i === question.answer ? 'right' : 'wrong');
    });
  }
}

test('there are sixty kinds and more, in every topic, form and level', () => {
  expect(questionKinds.length).toBeGreaterThanOrEqual(60);
  expect(new Set(questionKinds.map(({ id }) => id)).size).toBe(questionKinds.length);
  for (const topic of topics)
    expect(questionKinds.filter((kind) => kind.topic === topic).length, topic).toBeGreaterThanOrEqual(6);
  for (const form of forms)
    expect(questionKinds.filter((kind) => kind.form === form).length, form).toBeGreaterThanOrEqual(6);
  for (const level of levels)
    expect(questionKinds.filter((kind) => kind.level === level).length, String(level)).toBeGreaterThanOrEqual(
      6,
    );
});

/** Calculators whose whole sum no paper can follow, and the kind of question that takes a step of each by itself. */
const byHand: Readonly<Record<string, string>> = {
  caustic: 'caustic',
  'germination-count': 'germination-count',
  'germination-plan': 'corns-to-count',
  'what-if': 'what-if',
  'fit-stills': 'reflux-by-proportion',
  'steep-fit': 'sample-moisture',
  'congeners-in-the-run': 'trace-left-in-the-pot',
};
test('every calculator has a kind of question that works by its declaration, or takes a step of it', () => {
  const known = new Set(questionKinds.map(({ calculator }) => calculator));
  const without = calculators.filter(
    ({ id }) => !known.has(id) && !questionKinds.some((kind) => kind.id === byHand[id]),
  );
  expect(without.map(({ id }) => `${id} has no kind of question`)).toEqual([]);
});

/** Holds one question of a kind to be sound, and gives what a reader sees of it. */
function checkOne(kind: QuestionKind, question: Question): string {
  const { prompt, working, sources } = question;
  expect([question.kind, question.topic, question.form, question.level]).toEqual([
    kind.id,
    kind.topic,
    kind.form,
    kind.level,
  ]);
  const said = [
    prompt,
    ...working,
    ...(isNumberQuestion(question) ? question.slips.map(({ say }) => say) : []),
  ].join(' ');
  expect(said).not.toMatch(/NaN|undefined|Infinity|\[object|−0(?![.\d])/);
  expect(prompt).toMatch(/[.?]$/);
  expect(working.length).toBeGreaterThan(0);
  expect(sources.length).toBeGreaterThan(0);
  if (isNumberQuestion(question)) checkNumber(question);
  else checkLetters(question);
  const { items = '', options = '' } = question as { items?: unknown; options?: unknown };
  return JSON.stringify([prompt, items, options]);
}

describe.each(questionKinds.map((kind) => [kind.id, kind] as const))('%s', (_, kind) => {
  const nothing = (seed: string) =>
    new Error(`${kind.id}, seed ${seed}, draws nothing that is sound (src/exercises/sound-question.ts)`);
  test(`is sound over ${SEEDS} seeds`, { timeout: 0 }, () => {
    const faces = new Set<string>();
    for (let seed = 0; seed < SEEDS; seed++) {
      const house = seed % 4 === 3 ? randomHouse(String(seed % 40), GENERATOR) : builtInHouse;
      const question = drawQuestion(kind, String(seed), house);
      if (!question) throw nothing(String(seed));
      const face = checkOne(kind, question);
      if (faces.size < 30) faces.add(face);
    }
    expect(faces.size, 'different questions').toBeGreaterThanOrEqual(Math.min(10, SEEDS / 4));
  });

  test(`is sound over ${NEW} seeds that are new today, some in a house that is`, { timeout: 0 }, () => {
    withNewDraws(() => {
      for (let i = 0; i < NEW; i++) {
        const seed = `${newDraws}/${i}`;
        const house = i % 2 === 1 ? randomHouse(seed, GENERATOR) : undefined;
        const question = drawQuestion(kind, seed, house ?? builtInHouse);
        if (question) checkOne(kind, question);
        else if (!house) throw nothing(seed); // a house drawn by chance may not allow a kind
      }
    });
  });
});

test('what a page carries of the kinds lists them all, and each is fetched by itself and draws the same', async () => {
  const carried = kindsOf(kindsText(questionKinds));
  const said = ({ id, title, topic, form, level, since }: Listed) => [id, title, topic, form, level, since];
  expect(carried.map(said)).toEqual(questionKinds.map(said));
  const drawn = (kind: QuestionKind) => drawQuestion(kind, 'carried', builtInHouse);
  expect(ifHere(() => drawn(carried[0]!))).toBeUndefined();
  for (const [i, kind] of carried.entries())
    expect(await whenHere(() => drawn(kind))).toEqual(drawn(questionKinds[i]!));
  expect(ifHere(() => drawn(carried[0]!))).toEqual({ done: drawn(questionKinds[0]!) });
  await expect(fetchKinds(['no-such-kind'])).rejects.toThrow('no-such-kind');
});
