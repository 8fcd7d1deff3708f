// Options tell nothing to a reader who is blind to numbers and meaning; and the measure sees it where they do.
import { expect, test } from 'vitest';
import { draw } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { isChoiceQuestion } from '../../src/exercises/question.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { aboveChance, blindReaders } from './blind.ts';

const POINTS = 5; // of a hundred that a blind reader may be off chance, over all kinds of a form
const DRAWS = 400;
const forms = ['judgement', 'impossible'] as const;

test(
  'no blind reader is more than five points off chance, over all kinds and in either form',
  { timeout: 0 },
  () => {
    const all = blindReaders(DRAWS);
    for (const part of [all, ...forms.map((form) => all.filter(({ kind }) => kind.form === form))])
      for (const [name, above] of Object.entries(aboveChance(part)))
        expect(Math.abs(above), `${name}, ${part.length} kinds`).toBeLessThanOrEqual(POINTS);
  },
);

test('the readers see what the second generator gave away', { timeout: 0 }, () => {
  const all = blindReaders(100, 2);
  const judged = aboveChance(all.filter(({ kind }) => kind.form === 'judgement'));
  expect(judged['longest']).toBeGreaterThan(40);
  expect(aboveChance(all)['most often right before']).toBeGreaterThan(40);
});

test('what cannot be true is told in the words of what can', { timeout: 0 }, () => {
  const wordingOf = (text: string) => text.replace(/\d[\d,.]*/g, '#').replaceAll('\u202f', ' ');
  for (const kind of questionKinds.filter(({ id }) => id.startsWith('impossible-'))) {
    const [right, wrong] = [new Set<string>(), new Set<string>()];
    for (let seed = 0; seed < 300; seed++) {
      const question = draw(kind, `words/${seed}`, builtInHouse)?.question;
      if (!question || !isChoiceQuestion(question)) continue;
      question.options.forEach(({ text }, i) => (i === question.answer ? right : wrong).add(wordingOf(text)));
    }
    expect([...right].sort(), kind.id).toEqual([...wrong].sort());
  }
});
