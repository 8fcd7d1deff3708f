// What presses out of a cask and what the air of the store holds against it.
import { kilopascals, litres20, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { amountsOf } from '../spirit/amounts.ts';
import { ethanolPressure, waterPressure } from '../vapour/equilibrium.ts';
import { activitiesOf } from './cask.ts';

export interface StoreVapour {
  readonly ethanol: Quantity<'pressure'>;
  readonly water: Quantity<'pressure'>;
  readonly waterInAir: Quantity<'pressure'>;
}

/**
 * Pressures, kPa, of ethanol and of water over wood wet with spirit of 0–100 % vol, and of water in the air, at −20…60 °C
 * and 0–100 % humidity. Source: van Laar activities and Antoine vapour pressures, de Nevers.
 * @example vapourInTheStore(strength(0), celsius(20), percent(100)) // { ethanol: 0, water: 2.3, waterInAir: 2.3 } (steam tables, 2.34 kPa over water at 20 °C)
 */
export function vapourInTheStore(
  strength: Quantity<'strength'>,
  temperature: Quantity<'temperature'>,
  humidity: Quantity<'percent'>,
): StoreVapour {
  within('The temperature, °C,', temperature, -20, 60);
  within('The humidity, %,', humidity, 0, 100);
  const activity = activitiesOf(amountsOf({ volume: litres20(1), strength }));
  const water = waterPressure(temperature);
  return {
    ethanol: kilopascals(activity.ethanol * ethanolPressure(temperature)),
    water: kilopascals(activity.water * water),
    waterInAir: kilopascals((water * humidity) / 100),
  };
}
