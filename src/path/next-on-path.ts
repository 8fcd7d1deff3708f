// What comes next for a reader, and because of what.
import type { Practised } from '../exercises/progress.ts';
import { idOfStep, kindsOfStage, type Lesson, type PathStage, type LessonStep } from './steps.ts';
import { standingOfStage, type KindStanding } from './standing-of.ts';

/** What of the path was done, beside answers: what was read and done, and what was guessed. */
export interface PathDone {
  readonly log: readonly Practised[];
  readonly ticked: readonly string[];
  readonly guessed: readonly string[];
  /** The stage of the lesson that was gone to last. */
  readonly open?: string;
}

export type Next =
  /** Kinds that were missed last: the passage again, and once more. */
  | { readonly because: 'missed'; readonly stage: PathStage; readonly kinds: readonly string[] }
  /** Kinds that were right once, and count from today on. */
  | { readonly because: 'due'; readonly stage: PathStage; readonly kinds: readonly string[] }
  /** The first step of a lesson that is not done. */
  | {
      readonly because: 'step';
      readonly stage: PathStage;
      readonly lesson: Lesson;
      readonly step: LessonStep;
      /** Where the stage stands: nothing of it is done yet, it is under way, or it is signed with this step open. */
      readonly stands: 'new' | 'begun' | 'signed';
    }
  /** The standard is reached, and the page on staying safe is not read: before that there is no sheet. */
  | {
      readonly because: 'safe';
      readonly stage: PathStage;
      readonly lesson: Lesson;
      readonly step: LessonStep;
    }
  /** All steps are done, and the second right answers must wait for another day. */
  | { readonly because: 'wait'; readonly stage: PathStage; readonly from: string }
  /** The stage has reached its standard, and is to be signed; steps of its lessons may be open. */
  | { readonly because: 'sign'; readonly stage: PathStage; readonly open: number }
  | { readonly because: 'all' };

/** True when a step was done: a practice when each of its kinds was right once. */
export function isDone(step: LessonStep, { log, ticked, guessed }: PathDone): boolean {
  if (step.do === 'guess') return guessed.includes(step.id);
  if (step.do === 'practise')
    return step.kinds.every((kind) => log.some((entry) => entry.kind === kind && entry.verdict === 'right'));
  return ticked.includes(idOfStep(step));
}

/** How many steps of a stage are done, and of how many. */
export function stepsDone({ lessons }: PathStage, done: PathDone): readonly [number, number] {
  const steps = lessons.flatMap((lesson) => lesson.steps);
  return [steps.filter((step) => isDone(step, done)).length, steps.length];
}

/** The first step of a stage that is not done and is among these, with its lesson. */
export function stepNext(
  { lessons }: PathStage,
  done: PathDone,
  isAmong: (step: LessonStep) => boolean = () => true,
) {
  for (const lesson of lessons) {
    const step = lesson.steps.find((each) => isAmong(each) && !isDone(each, done));
    if (step) return { lesson, step };
  }
  return undefined;
}

const isOpen = ({ reached }: KindStanding) => reached === undefined;
export const signedId = ({ stage }: PathStage): string => `signed:${stage}`;
/** The mark of a signed stage whose open steps a reader has put aside. */
export const asideId = ({ stage }: PathStage): string => `aside:${stage}`;

/** What of staying safe is not done: its page, and the questions asked after it. Before that no sheet is offered. */
export const safetyNext = (stage: PathStage, done: PathDone) => {
  const safety = stage.lessons.flatMap(({ steps }) => {
    const page = steps.findIndex((step) => step.do === 'read' && step.at.endsWith('/safe/'));
    return page < 0 ? [] : [steps[page]!, ...steps.slice(page + 1).filter((step) => step.do === 'practise')];
  });
  return stepNext(stage, done, (step) => safety.includes(step));
};

/** True once a reader has set out on the path: a step was gone to, or marked. */
export const hasSetOut = ({ ticked, open }: PathDone): boolean => ticked.length > 0 || open !== undefined;

/** What comes next in one stage; undefined once it is signed, and its open steps are done or put aside. */
function nextIn(stage: PathStage, done: PathDone, today: string): Next | undefined {
  const { kinds, day } = standingOfStage(kindsOfStage(stage), done.log);
  const step = stepNext(stage, done);
  if (day !== undefined) {
    const safety = safetyNext(stage, done);
    if (safety) return { because: 'safe', stage, ...safety };
    const [of, all] = stepsDone(stage, done);
    if (!done.ticked.includes(signedId(stage))) return { because: 'sign', stage, open: all - of };
    return step && !done.ticked.includes(asideId(stage)) ? { because: 'step', stage, ...step, stands: 'signed' } : undefined; // prettier-ignore
  }
  const missed = kinds.filter((kind) => isOpen(kind) && kind.missed).map(({ kind }) => kind);
  if (missed.length > 0) return { because: 'missed', stage, kinds: missed };
  const due = kinds.filter((kind) => isOpen(kind) && kind.from !== undefined && kind.from <= today);
  if (due.length > 0) return { because: 'due', stage, kinds: due.map(({ kind }) => kind) };
  if (step) {
    const isBegun = stepsDone(stage, done)[0] > 0 || done.open === stage.stage || kinds.some(({ once }) => once !== undefined); // prettier-ignore
    return { because: 'step', stage, ...step, stands: isBegun ? 'begun' : 'new' };
  }
  const waiting = kinds
    .flatMap((kind) => (isOpen(kind) && kind.from !== undefined ? [kind.from] : []))
    .sort();
  return { because: 'wait', stage, from: waiting[0]! };
}

/**
 * What comes next of all: staying safe and a sheet to be signed first, then what was missed, what is due today, and the next step of the
 * stage whose lesson was gone to last, or else of the first stage that has one. A stage that only waits for another day lets the next stage begin meanwhile.
 */
export function nextOnPath(stages: readonly PathStage[], done: PathDone, today: string): Next {
  const each = stages.flatMap((stage) => nextIn(stage, done, today) ?? []);
  const first = (because: Next['because']) => each.find((next) => next.because === because);
  return (
    first('safe') ??
    first('sign') ??
    first('missed') ??
    first('due') ??
    each.find((next) => next.because === 'step' && next.stage.stage === done.open) ??
    first('step') ??
    first('wait') ?? { because: 'all' }
  );
}
