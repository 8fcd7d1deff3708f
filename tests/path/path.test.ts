// The path: when a kind and a stage are reached, what comes next and why, where to go on, and that all it names is there.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { kinds } from '../../src/exercises/kinds/index.ts';
import { allPassages } from '../../src/exercises/passages.ts';
import { fadings, stepsBefore } from '../../src/exercises/fading.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { hintOf } from '../../src/exercises/hint.ts';
import { keyOf } from '../../src/exercises/letters.ts';
import type { Practised } from '../../src/exercises/progress.ts';
import type { Verdict } from '../../src/exercises/verdict.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import { nextOf, signedId, stepNext, stepsDone, type Done } from '../../src/path/next.ts';
import { decodeLesson, encodeLesson, isMarked, lessonAt, openLesson, stepAfter, stepNow } from '../../src/path/open-lesson.ts'; // prettier-ignore
import { path } from '../../src/path/stages.ts';
import { idOfStep, kindsOfStage } from '../../src/path/steps.ts';
import { rise, standingOf, standingOfStage, topOf } from '../../src/path/standing-of.ts';
import { decodeTicks, encodeTicks } from '../../src/path/text.ts';
import { predicts } from '../../src/predict/index.ts';

const said = (kind: string, day: string, verdict: Verdict = 'right'): Practised => ({ kind, day, verdict });
const malting = path[0]!;
const steps = path.flatMap(({ lessons }) => lessons.flatMap((lesson) => lesson.steps));
const nothing: Done = { log: [], ticked: [], guessed: [] };
/** All steps of a stage done, with these answers. */
const allSteps = (log: readonly Practised[]): Done => {
  const own = malting.lessons.flatMap((lesson) => lesson.steps);
  return {
    log,
    ticked: own.map(idOfStep),
    guessed: own.flatMap((step) => (step.do === 'guess' ? [step.id] : [])),
  };
};
const onDays = (...days: readonly string[]) =>
  kindsOfStage(malting).flatMap((kind) => days.map((day) => said(kind, day)));

test('a kind is reached when it is right on two days, with no miss between', () => {
  expect(standingOf('kiln', [said('kiln', '2026-05-01'), said('kiln', '2026-05-02')]).reached).toBe(
    '2026-05-02',
  );
  expect(standingOf('kiln', [said('kiln', '2026-05-01'), said('kiln', '2026-05-01')])).toEqual({
    kind: 'kiln',
    missed: false,
    once: '2026-05-01',
    from: '2026-05-02',
  });
  const missedBetween = [
    said('kiln', '2026-05-01'),
    said('kiln', '2026-05-02', 'wrong'),
    said('kiln', '2026-05-03'),
  ];
  expect(standingOf('kiln', missedBetween).reached).toBeUndefined();
  expect(standingOf('kiln', [...missedBetween, said('kiln', '2026-05-04')]).reached).toBe('2026-05-04');
});

test('a right number with the wrong unit counts neither way, and another kind not at all', () => {
  const log = [said('kiln', '2026-05-01'), said('kiln', '2026-05-02', 'unit'), said('draff', '2026-05-02')];
  expect(standingOf('kiln', log)).toMatchObject({ once: '2026-05-01', missed: false });
  expect(standingOf('kiln', log).reached).toBeUndefined();
});

test('a stage is reached on the day of its last kind, and not while one is open', () => {
  const names = kindsOfStage(malting);
  const but = (kind: string, log: readonly Practised[]) => log.filter((entry) => entry.kind !== kind);
  const whole = [...onDays('2026-05-01', '2026-05-03'), said(names[0]!, '2026-05-09')];
  expect(standingOfStage(names, whole).day).toBe('2026-05-03');
  expect(standingOfStage(names, but(names.at(-1)!, whole)).day).toBeUndefined();
});

test('what comes next: what was missed, what is due, the next step, the sheet, another day', () => {
  const [first, second] = kindsOfStage(malting);
  expect(nextOf(path, nothing, '2026-05-01')).toMatchObject({ because: 'step', stage: { stage: 'malting' } });
  const log = [said(first!, '2026-05-01'), said(second!, '2026-05-01', 'wrong')];
  expect(nextOf(path, { ...nothing, log }, '2026-05-02')).toMatchObject({ because: 'missed', kinds: [second] });
  expect(nextOf(path, { ...nothing, log: log.slice(0, 1) }, '2026-05-02')).toMatchObject({ because: 'due', kinds: [first] });
  expect(nextOf(path, { ...nothing, log: log.slice(0, 1) }, '2026-05-01').because).toBe('step');
  const once = allSteps(onDays('2026-05-01'));
  expect(nextOf([malting], once, '2026-05-01')).toMatchObject({ because: 'wait', from: '2026-05-02' });
  expect(nextOf(path, once, '2026-05-01')).toMatchObject({ because: 'step', stage: { stage: 'milling' } });
  const reached = allSteps(onDays('2026-05-01', '2026-05-02'));
  expect(nextOf(path, reached, '2026-05-02')).toMatchObject({ because: 'sign', stage: { stage: 'malting' } });
  const signed = { ...reached, ticked: [...reached.ticked, signedId(malting)] };
  expect(nextOf([malting], signed, '2026-05-02')).toEqual({ because: 'all' });
}); // prettier-ignore

test('a stage that has reached its standard asks for its sheet first, whatever else is open', () => {
  const log = [...onDays('2026-05-01', '2026-05-02'), said(kindsOfStage(path[1]!)[0]!, '2026-05-02', 'wrong')];
  const open = { ...nothing, log }; // nothing read, nothing guessed: its seven practices alone are done
  const all = malting.lessons.flatMap((lesson) => lesson.steps);
  const practices = all.filter(({ do: what }) => what === 'practise').length;
  expect(nextOf(path, open, '2026-05-02')).toEqual({ because: 'sign', stage: malting, open: all.length - practices });
  expect(nextOf([malting], open, '2026-05-02').because).toBe('sign');
  expect(nextOf(path.slice(1), open, '2026-05-02').because).toBe('missed'); // what goes on meanwhile
  expect(stepsDone(malting, nothing)).toEqual([0, all.length]);
}); // prettier-ignore

test('a lesson that was gone to leads back and on, and is read whole or not at all', () => {
  const [lesson] = malting.lessons;
  const [first, second] = lesson!.steps;
  const open = openLesson(malting, lesson!, first!, (step) => step.do);
  expect(lessonAt(open)).toBe('first-weeks/malting/');
  expect(stepNow(open)).toEqual({ id: 'guess:steep-water', at: 'malting/#guess-steep-water', says: 'guess' });
  expect(stepAfter(open)!.id).toBe(idOfStep(second!));
  expect(stepAfter({ ...open, now: idOfStep(lesson!.steps.at(-1)!) })).toBeUndefined();
  expect(open.steps.map(isMarked)).toEqual(lesson!.steps.map((step) => step.do === 'read'));
  for (const stage of path)
    for (const each of stage.lessons)
      for (const step of each.steps) {
        const kept = openLesson(stage, each, step, () => 'says');
        expect(decodeLesson(encodeLesson(kept))).toEqual(kept);
      }
  const text = encodeLesson(open);
  for (const [from, to] of [['malting/#guess', '//elsewhere/#guess'], ['malting/#guess', 'javascript:x'], ['"version":1', '"version":2'], ['guess:steep-water"}', 'guess:none"}']] as const)
    expect(decodeLesson(text.replace(from, to)), to).toBeUndefined();
  expect(decodeLesson('')).toBeUndefined();
}); // prettier-ignore

test('a reader goes on at the first step that is not done', () => {
  const own = malting.lessons[0]!.steps;
  expect(stepNext(malting, nothing)!.step).toBe(own[0]);
  const guessed = own.slice(0, 2).flatMap((step) => (step.do === 'guess' ? [step.id] : []));
  expect(stepNext(malting, { ...nothing, guessed })!.step).toBe(own[2]);
  expect(stepNext(malting, allSteps(onDays('2026-05-01')))).toBeUndefined();
});

test('the picture rises with each day, and never by a wrong answer', () => {
  const names = ['kiln', 'draff'];
  const log = [said('kiln', '2026-05-01'), said('draff', '2026-05-02', 'wrong'), said('kiln', '2026-05-02'), said('draff', '2026-05-03')]; // prettier-ignore
  expect(rise(names, log)).toEqual([
    { day: '2026-05-01', once: 1, reached: 0 },
    { day: '2026-05-02', once: 1, reached: 1 },
    { day: '2026-05-03', once: 2, reached: 1 },
  ]);
});

test('the scale of the picture rises with the first right answer', () => {
  // One right answer is a quarter of the height, and no bar is full before all is right.
  expect([0, 1, 3, 4, 10, 23, 24, 37, 38].map((once) => topOf(once, 38))).toEqual([4, 4, 4, 8, 16, 24, 38, 38, 38]);
  expect(topOf(2, 3)).toBe(3);
}); // prettier-ignore

/** The addresses of the headings of a page of the book. */
function headingsAt(page: string): readonly string[] {
  const [chapter, part = 'explain'] = page.split('/').filter(Boolean);
  const file = join(import.meta.dirname, '..', '..', 'content', 'chapters', chapter!, `${part}.mdx`);
  return [...readFileSync(file, 'utf8').matchAll(/^##+ (.+)$/gm)].map(([, text]) =>
    text!
      .toLowerCase()
      .replace(/[^a-z0-9’ -]/g, '')
      .replace(/’/g, '')
      .trim()
      .replaceAll(' ', '-'),
  );
}

test('all that the path and the passages name is there', () => {
  expect(path.map(({ stage }) => stage)).toEqual(stages);
  const drawn = kinds.filter(({ until }) => until === undefined).map(({ id }) => id);
  for (const kind of path.flatMap(kindsOfStage)) expect(drawn).toContain(kind);
  expect(Object.values(allPassages).flat()).toEqual(expect.arrayContaining(path.flatMap(kindsOfStage)));
  expect(kinds.map(({ id }) => id)).toEqual(expect.arrayContaining(Object.values(allPassages).flat()));
  const addresses = [
    ...Object.keys(allPassages),
    ...steps.flatMap((step) => (step.do === 'read' ? [step.at] : [])),
  ];
  for (const address of addresses) {
    const [page, heading] = address.split('#');
    if (heading) expect(headingsAt(page!), address).toContain(heading);
  }
  for (const step of steps)
    if (step.do === 'read' && step.to !== undefined)
      expect(headingsAt(step.at.split('#')[0]!)).toContain(step.to);
  for (const step of steps)
    if (step.do === 'guess') {
      expect(predicts.map(({ id }) => id)).toContain(step.id);
      const [chapter, part = 'explain'] = step.at.split('/').filter(Boolean);
      const page = readFileSync(join(import.meta.dirname, '..', '..', 'content', 'chapters', chapter!, `${part}.mdx`), 'utf8'); // prettier-ignore
      expect(page, `${step.id} at ${step.at}`).toContain(`<Predict of="${step.id}"`);
    }
  expect(new Set(steps.filter(({ do: what }) => what !== 'practise').map(idOfStep)).size).toBe(
    steps.filter(({ do: what }) => what !== 'practise').length,
  );
});

test('a worked example fades without telling its answer, and a hint does not tell it either', () => {
  expect(fadings).toHaveLength(3);
  for (const step of steps) {
    if (step.do !== 'work') continue;
    const question = drawQuestion(
      kinds.find(({ id }) => id === step.kind)!,
      'fades',
      builtInHouse,
    )!;
    const shown = stepsBefore(question);
    expect(shown.length, step.kind).toBeGreaterThan(0);
    expect(shown.length, step.kind).toBeLessThan(question.working.length);
    const key = `= ${/[\d,.]+/.exec(keyOf(question))![0]}`;
    expect([...shown, hintOf(question)].join(' '), step.kind).not.toContain(key);
  }
});

test('marks that were kept are read strictly', () => {
  const ticks = { 'read:/malting/#heat-stops-it': '2026-05-14', 'signed:malting': '2026-05-20' };
  expect(decodeTicks(encodeTicks(ticks))).toEqual(ticks);
  expect(decodeTicks('nonsense')).toBeUndefined();
  expect(decodeTicks(encodeTicks({ ...ticks, '<b>': '2026-05-14', 'task:x': 'soon' }))).toEqual(ticks);
});
