// The spirit that a malt could give, from its analysis.
import { alcoholPerTonne, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

/** Litres of pure alcohol from a tonne of malt for each per cent of fermentable extract; Bringhurst et al. 1996. */
export const SPIRIT_YIELD_FACTOR = 6.06;

/**
 * Balling's ceiling for the same factor, 6.13: 10 kg of extract over 2.0665 kg per kg of ethanol over 0.78924 kg/L.
 * It asks that every gram of fermentable extract follow Balling's ratio and that no alcohol be lost; measured
 * distillations gave 6.11 on laboratory mashes and confirmed 6.06 for use, so 6.06 stands (Bringhurst et al. 1996).
 */
export const BALLING_CEILING = 10 / 2.0665 / 0.78924;

/**
 * Extract that yeast can use, % of the malt: soluble extract × fermentability.
 * @example fermentableExtract(percent(80), percent(85)) // 68 (80 × 0.85)
 */
export function fermentableExtract(extract: Quantity<'percent'>, fermentability: Quantity<'percent'>) {
  within('The soluble extract, %,', extract, 0, 100);
  within('The fermentability, %,', fermentability, 0, 100);
  return (extract * fermentability) / 100;
}

/**
 * Predicted spirit yield, litres of pure alcohol per tonne of malt as it is.
 * Soluble extract 0–100 % of the malt as it is, fermentability 0–100 % of the extract.
 * Source: Bringhurst, Brosnan, McInnes & Steele, J. Inst. Brew. 102, 433–437 (1996).
 * @example predictedSpiritYield({ extract: percent(77.5), fermentability: percent(87) }) // 408.595 (6.06 × 77.5 × 0.87)
 */
export function predictedSpiritYield(malt: {
  readonly extract: Quantity<'percent'>;
  readonly fermentability: Quantity<'percent'>;
}): Quantity<'yield'> {
  return alcoholPerTonne(SPIRIT_YIELD_FACTOR * fermentableExtract(malt.extract, malt.fermentability));
}
