// The water that brings a mash which stands wrong to where it should stand.
import { litres, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { slaking } from './strike.ts';

export interface StandingMash {
  readonly malt: Quantity<'mass'>;
  /** Water already in the mash, L. */
  readonly water: Quantity<'volume'>;
  readonly maltMoisture: Quantity<'percent'>;
  readonly temperature: Quantity<'temperature'>;
}

/**
 * Litres of water at `water`, 0–100 °C, that bring a mash from where it stands to `wanted`: what the mash takes up,
 * its malt counted at the heat that it takes over water's, the water gives. Heat of the vessel is not counted.
 * Refuses water that is not on the far side of the temperature wanted. Source: balance of heat.
 * @example rescueWater({ malt: kilograms(1000), water: litres(2600), maltMoisture: percent(4), temperature: celsius(60) }, celsius(64), celsius(94)) // 400 (by hand, (2600 + 0.4 × 1000) × 4 ÷ 30)
 */
export function rescueWater(
  { malt, water: inMash, maltMoisture, temperature }: StandingMash,
  wanted: Quantity<'temperature'>,
  water: Quantity<'temperature'>,
): Quantity<'volume'> | Refusal {
  within('The malt, kg,', malt, 0, 1e9);
  within('The water in the mash, L,', inMash, 0, 1e9);
  within('The temperature of the water, °C,', water, 0, 100);
  const missing = wanted - temperature;
  if (missing === 0) return litres(0);
  if (missing > 0 && water <= wanted)
    return refuse('Water no hotter than the mash wanted cannot warm it there.');
  if (missing < 0 && water >= wanted)
    return refuse('Water no colder than the mash wanted cannot cool it there.');
  const asWater = inMash + slaking(maltMoisture).heat * malt;
  return litres((asWater * missing) / (water - wanted));
}
