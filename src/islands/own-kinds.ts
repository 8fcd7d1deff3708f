// The kinds of question that a trainer's own sheet draws from: the book's, fetched one by one, and those of his own that it carries.
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import type { QuestionKind } from '../exercises/question.ts';

export type KindsById = ReadonlyMap<string, QuestionKind>;

/** All of them by id. What reads formulas is fetched only for a sheet that has some. */
export async function kindsById(list: string, own: readonly OwnQuestion[]): Promise<KindsById> {
  const made = own.length === 0 ? [] : await import('../exercises/own/own-kind.ts').then(({ kindOfOwnQuestion }) => own.map(kindOfOwnQuestion)); // prettier-ignore
  return new Map([...kindsOf(list), ...made].map((kind) => [kind.id, kind]));
}
