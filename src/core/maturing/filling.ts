// New spirit into casks of mixed sizes, and old spirit into bottles.
import { count, litres, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { VERY_MUCH, within } from '../range.ts';

/** Nominal capacity of the casks a house fills, L; cask guides and a trade FAQ of 1995, see `casks`. */
export const CASK_SIZES = { barrel: litres(200), hogshead: litres(250), butt: litres(500) } as const;

/** Of every hundred casks, how many are barrels and hogsheads; the rest are butts. */
export interface CaskMix {
  readonly barrels: Quantity<'percent'>;
  readonly hogsheads: Quantity<'percent'>;
}

/**
 * Mean capacity, L, of a mix of casks. Refuses more than a hundred in a hundred.
 * @example meanCask({ barrels: percent(50), hogsheads: percent(50) }) // 225 (the mean of 200 and 250)
 */
export function meanCask({ barrels, hogsheads }: CaskMix): Quantity<'volume'> | Refusal {
  within('The barrels in a hundred casks', barrels, 0, 100);
  within('The hogsheads in a hundred casks', hogsheads, 0, 100);
  const butts = 100 - barrels - hogsheads;
  if (butts < 0)
    return refuse(`${barrels} barrels and ${hogsheads} hogsheads are more than a hundred casks.`);
  return litres(
    (barrels * CASK_SIZES.barrel + hogsheads * CASK_SIZES.hogshead + butts * CASK_SIZES.butt) / 100,
  );
}

/**
 * Bottles, in whole and part, from a volume at 20 °C; `size` in centilitres.
 * @example bottlesFrom(litres20(7), 70) // 10 (700 cL)
 */
export function bottlesFrom(volume: Quantity<'volume20'>, size: number): Quantity<'count'> {
  within('The volume, L,', volume, 0, VERY_MUCH);
  within('The bottle, cL,', size, 1, 1000);
  return count((100 * volume) / size);
}
