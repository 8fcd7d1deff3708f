// What each quantity of a talk is taken for: as the reader put it right, by a figure's own name before it, or as it is proposed where that is sure; and what has to be asked.
import { quotableFigures, type SaidValue } from '../core/cross-check/quoted.ts';
import { isRefusal } from '../core/refusal.ts';
import { figureIds, talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { labelOf, quotableOf } from '../talk/labels.ts';
import { isLongStay } from '../talk/long-stay.ts';
import { readSaid } from '../talk/said.ts';
import { readScript, type ReadQuantity, type ReadScript } from '../talk/script.ts';
import { NOT_OURS, type SettledMarks } from '../talk/settled.ts';
import { inUnit } from '../talk/units.ts';
import { canBeFigure } from './script-units.ts';

/** What a quantity is taken for, and by whom. */
export interface TakenMark {
  readonly figure: TalkFigureId;
  readonly said: SaidValue;
  readonly by: 'you' | 'name' | 'reader';
}
/** By the place of the quantity in the talk. */
export type TakenFor = Readonly<Record<number, TakenMark>>;

/** A quantity of which it is not sure what it is. */
export interface UnsureMark {
  readonly start: number;
  readonly end: number;
  readonly choices: readonly TalkFigureId[];
}

export const SURE_FROM = 0.8; // a confidence from which a proposal is used without asking
const WORTH_ASKING = 0.3; // and from which one is asked at all, in a talk that tells much that is no figure
const BY_ITSELF = 0.7; // a chance by its own words from which a telling may speak against another; nothing is used of it, both are shown
const CHOICES = 3;

const byLabel = new Map(figureIds.map((id) => [labelOf(id).toLowerCase(), id]));
const saying = /(?:\s*[:=–—-]|\s+(?:is|are|at|of|about|around|exactly|nearly|roughly)|\s+)+$/i;

/** The figure whose own name stands right before a quantity: “Malt a mash: 9,400”. */
function namedBefore(text: string, { start, unit }: ReadQuantity): TalkFigureId | undefined {
  const line = text.slice(Math.max(0, start - 80), start).replace(saying, '');
  const words = line.slice(Math.max(...['\n', ',', ';', '. '].map((mark) => line.lastIndexOf(mark))) + 1);
  const figure = byLabel.get(words.trim().toLowerCase());
  return figure && canBeFigure(unit, figure) ? figure : undefined;
}

/** The ends of a quantity in the unit of a figure that was not proposed for it. */
function endsFor({ value, range, unit }: ReadQuantity, figure: TalkFigureId): readonly number[] {
  const own = talkFigures[figure].unit;
  return (range ?? [value ?? 0]).map((end) => {
    if (unit === '' && own === '%' && end > 0 && end < 1) return 100 * end;
    return unit === '' && own !== 'gravity' ? end : inUnit(end, unit, own);
  });
}

/** How a quantity is said of a figure; “exactly 63.5”, and a nought at the end as in 9.0, count as such. */
function saidFor(text: string, quantity: ReadQuantity, figure: TalkFigureId): SaidValue {
  const proposed = quantity.figure === figure ? quantity.inFigure : undefined;
  const [low = 0, high = low] = proposed ?? endsFor(quantity, figure);
  if (high !== low) return { as: 'range', low: Math.min(low, high), high: Math.max(low, high) };
  if (quantity.approximate) return { as: 'about', value: low };
  const name = quotableOf(figure);
  const exactly = /\bexactly\s+$/i.test(text.slice(Math.max(0, quantity.start - 12), quantity.start));
  const said = name && /\d/.test(quantity.text) ? readSaid(`${exactly ? 'exactly ' : ''}${quantity.text}`, name) : undefined; // prettier-ignore
  if (said && !isRefusal(said) && (said.as === 'exact' || said.as === 'rounded') && said.value === low)
    return said;
  return { as: exactly ? 'exact' : 'rounded', value: low };
}

function takenFor(text: string, quantity: ReadQuantity, settled: SettledMarks): TakenMark | undefined {
  const own = settled[quantity.start];
  if (own === NOT_OURS) return undefined;
  const name = own ?? namedBefore(text, quantity);
  const sure = quantity.confidence >= SURE_FROM ? quantity.figure : undefined;
  const figure = name ?? sure;
  if (figure === undefined) return undefined;
  return { figure, said: saidFor(text, quantity, figure), by: own ? 'you' : name ? 'name' : 'reader' };
}

/** What a quantity might be, the likeliest first. */
export const likelyReadings = ({ figure, runnersUp }: ReadQuantity): readonly TalkFigureId[] =>
  [...new Set([...(figure ? [figure] : []), ...runnersUp])].slice(0, CHOICES);

/** A text read; of a few figures each line stands by itself, so that 6 above “Weeks a year” is not six weeks. */
export const readLines = (text: string, asksAll: boolean): ReadScript =>
  readScript(asksAll ? text.replaceAll('\n', ';') : text);

/** What every quantity is taken for, and which have to be asked; `asksAll` where everything typed is meant as a figure. */
export function takenIn(
  text: string,
  quantities: readonly ReadQuantity[],
  settled: SettledMarks,
  asksAll: boolean,
): { readonly taken: TakenFor; readonly unsure: readonly UnsureMark[] } {
  const taken: Record<number, TakenMark> = {};
  const unsure: UnsureMark[] = [];
  for (const quantity of quantities) {
    const { start, end, confidence } = quantity;
    const found = takenFor(text, quantity, settled);
    if (found) taken[start] = found;
    else if (settled[start] === undefined && (asksAll || confidence >= WORTH_ASKING)) {
      const choices = likelyReadings(quantity);
      if (choices.length > 0) unsure.push({ start, end, choices });
    }
  }
  return { taken, unsure };
}

/** What is not taken for a figure, though by its own words it would be one: it may tell otherwise what is told already. */
export function tellingsIn(text: string, quantities: readonly ReadQuantity[], settled: SettledMarks, taken: TakenFor): TakenFor {
  return Object.fromEntries(
    quantities.flatMap((quantity) => {
      const { start, end, kind, byItself } = quantity;
      if (taken[start] || settled[start] !== undefined) return [];
      if (byItself?.figure && byItself.chance >= BY_ITSELF)
        return [[start, { figure: byItself.figure, said: saidFor(text, { ...quantity, figure: byItself.figure, inFigure: byItself.inFigure }, byItself.figure), by: 'reader' as const }]];
      const hours = kind === 'time' ? endsFor(quantity, 'fermentationHours').at(-1)! : 0;
      return isLongStay(text, start, end, hours) ? [[start, { figure: 'fermentationHours' as const, said: saidFor(text, quantity, 'fermentationHours'), by: 'reader' as const }]] : [];
    }),
  );
} // prettier-ignore

/** What is quoted of the figures that can be held against each other: each as it is told first. */
export function quotedOf(
  taken: TakenFor,
): Readonly<Partial<Record<keyof typeof quotableFigures, SaidValue>>> {
  const quoted: Partial<Record<keyof typeof quotableFigures, SaidValue>> = {};
  for (const { figure, said } of Object.values(taken)) {
    const name = quotableOf(figure);
    if (name) quoted[name] ??= said;
  }
  return quoted;
}
