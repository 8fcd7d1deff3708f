// A read talk cut into paragraphs, so that those that did not change are kept as they are shown.
import type { ReadQuantity } from './script.ts';

export interface Paragraph {
  /** With the line's end behind it. */
  readonly text: string;
  /** Its place in the talk. */
  readonly at: number;
  /** Its quantities, by their places in the paragraph. */
  readonly quantities: readonly ReadQuantity[];
}

const LONGEST = 1200; // characters, beyond which a paragraph is cut where a sentence ends, or else at a space

/** Where a talk is cut: behind each line, and in a long one behind a sentence or a word; never inside a quantity. */
function cuts(text: string, quantities: readonly ReadQuantity[]): readonly number[] {
  const found: number[] = [];
  let from = 0;
  let next = 0; // the first quantity that does not end before the place
  const isFree = (place: number) => {
    while (next < quantities.length && quantities[next]!.end <= place) next++;
    return next === quantities.length || quantities[next]!.start >= place;
  };
  for (const { 0: gap, index } of text.matchAll(/\n|[^\S\n]+/g)) {
    const place = index + gap.length;
    const isEnd = /[.!?]/.test(text[index - 1] ?? '');
    const isWanted = gap === '\n' || place - from > (isEnd ? LONGEST : 2 * LONGEST);
    if (!isWanted || !isFree(place)) continue;
    found.push(place);
    from = place;
  }
  return found.at(-1) === text.length ? found : [...found, text.length];
}

/** A talk in paragraphs, whose texts together are the talk. */
export function paragraphsOf(text: string, quantities: readonly ReadQuantity[]): readonly Paragraph[] {
  let at = 0;
  let next = 0;
  return cuts(text, quantities).map((end) => {
    const [from, first] = [at, next];
    while (next < quantities.length && quantities[next]!.start < end) next++;
    at = end;
    return {
      text: text.slice(from, end),
      at: from,
      quantities: quantities
        .slice(first, next)
        .map((each) => ({ ...each, start: each.start - from, end: each.end - from })),
    };
  });
}
