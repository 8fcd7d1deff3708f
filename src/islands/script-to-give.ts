// Which figures of a talk a house can be given: those that are sure or answered and that nobody has given it yet; and which are left out, and why.
import { foreshotsCount } from '../core/distilling/foreshots.ts';
import type { House } from '../core/line/house.ts';
import { isNumberName, type NumberName } from '../house/figures.ts';
import type { Known } from '../house/parts/known.ts';
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import type { TakenFor } from './script-taken.ts';
import { toldTwice } from './script-twice.ts';

export interface FigureToGive {
  /** The figure as the talk and as the house names it. */
  readonly figure: TalkFigureId;
  readonly name: NumberName;
  /** As it is told first, in the unit of the house. */
  readonly value: number;
}
export interface FigureLeft {
  readonly figure: TalkFigureId;
  /** Why it is not given, as the end of a sentence about it. */
  readonly why: string;
}
export interface ToGive {
  readonly give: readonly FigureToGive[];
  readonly left: readonly FigureLeft[];
}

/** What a talk can give a house of which so much is known; what is known already stays, and is not named. */
export function figuresToGive(
  { taken }: { readonly taken: TakenFor },
  house: House,
  { given }: Known,
): ToGive {
  const give: FigureToGive[] = [];
  const left: FigureLeft[] = [];
  const done = new Set<TalkFigureId>();
  const twice = toldTwice(taken); // what is not taken for a figure, another house's it may be, holds nothing back
  for (const { figure, said } of Object.values(taken)) {
    const name = talkFigures[figure].inTable;
    if (done.has(figure) || name === undefined || !isNumberName(name) || name in given) continue;
    done.add(figure);
    if (twice.some((each) => each.figure === figure)) left.push({ figure, why: 'told twice, and not alike' });
    else if (said.as === 'range') left.push({ figure, why: 'told as a range' });
    else if (!foreshotsCount(name, house.foreshotsBy))
      left.push({ figure, why: 'not how this house ends its foreshots' });
    else give.push({ figure, name, value: said.value });
  }
  return { give, left };
}
