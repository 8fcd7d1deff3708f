// What visitors ask, as authors write it in content/asked: ways of asking, an answer with holes, its sum, its place in the book.

/** One thing that is asked. Holes stand in braces; `holes.ts` tells what they may hold. */
export interface AskedEntry {
  readonly id: string;
  readonly asked: readonly string[];
  readonly says: string;
  readonly sum?: string | undefined;
  /** What a fact of the trade in it rests on, where no source does. */
  readonly rests?: 'common practice' | 'memory' | undefined;
  /** True where the answer is that the book cannot know: it is never shown as the nearest. */
  readonly unknown?: boolean | undefined;
  /** Address from the root of the site. */
  readonly at: string;
  /** What that place is called. */
  readonly place: string;
}

/** A section of the book, as it may be quoted. */
export interface Passage {
  readonly title: string;
  /** Plain sentences, with holes for figures as `house/open-figures.ts` fills them. */
  readonly text: string;
  readonly at: string;
  readonly place: string;
}

/** A thing, and the other words that people have for it; words of several stand as one. */
export type OtherWords = Readonly<Record<string, readonly string[]>>;

/** All that a question is held against. */
export interface AskedList {
  readonly entries: readonly AskedEntry[];
  readonly words: OtherWords;
  /** English phrases, and what stands for them in the languages that are read. */
  readonly foreign?: OtherWords;
  /** What the book itself says, for what no entry answers. */
  readonly passages?: readonly Passage[];
}
