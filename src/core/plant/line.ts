// The line of a house with its own vessels: its distilling is the plant's, and all that comes after follows.
import type { House } from '../line/house.ts';
import { lineWith, type Line } from '../line/line.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import { quantity } from '../quantity.ts';
import { amountsOf, minus } from '../spirit/amounts.ts';
import { heatToBoilOff } from '../vapour/latent-heat.ts';
import { distilIn } from './distil.ts';
import type { Plant, Stills } from './plant.ts';
import { foreshotsByRun } from './runs-of-mash.ts';

/**
 * True when stills of one kind are all of one reflux.
 * @example areAlike([{ reflux: 0.1 }, { reflux: 0.2 }]) // false (two refluxes)
 */
export const areAlike = (stills: readonly Stills[]): boolean =>
  stills.every(({ reflux }) => reflux === stills[0]!.reflux);

/**
 * True when a house in its plant distils otherwise than with one charge of one wash still and one spirit still to a mash.
 * @example saysMore({ scheme: 'thrice' }, { foreshotsBy: 'share' }) // true (three distillations are not two)
 */
export const saysMore = (plant: Plant, house: Pick<House, 'foreshotsBy'>): boolean =>
  plant.scheme !== 'twice' ||
  !areAlike(plant.washStills) ||
  !areAlike(plant.spiritStills) ||
  (plant.washStills.length > 0 && foreshotsByRun(plant, house));

/**
 * A plant in its house: wash stills, or spirit stills, that are alike have the reflux that the house gives for them.
 * @example inHouse({ washStills: [{ reflux: 0.9 }], spiritStills: [] }, house).washStills[0].reflux === house.washReflux // true (stills that are alike have the house’s reflux)
 */
export function inHouse(plant: Plant, house: House): Plant {
  const alike = (stills: readonly Stills[], reflux: number) =>
    areAlike(stills) ? stills.map((group) => ({ ...group, reflux })) : stills;
  return {
    ...plant,
    washStills: alike(plant.washStills, house.washReflux),
    spiritStills: alike(plant.spiritStills, house.spiritReflux),
  };
}

/**
 * A plant whose hours of fermentation nobody has given, with those of its house.
 * @example withHours({ shortFermentation: 60, usual: ['shortFermentation'] }, 72) // { shortFermentation: 72, usual: [] } (the house’s own hours)
 */
export function withHours(plant: Plant, hours: number): Plant {
  if (!plant.usual?.includes('shortFermentation')) return plant;
  return {
    ...plant,
    shortFermentation: hours,
    usual: plant.usual.filter((each) => each !== 'shortFermentation'),
  };
}

/**
 * Every figure of a house that distils in a plant: as `line`, with the plant’s scheme, and the reflux of each still where the
 * stills of a kind are not alike. Twice, with stills alike and a mash to a charge, it is `line` itself. Spent lees are those of
 * the intermediate stills too. Refuses what `line` refuses, and what `distilIn` does.
 * @example lineWithPlant(house, { scheme: 'twice', washStills: [], spiritStills: [] }) // refuses: No wash still is named (so nothing is distilled)
 */
export function lineWithPlant(house: House, plant: Plant): Line | Refusal {
  const own = inHouse(plant, house);
  const found = lineWith(house, (wash) => distilIn(own, house, wash));
  if (isRefusal(found) || !found.round.between) return found;
  const { charge, lees } = found.round.between;
  const once = heatToBoilOff(minus(amountsOf(charge), amountsOf(lees)));
  return { ...found, stills: { boilOff: quantity('energy', found.stills.boilOff + once) } };
}
