// What a recipe is: one of the things that DEVELOPERS.md says how to add, as files and edits that a copy of the book is given.

/** A new file, whose text is in `tests/recipes/new`; or a text that stands once in a file, and what takes its place. */
export type Edit =
  { readonly file: string } | { readonly file: string; readonly find: string; readonly put: string };

/** What happens to a newcomer who leaves a step out, or does it by halves. */
export interface LeftOut {
  /** What is forgotten, in a few words. */
  readonly forgets: string;
  /** By leaving out this and nothing else; otherwise the whole step is left out. */
  readonly by?: readonly Edit[] | 'not gathering';
  /** The test that fails, and what it says. */
  readonly test: string;
  readonly says: RegExp;
}
export interface Step {
  /** Its number in the list of DEVELOPERS.md. */
  readonly item: number;
  readonly edits: readonly Edit[];
  /** `npm run gather` belongs to it. */
  readonly gathers?: true;
  readonly leftOut: readonly LeftOut[];
}
export interface Recipe {
  readonly adds: string;
  /** The heading in DEVELOPERS.md. */
  readonly heading: string;
  readonly steps: readonly Step[];
  /** Items that it does not need, and why. */
  readonly without: Readonly<Record<number, string>>;
  /** Files of tests that pass once it is whole, beside those of the steps. */
  readonly tests: readonly string[];
  /** Which of their tests bear on it, where each has hundreds. */
  readonly only?: string;
}

/** A text put behind another that stands once in a file. */
export const behind = (file: string, find: string, put: string): Edit => ({ file, find, put: find + put });
