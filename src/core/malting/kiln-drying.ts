// Malt drying in the kiln: at a steady rate while wet, then ever more slowly.
import { hours, kilograms, percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { moistureOf, waterInDry } from './moisture.ts';

/** Moistures, % of the whole, that a load passes. */
export interface DryingPath {
  readonly green: Quantity<'percent'>;
  /** Where the skin of the corn no longer keeps wet. */
  readonly breakAt: Quantity<'percent'>;
  readonly finished: Quantity<'percent'>;
  /** What the air of the curing would leave after any length of time. */
  readonly end: Quantity<'percent'>;
}
export interface Drying {
  /** Water that leaves while the malt dries freely, and after, kg. */
  readonly freeWater: Quantity<'mass'>;
  readonly lateWater: Quantity<'mass'>;
  readonly freeHours: Quantity<'hours'>;
  readonly lateHours: Quantity<'hours'>;
}

const beside = (moisture: Quantity<'percent'>) => waterInDry(moisture) / 100;

/**
 * Water, kg, to drive off a mass of dry matter, kg, between two moistures, % of the whole.
 * @example waterBetween(kilograms(1000), percent(50), percent(20)) // 750 (1000 less 250, beside 1000 dry)
 */
export function waterBetween(
  dry: Quantity<'mass'>,
  from: Quantity<'percent'>,
  to: Quantity<'percent'>,
): Quantity<'mass'> {
  return kilograms(within('The dry matter, kg,', dry, 0, 1e9) * (beside(from) - beside(to)));
}

/** Moisture at which free drying stops: the break, or the finished malt where that is damper. */
const freeUntil = ({ breakAt, finished }: DryingPath) => percent(Math.max(breakAt, finished));

/** Moisture, % of the whole, at which the skin falls dry: free drying goes from 45 to 25 %; Encyclopaedia Britannica, “Beer”. */
export const BREAK_MOISTURE = 25;

/**
 * Water and hours of a load with `dry` kg of dry matter, when the free drying takes `rate` kg of water an hour and the
 * air after the break would take `lateRate` from malt still wet. After the break the water above `end` falls off
 * exponentially, at first at that rate: a form for teaching. Refuses moistures that do not fall from green to break and finished, or that `end` never lets come.
 * @example dryLoad(kilograms(1000), { green: percent(50), breakAt: percent(20), finished: percent(20), end: percent(2) }, quantity('massFlow', 75)) // { freeWater: 750, freeHours: 10, lateWater: 0, lateHours: 0 } (750 kg at 75 an hour, and no drying after the break)
 */
export function dryLoad(
  dry: Quantity<'mass'>,
  path: DryingPath,
  rate: Quantity<'massFlow'>,
  lateRate = rate,
): Drying | Refusal {
  for (const each of [rate, lateRate]) within('The rate of drying, kg/h,', each, 1e-9, 1e9);
  const { green, breakAt, finished, end } = path;
  if (green <= freeUntil(path)) {
    return refuse(
      `Green malt at ${green.toFixed(1)} % is no wetter than the ${freeUntil(path).toFixed(1)} % it is to be dried to first.`,
    );
  }
  const late = finished < breakAt;
  if (late && end > 0.95 * finished) {
    return refuse(
      `The air would leave ${end.toFixed(1)} % in the malt at last; malt of ${finished.toFixed(1)} % needs drier air, one that would leave ${(0.95 * finished).toFixed(1)} % or less.`,
    );
  }
  const freeWater = waterBetween(dry, green, freeUntil(path));
  const lateWater = kilograms(late ? waterBetween(dry, breakAt, finished) : 0);
  return {
    freeWater,
    lateWater,
    freeHours: hours(freeWater / rate),
    lateHours: hours(
      late
        ? (waterBetween(dry, breakAt, end) / lateRate) *
            Math.log((beside(breakAt) - beside(end)) / (beside(finished) - beside(end)))
        : 0,
    ),
  };
}

/**
 * Moisture against hours, `points` to each part of the drying.
 * @example dryingCurve({ green: percent(50), breakAt: percent(20), finished: percent(20), end: percent(2) }, { freeHours: 10, lateHours: 0 }, 1) // [{ hour: 0, moisture: 50 }, { hour: 10, moisture: 20 }] (from green to finished)
 */
export function dryingCurve(path: DryingPath, { freeHours, lateHours }: Drying, points = 12) {
  const [green, stop, end] = [path.green, freeUntil(path), path.end].map((moisture) => beside(moisture));
  const free = Array.from({ length: points + 1 }, (_, i) => ({
    hour: hours((freeHours * i) / points),
    moisture: moistureOf(percent(100 * (green! + ((stop! - green!) * i) / points))),
  }));
  if (lateHours === 0) return free;
  const fallen = Math.log((stop! - end!) / (beside(path.finished) - end!));
  const late = Array.from({ length: points }, (_, i) => ({
    hour: hours(freeHours + (lateHours * (i + 1)) / points),
    moisture: moistureOf(percent(100 * (end! + (stop! - end!) * Math.exp((-fallen * (i + 1)) / points)))),
  }));
  return [...free, ...late];
}
