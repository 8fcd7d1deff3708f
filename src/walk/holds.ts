// Whether a figure as said still holds for the house: no farther from it than its manner of rounding allows.
import type { Manner } from './manner.ts';
import { shareSaid } from './said-forms.ts';
import { leastOff, looseness, WORST } from './rounding-steps.ts';

const WRONG_SIDE = 0.1; // part of what is allowed by which the house may lie on the other side of "just under" and the like
const EXACT = 0.01; // part by which a figure that was said to the letter may differ, as in talk/own-house.ts

export type Missed = 'too high' | 'too low';

/** “Just under 1,150” may be any figure down to the next one that would be said; without such a hedge it is the nearest. */
const isSided = (hedge: Manner['hedge']) => hedge?.side === 'under' || hedge?.side === 'over';

interface Room {
  readonly above: number;
  readonly below: number;
}

/** How far above and below what was said the house may lie, in the unit as said: by the rounding, and on the side of the hedge. */
function byRounding(manner: Manner, house: number): Room {
  const { hedge, step, meant, isExact, to } = manner;
  if (to) return { above: step / 2, below: step / 2 };
  if (hedge && hedge.between !== '') return { above: 9.5, below: 0.5 }; // forty-odd: 40 to 49
  const part = isExact ? EXACT : looseness(manner);
  const allowed =
    meant.figureUnit === 'gravity'
      ? step / 2
      : Math.min(isSided(hedge) ? step : step / 2, Math.max(part * Math.abs(house), leastOff(manner, house)));
  const tight = WRONG_SIDE * allowed;
  if (hedge?.side === 'over' || hedge?.side === 'least') return { above: allowed, below: tight };
  return { above: hedge?.side === 'under' || hedge?.side === 'most' ? tight : allowed, below: allowed };
}

/** What is wrong with what was said, for the house's value in the figure's own unit; nothing where it holds. What was as far off when it was said still holds. */
export function whyMissed(manner: Manner, now: number): Missed | undefined {
  const { meant, value, to, number, stood } = manner;
  const house = meant.fromFigure(now);
  if (number.as === 'share' && shareSaid(house, number).value === value) return undefined;
  const { above, below } = byRounding(manner, house);
  const most = WORST * Math.abs(value);
  const off = to ? 0 : Math.min(most, Math.max(-most, stood - value));
  const slip = 1e-9 * Math.abs(house);
  if (house < value - Math.max(below, -off) - slip) return 'too high';
  return house > (to?.value ?? value) + Math.max(above, off) + slip ? 'too low' : undefined;
}
