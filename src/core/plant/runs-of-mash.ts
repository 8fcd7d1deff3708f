// How many runs of its spirit stills a mash comes to, as foreshots by litres or minutes hang on that.
import type { House } from '../line/house.ts';
import { quantity, type Quantity } from '../quantity.ts';
import { chargesOfStills } from './group-charges.ts';
import type { Plant } from './plant.ts';

/**
 * Runs to a mash whose low wines and feints are `volume` L: 2 where two stills take half each, 0.33 where one charge is of three mashes.
 * @example runsOfMash({ spiritStills: [{ number: 2, charge: 4000, hours: 8 }] }, 8000, { mashesPerWeek: 5 }) // 2 (two charges of 4,000 L)
 */
export function runsOfMash(
  { spiritStills }: Plant,
  volume: number,
  { mashesPerWeek }: Pick<House, 'mashesPerWeek'>,
): Quantity<'ratio'> {
  const groups = chargesOfStills(spiritStills, volume, mashesPerWeek);
  return quantity(
    'ratio',
    groups.reduce((sum, { aMash }) => sum + aMash, 0),
  );
}

/**
 * True where foreshots are so many litres, or minutes, of a run, and what the spirit stills take is known.
 * @example foreshotsByRun({ spiritStills: [{ charge: 4000 }] }, { foreshotsBy: 'share' }) // false (a share is the same of one run and of two)
 */
export const foreshotsByRun = (
  { spiritStills }: Plant,
  { foreshotsBy }: Pick<House, 'foreshotsBy'>,
): boolean =>
  (foreshotsBy === 'volume' || foreshotsBy === 'minutes') &&
  spiritStills.length > 0 &&
  spiritStills.every(({ usual }) => !usual?.includes('charge'));
