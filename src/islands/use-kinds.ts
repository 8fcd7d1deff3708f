// What an island draws from kinds of question that come one by one.
import { fetchKinds, whenHere } from '../exercises/kinds/later.ts';
import type { QuestionKind } from '../exercises/question.ts';

/** Does a piece of work that draws, with the kinds that it begins with fetched at once; when they do not come, nothing, and the page says that a part of it is missing. */
export async function drawnOrLost<T>(
  work: () => T,
  begins: readonly Pick<QuestionKind, 'id'>[] = [],
): Promise<T | undefined> {
  try {
    await fetchKinds(begins.map(({ id }) => id));
    return await whenHere(work);
  } catch (problem) {
    document.documentElement.dataset['script'] = 'lost';
    console.error(problem);
    return undefined;
  }
}
