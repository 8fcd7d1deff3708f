// Saturated steam: its temperature at a pressure and its pressure at a temperature, between the rows of a steam table.
// Tested in tests/core/saturated-steam.test.ts.
import { within } from '../range.ts';
import { celsius, kilopascals, type Quantity } from '../quantity.ts';

/** Pressure, kPa absolute, and temperature, °C; steam tables after IAPWS-IF97, from memory. */
const ROWS: readonly (readonly [pressure: number, temperature: number])[] = [
  [10, 45.81], [20, 60.06], [30, 69.1], [50, 81.32], [70, 89.93], [101.325, 99.97], [150, 111.35], [200, 120.21], [250, 127.41], [300, 133.52],
  [400, 143.61], [500, 151.83], [600, 158.83], [700, 164.95], [800, 170.41], [1000, 179.88], [1200, 187.96], [1500, 198.29],
]; // prettier-ignore
const KELVIN = 273.15;
const [LEAST, MOST] = [ROWS[0]!, ROWS.at(-1)!];

/** A value between two rows: the logarithm of pressure goes as one over the absolute temperature. */
function between(x: number, rows: readonly (readonly [x: number, y: number])[]): number {
  const at = Math.max(1, rows.findIndex(([each]) => each >= x));
  const [[x0, y0], [x1, y1]] = [rows[at - 1]!, rows[at]!];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
} // prettier-ignore

/**
 * Temperature of saturated steam, °C, at 10–1500 kPa absolute. Source: steam tables, from memory.
 * @example steamTemperature(kilopascals(300)) // 133.5 (a row of the table)
 */
export function steamTemperature(pressure: Quantity<'pressure'>): Quantity<'temperature'> {
  const at = Math.log(within('The pressure, kPa,', pressure, LEAST[0], MOST[0]));
  return celsius(1 / between(at, ROWS.map(([p, t]) => [Math.log(p), 1 / (t + KELVIN)])) - KELVIN);
} // prettier-ignore

/**
 * Pressure of saturated steam, kPa absolute, at 45.81–198.29 °C. Source: steam tables, from memory.
 * @example steamPressure(celsius(120.21)) // 200.0 (a row of the table)
 */
export function steamPressure(temperature: Quantity<'temperature'>): Quantity<'pressure'> {
  const at = -1 / (within('The temperature, °C,', temperature, LEAST[1], MOST[1]) + KELVIN);
  return kilopascals(Math.exp(between(at, ROWS.map(([p, t]) => [-1 / (t + KELVIN), Math.log(p)]))));
} // prettier-ignore
