// Every guess has one right answer, which the core gives: held against physics written by hand, in the built-in house and in believable others.
import { expect, test } from 'vitest';
import { chapterText, componentsIn, namedIn } from '../../src/build/chapter-text.ts';
import type { House } from '../../src/core/line/house.ts';
import { sources } from '../../src/core/sources.ts';
import { GENERATOR } from '../../src/exercises/draw.ts';
import { randomHouse } from '../../src/exercises/random-house.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import { predicts } from '../../src/predict/index.ts';
import { decodeGuesses, encodeGuesses } from '../../src/predict/guesses.ts';
import { isRight, outcomeOf } from '../../src/predict/judge.ts';
import { chapters } from '../content/read.ts';
import { byHand, directions } from './directions.ts';

const believable: readonly House[] = [
  builtInHouse,
  ...Array.from({ length: 12 }, (_, i) => randomHouse(`guess-${i}`, GENERATOR)),
  // A small house on a hill with a warm, dry store, and a large one by the sea that cuts late.
  { ...builtInHouse, airPressure: 92, storeHumidity: 60, alcoholLoss: 4, heartEnd: 65, liquorRatio: 3.5, fermentationHours: 56 } as House,
  { ...builtInHouse, storeHumidity: 88, alcoholLoss: 1.5, heartEnd: 58, gristTemperature: 5, washEnd: 0.5, foreshotsShare: 5, fermentationHours: 110 } as House,
]; // prettier-ignore

test('each stage has eight or more, each with an id of its own, a hand-made answer and known sources', () => {
  for (const stage of stages)
    expect(predicts.filter((each) => each.stage === stage).length, stage).toBeGreaterThanOrEqual(8);
  expect(new Set(predicts.map(({ id }) => id)).size).toBe(predicts.length);
  const answered = [...Object.keys(directions), ...Object.keys(byHand)].sort();
  expect(answered).toEqual(predicts.map(({ id }) => id).sort());
  for (const { id, sources: rests, why } of predicts) {
    expect(rests.length, id).toBeGreaterThan(0);
    for (const source of rests) expect(Object.keys(sources)).toContain(source);
    expect(why.split(/[.!?] /).length, id).toBeLessThanOrEqual(3);
  }
});

test('more, less and the same are as physics has them, in every believable house', () => {
  for (const predict of predicts.filter(({ way }) => way === 'direction'))
    for (const house of believable) {
      const outcome = outcomeOf(predict, house);
      expect(outcome?.answer, `${predict.id}: ${JSON.stringify(outcome)}`).toBe(directions[predict.id]![0]);
    }
});

test('numbers and places are those of sums on paper, and every believable house has one', () => {
  for (const predict of predicts.filter(({ way }) => way !== 'direction')) {
    const [hand, near] = byHand[predict.id]!;
    const answer = outcomeOf(predict, builtInHouse)!.answer as number;
    expect(Math.abs(answer / hand - 1), `${predict.id}: ${answer}, by hand ${hand}`).toBeLessThanOrEqual(
      near,
    );
    for (const house of believable) expect(outcomeOf(predict, house), predict.id).toBeDefined();
  }
});

test('a guess is right near the answer and wrong away from it', () => {
  const byId = (id: string) => predicts.find((each) => each.id === id)!;
  const judged = (id: string, guess: number | 'more' | 'less' | 'same') =>
    isRight(byId(id), outcomeOf(byId(id), builtInHouse)!, guess);
  expect(judged('later-heart-alcohol', 'same')).toBe(true);
  expect(judged('later-heart-alcohol', 'more')).toBe(false);
  expect(judged('steep-water', 590)).toBe(true);
  expect(judged('steep-water', 330)).toBe(false);
  expect(judged('a-quarter-gone', 14)).toBe(true);
  expect(judged('a-quarter-gone', 25)).toBe(false);
});

test('a house without an answer has none, and does not fall over', () => {
  const none = { ...builtInHouse, alcoholLoss: 0, heartEnd: builtInHouse.feintsEnd } as unknown as House;
  expect(
    outcomeOf(
      predicts.find(({ id }) => id === 'drier-store')!,
      none,
    ),
  ).toBeUndefined();
  expect(
    outcomeOf(
      predicts.find(({ id }) => id === 'later-heart-litres')!,
      none,
    ),
  ).toBeUndefined();
});

test('each stands on one page of its stage, and on no other', () => {
  for (const { id, stage } of predicts) {
    const places = stages.flatMap((chapter) =>
      chapters
        .find((each) => each.id === chapter)!
        .pages.flatMap(({ body }) => (namedIn(body, 'Predict').includes(id) ? chapter : [])),
    );
    expect(places, id).toEqual([stage]);
  }
});

/** Sections in which nothing is moved: what a stage is for, lists to look things up in, and fields of their own. */
const still =
  /^(What \w+ is for|Figures to know|What visitors ask|Your house’s figures|Sums for this stage|The first part, and methanol)$/;
/** Where flavour has a figure to move. */
const withFlavour = ['malting', 'distilling'];

test('every section that has something to move asks for a guess first, eight a chapter and three on its first page', () => {
  for (const stage of stages) {
    const { pages, body } = chapters.find(({ id }) => id === stage)!;
    expect(namedIn(pages.find(({ part }) => part === 'explain')!.body, 'Predict').length, stage).toBeGreaterThanOrEqual(3); // prettier-ignore
    expect(namedIn(body, 'Predict').length, stage).toBeGreaterThanOrEqual(8);
    for (const { part, body } of pages) {
      let title: string | undefined;
      const guesses = new Map<string, number>();
      for (const { heading, nodes } of chapterText(body).sections) {
        if (heading?.depth === 2) title = heading.text;
        if (title !== undefined) guesses.set(title, (guesses.get(title) ?? 0) + componentsIn(nodes).filter(({ name }) => name === 'Predict').length); // prettier-ignore
      }
      for (const [title, count] of guesses) {
        const moves = title === 'What it does to flavour' ? withFlavour.includes(stage) : !still.test(title);
        if (moves) expect(count, `${stage}, ${part}: ${title}`).toBeGreaterThan(0);
      }
    }
  }
});

test('guesses that were kept are read strictly', () => {
  const given = { 'steep-water': { guess: 330, right: false, day: '2026-05-14' } } as const;
  expect(decodeGuesses(encodeGuesses(given))).toEqual(given);
  expect(decodeGuesses('{"format":')).toBeUndefined();
  expect(decodeGuesses(encodeGuesses(given).replace('"version":1', '"version":2'))).toBeUndefined();
  expect(decodeGuesses(encodeGuesses(given).replace('330', '"a lot"'))).toEqual({});
});
