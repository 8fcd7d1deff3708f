// What comes next, in words with their links, for every page that says it.
import { formatCount } from '../core/format.ts';
import type { Stage } from '../house/figures.ts';
import type { Next } from '../path/next-on-path.ts';
import { openLesson, type OpenLesson } from '../path/open-lesson.ts';
import { addressOfStep, type Lesson, type PathStage, type LessonStep } from '../path/steps.ts';
import { dateInWords } from './today.ts';

/** Names that a page carries for its island. */
export interface Names {
  readonly kinds: Readonly<Record<string, string>>;
  readonly guesses: Readonly<Record<string, string>>;
  /** Where each kind is explained. */
  readonly passages: Readonly<Record<string, string>>;
}

/** A piece of a sentence: words, words that are named, or a link, from the book's root. */
export type SentencePiece = string | { readonly b: string } | PathLink;
export interface PathLink {
  readonly at: string;
  readonly says: string;
  /** The lesson that is kept when the link is gone. */
  readonly opens?: OpenLesson;
}
export interface SaidSentence {
  readonly pieces: readonly SentencePiece[];
  readonly go?: PathLink;
}

/** Practice of some kinds; a stage's own leads back to it. */
export const practiceAt = (kinds: readonly string[], stage: Stage) =>
  `practice/#kinds=${kinds.join(',')}&stage=${stage}`;
export const stageTitle = (stage: Stage) => stage[0]!.toUpperCase() + stage.slice(1);

/** What a step is called. */
export function stepSays(step: LessonStep, { kinds, guesses }: Names): string {
  if (step.do === 'read') return `Read: ${step.title}`;
  if (step.do === 'guess') return `Guess: ${guesses[step.id] ?? step.id}`;
  if (step.do === 'work') return `Worked example: ${kinds[step.kind]}`;
  return step.do === 'practise'
    ? `Practise: ${step.kinds.map((kind) => kinds[kind]).join('; ')}`
    : `Do: ${step.says}`;
}

/** The way to a step: the pages that it leads to know the lesson, and lead back and on. */
export const wayToStep = (stage: PathStage, lesson: Lesson, step: LessonStep, names: Names, says?: string): PathLink => ({
  at: addressOfStep(stage.stage, step),
  says: says ?? stepSays(step, names),
  opens: openLesson(stage, lesson, step, (each) => stepSays(each, names)),
}); // prettier-ignore

/** What comes next and because of what, with the one place to go on. */
export function nextSays(next: Next, names: Names): SaidSentence {
  const named = (kinds: readonly string[]) => ({ b: kinds.map((kind) => names.kinds[kind]).join('; ') });
  if (next.because === 'all')
    return {
      pieces: ['All is signed. ', { at: 'practice/', says: 'Practice' }, ' goes on asking what would fade.'],
    };
  const { stage } = next.stage;
  const title = stageTitle(stage);
  if (next.because === 'missed')
    return {
      pieces: [
        'Next, because you missed it last time: ',
        named(next.kinds),
        '. Read ',
        { at: names.passages[next.kinds[0]!]!, says: 'the passage' },
        ' again, then try once more.',
      ],
      go: { at: practiceAt(next.kinds, stage), says: 'Practise what you missed' },
    };
  if (next.because === 'due')
    return {
      pieces: [
        'Next, because it was right once and a day has passed: ',
        named(next.kinds),
        '. Right again today, and it counts.',
      ],
      go: { at: practiceAt(next.kinds, stage), says: 'Practise what is due' },
    };
  if (next.because === 'wait')
    return {
      pieces: [
        `All that ${stage} asks is right once. Come back on ${dateInWords(next.from)}: what is right again then counts.`,
      ],
    };
  if (next.because === 'sign')
    return {
      pieces: [
        `${title} has reached its standard. Next: print the sheet, and take it to your trainer to sign.`,
        next.open > 0 ? ` ${formatCount(next.open, 'step')} of its lessons can be done before that.` : '',
      ],
      go: { at: `first-weeks/${stage}/#sign`, says: 'To the sheet' },
    };
  const says = stepSays(next.step, names).replace(/\.$/, '');
  const way = (text: string) => wayToStep(next.stage, next.lesson, next.step, names, text);
  if (next.because === 'safe')
    return {
      pieces: [
        `${title} has reached its standard. Next, because nobody is signed off before staying safe: `,
        { b: says },
        '. Then comes the sheet to sign.',
      ],
      go: way('Stay safe'),
    };
  return {
    pieces: [
      next.stands === 'signed' ? `Next, still open in ${title}, which is signed: ` : `Next: ${title}, `,
      { b: next.lesson.title },
      `. ${says}.`,
    ],
    go: way(next.stands === 'new' ? 'Begin' : 'Go on where you were'),
  };
}
