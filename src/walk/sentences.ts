// The sentence of a talk that a place stands in.

export interface Sentence {
  readonly at: number;
  readonly end: number;
}

const stop = /[.!?…。！？]+["'”’)\]]*(?=\s|$)|[。！？]|\n/g;
const short = /(?:\b(?:c|ca|approx|no|vol|st|mr|mrs|dr|e\.g|i\.e|imp|deg|abv)|\b[a-z]\.[a-z])$/i; // words whose point ends no sentence

/** Where the sentences of a talk stand, without the spaces between them; a line's end ends one, an abbreviation does not. */
export function sentencesOf(text: string): readonly Sentence[] {
  const ends = [...text.matchAll(stop)].flatMap(({ 0: mark, index }) => {
    const isShort = mark === '.' && short.test(text.slice(Math.max(0, index - 8), index));
    const goesOn = isShort && !/^\s+[A-Z]/.test(text.slice(index + 1, index + 4));
    return goesOn || (isShort && /\d/.test(text.slice(index + 1, index + 4))) ? [] : [mark === '\n' ? index : index + mark.length];
  }); // prettier-ignore
  let from = 0;
  return [...ends, text.length].flatMap((end) => {
    const piece = text.slice(from, end);
    const at = from + (piece.length - piece.trimStart().length);
    from = end;
    return piece.trim() === '' ? [] : [{ at, end: at + piece.trim().length }];
  });
}
