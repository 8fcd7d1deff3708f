// The questions of a trainer's own that a class book's sheets ask, as this browser knows them: from its bank, its sheets and the links of what was set.
import { worksOf, type ClassBook } from '../exercises/class/book.ts';
import { ownAskedIn, type OwnKnown } from '../exercises/class/own-words.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import { sheetsSet } from './sheets-set.ts';

/** Those that are known here; a book that asks none fetches nothing. */
export async function ownQuestionsKnown(book: ClassBook): Promise<OwnKnown> {
  const asked = ownAskedIn(book);
  const known = new Map<string, OwnQuestion>();
  if (asked.size === 0) return known;
  const [kept, address] = await Promise.all([import('./own-kept.ts'), import('./own-address.ts')]);
  const take = (questions: readonly OwnQuestion[]) =>
    questions.forEach((each) => asked.has(each.id) && known.set(each.id, each));
  take([...(kept.keptDraft()?.own ?? []), ...kept.keptSheets().all.flatMap(({ own }) => own)]);
  take(kept.keptBank().all);
  for (const { address: at } of [...worksOf(book), ...sheetsSet()]) {
    if (known.size === asked.size) break;
    const read = at.startsWith('sheet/own/#') ? await address.readOwnLink(at.slice(at.indexOf('#'))) : undefined; // prettier-ignore
    if (typeof read === 'object') take(read.sheet.own);
  }
  return known;
}
