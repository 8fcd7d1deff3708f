// The lesson that a reader is in, as a text and back: its steps with their addresses, and the step that was gone to.
import { isData, jsonIn } from '../core/reading/data.ts';
import { also, list, quietly, record, text } from '../core/reading/given.ts';
import {
  addressOfStep,
  idOfStep,
  lineOfStep,
  type Lesson,
  type PathStage,
  type LessonStep,
} from './steps.ts';

const FORMAT = 'malt-spirit-handbook/lesson';
const VERSION = 1;
const LONGEST = 10_000; // characters that are read
const LONGEST_TEXT = 400; // of an address, or of what a step is called
const MOST_STEPS = 20;

export interface OpenStep {
  readonly id: string;
  /** Its address from the book's root, and the last heading of a passage that is longer than one. */
  readonly at: string;
  readonly to?: string;
  readonly says: string;
}
export interface OpenLesson {
  readonly stage: string;
  readonly title: string;
  readonly steps: readonly OpenStep[];
  /** The step that was gone to last. */
  readonly now: string;
}

/** A lesson as it is kept when one of its steps is gone to. */
export const openLesson = ({ stage }: PathStage, lesson: Lesson, now: LessonStep, says: (step: LessonStep) => string): OpenLesson => ({
  stage,
  title: lesson.title,
  steps: lesson.steps.map((step) => ({
    id: idOfStep(step),
    at: addressOfStep(stage, step),
    ...(step.do === 'read' && step.to !== undefined ? { to: step.to } : {}),
    says: says(step),
  })),
  now: idOfStep(now),
}); // prettier-ignore

export const lessonAt = ({ stage }: OpenLesson): string => `first-weeks/${stage}/`;
/** The line of the step that was gone to, on its stage's page. */
export const lineAt = (lesson: OpenLesson): string => `${lessonAt(lesson)}#${lineOfStep(lesson.now)}`;
export const stepNow = ({ steps, now }: OpenLesson): OpenStep => steps.find(({ id }) => id === now)!;
/** The step after the one that was gone to; undefined at the lesson's end. */
export const stepAfter = ({ steps, now }: OpenLesson): OpenStep | undefined =>
  steps[steps.findIndex(({ id }) => id === now) + 1];
/** True for a shift: its end marks it, and no going on from it. */
export const isShift = ({ id, at }: OpenStep): boolean => id.startsWith('task:') && at.startsWith('shift/');
/** True for a step that a reader marks as done: a passage, or a thing to do. */
export const isMarked = (step: OpenStep): boolean => /^(read|task):/.test(step.id) && !isShift(step);

export const encodeLesson = (lesson: OpenLesson): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, ...lesson });

const words = text(LONGEST_TEXT, (given) => given !== '');
/** An address within the book, which can lead nowhere else. */
const address = text(LONGEST_TEXT, (given) => /^[a-z][a-z0-9-]*\/[a-z0-9/-]*(#[a-z0-9=,-]*)?$/.test(given));
const lesson = also(
  record({
    stage: text(LONGEST_TEXT, (given) => /^[a-z]+$/.test(given)),
    title: words,
    steps: list(record({ id: words, at: address, says: words }, { to: words }), MOST_STEPS),
    now: words,
  }),
  ({ steps, now }) => steps.some(({ id }) => id === now),
  'it can be at a step of its own.',
);

/** Reads a lesson from its text, whole or not at all. */
export function decodeLesson(kept: string): OpenLesson | undefined {
  const data = jsonIn(kept, LONGEST);
  return isData(data) && data['format'] === FORMAT && data['version'] === VERSION
    ? quietly<OpenLesson>(lesson, data)
    : undefined;
}
