// What a litre of hot water weighs.
import { kilograms, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

// Kell, Journal of Chemical and Engineering Data 20, 97 (1975), from memory; g/L with t in °C, at one atmosphere.
const ABOVE = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12];
const BELOW = 16.87985e-3; // 1/°C, the divisor’s slope; the same source

/**
 * Mass, kg, of litres of water measured at a temperature of 0–100 °C.
 * @example massOfWater(litres(1000), celsius(20)) // 998.2 (IAPWS-95, 998.207)
 */
export function massOfWater(
  volume: Quantity<'volume'>,
  temperature: Quantity<'temperature'>,
): Quantity<'mass'> {
  within('The temperature of the water, °C,', temperature, 0, 100);
  const density = ABOVE.reduceRight((sum, c) => sum * temperature + c, 0) / (1 + BELOW * temperature);
  return kilograms((volume * density) / 1000);
}
