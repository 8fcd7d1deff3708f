// What an island draws from kinds of question that come one by one.
import type { InSteps } from '../exercises/in-steps.ts';
import { fetchKinds, stepByStep, whenHere } from '../exercises/kinds/fetched-kinds.ts';
import type { QuestionKind } from '../exercises/question.ts';

/** What a piece of work comes to that fetches; when something does not come, nothing, and the page says that a part of it is missing. */
async function orLost<T>(work: () => Promise<T>): Promise<T | undefined> {
  try {
    return await work();
  } catch (problem) {
    document.documentElement.dataset['script'] = 'lost';
    console.error(problem);
    return undefined;
  }
}

/** Does a piece of work that draws. */
export const drawnOrLost = <T>(work: () => T): Promise<T | undefined> => orLost(() => whenHere(work));

/** Does a longer piece of work in steps, with the kinds that it begins with fetched at once. */
export const drawnInSteps = <T>(
  work: InSteps<T>,
  begins: readonly Pick<QuestionKind, 'id'>[],
): Promise<T | undefined> =>
  orLost(async () => {
    await fetchKinds(begins.map(({ id }) => id));
    return stepByStep(work);
  });

/** What some versions of a sheet ask, one after another; nothing when a part of it did not come. */
export async function versionsInTurn<T>(
  wanted: readonly number[],
  versionOf: (version: number) => Promise<readonly T[] | undefined>,
): Promise<readonly { readonly version: number; readonly asked: readonly T[] }[] | undefined> {
  const versions: { readonly version: number; readonly asked: readonly T[] }[] = [];
  for (const version of wanted) {
    const asked = await versionOf(version);
    if (!asked) return undefined;
    versions.push({ version, asked });
  }
  return versions;
}
