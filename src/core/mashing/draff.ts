// Draff and the extract that goes with it.
import { formatNumber as n } from '../format.ts';
import { kilograms, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { draffMass } from './wort.ts';

export interface Draff {
  /** Wet, as it leaves the tun. */
  readonly wet: Quantity<'mass'>;
  readonly dry: Quantity<'mass'>;
  readonly water: Quantity<'mass'>;
  /** Extract that the malt had and the wort has not. */
  readonly lost: Quantity<'mass'>;
}

/**
 * Draff of a malt, kg, when the wort holds `efficiency` % of its extract. Refuses an efficiency over 100 %,
 * which cannot be true.
 * @example draffOf({ mass: kilograms(1000), moisture: percent(4.5), extract: percent(77) }, percent(100), percent(78)) // { wet: 980.909, lost: 0 } (by hand, 1000 × (0.955 − 0.77 × 0.96) ÷ 0.22)
 */
export function draffOf(
  malt: {
    readonly mass: Quantity<'mass'>;
    readonly moisture: Quantity<'percent'>;
    readonly extract: Quantity<'percent'>;
  },
  efficiency: Quantity<'percent'>,
  draffMoisture: Quantity<'percent'>,
): Draff | Refusal {
  if (!(efficiency <= 100)) {
    return refuse(
      `The wort is said to hold ${n(efficiency, 1)} % of the malt’s extract; it can hold 100 % at most. Look for the mistake in volume, gravity, weight or analysis.`,
    );
  }
  const promised = (malt.mass * malt.extract) / 100;
  const wort = kilograms((promised * efficiency) / 100);
  const wet = draffMass(malt, wort, draffMoisture);
  const water = (wet * draffMoisture) / 100;
  return { wet, dry: kilograms(wet - water), water: kilograms(water), lost: kilograms(promised - wort) };
}
