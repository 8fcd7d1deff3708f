// What one charge of each still gives, by its own reflux.
import { cutRun } from '../distilling/cuts.ts';
import { runStill } from '../distilling/run.ts';
import { spiritCuts } from '../distilling/plan.ts';
import { quantity, share, type Portion, type Quantity } from '../quantity.ts';
import { isRefusal, type Refusal } from '../refusal.ts';
import type { PlantCharges } from './charges.ts';
import type { GroupCharges } from './group-charges.ts';
import type { Line } from '../line/line.ts';
import { inHouse } from './line.ts';
import type { Plant, Stills } from './plant.ts';

/** One charge of one still: low wines of a wash still, what goes on of an intermediate one, the heart of a spirit still. */
export interface ChargeOfStill extends GroupCharges {
  readonly charge: Portion;
  readonly gives: Portion;
}

export interface EachStill {
  readonly wash: readonly ChargeOfStill[];
  readonly intermediate: readonly ChargeOfStill[];
  readonly spirit: readonly ChargeOfStill[];
}

/** Charges of some stills, each with what it gives; nothing where the line has no such charge. */
function each(
  stills: readonly Stills[],
  charges: readonly GroupCharges[],
  of: Portion | undefined,
  gives: (charge: Portion, still: Stills) => Portion | Refusal,
): readonly ChargeOfStill[] {
  if (!of) return [];
  return charges.flatMap((group, i) => {
    const alcohol = quantity('alcohol', (of.alcohol / of.volume) * group.litres);
    const charge = { volume: group.litres, strength: of.strength, alcohol };
    const found = gives(charge, stills[i]!);
    return isRefusal(found) ? [] : [{ ...group, charge, gives: found }];
  });
}

/**
 * One charge of each group of stills, in the plant’s order. Foreshots are the same share of the alcohol in every spirit still.
 * A charge that a still cannot run is left out; a line that has been reckoned has none.
 * @example eachStill(line, { washStills: [], spiritStills: [] }, { wash: [], intermediate: [], spirit: [] }) // { wash: [], intermediate: [], spirit: [] } (no still, no charge)
 */
export function eachStill(line: Line, given: Plant, charges: PlantCharges): EachStill {
  const { house, round } = line;
  const plant = inHouse(given, house);
  const pressure = house.airPressure;
  const down =
    (until: Quantity<'strength'>) =>
    (charge: Portion, { reflux }: Stills) => {
      const run = runStill({ charge, until, reflux: share(reflux), pressure });
      return isRefusal(run) ? run : run.distillate;
    };
  const onward = plant.scheme === 'thrice' ? quantity('strength', plant.strongFeintsEnd) : house.feintsEnd;
  const foreshots = { share: share(line.foreshots.alcohol / line.charge.alcohol) };
  const heart = (charge: Portion, { reflux }: Stills) => {
    const run = runStill({ charge, until: house.feintsEnd, reflux: share(reflux), pressure });
    if (isRefusal(run)) return run;
    const parts = cutRun(run, { ...spiritCuts(house), foreshots });
    return isRefusal(parts) ? parts : parts.heart;
  };
  return {
    wash: each(plant.washStills, charges.wash, line.wash, down(house.washEnd)),
    intermediate: each(plant.intermediateStills, charges.intermediate, round.between?.charge, down(onward)),
    spirit: each(plant.spiritStills, charges.spirit, line.charge, heart),
  };
}
