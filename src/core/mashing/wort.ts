// Wort and draff: where the malt's extract went.
import { kilograms, litresPerKilogram, percent, type Quantity } from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';
import { WATER_DENSITY } from '../spirit/density.ts';
import { platoFromGravity } from '../wort/extract.ts';

/**
 * Water that goes into 1 kg of extract as starch becomes sugar, kg: 18 kg to 342 of maltose, 180 of glucose, 504 of
 * maltotriose. An all-malt wort of 15 °P with 1.90, 7.66 and 1.46 % of glucose, maltose and maltotriose has taken up
 * 0.043 (bioresources-2020), and a little more in its dextrins, less for sugar that the malt held ready: 0.04.
 */
export const HYDROLYSIS_WATER = 0.04;

export interface Wort {
  readonly volume: Quantity<'volume20'>;
  readonly gravity: Quantity<'gravity'>;
}

/**
 * Mass of a wort, kg, from its volume at 20 °C and its gravity.
 * @example wortMass({ volume: litres20(1000), gravity: gravity(1.05) }) // 1048.1 (1.05 × 998.2)
 */
export function wortMass({ volume, gravity }: Wort): Quantity<'mass'> {
  within('The wort, L,', volume, 0, VERY_MUCH);
  return kilograms((volume * gravity * WATER_DENSITY) / 1000);
}

/**
 * Extract dissolved in a wort, kg: mass × °P ÷ 100.
 * @example wortExtract({ volume: litres20(1000), gravity: gravity(1.04831) }) // 125.6 (12 % of 1046.4 kg)
 */
export function wortExtract(wort: Wort): Quantity<'mass'> {
  return kilograms((wortMass(wort) * platoFromGravity(wort.gravity)) / 100);
}

/**
 * Extract in the wort as a share of the extract the malt's analysis promises, %. Over 100 % cannot be true.
 * @example mashEfficiency({ volume: litres20(1000), gravity: gravity(1.04831) }, { mass: kilograms(200), extract: percent(78.5) }) // 80.0 (125.6 of 157 kg)
 */
export function mashEfficiency(
  wort: Wort,
  malt: { readonly mass: Quantity<'mass'>; readonly extract: Quantity<'percent'> },
): Quantity<'percent'> {
  within('The malt, kg,', malt.mass, Number.MIN_VALUE, VERY_MUCH);
  return percent((1e4 * wortExtract(wort)) / (malt.mass * malt.extract));
}

/**
 * Mass of wet draff, kg, at its own moisture, %. Malt dry + water that its extract takes up as starch becomes sugar
 * = extract in the wort + draff dry; what is dissolved and not in the wort is in the draff.
 * @example draffMass({ mass: kilograms(1000), moisture: percent(4.5), extract: percent(77) }, kilograms(770), percent(78)) // 980.909 (by hand, 1000 × (0.955 − 0.77 × 0.96) ÷ 0.22)
 */
export function draffMass(
  malt: {
    readonly mass: Quantity<'mass'>;
    readonly moisture: Quantity<'percent'>;
    readonly extract: Quantity<'percent'>;
  },
  inWort: Quantity<'mass'>,
  draffMoisture: Quantity<'percent'>,
): Quantity<'mass'> {
  within('The malt, kg,', malt.mass, 0, VERY_MUCH);
  within('The moisture of the draff, %,', draffMoisture, 0, 99);
  const takenUp = (HYDROLYSIS_WATER * malt.mass * malt.extract) / 100;
  const dry = Math.max(0, malt.mass * (1 - malt.moisture / 100) + takenUp - inWort);
  return kilograms(dry / (1 - draffMoisture / 100));
}

/**
 * Water that drained grains keep, kg for each kg of grist: all but the dry matter of the draff. Draff is three quarters to four
 * fifths water (Oxford Companion to Beer, “Spent grain”).
 * @example waterKept({ mass: kilograms(1000), moisture: percent(4.5), extract: percent(77) }, kilograms(770), percent(78)) // 0.765 (78 % of 0.980909 kg)
 */
export function waterKept(
  malt: Parameters<typeof draffMass>[0],
  inWort: Quantity<'mass'>,
  draffMoisture: Quantity<'percent'>,
): Quantity<'liquorRatio'> {
  return litresPerKilogram(((draffMass(malt, inWort, draffMoisture) / malt.mass) * draffMoisture) / 100);
}
