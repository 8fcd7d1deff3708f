// How hot the first water must be.
import { celsius, kelvins, quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** Moisture of the malt %, its heat capacity over water's, and the rise on wetting K; a pocket table of the trade, from memory. */
const SLAKING = [
  [0, 0.38, 3.0],
  [1, 0.38, 2.8],
  [2, 0.39, 2.3],
  [3, 0.4, 1.9],
  [4, 0.4, 1.5],
  [6, 0.41, 1.3],
  [8, 0.42, 1.0],
] as const;

export const TABLE_RATIO = 2.68; // L/kg, 2.5 barrels to the quarter: the mash for which the table is worked; its example, from memory

/**
 * Heat capacity of malt over that of water, and the rise of temperature when malt of 0–8 % moisture is wetted. Wetting
 * gives so much heat to a kilogram of malt, however much water there is: rise × (heat + ratio) is the same in every mash.
 * Without a ratio, L/kg, the rise is the table's own.
 * @example slaking(percent(4)) // { heat: 0.4, rise: 1.5 } (a row of the table)
 */
export function slaking(
  moisture: Quantity<'percent'>,
  ratio = quantity('liquorRatio', TABLE_RATIO),
): { heat: number; rise: Quantity<'temperatureDifference'> } {
  within('The moisture of the malt, %,', moisture, 0, 8);
  const above = Math.max(
    1,
    SLAKING.findIndex(([m]) => m >= moisture),
  );
  const [[m0, h0, r0], [m1, h1, r1]] = [SLAKING[above - 1]!, SLAKING[above]!];
  const part = (moisture - m0) / (m1 - m0);
  const heat = h0 + part * (h1 - h0);
  const tabled = r0 + part * (r1 - r0);
  return { heat, rise: kelvins(tabled * ((heat + TABLE_RATIO) / (heat + ratio))) };
}

export interface MashIn {
  /** Water to grist, L/kg. */
  readonly ratio: Quantity<'liquorRatio'>;
  readonly gristTemperature: Quantity<'temperature'>;
  readonly maltMoisture: Quantity<'percent'>;
}

/** Stops a ratio or a temperature that no mash has. */
function checkMash(water: Quantity<'temperature'>, { ratio, gristTemperature }: MashIn): void {
  within('The temperature, °C,', water, -20, 150);
  within('The temperature of the grist, °C,', gristTemperature, -40, 100);
  within('The water to grist, L/kg,', ratio, 0.1, 20);
}

/**
 * Temperature of the mash from that of the water. Heat of the vessel is not counted. Source: see `slaking-heat`.
 * @example mashTemperature(celsius(69), { ratio: litresPerKilogram(2.68), gristTemperature: celsius(27), maltMoisture: percent(2) }) // 65.96 (the table’s own formula by hand)
 */
export function mashTemperature(water: Quantity<'temperature'>, mash: MashIn): Quantity<'temperature'> {
  checkMash(water, mash);
  const { heat, rise } = slaking(mash.maltMoisture, mash.ratio);
  return celsius((heat * mash.gristTemperature + mash.ratio * water) / (heat + mash.ratio) + rise);
}

/**
 * Temperature of the first water for a wanted temperature of the mash; undoes `mashTemperature`.
 * @example strikeTemperature(celsius(65.9645), { ratio: litresPerKilogram(2.68), gristTemperature: celsius(27), maltMoisture: percent(2) }) // 69.00 (the same sum backwards)
 */
export function strikeTemperature(wanted: Quantity<'temperature'>, mash: MashIn): Quantity<'temperature'> {
  checkMash(wanted, mash);
  const { heat, rise } = slaking(mash.maltMoisture, mash.ratio);
  return celsius(((wanted - rise) * (heat + mash.ratio) - heat * mash.gristTemperature) / mash.ratio);
}
