// How a house runs its stills: where it cuts, how strong a charge may be, and from both the plan of its balanced round.
import type { Quantity, Spirit } from '../quantity.ts';
import type { VapourModel } from '../vapour/equilibrium.ts';
import type { Cuts } from './cuts.ts';
import { foreshotsEnd, type ForeshotsPlan } from './foreshots.ts';
import type { RoundPlan } from './round.ts';

/** What a house says of its cuts. */
export interface CutFigures extends ForeshotsPlan {
  readonly heartEnd: Quantity<'strength'>;
  readonly feintsEnd: Quantity<'strength'>;
}
/** What it says of a charge that is too strong. */
export interface DilutionFigures {
  readonly dilution: 'when-needed' | 'never';
  readonly chargeLimit: Quantity<'strength'>;
}
/** What it says of its round. */
export interface RoundFigures extends CutFigures, DilutionFigures {
  readonly washReflux: Quantity<'share'>;
  readonly washEnd: Quantity<'strength'>;
  readonly spiritReflux: Quantity<'share'>;
  readonly airPressure: Quantity<'pressure'>;
}

/**
 * Where a house cuts its spirit run.
 * @example spiritCuts({ ...house, heartEnd: strength(61) }).heart // 61 (as the house has it)
 */
export function spiritCuts(house: CutFigures): Cuts {
  return { foreshots: foreshotsEnd(house), heart: house.heartEnd, feints: house.feintsEnd };
}

/**
 * The strength, % vol, to which a stronger spirit charge is let down with water; nothing where a house runs it as it is.
 * @example limitOfCharge({ dilution: 'never', chargeLimit: strength(30) }) // undefined (such a house adds no water)
 */
export function limitOfCharge({ dilution, chargeLimit }: DilutionFigures): Quantity<'strength'> | undefined {
  return dilution === 'when-needed' ? chargeLimit : undefined;
}

/**
 * The plan of the round of a house, by a model of vapour; van Laar’s when left out.
 * @example roundPlan({ ...house, dilution: 'when-needed', chargeLimit: strength(28) }, line.wash) // { diluteTo: 28, washStill: { until: 1 } } (as the house has it, and its wash runs end at 1 % vol)
 */
export function roundPlan(house: RoundFigures, wash: Spirit, model?: VapourModel): RoundPlan {
  const diluteTo = limitOfCharge(house);
  return {
    wash,
    washStill: { reflux: house.washReflux, until: house.washEnd },
    spiritStill: { reflux: house.spiritReflux, ...spiritCuts(house) },
    pressure: house.airPressure,
    model,
    ...(diluteTo !== undefined && { diluteTo }),
  };
}
