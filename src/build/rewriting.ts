// Rewrites text by a pattern and counts what it found, so that a pattern that no longer matches stops the build.

export interface Rewriting {
  /** What it looks for, in the words of the sentence that says that it found none. */
  readonly of: string;
  /** How often it has found something. */
  readonly found: () => number;
  /** The text with every match replaced, from the match and its groups. */
  readonly in: (text: string, by: (match: string, ...groups: readonly string[]) => string) => string;
}

/** A rewriting of all that a global pattern finds; each of its groups must take part in every match. */
export function rewriting(of: string, pattern: RegExp): Rewriting {
  let found = 0;
  return {
    of,
    found: () => found,
    in: (text, by) =>
      text.replace(pattern, (match: string, ...rest: unknown[]) => {
        found += 1;
        return by(match, ...(rest.slice(0, -2) as string[])); // last come its place and the whole text
      }),
  };
}

/** Stops a build in which one of them found nothing, with a sentence that names each. */
export function refuseUnfound(rewritings: readonly Rewriting[]): void {
  const none = rewritings.filter(({ found }) => found() === 0).map(({ of }) => of);
  if (none.length > 0)
    throw new Error(
      `The end of the build found no ${none.join(' and no ')} in the whole site. See “When Astro is updated” in DEVELOPERS.md.`,
    );
}
