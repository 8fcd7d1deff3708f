// What the pages of a guide's file take from the book: the questions of the stages, and a line of caution for each.
import { getCollection } from 'astro:content';
import { stages, type Stage } from '../house/figures.ts';
import type { VisitorQuestion } from '../house/visitor-questions.ts';
import { cautionOf } from '../walk/cautions.ts';
import { chaptersOfBook } from './book.ts';
import { questionsOfChapter } from './visitor-questions.ts';

/** The questions of every stage, with what to say. */
export async function questionsOfStages(): Promise<(Pick<VisitorQuestion, 'id' | 'question' | 'say'> & { readonly stage: Stage })[]> {
  const chapters = await chaptersOfBook();
  return chapters.flatMap(({ id, title, body, stage }) =>
    stage === undefined
      ? []
      : questionsOfChapter(id, title, body).map(({ id, question, say }) => ({ id, question, say, stage })),
  );
} // prettier-ignore

/** The caution of each stage in a line, with whom it defers to. */
export async function safetyOfStages(): Promise<Readonly<Record<Stage, string>>> {
  const cautions = new Map((await getCollection('cautions')).map(({ id, data }) => [id, data]));
  const says = (stage: Stage) => {
    const { does, defers } = cautions.get(cautionOf[stage])!;
    return `${does[0]} ${defers}`;
  };
  return Object.fromEntries(stages.map((stage) => [stage, says(stage)])) as Record<Stage, string>;
}
