// What a class book calls a question of a trainer's own and its known mistakes: as the trainer wrote them, where that is known here.
import { families, type Family } from '../families.ts';
import type { OwnQuestion } from '../own/own-question.ts';
import { worksOf, type ClassBook } from './book.ts';

/** Questions of trainers' own by their ids. */
export type OwnKnown = ReadonlyMap<string, OwnQuestion>;

const isOwn = (kind: string) => kind.startsWith('own-');

/** The questions of a trainer's own that the sheets in a book ask. */
export const ownAskedIn = (book: ClassBook): ReadonlySet<string> =>
  new Set(worksOf(book).flatMap(({ kinds }) => kinds.flat().filter(isOwn)));

/** Where a kind whose title is not known was asked: “Week two”, question 4. */
export function placeAsked(book: ClassBook, kind: string): string {
  for (const { title, kinds } of worksOf(book)) {
    const place = kinds.map((version) => version.indexOf(kind)).find((at) => at >= 0);
    if (place !== undefined) return `“${title}”, question ${place + 1}`;
  }
  return 'A question that is not known here';
}

/** A recognised mistake in words. Those of a question of one's own all have one family: of several it is not known which was made. */
export function mistakeWords(kind: string, family: Family, own: OwnKnown): string {
  const question = family === 'otherFigure' ? own.get(kind) : undefined;
  const said = question?.asks === 'number' ? question.slips.map(({ say }) => say).filter((say) => say !== '') : []; // prettier-ignore
  if (said.length === 0) return isOwn(kind) && family === 'otherFigure' ? 'A known mistake of the trainer’s own' : families[family]; // prettier-ignore
  return said.length === 1 ? `“${said[0]}”` : `One of ${said.map((say) => `“${say}”`).join(', ')}`;
}
