// Work that draws from kinds of question and can be done step by step: before each it names the kind that it draws from next.

/** Names the kind of each step, and comes to something in the end. */
export type InSteps<T> = Generator<string, T>;

/** What the work comes to, with all kinds at hand. */
export function resultAtOnce<T>(work: InSteps<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
