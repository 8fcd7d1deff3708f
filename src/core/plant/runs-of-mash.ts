// How many charges of its spirit stills a mash comes to, as far as foreshots by litres or minutes hang on that.
import type { House } from '../line/house.ts';
import { quantity, type Quantity } from '../quantity.ts';
import type { Plant, Stills } from './plant.ts';

const OWN_CHARGE = 0.5; // of a charge: a mash that fills more is run by itself, less is kept for the next; common practice

/**
 * Charges to a mash whose low wines and feints are `volume` L: 2.4 where three stills take turns, 0.33 where one charge is
 * of three mashes. One where it fills more than half a charge and no more than a whole one.
 */
export function runsOfMash(stills: readonly Stills[], volume: number): Quantity<'ratio'> {
  const all = stills.reduce((sum, { number }) => sum + number, 0);
  const hold = stills.reduce((sum, { number, charge }) => sum + number * charge, 0);
  const runs = (volume * all) / hold;
  return quantity('ratio', runs > OWN_CHARGE && runs < 1 ? 1 : runs);
}

/** True where foreshots are so many litres, or minutes, of a run, and what the spirit stills take is known. */
export const foreshotsByRun = (
  { spiritStills }: Plant,
  { foreshotsBy }: Pick<House, 'foreshotsBy'>,
): boolean =>
  (foreshotsBy === 'volume' || foreshotsBy === 'minutes') &&
  spiritStills.length > 0 &&
  spiritStills.every(({ usual }) => !usual?.includes('charge'));
