// A cask through the years: ethanol and water leave through the wood, each at its own pace.
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from '../constants.ts';
import {
  litres20,
  moleFraction,
  percent,
  strength,
  years,
  type Portion,
  type Quantity,
  type Spirit,
} from '../quantity.ts';
import { within } from '../range.ts';
import { amountsOf, portionOf, type Amounts } from '../spirit/amounts.ts';
import { activities, ethanolPressure, waterPressure } from '../vapour/equilibrium.ts';

export interface Store {
  /** Alcohol that leaves in a year at the filling strength, % of what is in the cask. */
  readonly alcoholLoss: Quantity<'percent'>;
  /** Relative humidity of the air, %. */
  readonly humidity: Quantity<'percent'>;
  /** Relative humidity at which spirit of 63.5 % vol keeps its strength, %. Fitted to a regauge; 60–70 by memory of the trade. */
  readonly steadyHumidity: Quantity<'percent'>;
  /** Temperature of the store, °C; left out, it is the one at which the loss was found. */
  readonly temperature?: Quantity<'temperature'>;
  /** Temperature at which the loss was found, °C; left out, it is that of the store. */
  readonly measuredAt?: Quantity<'temperature'>;
}

export interface CaskPlan extends Spirit {
  readonly cask: {
    readonly size: Quantity<'volume'>;
    /** Size of the cask on which the loss was found, L; left out, it is this one. */
    readonly measuredOn?: Quantity<'volume'>;
  };
  readonly store: Store;
  readonly years: Quantity<'years'>;
}

/** The cask at the end of a year; year 0 is the filling. */
export interface CaskYear extends Portion {
  readonly year: Quantity<'years'>;
}

const REFERENCE = amountsOf({ volume: litres20(1000), strength: strength(63.5) }); // 63.5 % vol, at which the steady humidity is stated; customary filling strength, no source
const STEPS = 12; // fewest Runge–Kutta steps in a year
const STEPS_TO_PACE = 73; // steps in a year for each unit of the pace, 1/year, where a cask loses faster than measured
const FEWER = 6; // times fewer steps where only the end of the years is asked for
const [TO_THE_END, FEWEST] = [8, 3]; // and as few as this for each unit of all that leaves, a logarithm, where that is fewer still; and the fewest
export const MOST_LOSS = 30; // % of the alcohol in a year, as far as a cask is followed; common-practice

/**
 * Vapour of ethanol and of water over the spirit in the wood, each as a share of that over the pure liquid.
 * @example activitiesOf({ ethanol: 0, water: 1 }) // { ethanol: 0, water: 1 } (pure water)
 */
export function activitiesOf({ ethanol, water }: Amounts) {
  return activities(moleFraction(ethanol / (ethanol + water)));
}

/**
 * How easily the wood passes water, over how easily it passes ethanol: what keeps 63.5 % vol steady at the steady
 * humidity, a fraction of 0–0.8.
 * @example waterOverEthanol(0.7) > waterOverEthanol(0.6) // true (the less the air takes, the easier the wood must pass it)
 */
export function waterOverEthanol(steadyHumidity: number): number {
  const activity = activitiesOf(REFERENCE);
  return REFERENCE.water / (activity.water - steadyHumidity) / (REFERENCE.ethanol / activity.ethanol);
}

/**
 * How many times faster ethanol and water leave than where the loss was found: as their vapour pressures at the two
 * temperatures (−20…60 °C), and as the wood to a litre of two like casks, the cube root of their sizes turned over.
 * @example timesFaster({ cask: { size: litres(250), measuredOn: litres(2000) }, store: {} }) // { ethanol: 2, water: 2 } (the cube root of eight)
 */
export function timesFaster({ cask, store }: Pick<CaskPlan, 'cask' | 'store'>): Amounts {
  const wood = ((cask.measuredOn ?? cask.size) / cask.size) ** (1 / 3);
  const [now, then] = [store.temperature, store.measuredAt];
  if (now === undefined || then === undefined) return { ethanol: wood, water: wood };
  within('The temperature of the store, °C,', now, -20, 60);
  within('The temperature at which the loss was found, °C,', then, -20, 60);
  return {
    ethanol: (wood * ethanolPressure(now)) / ethanolPressure(then),
    water: (wood * waterPressure(now)) / waterPressure(then),
  };
}

/**
 * Alcohol lost in a year by this cask in this store, %, at its filling strength: the stated loss at its own pace.
 * @example lossInStore({ cask: { size: litres(250), measuredOn: litres(2000) }, store: { alcoholLoss: percent(10) } }) // 19 (twice as fast leaves 0.9 × 0.9)
 */
export function lossInStore(plan: Pick<CaskPlan, 'cask' | 'store'>): Quantity<'percent'> {
  const loss = within('The stated loss, %,', plan.store.alcoholLoss, 0, MOST_LOSS);
  const times = timesFaster(plan).ethanol;
  return times === 1 ? loss : percent(100 * (1 - (1 - loss / 100) ** times));
}

/**
 * Volume, strength and alcohol of a cask at the end of every year, filling included; a part of a year over ends the record.
 * Ethanol leaves with its own vapour pressure, for the air holds none; water with the difference between its
 * vapour pressure in the wood and in the air, so strength falls in a damp store and rises in a dry one.
 * Both leave through wetted wood, taken in proportion to what is left. 0–80 years, a loss of 0–30 % a year; the cask must hold the filling.
 * Source: teaching form after the published direction of the effect (Reid & Ward 1994 in Conner, Reid & Jack 2003);
 * its two constants come from `store`, not from a publication.
 * @example ageCask({ volume: litres20(200), strength: strength(63.5), cask: { size: litres(200) }, store: { alcoholLoss: percent(2), humidity: percent(65), steadyHumidity: percent(65) }, years: years(1) })[1] // { year: 1, strength: 63.50, alcohol: 124.5 } (its strength stands still at the steady humidity, and 2 % of 127 L go)
 */
export function ageCask(plan: CaskPlan): readonly CaskYear[] {
  const { filled, leaving, steps } = courseOf(plan);
  const span = plan.years;
  const record = [{ year: years(0), ...portionOf(filled) }];
  let left = filled;
  const follow = (until: number, time: number) => {
    for (let i = 0; i < steps; i++) left = stepOn(left, leaving, time / steps);
    record.push({ year: years(until), ...portionOf(left) });
  };
  for (let year = 1; year <= span; year++) follow(year, 1);
  if (span % 1 > 0) follow(span, span % 1);
  return record;
}

/**
 * The cask at the end of its years, and none before: the end of `ageCask` to a ten-thousandth of the filling, in a sixth of the steps or fewer, for many casks at once.
 * @example caskAfter({ volume: litres20(200), strength: strength(63.5), cask: { size: litres(200) }, store: { alcoholLoss: percent(2), humidity: percent(65), steadyHumidity: percent(65) }, years: years(1) }) // { strength: 63.50, alcohol: 124.5 } (as ageCask)
 */
export function caskAfter(plan: CaskPlan): Portion {
  const { filled, leaving, steps, fastest } = courseOf(plan);
  const many = Math.ceil(Math.min((plan.years * steps) / FEWER, FEWEST + TO_THE_END * fastest * plan.years));
  let left = filled;
  for (let i = 0; i < many; i++) left = stepOn(left, leaving, plan.years / many);
  return portionOf(left);
}

/**
 * A cask followed by hand: what was filled, kilomoles, and what is left of an amount after a part of a year, 0–1, in the steps of `ageCask`.
 * @example ((cask) => cask.after(cask.filled, 0))(followCask({ volume: litres20(0.001), strength: strength(0), cask: { size: litres(200) }, store: { alcoholLoss: percent(2), humidity: percent(65), steadyHumidity: percent(65) }, years: years(1) })).ethanol // 0 (water gives no alcohol)
 */
export function followCask(plan: CaskPlan): {
  readonly filled: Amounts;
  readonly after: (left: Amounts, part: number) => Amounts;
} {
  const { filled, leaving, steps } = courseOf(plan);
  const after = (left: Amounts, part: number) => {
    const many = Math.max(1, Math.round(within('The part of a year', part, 0, 1) * steps));
    let now = left;
    for (let i = 0; i < many; i++) now = stepOn(now, leaving, part / many);
    return now;
  };
  return { filled, after };
}

/** How a cask begins, and what leaves it in a year, kilomoles, with the steps that a year is followed in. */
function courseOf({ volume, strength, cask, store, years: span }: CaskPlan) {
  within('The filling, L,', volume, Number.MIN_VALUE, cask.size);
  within('The years in wood', span, 0, 80);
  within('The alcohol lost in a year, %,', lossInStore({ cask, store }), 0, MOST_LOSS);
  within('The humidity, %,', store.humidity, 0, 100);
  within('The steady humidity, %,', store.steadyHumidity, 0, 80);

  const filled = amountsOf({ volume, strength });
  const faster = timesFaster({ cask, store });
  const rate = -Math.log(1 - store.alcoholLoss / 100);
  const pace = filled.ethanol === 0 ? 0 : (rate * filled.ethanol) / activitiesOf(filled).ethanol;
  const ethanolPace = pace * faster.ethanol;
  const waterPace = pace * waterOverEthanol(store.steadyHumidity / 100) * faster.water;
  const fastest = Math.max(1, faster.ethanol, faster.water);
  const steps = fastest === 1 ? STEPS : Math.max(STEPS, Math.ceil(STEPS_TO_PACE * rate * fastest));
  const mass = ({ ethanol, water }: Amounts) => ethanol * ETHANOL_MOLAR_MASS + water * WATER_MOLAR_MASS;

  const leaving = (left: Amounts): Amounts => {
    const wetted = mass(left) / mass(filled);
    const { ethanol, water } = activitiesOf(left);
    return {
      ethanol: wetted * ethanolPace * ethanol,
      water: wetted * waterPace * (water - store.humidity / 100),
    };
  };
  const drawn = Math.max(0.5, Math.abs(activitiesOf(filled).water - store.humidity / 100)); // no less than the wood may come to draw as its strength moves
  const ofWater = filled.water === 0 ? Infinity : (waterPace * drawn) / filled.water;
  return { filled, leaving, steps, fastest: Math.max(rate * faster.ethanol, ofWater) };
}

/** One classical Runge–Kutta step of what is left. */
function stepOn(left: Amounts, leaving: (left: Amounts) => Amounts, dt: number): Amounts {
  const after = (out: Amounts, time: number) => ({
    ethanol: left.ethanol - time * out.ethanol,
    water: left.water - time * out.water,
  });
  const a = leaving(left);
  const b = leaving(after(a, dt / 2));
  const c = leaving(after(b, dt / 2));
  const d = leaving(after(c, dt));
  const mean = (key: keyof Amounts) => (a[key] + 2 * b[key] + 2 * c[key] + d[key]) / 6;
  return after({ ethanol: mean('ethanol'), water: mean('water') }, dt);
}
