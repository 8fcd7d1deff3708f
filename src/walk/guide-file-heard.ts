// What a new guide says of a figure, read as it is said: “just under five and a half thousand litres”, a sentence with one quantity in it.
import type { KindName } from '../core/kinds.ts';
import { readQuantity } from '../core/reading/quantity.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';
import { quantitiesIn } from '../talk/quantities.ts';
import type { SaidAnswer } from './guide-file-judge.ts';
import { hedgeAround, sideOf, withoutHedge } from './hedges.ts';

export interface FigureAsked {
  readonly kind: KindName;
  readonly label: string;
  /** The reader's own unit, for a number without one. */
  readonly unit: string;
}

/** Units in which a number without one may be meant beside the reader's: a mash is said in tonnes. */
const alsoIn: Partial<Readonly<Record<KindName, string>>> = { mass: 't' };
const PACE = /\s+(?:a|an|per|each|every|from a|in a|for a)\s+(?:mash|week|year|cask|bottle|charge|run)\b.*$/i;

/** The words of the one quantity in a sentence, with what hedges it; nothing where there is none or more than one. */
function quantityWords(text: string): { readonly words: string; readonly hedge: string } | undefined {
  const [found, more] = quantitiesIn(text);
  if (!found || more) return undefined;
  const { before } = hedgeAround(text, found.start, found.end);
  return { words: text.slice(found.start, found.end), hedge: text.slice(found.start - before, found.start) };
}

/** What was said of a figure, in the unit of its kind, or a sentence that says why it is none. */
export function figureHeard(text: string, { kind, label, unit }: FigureAsked): SaidAnswer | Refusal {
  const plain = text.trim().replace(PACE, '');
  const read = (words: string, inUnit: string) => readQuantity(words, { kind, label, unit: inUnit });
  const first = read(plain, unit);
  const found = isRefusal(first) ? quantityWords(plain) : undefined;
  const words = found?.words ?? plain;
  const meant = found ? read(words, unit) : first;
  if (isRefusal(meant)) return first as Refusal;
  if (meant.as === 'range') return { numbers: [meant.low, meant.high], isRange: true };
  const also = alsoIn[kind] === undefined ? undefined : read(words, alsoIn[kind]);
  const numbers = [meant.value, ...(also && !isRefusal(also) && 'value' in also ? [also.value] : [])];
  const { before, after } = withoutHedge(plain);
  const hedge = (found?.hedge ?? before) || after;
  return { numbers: [...new Set(numbers)], ...(hedge.trim() === '' ? {} : { side: sideOf(hedge) }) };
}
