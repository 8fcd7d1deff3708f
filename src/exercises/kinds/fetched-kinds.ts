// Kinds of question that are listed at once and fetched one by one, when one of them is drawn: together they are more than a page should read in one go.
import type { QuestionKind } from '../question.ts';
import { nextTask } from '../../house/next-task.ts';
import type { InSteps } from '../in-steps.ts';
import { readKindsText } from './list.ts';
import { waysToKinds } from './ways.ts';

const TASK = 8; // ms of work after which others have their turn

const here = new Map<string, QuestionKind>();

/** Thrown by a kind that is drawn before it has been fetched. */
class NotHere extends Error {
  readonly id: string;
  constructor(id: string) {
    super(`The kind of question ${id} has not been fetched.`);
    this.id = id;
  }
}

/** The kinds of a list; each must have been fetched before it draws. */
export const kindsOf = (list: string): readonly QuestionKind[] =>
  readKindsText(list).map((listed) => ({
    ...listed,
    draw: (chance, house) => {
      const kind = here.get(listed.id);
      if (!kind) throw new NotHere(listed.id);
      return kind.draw(chance, house);
    },
  }));

/** Fetches kinds by their ids. Fails when one of them does not come. */
export async function fetchKinds(ids: readonly string[]): Promise<void> {
  await Promise.all(
    ids
      .filter((id) => !here.has(id))
      .map(async (id) => {
        if (!Object.hasOwn(waysToKinds, id))
          throw new RangeError(`There is no kind of question called ${id}.`);
        here.set(id, (await waysToKinds[id]!()).default);
      }),
  );
}

/** A kind by its id, fetched. Fails when it does not come. */
export async function fetchedKind(id: string): Promise<QuestionKind> {
  await fetchKinds([id]);
  return here.get(id)!;
}

/** What a piece of work that draws comes to, when all that it draws is here; undefined when something is to be fetched first. */
export function ifHere<T>(work: () => T): { readonly done: T } | undefined {
  try {
    return { done: work() };
  } catch (problem) {
    if (problem instanceof NotHere) return undefined;
    throw problem;
  }
}

/** Does a piece of work in steps, each with its kind fetched first, and none of its tasks longer than a part of a frame. Fails when a kind does not come. */
export async function stepByStep<T>(work: InSteps<T>): Promise<T> {
  let begun = performance.now();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    await fetchKinds([step.value]);
    if (performance.now() - begun < TASK) continue;
    await nextTask();
    begun = performance.now();
  }
}

/** Does a piece of work that draws, fetching what it turns out to need. Fails when some of that does not come. */
export async function whenHere<T>(work: () => T): Promise<T> {
  for (;;) {
    try {
      return work();
    } catch (problem) {
      if (!(problem instanceof NotHere)) throw problem;
      await fetchKinds([problem.id]);
    }
  }
}
