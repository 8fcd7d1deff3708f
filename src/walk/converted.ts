// A quantity said in another unit: the coarsest number, with the hedge that is true of it, that still holds once it is heard again.
import { whyMissed } from './holds.ts';
import { counterpart } from './hedges.ts';
import { mannerOfSaid, type Manner } from './manner.ts';
import { withoutNoise } from './neat.ts';
import type { Conversion } from './said-units.ts';
import { stepsFrom, TRIFLE } from './rounding-steps.ts';

export interface ConversionChoice {
  readonly value: number;
  readonly step: number;
  readonly before: string;
  readonly change?: string;
}
interface Asked {
  readonly manner: Manner;
  /** The true value in the unit that is asked for, and in the figure's own. */
  readonly value: number;
  readonly now: number;
  readonly was: number;
  readonly to: Conversion;
  /** The coarsest step to try. */
  readonly step: number;
  /** No hedge may be put where none was: behind an article, or before a noun. */
  readonly isBound: boolean;
  readonly says: (choice: ConversionChoice) => string;
}

const PLAIN = 0.01; // part of a value by which it may be rounded without a word on it; common practice of speech, no source
const PAST = 0.005; // part of a value by which the house may lie past a bound that was said, where nothing is known of the house

/** Whether all that is known of the house is what was said of it: it lies past that, on the side of the hedge. */
const isAsSaid = ({ stood, value }: Manner, now: number, was: number): boolean =>
  now === was && Math.abs(stood - value) <= TRIFLE * Math.abs(value);

/** The ways to say a value at one step, the one nearest to how it was said first. */
function waysAt(step: number, { manner, value, now, was, isBound }: Asked): readonly ConversionChoice[] {
  const { hedge, number } = manner;
  const to = (round: (many: number) => number) => withoutNoise(round(withoutNoise(value / step)) * step);
  const off = (said: number) => Math.abs(said - value) / Math.abs(value || 1);
  const near = to(Math.round);
  const side = hedge?.side;
  const before = hedge?.before ?? '';
  const word = before.trim().toLowerCase();
  if (side === 'exact')
    return off(near) < 1e-9 ? [{ value: near, step, before }] : [{ value: near, step, before: '', change: `“${word}” left out, as it is rounded` }]; // prettier-ignore
  if (side === 'least' || side === 'most')
    return [{ value: to(side === 'least' ? Math.floor : Math.ceil), step, before }];
  if (side === 'under' || side === 'over') {
    if (off(near) <= TRIFLE)
      return [isAsSaid(manner, now, was) ? { value: near, step, before } : { value: near, step, before: '', change: `“${word}” left out, as it is that very figure` }]; // prettier-ignore
    const on = to(side === 'under' ? Math.ceil : Math.floor);
    const kept = { value: on, step, before };
    const turned = counterpart(before);
    return now === was ? [kept] : [kept, { value: near, step, before: `${turned} `, change: `“${turned}” for “${word}”` }]; // prettier-ignore
  }
  if (hedge || off(near) <= PLAIN) return [{ value: near, step, before }];
  if (number.as === 'figures' || isBound) return [];
  const added = near < value ? 'just over' : 'just under';
  return [added, 'about'].map((hedged) => ({ value: near, step, before: `${hedged} `, change: `“${hedged}”, as it is rounded` })); // prettier-ignore
}

/** How a value is said in a unit that was asked for: what is chosen holds of the house by `whyMissed`, whatever it stood for before. */
export function converted(asked: Asked): ConversionChoice {
  const { manner, value, now, was, to, says } = asked;
  const steps = stepsFrom(asked.step, value, manner);
  const side = manner.hedge?.side;
  const sign = !isAsSaid(manner, now, was) ? 0 : side === 'over' ? 1 : side === 'under' ? -1 : 0;
  const past = now + sign * PAST * Math.abs(now);
  const holds = (choice: ConversionChoice, houses: readonly number[]) => {
    const heard = mannerOfSaid(says(choice), to.toFigure(choice.value), manner.meant.figureUnit);
    return heard === undefined || houses.every((house) => whyMissed(heard, house) === undefined);
  };
  const first = (houses: readonly number[]) => {
    for (const step of steps) {
      const found = waysAt(step, asked).find((choice) => holds(choice, houses));
      if (found) return found;
    }
    return undefined;
  };
  return first([now, past]) ?? first([now]) ?? { value: withoutNoise(value), step: steps.at(-1) ?? asked.step, before: '' };
} // prettier-ignore
