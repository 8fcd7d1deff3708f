// The path: when a kind and a stage are reached, what comes next and why, where to go on, and that all it names is there.
import { expect, test } from 'vitest';
import { chapterText, namedIn } from '../../src/build/chapter-text.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { allPassages } from '../../src/exercises/passages.ts';
import { fadings, stepsBefore } from '../../src/exercises/fading.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { hintOf } from '../../src/exercises/hint.ts';
import { answerInKey } from '../../src/exercises/letters.ts';
import type { Practised } from '../../src/exercises/progress.ts';
import type { MarkVerdict } from '../../src/exercises/verdict.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import {
  asideId,
  hasSetOut,
  nextOnPath,
  safetyNext,
  signedId,
  stepNext,
  stepsDone,
  type PathDone,
} from '../../src/path/next-on-path.ts';
import { decodeLesson, encodeLesson, isMarked, isShift, lessonAt, lineAt, openLesson, stepAfter, stepNow } from '../../src/path/open-lesson.ts'; // prettier-ignore
import { pathStages } from '../../src/path/stages.ts';
import { addressOf, chapters, type ChapterPage } from '../content/read.ts';
import { kindsLeft } from '../../src/path/kinds-left.ts';
import { shiftCounts, shiftStep, tryAgain } from '../../src/path/shift-step.ts';
import { idOfStep, kindsOfStage } from '../../src/path/steps.ts';
import { masteredByDay, standingOfKind, standingOfStage, topOfScale } from '../../src/path/standing-of.ts';
import { decodeTicks, encodeTicks } from '../../src/path/text.ts';
import { predicts } from '../../src/predict/index.ts';

const said = (kind: string, day: string, verdict: MarkVerdict = 'right'): Practised => ({
  kind,
  day,
  verdict,
});
const malting = pathStages[0]!;
const steps = pathStages.flatMap(({ lessons }) => lessons.flatMap((lesson) => lesson.steps));
const nothing: PathDone = { log: [], ticked: [], guessed: [] };
/** All steps of a stage done, with these answers. */
const allSteps = (log: readonly Practised[]): PathDone => {
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
  expect(standingOfKind('kiln', [said('kiln', '2026-05-01'), said('kiln', '2026-05-02')]).reached).toBe(
    '2026-05-02',
  );
  expect(standingOfKind('kiln', [said('kiln', '2026-05-01'), said('kiln', '2026-05-01')])).toEqual({
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
  expect(standingOfKind('kiln', missedBetween).reached).toBeUndefined();
  expect(standingOfKind('kiln', [...missedBetween, said('kiln', '2026-05-04')]).reached).toBe('2026-05-04');
});

test('a right number with the wrong unit counts neither way, and another kind not at all', () => {
  const log = [said('kiln', '2026-05-01'), said('kiln', '2026-05-02', 'unit'), said('draff', '2026-05-02')];
  expect(standingOfKind('kiln', log)).toMatchObject({ once: '2026-05-01', missed: false });
  expect(standingOfKind('kiln', log).reached).toBeUndefined();
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
  expect(nextOnPath(pathStages, nothing, '2026-05-01')).toMatchObject({ because: 'step', stage: { stage: 'malting' } });
  const log = [said(first!, '2026-05-01'), said(second!, '2026-05-01', 'wrong')];
  expect(nextOnPath(pathStages, { ...nothing, log }, '2026-05-02')).toMatchObject({ because: 'missed', kinds: [second] });
  expect(nextOnPath(pathStages, { ...nothing, log: log.slice(0, 1) }, '2026-05-02')).toMatchObject({ because: 'due', kinds: [first] });
  expect(nextOnPath(pathStages, { ...nothing, log: log.slice(0, 1) }, '2026-05-01').because).toBe('step');
  const once = allSteps(onDays('2026-05-01'));
  expect(nextOnPath([malting], once, '2026-05-01')).toMatchObject({ because: 'wait', from: '2026-05-02' });
  expect(nextOnPath(pathStages, once, '2026-05-01')).toMatchObject({ because: 'step', stage: { stage: 'milling' } });
  expect(nextOnPath(pathStages, { ...once, open: 'distilling' }, '2026-05-01')).toMatchObject({ because: 'step', stage: { stage: 'distilling' } }); // where the reader was
  const reached = allSteps(onDays('2026-05-01', '2026-05-02'));
  expect(nextOnPath(pathStages, reached, '2026-05-02')).toMatchObject({ because: 'sign', stage: { stage: 'malting' } });
  const signed = { ...reached, ticked: [...reached.ticked, signedId(malting)] };
  expect(nextOnPath([malting], signed, '2026-05-02')).toEqual({ because: 'all' });
}); // prettier-ignore

/** What is asked of staying safe in malting: its page is the only thing, as its question belongs to the standard. */
const safePage = 'read:malting/safe/';

test('a stage that has reached its standard asks for staying safe before its sheet', () => {
  const log = onDays('2026-05-01', '2026-05-02');
  expect(nextOnPath(pathStages, { ...nothing, log }, '2026-05-02')).toMatchObject({
    because: 'safe',
    step: { do: 'read', at: 'malting/safe/' },
  });
  // A signature that was ticked without it does not hide it.
  const signed = { ...nothing, log, ticked: [signedId(malting)] };
  expect(nextOnPath(pathStages, signed, '2026-05-02').because).toBe('safe');
  // The page alone is not enough: its questions belong to it. Each stage has both.
  for (const stage of pathStages) {
    const page = safetyNext(stage, nothing)!.step;
    expect(page).toMatchObject({ do: 'read', at: `${stage.stage}/safe/` });
    expect(safetyNext(stage, { ...nothing, ticked: [idOfStep(page)] })!.step.do).toBe('practise');
  }
});

test('what is open when a stage is signed stays next, until it is done or put aside', () => {
  const log = onDays('2026-05-01', '2026-05-02');
  const signed: PathDone = { ...nothing, log, ticked: [safePage, signedId(malting)] };
  expect(nextOnPath(pathStages, signed, '2026-05-02')).toMatchObject({
    because: 'step',
    stands: 'signed',
    stage: { stage: 'malting' },
  });
  const aside = { ...signed, ticked: [...signed.ticked, asideId(malting)] };
  expect(nextOnPath(pathStages, aside, '2026-05-02')).toMatchObject({
    because: 'step',
    stands: 'new',
    stage: { stage: 'milling' },
  });
  const whole = { ...allSteps(log), ticked: [...allSteps(log).ticked, signedId(malting)] };
  expect(nextOnPath(pathStages, whole, '2026-05-02')).toMatchObject({ stage: { stage: 'milling' } });
});

test('a stage is begun by a step or a right answer, and the path by a lesson or a mark', () => {
  const stands = (done: PathDone) => nextOnPath(pathStages, done, '2026-05-01');
  expect(stands(nothing)).toMatchObject({ stands: 'new' });
  expect(stands({ ...nothing, open: 'malting' })).toMatchObject({ stands: 'begun' });
  expect(stands({ ...nothing, guessed: ['steep-water'] })).toMatchObject({ stands: 'begun' });
  expect([nothing, { ...nothing, guessed: ['steep-water'] }].map(hasSetOut)).toEqual([false, false]); // readers guess too
  expect(hasSetOut({ ...nothing, open: 'malting' }) && hasSetOut({ ...nothing, ticked: [safePage] })).toBe(
    true,
  );
});

test('a lesson asks for each kind once, and what was right stays so; a day asks again', () => {
  const log = [
    said('kiln', '2026-05-01'),
    said('draff', '2026-05-01', 'wrong'),
    said('kiln', '2026-05-02', 'wrong'),
  ];
  expect(kindsLeft(['kiln', 'draff'], log, undefined)).toEqual(['draff']);
  expect(kindsLeft(['kiln', 'draff'], log, '2026-05-02')).toEqual(['kiln', 'draff']);
  const again = [...log, said('kiln', '2026-05-02')];
  expect(kindsLeft(['kiln', 'draff'], again, '2026-05-02')).toEqual(['draff']);
  expect(kindsLeft(['kiln', 'draff'], again, '2026-05-03')).toEqual(['kiln', 'draff']);
});

test('each shift is a step of its stage, ticked by its end, and a poor one is to be tried again', () => {
  const at = { mashing: 'shift/mash-tun/', fermenting: 'shift/washback/', distilling: 'shift/', maturing: 'shift/casks/' };
  for (const [stage, address] of Object.entries(at)) {
    expect(shiftStep(address)).toBe(`task:${stage}-shift`);
    const own = pathStages.find((each) => each.stage === stage)!;
    const lesson = own.lessons.find(({ steps }) => steps.some((step) => idOfStep(step) === `task:${stage}-shift`))!;
    const step = lesson.steps.find((each) => idOfStep(each) === `task:${stage}-shift`)!;
    const open = openLesson(own, lesson, step, () => 'says');
    expect([isShift(stepNow(open)), isMarked(stepNow(open))]).toEqual([true, false]); // going on from it marks nothing
    expect(lineAt(open)).toBe(`first-weeks/${stage}/#step-task-${stage}-shift`);
  }
  expect(shiftStep('malting/safe/')).toBeUndefined();
  const rows = [{ name: 'Cut', points: 18, of: 20, why: 'Near.' }, { name: 'Care', points: 2, of: 30, why: 'It boiled over.' }];
  expect(tryAgain({ total: 59, rows })).toBe('59 of 100 is worth another try. Most was lost here: Care. It boiled over.');
  expect(tryAgain({ total: 60, rows })).toBeUndefined();
  expect(shiftCounts({ total: 59, rows })).toBe(true);
  const hurt = { total: 80, rows: [...rows, { name: 'Danger', points: -20, of: 0, why: 'One danger, 20 points each.' }] };
  expect(shiftCounts(hurt)).toBe(false);
  expect(tryAgain(hurt)).toBe('This run does not count, for it could have hurt somebody. One danger, 20 points each. Run it again.');
}); // prettier-ignore

test('a stage that has reached its standard asks for its sheet first, whatever else is open', () => {
  const log = [...onDays('2026-05-01', '2026-05-02'), said(kindsOfStage(pathStages[1]!)[0]!, '2026-05-02', 'wrong')];
  const open = { ...nothing, log, ticked: [safePage] }; // nothing else read, nothing guessed: its practices and safety alone are done
  const all = malting.lessons.flatMap((lesson) => lesson.steps);
  const practices = all.filter(({ do: what }) => what === 'practise').length;
  expect(nextOnPath(pathStages, open, '2026-05-02')).toEqual({ because: 'sign', stage: malting, open: all.length - practices - 1 });
  expect(nextOnPath([malting], open, '2026-05-02').because).toBe('sign');
  expect(nextOnPath(pathStages.slice(1), open, '2026-05-02').because).toBe('missed'); // what goes on meanwhile
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
  for (const stage of pathStages)
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
  expect(masteredByDay(names, log)).toEqual([
    { day: '2026-05-01', once: 1, reached: 0 },
    { day: '2026-05-02', once: 1, reached: 1 },
    { day: '2026-05-03', once: 2, reached: 1 },
  ]);
});

test('the scale of the picture rises with the first right answer', () => {
  // One right answer is a quarter of the height, and no bar is full before all is right.
  expect([0, 1, 3, 4, 10, 23, 24, 37, 38].map((once) => topOfScale(once, 38))).toEqual([4, 4, 4, 8, 16, 24, 38, 38, 38]);
  expect(topOfScale(2, 3)).toBe(3);
}); // prettier-ignore

/** The addresses of the headings of a page of the book. */
function pageAt(address: string): ChapterPage {
  const at = `${address.split('/').filter(Boolean).join('/')}/`;
  return chapters.flatMap(({ id, pages }) => pages.filter(({ part }) => addressOf(id, part) === at))[0]!;
}
const headingsAt = (page: string) => chapterText(pageAt(page).body).headings.map(({ slug }) => slug);

test('all that the path and the passages name is there', () => {
  expect(pathStages.map(({ stage }) => stage)).toEqual(stages);
  const drawn = questionKinds.filter(({ until }) => until === undefined).map(({ id }) => id);
  for (const kind of pathStages.flatMap(kindsOfStage)) expect(drawn).toContain(kind);
  expect(Object.values(allPassages).flat()).toEqual(expect.arrayContaining(pathStages.flatMap(kindsOfStage)));
  expect(questionKinds.map(({ id }) => id)).toEqual(
    expect.arrayContaining(Object.values(allPassages).flat()),
  );
  const addresses = [
    ...Object.keys(allPassages),
    ...steps.flatMap((step) => (step.do === 'read' ? [step.at] : [])),
  ];
  for (const address of addresses) {
    const [page, heading] = address.split('#');
    const headings = headingsAt(page!); // the page is there
    if (heading) expect(headings, address).toContain(heading);
  }
  for (const step of steps)
    if (step.do === 'read' && step.to !== undefined)
      expect(headingsAt(step.at.split('#')[0]!)).toContain(step.to);
  for (const step of steps)
    if (step.do === 'guess') {
      expect(predicts.map(({ id }) => id)).toContain(step.id);
      expect(namedIn(pageAt(step.at).body, 'Predict'), `${step.id} at ${step.at}`).toContain(step.id);
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
      questionKinds.find(({ id }) => id === step.kind)!,
      'fades',
      builtInHouse,
    )!;
    const shown = stepsBefore(question);
    expect(shown.length, step.kind).toBeGreaterThan(0);
    expect(shown.length, step.kind).toBeLessThan(question.working.length);
    const key = `= ${/[\d,.]+/.exec(answerInKey(question))![0]}`;
    expect([...shown, hintOf(question)].join(' '), step.kind).not.toContain(key);
  }
});

test('marks that were kept are read strictly', () => {
  const ticks = { 'read:/malting/#heat-stops-it': '2026-05-14', 'signed:malting': '2026-05-20', 'aside:malting': '2026-05-21' }; // prettier-ignore
  expect(decodeTicks(encodeTicks(ticks))).toEqual(ticks);
  expect(decodeTicks('nonsense')).toBeUndefined();
  expect(decodeTicks(encodeTicks({ ...ticks, '<b>': '2026-05-14', 'task:x': 'soon' }))).toEqual(ticks);
});
