// More than one bottle: what comes out of the casks divided among bottles of several sizes and strengths.
import { bottlesFrom } from '../maturing/filling.ts';
import { afterFiltering } from '../maturing/to-bottle.ts';
import { count, kilograms, litres20, litresOfAlcohol, strength, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { letDown, type Line } from './line.ts';

/** A bottle that a house fills. */
export interface Bottle {
  /** cL. */
  readonly size: number;
  readonly strength: Quantity<'strength'>;
  /** Part of what comes out of the casks, %, 0–100. */
  readonly share: number;
}

/**
 * A line that bottles so: each bottle from its share of what comes out of the casks, let down to its strength, less what filters
 * take. The rest goes into the house’s own bottle. The bottled strength is that of all together. Shares of more than 100 % throw.
 * @example withBottles(line, [{ size: 5, strength: 43, share: 101 }]) // throws: The share (more than all of it)
 */
export function withBottles(line: Line, bottles: readonly Bottle[]): Line {
  const { house, matured, casks } = line;
  const shared = bottles.reduce((sum, { share }) => sum + within('The share, %,', share, 0, 100), 0);
  within('All shares together, %,', shared, 0, 100);
  const own: Bottle = { size: house.bottleSize, strength: house.bottlingStrength, share: 100 - shared };
  const parts = [...bottles, own].map(({ size, strength, share }) => {
    const part = {
      volume: litres20((matured.volume * share) / 100),
      strength: matured.strength,
      alcohol: litresOfAlcohol((matured.alcohol * share) / 100),
    };
    const bottled = afterFiltering(letDown(part, strength), house.filterLoss);
    return { ...bottled, bottles: bottlesFrom(bottled.volume, size) };
  });
  const sum = (of: 'volume' | 'alcohol' | 'water' | 'inFilters' | 'bottles') =>
    parts.reduce((all, part) => all + part[of], 0);
  const number = sum('bottles');
  return {
    ...line,
    barley: { ...line.barley, perBottle: kilograms(line.barley.mass / number) },
    bottling: {
      volume: litres20(sum('volume')),
      strength: strength((100 * sum('alcohol')) / sum('volume')),
      alcohol: litresOfAlcohol(sum('alcohol')),
      water: litres20(sum('water')),
      inFilters: litresOfAlcohol(sum('inFilters')),
      isMixed: parts.filter(({ bottles }) => bottles > 0).length > 1,
      bottles: count(number),
      bottlesPerCask: count(number / casks.perMash),
      bottlesPerYear: count(number * line.pace.mashesPerYear),
    },
  };
}
