// Words put in the place of others in a text, and where everything else then stands.

export interface TextChange {
  /** Place in the text as it was, in UTF-16 units. */
  readonly at: number;
  readonly stood: string;
  readonly anew: string;
}

/** A text with some of its words changed, every other character kept; places count from `from`. */
export const withWordsChanged = (text: string, changes: readonly TextChange[], from = 0): string =>
  changes
    .toSorted((a, b) => b.at - a.at)
    .reduce((now, { at, stood, anew }) => now.slice(0, at - from) + anew + now.slice(at - from + stood.length), text); // prettier-ignore

/** Where a place stands once the words before it are changed. */
export const placeAfter = (place: number, changes: readonly TextChange[]): number =>
  changes.reduce((now, { at, stood, anew }) => (at + stood.length <= place ? now + anew.length - stood.length : now), place); // prettier-ignore

const vowel = /^(?:(?!one\b|once\b|u[sk]\b)[aeiou]|hour|8|1[18](?!\d)|1[18][,. ]?\d{3}(?!\d))/i;
const article = /(?<![a-z'’])(an?)(\s+)$/i;

/** A change with that of the article before it: "an eight-hour run" becomes "a twelve-hour run". */
export function withArticle(text: string, change: TextChange): TextChange {
  const found = article.exec(text.slice(Math.max(0, change.at - 6), change.at));
  if (!found || /^an?\s/i.test(change.anew)) return change;
  const [whole, said, space] = found;
  const wanted = said![0]! + (vowel.test(change.anew) ? 'n' : '');
  if (wanted === said) return change;
  return { at: change.at - whole.length, stood: whole + change.stood, anew: wanted + space + change.anew };
}
