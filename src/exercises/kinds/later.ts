// Every kind of question, each topic fetched by itself: together they are more than a page should read in one go.
import type { QuestionKind } from '../question.ts';
import { topics, type Topic } from '../topics.ts';

const parts: Readonly<Record<Topic, () => Promise<readonly QuestionKind[]>>> = {
  malting: () => import('./malting/index.ts').then(({ malting }) => malting),
  milling: () => import('./milling/index.ts').then(({ milling }) => milling),
  mashing: () => import('./mashing/index.ts').then(({ mashing }) => mashing),
  fermenting: () => import('./fermenting/index.ts').then(({ fermenting }) => fermenting),
  distilling: () => import('./distilling/index.ts').then(({ distilling }) => distilling),
  maturing: () => import('./maturing/index.ts').then(({ maturing }) => maturing),
  strength: () => import('./strength/index.ts').then(({ strength }) => strength),
  safety: () => import('./safety/index.ts').then(({ safety }) => safety),
  law: () => import('./law/index.ts').then(({ law }) => law),
  line: () => import('./line/index.ts').then(({ line }) => line),
};

/** Every kind of question, in the order of `kinds`. Fails when a part of them does not come. */
export async function fetchKinds(): Promise<readonly QuestionKind[]> {
  return (await Promise.all(topics.map((topic) => parts[topic]()))).flat();
}
