// How much of a second spirit brings a first to a strength.
import { celsius, litres20, type Quantity, type Spirit } from '../quantity.ts';
import { VERY_MUCH, within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { densityFromStrength, massPercentFromStrength } from './strength.ts';
import { blend, type Blend } from './mixing.ts';

const kilosInLitre = (strength: Quantity<'strength'>) => densityFromStrength(strength, celsius(20)) / 1000;

/**
 * Litres at 20 °C of a spirit of strength `second` (0 is water) that bring `first` to `wanted`, % vol, and what is made.
 * Refuses a strength that does not lie between the two. Source: balance of mass on OIML R 22 densities.
 */
export function blendTo(
  first: Spirit,
  second: Quantity<'strength'>,
  wanted: Quantity<'strength'>,
): { readonly second: Quantity<'volume20'>; readonly made: Blend } | Refusal {
  within('The volume, L,', first.volume, 0, VERY_MUCH);
  const between = (wanted - first.strength) * (second - wanted);
  if (wanted !== first.strength && !(between > 0))
    return refuse('The strength wanted must lie between those of the two.');
  const [has, adds, aim] = [first.strength, second, wanted].map(massPercentFromStrength);
  const kilos =
    wanted === first.strength
      ? 0
      : (first.volume * kilosInLitre(first.strength) * (aim! - has!)) / (adds! - aim!);
  const volume = litres20(kilos / kilosInLitre(second));
  return { second: volume, made: blend([first, { volume, strength: second }]) };
}
