// Whether a figure as said still holds for the house: no farther from it than its manner of rounding allows.
import type { Manner } from './manner.ts';
import { shareSaid } from './said-forms.ts';
import { looseness } from './steps.ts';

const WRONG_SIDE = 0.1; // part of what is allowed by which the house may lie on the other side of "just under" and the like
const EXACT = 0.01; // part by which a figure that was said to the letter may differ, as in talk/own-house.ts

export type Missed = 'too high' | 'too low';

/** How far above and below what was said the house may lie, in the unit as said. */
function room(manner: Manner, house: number): { above: number; below: number } {
  const { hedge, step, meant, isExact } = manner;
  if (hedge && hedge.between !== '') return { above: 9.5, below: 0.5 }; // forty-odd: 40 to 49
  const part = isExact ? EXACT : looseness(manner);
  const allowed = meant.figureUnit === 'gravity' ? step / 2 : Math.min(step / 2, part * Math.abs(house));
  const tight = WRONG_SIDE * allowed;
  if (hedge?.side === 'over' || hedge?.side === 'least') return { above: allowed, below: tight };
  return hedge?.side === 'under' || hedge?.side === 'most' ? { above: tight, below: allowed } : { above: allowed, below: allowed };
} // prettier-ignore

/** What is wrong with what was said, for the house's value in the figure's own unit; nothing where it holds. */
export function missed(manner: Manner, now: number): Missed | undefined {
  const { meant, value, to, step, number } = manner;
  const house = meant.fromFigure(now);
  const slip = 1e-9 * Math.abs(house);
  if (number.as === 'share' && shareSaid(house, number).value === value) return undefined;
  const { above, below } = to ? { above: step / 2, below: step / 2 } : room(manner, house);
  if (house < value - below - slip) return 'too high';
  return house > (to?.value ?? value) + above + slip ? 'too low' : undefined;
}
