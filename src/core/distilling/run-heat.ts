// What a run costs in heat, and what its condenser costs in water.
import { quantity, moleFraction, litres, type Quantity, type Spirit } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { amountsOf } from '../spirit/amounts.ts';
import { vapourOver } from '../vapour/equilibrium.ts';
import { HEAT_CAPACITY, heatToBoilOff, heatToWarm } from '../vapour/latent-heat.ts';
import type { Run } from './run.ts';

export const STEAM_HEAT = 2.108; // MJ/kg given up by steam that condenses at 5 bar; steam tables, from memory

/**
 * Boiling point of a spirit, °C. `pressure` 20–150 kPa.
 * @example boilingPoint({ volume: litres20(1), strength: strength(0) }, kilopascals(101.325)) // 100.0 (water)
 */
export function boilingPoint(spirit: Spirit, pressure: Quantity<'pressure'>): Quantity<'temperature'> {
  const { ethanol, water } = amountsOf(spirit);
  return vapourOver(moleFraction(ethanol / (ethanol + water)), pressure).temperature;
}

export interface RunHeat {
  /** Boiling point of the charge, and of what is left at the end, °C. */
  readonly boilsAt: Quantity<'temperature'>;
  readonly endsAt: Quantity<'temperature'>;
  /** Charge to its boiling point, and what stays in the pot from there to the end's, MJ. */
  readonly heatUp: Quantity<'energy'>;
  /** Latent heat of all that comes over, MJ. */
  readonly boilOff: Quantity<'energy'>;
}

/**
 * Heat that must reach the liquid of a run whose charge goes in at `filledAt`, °C.
 * The charge is reckoned as alcohol and water; solids of the wash, the copper and what the head sends back are left out.
 * Refuses a charge filled above its boiling point.
 * @example heatOfRun(line.round.washRun, celsius(100)) // refuses: above its boiling point (wash boils below water)
 */
export function heatOfRun(run: Omit<Run, 'curve'>, filledAt: Quantity<'temperature'>): RunHeat | Refusal {
  const boilsAt = boilingPoint(run.charge, run.setting.pressure);
  if (filledAt > boilsAt)
    return refuse(
      `At ${filledAt} °C the charge would be above its boiling point of ${boilsAt.toFixed(1)} °C; fill it cooler.`,
    );
  const endsAt = boilingPoint(run.residue, run.setting.pressure);
  const warmed = heatToWarm(amountsOf(run.charge), filledAt, boilsAt);
  const warmedOn = heatToWarm(amountsOf(run.residue), boilsAt, endsAt);
  return {
    boilsAt,
    endsAt,
    heatUp: quantity('energy', warmed + warmedOn),
    boilOff: heatToBoilOff(amountsOf(run.distillate)),
  };
}

/**
 * Heat to be supplied, MJ, when `efficiency`, 1–100 %, of it reaches the liquid.
 * @example heatSupplied({ heatUp: 30, boilOff: 50 }, percent(80)) // 100.0 (80 ÷ 0.8)
 */
export function heatSupplied(
  { heatUp, boilOff }: RunHeat,
  efficiency: Quantity<'percent'>,
): Quantity<'energy'> {
  return quantity('energy', ((heatUp + boilOff) * 100) / within('The efficiency, %,', efficiency, 1, 100));
}

/**
 * Hours in which a still that takes `power`, kW, takes up so much heat.
 * @example hoursOfHeat(quantity('energy', 3600), quantity('power', 500)) // 2.0 (3.6 million kJ at 500 kJ a second)
 */
export function hoursOfHeat(heat: Quantity<'energy'>, power: Quantity<'power'>): Quantity<'hours'> {
  return quantity('hours', (heat * 1000) / within('The rate of heat, kW,', power, 1e-3, 1e6) / 3600);
}

/**
 * Steam at 5 bar that gives so much heat, kg.
 * @example steamFor(quantity('energy', 210.8)) // 100.0 (2.108 MJ to the kilogram)
 */
export function steamFor(heat: Quantity<'energy'>): Quantity<'mass'> {
  return quantity('mass', heat / STEAM_HEAT);
}

export interface Cooling {
  readonly pressure: Quantity<'pressure'>;
  /** Temperature of the liquid that leaves the condenser, °C. */
  readonly leavesAt: Quantity<'temperature'>;
  /** By how much the cooling water warms, K. */
  readonly rise: Quantity<'temperatureDifference'>;
}

/**
 * Heat that a condenser takes from a distillate, MJ: to turn it to liquid, and to cool it from its boiling point.
 * @example heatToCondense({ volume: litres20(100), strength: strength(0) }, { pressure: kilopascals(101.325), leavesAt: celsius(20) }) // 259.0 (99.82 kg of water by hand, 2.26 MJ each and 80 × 4.184 kJ)
 */
export function heatToCondense(
  distillate: Spirit,
  { pressure, leavesAt }: Omit<Cooling, 'rise'>,
): Quantity<'energy'> {
  const amounts = amountsOf(distillate);
  const cooled = heatToWarm(amounts, leavesAt, boilingPoint(distillate, pressure));
  return quantity('energy', heatToBoilOff(amounts) + Math.max(0, cooled));
}

/**
 * Cooling water that takes up a heat, MJ, while it warms by `rise`, 0.1–100 K; L, a kilogram to the litre.
 * @example coolingWater(quantity('energy', 8.4), kelvins(40)) // 50.2 (by hand, 8400 ÷ (4.184 × 40))
 */
export function coolingWater(
  heat: Quantity<'energy'>,
  rise: Quantity<'temperatureDifference'>,
): Quantity<'volume'> {
  return litres((heat * 1000) / (HEAT_CAPACITY.water * within('The rise, K,', rise, 0.1, 100)));
}
