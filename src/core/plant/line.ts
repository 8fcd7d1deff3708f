// The line of a house with its own vessels: its distilling is the plant's, and all that comes after follows.
import type { House } from '../line/house.ts';
import { lineWith, type Line } from '../line/line.ts';
import { quantity } from '../quantity.ts';
import type { Refusal } from '../refusal.ts';
import { amountsOf, minus } from '../spirit/amounts.ts';
import { heatToBoilOff } from '../vapour/latent-heat.ts';
import { distilIn, type PlantRound } from './distil.ts';
import type { Plant } from './plant.ts';

export type PlantLine = Line & { readonly round: PlantRound };

/**
 * Every figure of a house that distils in a plant: as `line`, with the reflux of each still in place of the house’s own two, and
 * the plant’s scheme. Twice, with stills alike and of the house’s reflux, it is `line` itself. Spent lees are those of the
 * intermediate stills too. Refuses what `line` refuses, and what `distilIn` does.
 */
export function lineWithPlant(house: House, plant: Plant): PlantLine | Refusal {
  const found = lineWith(house, (wash) => distilIn(plant, house, wash));
  if ('refused' in found || !found.round.between) return found;
  const { charge, lees } = found.round.between;
  const once = heatToBoilOff(minus(amountsOf(charge), amountsOf(lees)));
  return { ...found, stills: { boilOff: quantity('energy', found.stills.boilOff + once) } };
}
