// A drawn house’s round in its own stills: what its plant says of distilling carries a ± too.
import { fermentWort } from '../fermenting/wash.ts';
import type { House } from '../line/house.ts';
import type { Settle } from '../line/monte-carlo.ts';
import { refuse } from '../refusal.ts';
import { distilIn } from './distil.ts';
import { inHouse } from './line.ts';
import type { Plant, Stills } from './plant.ts';

/**
 * What of a plant may be drawn, as the house has it; the reflux is that of the first intermediate stills.
 * @example drawnOf({ intermediateStills: [], strongFeintsEnd: 20, runAgain: 50 }) // { intermediateReflux: 0, strongFeintsEnd: 20, runAgain: 50 } (as the plant has it)
 */
export const drawnOf = ({ intermediateStills: [first], strongFeintsEnd, runAgain }: Plant) => ({
  intermediateReflux: first?.reflux ?? 0,
  strongFeintsEnd,
  runAgain,
});

const isPart = (value: number) => value >= 0 && value <= 1;

/**
 * In which way the rounds of houses drawn about one are settled in its plant. Stills that are not alike keep their distances:
 * what the drawn reflux is off by, each of them is. Refuses a reflux, or a part run again, that no still can have.
 * @example settleInPlant({ washStills: [{ reflux: 0.1 }], intermediateStills: [], spiritStills: [], strongFeintsEnd: 20, runAgain: 50 }, house)({ ...house, washReflux: -0.5 }) // refuses: No still has such a reflux (below nothing)
 */
export function settleInPlant(plant: Plant, house: House): Settle {
  const own = inHouse(plant, house);
  const at = drawnOf(own);
  return (drawn, model) => {
    const { intermediateReflux, strongFeintsEnd, runAgain } = { ...at, ...drawn };
    const offBy = (stills: readonly Stills[], by: number) =>
      stills.map((each) => ({ ...each, reflux: each.reflux + by }));
    const now: Plant = {
      ...own,
      strongFeintsEnd,
      runAgain,
      washStills: offBy(own.washStills, drawn.washReflux - house.washReflux),
      intermediateStills: offBy(own.intermediateStills, intermediateReflux - at.intermediateReflux),
      spiritStills: offBy(own.spiritStills, drawn.spiritReflux - house.spiritReflux),
    };
    const all = [...now.washStills, ...now.intermediateStills, ...now.spiritStills];
    if (!all.every(({ reflux }) => isPart(reflux)) || !isPart(runAgain / 100) || !(strongFeintsEnd > 0))
      return refuse('No still has such a reflux, or is run so.');
    const wort = { volume: drawn.wortVolume, gravity: drawn.originalGravity };
    return distilIn(now, drawn, fermentWort(wort, drawn.finalGravity), model);
  };
}
