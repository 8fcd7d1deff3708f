// The loss and the steady humidity of a store, found from one cask measured twice.
import { bracketedRoot } from '../numerics/root.ts';
import { percent, type Quantity, type Spirit } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { within } from '../range.ts';
import { amountsOf } from '../spirit/amounts.ts';
import { formatNumber } from '../format.ts';
import { ETHANOL_MOLAR_MASS, WATER_MOLAR_MASS } from '../constants.ts';
import { activitiesOf, waterOverEthanol } from './cask.ts';

export interface TwoReadings {
  readonly filled: Spirit;
  readonly found: Spirit;
  readonly years: Quantity<'years'>;
  /** Relative humidity of the store, %. */
  readonly humidity: Quantity<'percent'>;
}

export interface Calibration {
  readonly alcoholLoss: Quantity<'percent'>;
  readonly steadyHumidity: Quantity<'percent'>;
}

const STEPS = 30; // fewest steps along the way
const STEPS_TO_FOLD = 120; // steps while the alcohol falls to 1/e
const LOOK = [0, 20, 40, 50, 60, 65, 70, 75, 80]; // steady humidities, %, between which a crossing is looked for
const FINE = 30; // places looked at where the courses come nearest without a crossing
const ALIKE = 1e-4; // part of the water left, finer than any strength is read: courses that end nearer are not told apart
const MOST_LOSS = 30; // %, as far as the cask is followed

/**
 * The yearly loss of alcohol (% at filling strength) and the steady humidity (0–80 %) with which `ageCask` goes from the
 * first reading to the second. The course is followed down the alcohol instead of the years: the water left at the end
 * then depends on the steady humidity alone, one root; and the loss follows from the years it took.
 * Refuses readings with no alcohol gone, and those that no steady humidity explains, or two do.
 * @example calibrateLoss({ filled: { volume: litres20(200), strength: strength(63.5) }, found: { volume: litres20(200), strength: strength(63.5) }, years: years(5), humidity: percent(70) }) // refuses: no alcohol is missing (it is as it was filled)
 */
export function calibrateLoss({ filled, found, years, humidity }: TwoReadings): Calibration | Refusal {
  within('The years in wood', years, Number.MIN_VALUE, 80);
  within('The humidity, %,', humidity, 0, 100);
  const [start, end] = [amountsOf(filled), amountsOf(found)];
  const told = `${formatNumber(filled.volume, 1)} L at ${formatNumber(filled.strength, 1)} % vol were filled and ${formatNumber(found.volume, 1)} L at ${formatNumber(found.strength, 1)} % vol found`;
  if (!(end.ethanol < start.ethanol))
    return refuse(`${told}: no alcohol is missing, so there is no loss to find.`);
  if (end.ethanol === 0) return refuse(`${told}: nothing is left to work from.`);

  const fall = Math.log(start.ethanol / end.ethanol);
  const steps = Math.max(STEPS, Math.ceil(STEPS_TO_FOLD * fall));
  const step = fall / steps;
  const mass = (ethanol: number, water: number) => ethanol * ETHANOL_MOLAR_MASS + water * WATER_MOLAR_MASS;
  const filledMass = mass(start.ethanol, start.water);

  /** Water left, and pace × years, once the alcohol has fallen as far as it did; along u = ln(alcohol filled ÷ left). */
  const course = (steady: number) => {
    const ratio = waterOverEthanol(steady / 100);
    const slope = (u: number, water: number) => {
      const ethanol = start.ethanol * Math.exp(-u);
      const press = activitiesOf({ ethanol, water });
      return {
        water: (-ratio * ethanol * (press.water - humidity / 100)) / press.ethanol,
        time: (filledMass / mass(ethanol, water)) * (ethanol / press.ethanol),
      };
    };
    let [water, time] = [start.water, 0];
    for (let i = 0; i < steps; i++) {
      const u = i * step;
      const a = slope(u, water);
      const b = slope(u + step / 2, water + (step / 2) * a.water);
      const c = slope(u + step / 2, water + (step / 2) * b.water);
      const d = slope(u + step, water + step * c.water);
      water += (step / 6) * (a.water + 2 * b.water + 2 * c.water + d.water);
      time += (step / 6) * (a.time + 2 * b.time + 2 * c.time + d.time);
    }
    return { water, time };
  };

  const miss = (steady: number) => course(steady).water - end.water;
  const misses = LOOK.map(miss);
  const crossings = LOOK.flatMap((low, i) =>
    i + 1 < LOOK.length && misses[i]! > 0 !== misses[i + 1]! > 0 ? [[low, LOOK[i + 1]!] as const] : [],
  );
  const near = (each: number) => Math.abs(each) < ALIKE * end.water || each > 0 !== misses[0]! > 0;
  const closest = misses.reduce((best, each, i) => (Math.abs(each) < Math.abs(misses[best]!) ? i : best), 0);
  const [from, to] = [LOOK[Math.max(closest - 1, 0)]!, LOOK[closest + 1] ?? LOOK.at(-1)!];
  const turns = () =>
    Array.from({ length: FINE }, (_, i) => miss(from + ((to - from) * i) / FINE)).some(near);
  if (crossings.length === 0 && !turns())
    return refuse(
      `${told}: with a humidity of ${formatNumber(humidity, 0)} % no one steady humidity up to 80 % was found that leads from the one to the other. Check the strengths and the humidity.`,
    );
  if (crossings.length !== 1)
    return refuse(
      `${told}: more than one steady humidity would lead from the one to the other. Take a reading after fewer years.`,
    );

  const steady = bracketedRoot(miss, ...crossings[0]!, 1e-11);
  const pace = course(steady).time / years;
  const loss = 100 * (1 - Math.exp((-pace * activitiesOf(start).ethanol) / start.ethanol));
  if (loss > MOST_LOSS)
    return refuse(
      `${told}: that is more than ${MOST_LOSS} % of the alcohol in a year. No store takes so much; look for a leak.`,
    );
  return { alcoholLoss: percent(loss), steadyHumidity: percent(steady) };
}

/**
 * Alcohol gone between two readings, as the same part each year, %. Refuses (throws) when nothing was filled.
 * @example lossAYear(100, 81, 2) // 10 (0.9 × 0.9 is 0.81)
 */
export function lossAYear(filled: number, found: number, years: number): Quantity<'percent'> {
  within('The alcohol filled, L,', filled, Number.MIN_VALUE, Infinity);
  return percent(100 * (1 - (found / filled) ** (1 / within('The years', years, Number.MIN_VALUE, 80))));
}
