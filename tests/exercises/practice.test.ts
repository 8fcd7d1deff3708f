// The spacing rule and kept progress, against the rule as told and against damage.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import {
  dayNumber,
  decodeProgress,
  encodeProgress,
  noProgress,
  practised,
} from '../../src/exercises/progress.ts';
import { practicePool, nextQuestionToPractise } from '../../src/exercises/practise.ts';
import { isNumberQuestion, type Question } from '../../src/exercises/question.ts';
import { standingAfter, nextKind } from '../../src/exercises/spacing.ts';
import { topics, type Topic } from '../../src/exercises/topics.ts';
import type { MarkVerdict } from '../../src/exercises/verdict.ts';
import { builtInHouse } from '../../src/house/figures.ts';

test('right answers are asked again after 1, 2, 4, 8 and 16 days, and stay at 16', () => {
  let standing = standingAfter(undefined, 'right', 100);
  const due = [standing.due - 100];
  for (let i = 0; i < 5; i++) {
    const today = standing.due;
    standing = standingAfter(standing, 'right', today);
    due.push(standing.due - today);
  }
  expect(due).toEqual([1, 2, 4, 8, 16, 16]);
});

test('a miss takes a kind back to the first compartment, due the same day', () => {
  expect(standingAfter({ box: 4, due: 100 }, 'missed', 100)).toEqual({ box: 1, due: 100 });
  expect(standingAfter({ box: 4, due: 100 }, 'nearly', 100)).toEqual({ box: 4, due: 108 });
});

test('what is due comes before what is new, and what is new before what is not yet due', () => {
  const pool = ['a', 'b', 'c'];
  expect(nextKind(pool, { a: { box: 1, due: 9 }, c: { box: 2, due: 8 } }, 10)).toBe('c');
  expect(nextKind(pool, { a: { box: 1, due: 11 }, c: { box: 2, due: 12 } }, 10)).toBe('b');
  expect(nextKind(pool, { a: { box: 1, due: 11 }, b: { box: 1, due: 13 }, c: { box: 2, due: 12 } }, 10)).toBe(
    'a',
  );
  expect(nextKind(pool, { a: { box: 1, due: 9 } }, 10, ['a'])).toBe('b');
  expect(nextKind(['a'], {}, 10, ['a'])).toBe('a');
  expect(nextKind([], {}, 10)).toBeUndefined();
});

/** A sitting from nothing: questions asked one after another, each answered with a verdict or passed over. */
function sittingOf(length: number, topic: Topic | 'all', verdict: MarkVerdict | undefined, seed = 'fixed') {
  const pool = practicePool(questionKinds, topic, 'all', seed);
  const asked: Question[] = [];
  let progress = noProgress;
  for (let i = 0; i < length; i++) {
    const next = nextQuestionToPractise(pool, {
      progress,
      day: '2026-05-14',
      seed,
      house: builtInHouse,
      asked,
    })!;
    asked.push(next);
    if (verdict) progress = practised(progress, next.kind, verdict, '2026-05-14');
  }
  return asked;
}
const differ = <T>(list: readonly T[]) => new Set(list).size;

test('eight questions passed over are eight kinds', () => {
  for (const topic of ['all', 'mashing', 'safety'] as const)
    expect(differ(sittingOf(8, topic, undefined).map(({ kind }) => kind)), topic).toBe(8);
});

test('a kind that is missed comes again after others, and then rests: whoever misses all sees them all', () => {
  const missed = sittingOf(60, 'all', 'wrong').map(({ kind }) => kind);
  missed.forEach((kind, i) => expect(missed.slice(Math.max(0, i - 8), i)).not.toContain(kind));
  for (const kind of missed) expect(missed.filter((each) => each === kind).length).toBeLessThanOrEqual(2);
  expect(differ(missed)).toBeGreaterThanOrEqual(30); // at least every second one is new
  const one = sittingOf(40, 'law', 'wrong').map(({ kind }) => kind);
  one.forEach((kind, i) => expect(one[i - 1]).not.toBe(kind));
  expect(differ(one)).toBe(questionKinds.filter(({ topic }) => topic === 'law').length);
});

test('mixed practice takes the topics in turn and no browser goes through them as the book does', () => {
  for (const seed of ['fixed', 'k3', '1x9k2p', 'zz81q']) {
    const mixed = sittingOf(20, 'all', 'right', seed).map(({ topic }) => topics.indexOf(topic));
    expect(differ(mixed.slice(0, 10))).toBe(10);
    expect(mixed.slice(0, 10)).not.toEqual(topics.map((_, i) => i));
  }
  const first = (seed: string) =>
    sittingOf(10, 'all', 'right', seed)
      .map(({ kind }) => kind)
      .join();
  expect(first('fixed')).not.toBe(first('k3'));
});

test('no question comes with the same numbers twice in one sitting', () => {
  for (const verdict of [undefined, 'right', 'wrong'] as const) {
    const prompts = sittingOf(60, 'strength', verdict)
      .filter(isNumberQuestion)
      .map(({ prompt }) => prompt);
    expect(differ(prompts), String(verdict)).toBe(prompts.length);
  }
});

test('days are counted from 1970', () => {
  expect(dayNumber('1970-01-01')).toBe(0);
  expect(dayNumber('2000-01-01')).toBe(30 * 365 + 7); // seven leap years: 1972 to 1996
});

test('progress is kept and read again', () => {
  let progress = practised(noProgress, 'strike-water', 'right', '2026-05-14');
  progress = practised(progress, 'strike-water', 'unanswered', '2026-05-14');
  progress = practised(progress, 'draff', 'wrong', '2026-05-15');
  expect(progress.log).toHaveLength(2);
  expect(decodeProgress(encodeProgress(progress))).toEqual({ progress, problems: [] });
});

test('damage is told and the rest is used', () => {
  const text = encodeProgress(practised(noProgress, 'draff', 'right', '2026-05-15')).replace(
    '"log":[',
    '"log":[7,{"kind":"<b>","day":"x","verdict":"right"},',
  );
  const { progress, problems } = decodeProgress(text);
  expect(progress.log).toHaveLength(1);
  expect(problems).toEqual(['2 entries of the saved practice could not be read.']);
  expect(decodeProgress('{').problems[0]).toMatch(/damaged/);
  expect(decodeProgress('[]').problems[0]).toMatch(/not practice/);
  expect(
    decodeProgress(encodeProgress(noProgress).replace('"version":1', '"version":2')).problems[0],
  ).toMatch(/another version/);
});

test('no text whatever makes the reading of progress fail', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.json(),
        fc
          .json()
          .map(
            (log) => `{"format":"malt-spirit-handbook/practice","version":1,"standing":${log},"log":${log}}`,
          ),
      ),
      (text) => {
        const { progress } = decodeProgress(text);
        expect(Array.isArray(progress.log)).toBe(true);
      },
    ),
  );
});

test('numbers go on changing after the two thousandth answer', () => {
  const day = '2026-05-14';
  const kind = questionKinds.find(({ id }) => id === 'pure-alcohol')!;
  let progress = noProgress;
  for (let i = 0; i < 2000; i++) progress = practised(progress, kind.id, 'right', day);
  const faces = new Set<string>();
  for (let i = 0; i < 24; i++) {
    faces.add(drawQuestion(kind, `practice/${day}/${progress.answers}`, builtInHouse)!.prompt);
    progress = practised(progress, kind.id, 'right', day);
    progress = decodeProgress(encodeProgress(progress)).progress;
  }
  expect(progress.log).toHaveLength(2000);
  expect(progress.answers).toBe(2024);
  expect(faces.size).toBeGreaterThanOrEqual(18);
});

test('practice saved before answers were counted is read, and counted on from its log', () => {
  const old = encodeProgress(practised(noProgress, 'draff', 'right', '2026-05-15')).replace(
    ',"answers":1',
    '',
  );
  expect(old).not.toContain('answers');
  const { progress, problems } = decodeProgress(old);
  expect(problems).toEqual([]);
  expect(progress.answers).toBe(1);
  for (const count of ['-1', '0', '1e300', '"7"', 'null', '1.5'])
    expect(decodeProgress(old.replace(/}$/, `,"answers":${count}}`)).progress.answers, count).toBe(1);
});
