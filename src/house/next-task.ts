// A turn for the hand that waits, between two pieces of long work.

/** Ends the task that runs: what comes after it is done in a task of its own, after a hand that waits. */
export const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));
