// How warm a washback grows: heat of fermenting, loss to the air, cooling.
import { celsius, hours, kelvins, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import type { Pace } from './fall.ts';
import { partReleased } from './release.ts';

export const WASH_HEAT_CAPACITY = 4.0; // kJ/(kg K), wort and wash; from memory
const STEPS = 720; // steps through the hours in the washback; a hundred times as many move the peak by less than 0.02 K
const MEGAJOULES_IN_WATT_HOUR = 0.0036; // MJ; by definition

export interface WarmWashback {
  readonly mass: Quantity<'mass'>;
  /** All the heat that the yeast will give off. */
  readonly heat: Quantity<'energy'>;
  readonly pace: Pace;
  readonly start: Quantity<'temperature'>;
  readonly hours: Quantity<'hours'>;
  readonly air: Quantity<'temperature'>;
  /** Heat lost to the air for each degree that the wash is warmer. */
  readonly loss: Quantity<'heatLoss'>;
  /** Cooling that comes on at a temperature, and takes no more than holds the wash there. */
  readonly cooling: { readonly power: Quantity<'power'>; readonly from: Quantity<'temperature'> };
}
/** The washback at an hour, with heat given off, lost to the air and taken by cooling since the start. */
export interface WashbackHeat {
  readonly hour: Quantity<'hours'>;
  readonly temperature: Quantity<'temperature'>;
  readonly released: Quantity<'energy'>;
  readonly lost: Quantity<'energy'>;
  readonly cooled: Quantity<'energy'>;
}

/**
 * Heat given off, MJ, by extract, kg, at so many kJ to the kilogram.
 * @example heatOf(kilograms(1000), quantity('heatOfExtract', 600)) // 600 (600,000 kJ)
 */
export function heatOf(extract: Quantity<'mass'>, perKilogram: Quantity<'heatOfExtract'>) {
  return quantity('energy', (extract * perKilogram) / 1000);
}

/**
 * Rise of temperature, K, if no heat left: heat ÷ (mass × heat capacity).
 * @example riseWithoutLoss(quantity('energy', 60), kilograms(1000)) // 15 (60,000 ÷ 4000)
 */
export function riseWithoutLoss(heat: Quantity<'energy'>, mass: Quantity<'mass'>) {
  within('The mass of the wash, kg,', mass, Number.MIN_VALUE, Number.MAX_VALUE);
  return kelvins((1000 * heat) / (mass * WASH_HEAT_CAPACITY));
}

/**
 * The washback from start to end in equal steps, each solved exactly for a steady release: heat in = warming +
 * loss + cooling. The whole wash has one temperature; heat that leaves with the gas and the vessel's own are not
 * counted; the pace does not quicken as it warms. Mass above 0 kg, hours above 0, loss and power 0 or more.
 * @example warmWashback({ mass: 1000, heat: 0, pace: { half: 20, steepness: 0.2 }, start: 18, hours: 60, air: 18, loss: 100, cooling: { power: 0, from: 33 } }).at(-1) // { hour: 60, temperature: 18, lost: 0, cooled: 0 } (no heat, and air as warm)
 */
export function warmWashback(washback: WarmWashback): readonly WashbackHeat[] {
  const { mass, heat, pace, start, air, loss, cooling } = washback;
  within('The hours in the washback', washback.hours, Number.MIN_VALUE, Number.MAX_VALUE);
  within('The mass of the wash, kg,', mass, Number.MIN_VALUE, Number.MAX_VALUE);
  within('The loss to the air, W/K,', loss, 0, Number.MAX_VALUE);
  within('The cooling, kW,', cooling.power, 0, Number.MAX_VALUE);
  const capacity = (mass * WASH_HEAT_CAPACITY) / 1000; // MJ/K
  const span = washback.hours / STEPS;
  const fade = (loss * MEGAJOULES_IN_WATT_HOUR) / capacity; // part of the difference lost in an hour
  const felt = fade > 0 ? -Math.expm1(-fade * span) / fade : span; // hours of undamped warming that a step is worth
  const states: WashbackHeat[] = [];
  let [temperature, released, lost, cooled] = [start as number, 0, 0, 0];
  for (let step = 0; ; step++) {
    const hour = step * span;
    states.push({
      hour: hours(hour),
      temperature: celsius(temperature),
      released: quantity('energy', released),
      lost: quantity('energy', lost),
      cooled: quantity('energy', cooled),
    });
    if (step === STEPS) return states;
    const now = heat * partReleased(pace, hour + span);
    const warming = (now - released) / span / capacity; // K/h, before loss
    const before = temperature;
    temperature += (warming - fade * (before - air)) * felt;
    lost += capacity * ((before - air) * fade * felt + warming * (span - felt));
    released = now;
    const over = Math.max(0, temperature - cooling.from);
    const on = before < cooling.from && over > 0 ? over / (temperature - before) : 1; // part of the step
    const taken = Math.min(cooling.power * 1000 * MEGAJOULES_IN_WATT_HOUR * span * on, capacity * over);
    temperature -= taken / capacity;
    cooled += taken;
  }
}

/**
 * The warmest state, the first of them if there are several.
 * @example warmest([{ temperature: 20 }, { temperature: 31 }, { temperature: 30 }]) // { temperature: 31 } (the largest)
 */
export function warmest(states: readonly WashbackHeat[]): WashbackHeat {
  return states.reduce((peak, state) => (state.temperature > peak.temperature ? state : peak));
}
