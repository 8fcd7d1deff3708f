// What one barrel, one hogshead and one butt of a house give, each filled full and emptied after the house's years in wood.
import type { Line } from '../line/line.ts';
import { caskAfter, lossInStore, MOST_LOSS } from '../maturing/cask.ts';
import { CASK_SIZES } from '../maturing/filling.ts';
import { afterFirstDrink } from '../maturing/to-bottle.ts';
import { litres20, litresOfAlcohol, type Portion, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { bottlesFromOne } from './dump.ts';

/**
 * Whole bottles from one cask of the house, filled to `size`, L. It ages in the house's store, where the loss was found on the mean
 * cask, so a small one loses faster. Refuses a loss above 30 % a year, and a cask that is too weak to bottle or gives nothing.
 * @example bottlesFromCaskOf({ house: { ...house, yearsInWood: 0, indrink: 0, bottlingStrength: 40, filterLoss: 0, caskResidue: 4, bottleSize: 70 }, casks: { meanSize: 200 }, filling: { strength: 40 } }, litres(200)) // 280 (196 ÷ 0.7)
 */
export function bottlesFromCaskOf(
  { house, casks, filling }: Line,
  size: Quantity<'volume'>,
): Quantity<'count'> | Refusal {
  const began = { volume: afterFirstDrink(litres20(size), house.indrink), strength: filling.strength };
  const plan = {
    ...began,
    cask: { size, measuredOn: casks.meanSize },
    store: {
      alcoholLoss: house.alcoholLoss,
      humidity: house.storeHumidity,
      steadyHumidity: house.steadyHumidity,
    },
    years: house.yearsInWood,
  };
  if (lossInStore(plan) > MOST_LOSS)
    return refuse(`It would lose more than ${MOST_LOSS} % of its alcohol in a year.`);
  const held: Portion =
    house.yearsInWood === 0
      ? { ...began, alcohol: litresOfAlcohol((began.volume * began.strength) / 100) }
      : caskAfter(plan);
  return bottlesFromOne(held, house);
}

/**
 * The same for each cask that a house fills, by its name.
 * @example bottlesFromCasks(line).map(([name, size]) => [name, size]) // [['barrel', 200], ['hogshead', 250], ['butt', 500]] (the casks that a house fills)
 */
export const bottlesFromCasks = (line: Line) =>
  (Object.keys(CASK_SIZES) as (keyof typeof CASK_SIZES)[]).map(
    (name) => [name, CASK_SIZES[name], bottlesFromCaskOf(line, CASK_SIZES[name])] as const,
  );
