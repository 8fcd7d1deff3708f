// Sentences about one text, but not without end.

const MOST_TOLD = 60; // more than a house has figures, and no flood

/** The sentences as they are, or the first of them and how many more there are. */
export function fewProblems(problems: readonly string[]): readonly string[] {
  return problems.length <= MOST_TOLD
    ? problems
    : [
        ...problems.slice(0, MOST_TOLD),
        `${problems.length - MOST_TOLD} further things in it cannot be used either.`,
      ];
}
