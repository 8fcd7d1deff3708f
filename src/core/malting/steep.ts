// Water that barley takes up in the steep: a curve that bends, with constants for each lot to be fitted.
import { hours, percent, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { moistureOf, waterInDry } from './moisture.ts';

const GAS_CONSTANT = 8.314462618e-3; // kJ/(mol K); CODATA 2018, exact
const ZERO_CELSIUS = 273.15; // K; by definition

/** Activation energy of the hydration of whole barley, kJ/mol, measured at 20–60 °C; Mok et al. 1983. */
export const HYDRATION_ENERGY = 48.5;

/** One lot in water of one temperature. After t hours in water it has taken up t ÷ (k1 + k2·t) % of its dry matter. */
export interface Uptake {
  /** % of the whole, 0–50. */
  readonly startMoisture: Quantity<'percent'>;
  /** One over the first hour's rate. */
  readonly k1: Quantity<'hoursPerPercent'>;
  /** One over all the water that it would take in the end. */
  readonly k2: Quantity<'perPercent'>;
}
/** Hours in water, then hours in air. */
export interface Wetting {
  readonly wet: Quantity<'hours'>;
  readonly rest: Quantity<'hours'>;
}

/**
 * k1 at another water temperature, 0–60 °C: it falls as the water is warmer, by the law of Arrhenius.
 * `energy` in kJ/mol, 0–200. k2 is left as it is.
 * @example k1At(quantity('hoursPerPercent', 0.2), celsius(15), celsius(15), quantity('molarEnergy', 48.5)) // 0.2 (the same water)
 */
export function k1At(
  k1: Quantity<'hoursPerPercent'>,
  from: Quantity<'temperature'>,
  to: Quantity<'temperature'>,
  energy: Quantity<'molarEnergy'>,
): Quantity<'hoursPerPercent'> {
  within('The temperature of the water, °C,', from, 0, 60);
  within('The temperature of the water, °C,', to, 0, 60);
  within('The activation energy, kJ/mol,', energy, 0, 200);
  const inverse = 1 / (ZERO_CELSIUS + to) - 1 / (ZERO_CELSIUS + from);
  return quantity('hoursPerPercent', k1 * Math.exp((energy / GAS_CONSTANT) * inverse));
}

/** The constants between which the curve is followed; any grain's lie far inside. */
export const UPTAKE_LIMITS = { k1: [1e-6, 1e4], k2: [1e-6, 1] } as const;

function checked({ startMoisture, k1, k2 }: Uptake): Uptake {
  within('The moisture at the start, %,', startMoisture, 0, 50);
  within('k1, h/%,', k1, ...UPTAKE_LIMITS.k1);
  within('k2, 1/%,', k2, ...UPTAKE_LIMITS.k2);
  return { startMoisture, k1, k2 };
}

/**
 * Moisture, % of the whole, after hours in water, 0–1000. Source: Peleg 1988, from memory (the form only).
 * @example moistureAfter({ startMoisture: percent(20), k1: 0.1, k2: 0.01 }, hours(10)) // 42.86 (by hand, 25 + 10 ÷ 0.2 = 75 beside 100)
 */
export function moistureAfter(uptake: Uptake, wet: Quantity<'hours'>): Quantity<'percent'> {
  const { startMoisture, k1, k2 } = checked(uptake);
  within('The hours in water', wet, 0, 1000);
  return moistureOf(percent(waterInDry(startMoisture) + wet / (k1 + k2 * wet)));
}

/**
 * Moisture, % of the whole, that no time in water would pass.
 * @example moistureInTheEnd({ startMoisture: percent(20), k1: 0.1, k2: 0.01 }) // 55.56 (by hand, 25 + 100 beside 100)
 */
export function moistureInTheEnd(uptake: Uptake): Quantity<'percent'> {
  const { startMoisture, k2 } = checked(uptake);
  return moistureOf(percent(waterInDry(startMoisture) + 1 / k2));
}

/**
 * Hours in water to a moisture, % of the whole. Refuses one that the lot has passed or can never reach.
 * @example wetHoursTo({ startMoisture: percent(20), k1: 0.1, k2: 0.01 }, percent(42.857143)) // 10.0000 (the same sum backwards)
 */
export function wetHoursTo(uptake: Uptake, moisture: Quantity<'percent'>): Quantity<'hours'> | Refusal {
  const { startMoisture, k1, k2 } = checked(uptake);
  const water = waterInDry(moisture) - waterInDry(startMoisture);
  if (water < 0) {
    return refuse(
      `The grain holds ${startMoisture.toFixed(1)} % at the start, which is more than the ${moisture.toFixed(1)} % wanted.`,
    );
  }
  if (k2 * water > 0.999) {
    return refuse(
      `With these constants the grain comes to ${moistureInTheEnd(uptake).toFixed(1)} % in the end, so ${moisture.toFixed(1)} % cannot be reached in any reasonable time.`,
    );
  }
  return hours((k1 * water) / (1 - k2 * water));
}

/**
 * Hour of the programme at which the grain has been a number of hours in water; what is missing is added at the end.
 * @example hourOfWet([{ wet: 8, rest: 12 }, { wet: 8, rest: 0 }], hours(10)) // 22 (8 wet, 12 in air, 2 wet)
 */
export function hourOfWet(programme: readonly Wetting[], wanted: Quantity<'hours'>): Quantity<'hours'> {
  let [clock, left] = [0, wanted as number];
  for (const { wet, rest } of programme) {
    if (left <= wet) return hours(clock + left);
    left -= wet;
    clock += wet + rest;
  }
  return hours(clock + left);
}

/**
 * The moisture hour by hour: it rises in water, `points` to a wetting, and stands still in air.
 * @example steepCurve({ startMoisture: percent(20), k1: 0.1, k2: 0.01 }, [{ wet: 10, rest: 0 }], 1) // [{ hour: 0, moisture: 20 }, { hour: 10, moisture: 42.86 }] (by hand, as moistureAfter)
 */
export function steepCurve(uptake: Uptake, programme: readonly Wetting[], points = 8) {
  const curve = [{ hour: hours(0), moisture: moistureAfter(uptake, hours(0)) }];
  let [clock, soaked] = [0, 0];
  for (const { wet, rest } of programme) {
    for (let i = 1; i <= points; i++) {
      const part = (wet * i) / points;
      curve.push({ hour: hours(clock + part), moisture: moistureAfter(uptake, hours(soaked + part)) });
    }
    soaked += wet;
    clock += wet + rest;
    if (rest > 0) curve.push({ hour: hours(clock), moisture: moistureAfter(uptake, hours(soaked)) });
  }
  return curve;
}
