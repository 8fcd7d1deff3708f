// "An eight-hour run" becomes "a twelve-hour run": the article before a figure follows the figure.
import type { Change } from './stale.ts';

const vowel = /^(?:eight|eleven|hour|11(?!\d)|11[,.]?\d{3}(?!\d)|18(?!\d)|18[,.]?\d{3}(?!\d)|8)/i;
const article = /(?<![a-z'’])(an?)(\s+)$/i;

/** A change with that of the article before it, if one has to follow. */
export function withArticle(text: string, change: Change): readonly Change[] {
  const found = article.exec(text.slice(Math.max(0, change.at - 6), change.at));
  if (!found) return [change];
  const [whole, said, space] = found;
  const wanted = said![0]! + (vowel.test(change.anew) ? 'n' : '');
  if (wanted.toLowerCase() === said!.toLowerCase() || /^an?\s/i.test(change.anew)) return [change];
  return [{ at: change.at - whole.length, stood: whole + change.stood, anew: wanted + space + change.anew }];
}
