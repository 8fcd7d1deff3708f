// The kinds of question that a trainer's own sheet draws from: the book's, fetched one by one, and those of his own that it carries.
import { kindsOf } from '../exercises/kinds/later.ts';
import { kindOf } from '../exercises/own/own-kind.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import type { QuestionKind } from '../exercises/question.ts';

/** All of them by id. */
export function kindsById(list: string, own: readonly OwnQuestion[]): ReadonlyMap<string, QuestionKind> {
  return new Map([...kindsOf(list), ...own.map(kindOf)].map((kind) => [kind.id, kind]));
}
