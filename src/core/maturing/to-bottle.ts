// A cask from filling to bottle: what the wood drinks, the air takes, and what stays in the cask and in the filters.
import { litres20, litresOfAlcohol, type Portion, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { ageCask, type CaskPlan, type CaskYear } from './cask.ts';

const MOST_DRUNK = 20; // % of the filling; a dry cask is said to drink about 2
const MOST_LEFT = 50; // L in an emptied cask; a litre or two is usual

export interface CaskThroughWood extends CaskPlan {
  /** Part of the filling that the dry wood drinks in its first days, %. */
  readonly indrink: Quantity<'percent'>;
  /** Spirit that stays in the cask when it is emptied, L at 20 °C. */
  readonly caskResidue: Quantity<'volume20'>;
}

/** Where a filling went: wood, air, what stays in the cask and what comes out; the alcohol of the four is all that was filled. */
export interface OutOfWood {
  readonly toWood: Portion;
  /** What is left to the air, year by year; year 0 is after the first drink. */
  readonly record: readonly CaskYear[];
  readonly toAir: Quantity<'alcohol'>;
  readonly inCask: Portion;
  readonly emptied: Portion;
}

const part = (volume: number, { strength }: Pick<Portion, 'strength'>): Portion => ({
  volume: litres20(volume),
  strength,
  alcohol: litresOfAlcohol((volume * strength) / 100),
});

/**
 * The filling, less what the dry wood drinks in its first days, %, 0–20; its strength is left as it was.
 * @example afterFirstDrink(litres20(200), percent(2)) // 196 (200 less 4)
 */
export function afterFirstDrink(
  filling: Quantity<'volume20'>,
  indrink: Quantity<'percent'>,
): Quantity<'volume20'> {
  return litres20(filling * (1 - within('The part that the wood drank, %,', indrink, 0, MOST_DRUNK) / 100));
}

/**
 * A cask from filling to emptying. The first drink is of the filling's strength, what stays behind of the old spirit's;
 * a cask that holds less than the residue gives nothing. Ageing as in `ageCask`.
 * @example throughWood({ volume: litres20(200), strength: strength(60), cask: { size: litres(200) }, store: { alcoholLoss: percent(0), humidity: percent(65), steadyHumidity: percent(65) }, years: years(0), indrink: percent(2), caskResidue: litres20(1) }) // { toWood: { volume: 4 }, toAir: 0, inCask: { volume: 1 }, emptied: { volume: 195.000 } } (200 less 4 less 1)
 */
export function throughWood({ indrink, caskResidue, ...plan }: CaskThroughWood): OutOfWood {
  within('The spirit left in an emptied cask, L,', caskResidue, 0, MOST_LEFT);
  const volume = afterFirstDrink(plan.volume, indrink);
  const record = ageCask({ ...plan, volume });
  const last = record.at(-1)!;
  const left = Math.min(caskResidue, last.volume);
  return {
    toWood: part(plan.volume - volume, plan),
    record,
    toAir: litresOfAlcohol(record[0]!.alcohol - last.alcohol),
    inCask: part(left, last),
    emptied: part(last.volume - left, last),
  };
}

/**
 * Spirit let down, after filters, pipes and spills have taken a part of it, %; and the alcohol that they took.
 * @example afterFiltering({ volume: litres20(100), strength: strength(40), alcohol: litresOfAlcohol(40) }, percent(5)) // { volume: 95, strength: 40, alcohol: 38, inFilters: 2 } (a twentieth)
 */
export function afterFiltering<S extends Portion>(
  spirit: S,
  filterLoss: Quantity<'percent'>,
): S & { readonly inFilters: Quantity<'alcohol'> } {
  within('The part lost in filters, %,', filterLoss, 0, 100);
  const kept = 1 - filterLoss / 100;
  return {
    ...spirit,
    volume: litres20(spirit.volume * kept),
    alcohol: litresOfAlcohol(spirit.alcohol * kept),
    inFilters: litresOfAlcohol(spirit.alcohol * (1 - kept)),
  };
}
