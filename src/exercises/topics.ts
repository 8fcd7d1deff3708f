// What questions are about, how they ask, and how hard they are.
import { stages } from '../house/figures.ts';

export const topics = [
  ...stages,
  'strength',
  'safety',
  'law',
  'line',
  'ingredients',
  'heat',
  'running',
  'visitors',
  'nose',
] as const;
export type Topic = (typeof topics)[number];

const FIRST_TOPICS = 10; // what generators before the seventh draw from, mixed by how many there are
/** The topics from which a generator draws. */
export const topicsOf = (generator: number): readonly Topic[] =>
  generator < 7 ? topics.slice(0, FIRST_TOPICS) : topics;

export const topicTitles: Readonly<Record<Topic, string>> = {
  malting: 'Malting',
  milling: 'Milling',
  mashing: 'Mashing',
  fermenting: 'Fermenting',
  distilling: 'Distilling',
  maturing: 'Maturing',
  strength: 'Strength and volume',
  safety: 'Safety',
  law: 'Law and labels',
  line: 'The whole line',
  ingredients: 'Ingredients',
  heat: 'Heat and water',
  running: 'Running a house',
  visitors: 'Answering a visitor',
  nose: 'The nose',
};

export const forms = ['calculation', 'estimate', 'curve', 'order', 'impossible', 'judgement'] as const;
export type Form = (typeof forms)[number];

export const formTitles: Readonly<Record<Form, string>> = {
  calculation: 'Work it out',
  estimate: 'Judge the size',
  curve: 'Read the curve',
  order: 'Put in order',
  impossible: 'Which figure cannot be true?',
  judgement: 'What would you do?',
};

export const levels = [1, 2, 3] as const;
export type Level = (typeof levels)[number];

export const levelTitles: Readonly<Record<Level, string>> = {
  1: 'one step',
  2: 'two or three steps',
  3: 'several stages together',
};
