// How much of a second spirit brings a first to a strength.
import { celsius, quantity, type Quantity, type Spirit } from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { blend, type Blend } from './mixing.ts';
import { densityFromStrength } from './strength.ts';

/**
 * Litres at 20 °C of a spirit of strength `second` (0 is water) that bring `first` to `wanted`, % vol, and what is made.
 * Alcohol adds and mass adds: what both have together must be `wanted` of the volume that their mass then fills.
 * Refuses a strength that does not lie between the two. Source: balance of mass on OIML R 22 densities.
 * @example blendTo({ volume: litres20(1000), strength: strength(70) }, strength(0), strength(63.5)).second // 108.0 (balance of mass by hand with printed densities, 108.03 L)
 * @example blendTo({ volume: litres20(1), strength: strength(40) }, strength(30), strength(60)) // refuses: must lie between (no weaker spirit strengthens)
 */
export function blendTo(
  first: Spirit,
  second: Quantity<'strength'>,
  wanted: Quantity<'strength'>,
): { readonly second: Quantity<'volume20'>; readonly made: Blend } | Refusal {
  within('The volume, L,', first.volume, 0, VERY_MUCH);
  if (wanted !== first.strength && !((wanted - first.strength) * (second - wanted) > 0))
    return refuse('The strength wanted must lie between those of the two.');
  const over = (strength: Quantity<'strength'>) =>
    densityFromStrength(strength, celsius(20)) / densityFromStrength(wanted, celsius(20));
  const litres =
    wanted === first.strength
      ? 0
      : (first.volume * (wanted * over(first.strength) - first.strength)) / (second - wanted * over(second));
  const volume = quantity('volume20', litres);
  return { second: volume, made: blend([first, { volume, strength: second }]) };
}
