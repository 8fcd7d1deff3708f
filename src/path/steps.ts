// What a lesson is made of: its steps, each with an id by which what was done is kept.
// What is reached is found from the log of practice alone, and stays reached. Ids are kept in browsers: change none. Tested in tests/path.
import type { Stage } from '../house/figures.ts';

/** A thing to do in a lesson. */
export type LessonStep =
  /** A passage of the book, and its last heading where it has several. */
  | { readonly do: 'read'; readonly at: string; readonly title: string; readonly to?: string }
  /** A question to guess at, by its name. */
  | { readonly do: 'guess'; readonly id: string; readonly at: string }
  /** One kind of question worked through: whole, with a step left out, and alone. */
  | { readonly do: 'work'; readonly kind: string }
  /** Kinds of question to practise. */
  | { readonly do: 'practise'; readonly kinds: readonly string[] }
  /** Something outside the book, with a person who may do it. */
  | { readonly do: 'task'; readonly id: string; readonly says: string; readonly at?: string };

export interface Lesson {
  readonly title: string;
  readonly steps: readonly LessonStep[];
}

export interface PathStage {
  readonly stage: Stage;
  /** What the reader can do when it is signed. */
  readonly goal: string;
  readonly lessons: readonly Lesson[];
}

/** The kinds that a stage asks for, each once, in the order of its lessons. */
export const kindsOfStage = ({ lessons }: PathStage): readonly string[] => [
  ...new Set(
    lessons.flatMap(({ steps }) => steps.flatMap((step) => (step.do === 'practise' ? step.kinds : []))),
  ),
];

/** Where a step is done, from the book's root. A thing to do elsewhere leads to the lessons. */
export function addressOfStep(stage: Stage, step: LessonStep): string {
  if (step.do === 'guess') return `${step.at}#guess-${step.id}`;
  if (step.do === 'practise') return `practice/#kinds=${step.kinds.join(',')}`;
  if (step.do === 'work') return `first-weeks/${stage}/#worked`;
  return step.at ?? `first-weeks/${stage}/#lessons`;
}

/** Where a step stands on its stage's page: the id of its line. */
export const lineOfStep = (id: string): string => `step-${id.replace(/[^a-z0-9]+/g, '-').replace(/-$/, '')}`;

/** What a step is called in what is kept: it never changes. */
export const idOfStep = (step: LessonStep): string => {
  if (step.do === 'read') return `read:${step.at}`;
  if (step.do === 'guess' || step.do === 'task') return `${step.do}:${step.id}`;
  return step.do === 'work' ? `work:${step.kind}` : `practise:${step.kinds.join(',')}`;
};
