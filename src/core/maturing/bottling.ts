// A bottling run: matured spirit let down, filtered, and put into bottles and cases.
import { count, litres20, litresOfAlcohol, type Quantity, type Spirit } from '../quantity.ts';
import { within } from '../range.ts';
import { reduce, type Reduction } from '../spirit/mixing.ts';
import { bottlesFrom } from './filling.ts';

export interface BottlingPlan {
  readonly to: Quantity<'strength'>;
  /** Part of the volume lost in filters, pipes and spills, %. */
  readonly lost: Quantity<'percent'>;
  readonly bottle: Quantity<'bottle'>;
  readonly perCase: Quantity<'count'>;
}

export interface BottlingRun {
  readonly reduction: Reduction;
  /** Volume that reaches the bottles, L at 20 °C. */
  readonly bottled: Quantity<'volume20'>;
  readonly bottles: Quantity<'count'>;
  readonly cases: Quantity<'count'>;
  readonly loose: Quantity<'count'>;
  /** Pure alcohol in the whole bottles. */
  readonly alcohol: Quantity<'alcohol'>;
  /** Pure alcohol that is in no bottle: lost, or too little for one more. */
  readonly alcoholLost: Quantity<'alcohol'>;
}

const HAIR = 1e-9; // of a bottle: rounding must not lose the last one

/**
 * Whole bottles and whole cases from a spirit, with what is over. Refuses (throws) a strength above the spirit's own.
 * @example bottleSpirit({ volume: litres20(100), strength: strength(40) }, { to: strength(40), lost: percent(2), bottle: quantity('bottle', 70), perCase: count(6) }) // { bottled: 98.00, bottles: 140, cases: 23, loose: 2 } (98 ÷ 0.7)
 */
export function bottleSpirit(spirit: Spirit, { to, lost, bottle, perCase }: BottlingPlan): BottlingRun {
  within('The part lost, %,', lost, 0, 100);
  const per = Math.floor(within('The bottles in a case', perCase, 1, 1000));
  const reduction = reduce(spirit, to);
  const bottled = litres20(reduction.volume * (1 - lost / 100));
  const bottles = Math.floor(bottlesFrom(bottled, bottle) + HAIR);
  const alcohol = (((bottles * bottle) / 100) * to) / 100;
  return {
    reduction,
    bottled,
    bottles: count(bottles),
    cases: count(Math.floor(bottles / per)),
    loose: count(bottles % per),
    alcohol: litresOfAlcohol(alcohol),
    alcoholLost: litresOfAlcohol(Math.max(0, (spirit.volume * spirit.strength) / 100 - alcohol)),
  };
}
