// Questions of one's own as a file that trainers share, and back.
import { isData, jsonIn } from '../../core/reading/data.ts';
import { readOwnQuestion, type OwnQuestion } from './own-question.ts';

const FORMAT = 'malt-spirit-handbook/own-questions';
const VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const LONGEST_BANK = 400_000; // characters that are read
const MOST = 200; // questions of a file

export const bankText = (questions: readonly OwnQuestion[]): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, questions }, undefined, 1);

/** The questions of a file; a sentence where it cannot be read. Nothing is taken of a file of which a part is damaged. */
export function readBank(text: string): readonly OwnQuestion[] | string {
  const damaged = 'This file of questions is damaged; nothing was taken from it.';
  if (text.length > LONGEST_BANK)
    return `This file has ${text.length} characters, and at most ${LONGEST_BANK} are read.`;
  const of = jsonIn(text);
  if (typeof of !== 'object' || of === null) return damaged;
  if (!isData(of) || of['format'] !== FORMAT) return 'This is no file of questions of your own.';
  if (of['version'] !== VERSION)
    return 'This file was written by a newer handbook; bring this one up to date.';
  const list = of['questions'];
  if (!Array.isArray(list) || list.length > MOST) return damaged;
  const read: OwnQuestion[] = [];
  for (const each of list) {
    const question = readOwnQuestion(each);
    if (typeof question === 'string') return `${question} Nothing was taken from the file.`;
    read.push(question);
  }
  return read;
}

/** A bank with the questions of a file beside its own: one that is there already is left; one of the same id and other words gets an id of its own. */
export function withQuestions(
  bank: readonly OwnQuestion[],
  come: readonly OwnQuestion[],
  freshId: (place: number) => string,
): readonly OwnQuestion[] {
  const words = (question: OwnQuestion) => JSON.stringify({ ...question, id: '' });
  const there = new Set(bank.map(words));
  const ids = new Set(bank.map(({ id }) => id));
  const added: OwnQuestion[] = [];
  for (const [place, question] of come.entries()) {
    if (there.has(words(question))) continue;
    there.add(words(question));
    const id = ids.has(question.id) ? freshId(place) : question.id;
    ids.add(id);
    added.push({ ...question, id });
  }
  return [...bank, ...added];
}
