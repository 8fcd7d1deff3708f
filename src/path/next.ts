// What comes next for a reader, and because of what.
import type { Practised } from '../exercises/progress.ts';
import { idOfStep, kindsOfStage, type Lesson, type PathStage, type Step } from './steps.ts';
import { standingOfStage, type KindStanding } from './standing-of.ts';

/** What of the path was done, beside answers: what was read and done, and what was guessed. */
export interface Done {
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
  | { readonly because: 'step'; readonly stage: PathStage; readonly lesson: Lesson; readonly step: Step }
  /** All steps are done, and the second right answers must wait for another day. */
  | { readonly because: 'wait'; readonly stage: PathStage; readonly from: string }
  /** The stage has reached its standard, and is to be signed; steps of its lessons may be open. */
  | { readonly because: 'sign'; readonly stage: PathStage; readonly open: number }
  | { readonly because: 'all' };

/** True when a step was done: a practice when each of its kinds was right once. */
export function isDone(step: Step, { log, ticked, guessed }: Done): boolean {
  if (step.do === 'guess') return guessed.includes(step.id);
  if (step.do === 'practise')
    return step.kinds.every((kind) => log.some((entry) => entry.kind === kind && entry.verdict === 'right'));
  return ticked.includes(idOfStep(step));
}

/** How many steps of a stage are done, and of how many. */
export function stepsDone({ lessons }: PathStage, done: Done): readonly [number, number] {
  const steps = lessons.flatMap((lesson) => lesson.steps);
  return [steps.filter((step) => isDone(step, done)).length, steps.length];
}

/** The first step of a stage that is not done, with its lesson. */
export function stepNext({ lessons }: PathStage, done: Done) {
  for (const lesson of lessons) {
    const step = lesson.steps.find((each) => !isDone(each, done));
    if (step) return { lesson, step };
  }
  return undefined;
}

const isOpen = ({ reached }: KindStanding) => reached === undefined;
export const signedId = ({ stage }: PathStage): string => `signed:${stage}`;

/** What comes next in one stage; undefined once it is signed. */
function nextIn(stage: PathStage, done: Done, today: string): Next | undefined {
  const { kinds, day } = standingOfStage(kindsOfStage(stage), done.log);
  if (done.ticked.includes(signedId(stage)) && day !== undefined) return undefined;
  if (day !== undefined) {
    const [of, all] = stepsDone(stage, done);
    return { because: 'sign', stage, open: all - of };
  }
  const missed = kinds.filter((kind) => isOpen(kind) && kind.missed).map(({ kind }) => kind);
  if (missed.length > 0) return { because: 'missed', stage, kinds: missed };
  const due = kinds.filter((kind) => isOpen(kind) && kind.from !== undefined && kind.from <= today);
  if (due.length > 0) return { because: 'due', stage, kinds: due.map(({ kind }) => kind) };
  const step = stepNext(stage, done);
  if (step) return { because: 'step', stage, ...step };
  const waiting = kinds
    .flatMap((kind) => (isOpen(kind) && kind.from !== undefined ? [kind.from] : []))
    .sort();
  return { because: 'wait', stage, from: waiting[0]! };
}

/**
 * What comes next of all: a sheet to be signed first, then what was missed, what is due today, and the next step of the
 * first stage that has one. A stage that only waits for another day lets the next stage begin meanwhile.
 */
export function nextOf(stages: readonly PathStage[], done: Done, today: string): Next {
  const each = stages.flatMap((stage) => nextIn(stage, done, today) ?? []);
  const first = (because: Next['because']) => each.find((next) => next.because === because);
  return (
    first('sign') ?? first('missed') ?? first('due') ?? first('step') ?? first('wait') ?? { because: 'all' }
  );
}
