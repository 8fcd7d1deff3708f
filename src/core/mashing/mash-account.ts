// The extract of one mash, with what it borrowed and what it passes on.
import { formatNumber as n } from '../format.ts';
import { kilograms, percent, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { mashEfficiency, wortExtract, type Wort } from './wort.ts';

export interface MashAccount {
  readonly borrowed: Quantity<'mass'>;
  readonly passedOn: Quantity<'mass'>;
  /** Extract that this mash’s own malt gave, kg. */
  readonly own: Quantity<'mass'>;
  readonly efficiency: Quantity<'percent'>;
  /** What the wort alone would say. */
  readonly ofWortAlone: Quantity<'percent'>;
}

/**
 * Efficiency of one mash: extract in its wort and in the weak wort that it passes on, less that in the weak
 * wort that it was given, over what the malt’s analysis promises. Refuses when the mash gave nothing of its own.
 * @example accountOfMash({ volume: litres20(1000), gravity: gravity(1.06) }, { mass: kilograms(200), extract: percent(80) }, { given: { volume: litres20(500), gravity: gravity(1.01) }, passedOn: { volume: litres20(500), gravity: gravity(1.01) } }).own - wortExtract({ volume: litres20(1000), gravity: gravity(1.06) }) // 0.000 (what was lent was given back)
 */
export function accountOfMash(
  wort: Wort,
  malt: { readonly mass: Quantity<'mass'>; readonly extract: Quantity<'percent'> },
  weak: { readonly given: Wort; readonly passedOn: Wort },
): MashAccount | Refusal {
  const [borrowed, passedOn] = [wortExtract(weak.given), wortExtract(weak.passedOn)];
  const own = wortExtract(wort) + passedOn - borrowed;
  if (own <= 0) {
    return refuse(
      `The weak wort given brought ${n(borrowed, 0)} kg of extract, and wort and weak wort together hold no more; so the malt gave nothing. One of the readings is wrong.`,
    );
  }
  return {
    borrowed,
    passedOn,
    own: kilograms(own),
    efficiency: percent((1e4 * own) / (malt.mass * malt.extract)),
    ofWortAlone: mashEfficiency(wort, malt),
  };
}
