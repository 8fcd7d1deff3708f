// What nitrogen and the size of the corn say of a malt's extract.
import { percent, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

export const PROTEIN_PER_NITROGEN = 6.25; // kg of protein to a kilogram of nitrogen; custom for barley, from memory
export const EXTRACT_LOST_TO_PROTEIN = 0.85; // % of extract to 1 % of protein; Bishop 1930, metric form, from memory
export const EXTRACT_FROM_SIZE = 0.15; // % of extract to a gram of thousand-corn weight; the same

/**
 * Protein, % of the dry matter, from total nitrogen, % of the dry matter, 0–10.
 * @example proteinFromNitrogen(quantity('nitrogen', 1.6)) // 10 (6.25 × 1.6)
 */
export function proteinFromNitrogen(nitrogen: Quantity<'nitrogen'>): Quantity<'percent'> {
  return percent(PROTEIN_PER_NITROGEN * within('The nitrogen, %,', nitrogen, 0, 10));
}

export interface BarleySample {
  /** % of the dry matter, 0–10. */
  readonly nitrogen: Quantity<'nitrogen'>;
  /** A thousand corns, dry, 10–80 g. */
  readonly thousandCorns: Quantity<'grams'>;
  /** The constant of the kind of barley, 60–100 %; about 84–85 for two rows, from memory. */
  readonly constant: Quantity<'percent'>;
}

/**
 * Extract of the malt, % of its dry matter, estimated. Source: Bishop's equation, metric form, from memory.
 * @example estimatedExtract({ nitrogen: quantity('nitrogen', 1.6), thousandCorns: quantity('grams', 40), constant: percent(84.5) }) // 82 (84.5 − 0.85 × 10 + 0.15 × 40)
 */
export function estimatedExtract({ nitrogen, thousandCorns, constant }: BarleySample): Quantity<'percent'> {
  within('The weight of a thousand corns, g,', thousandCorns, 10, 80);
  within('The constant, %,', constant, 60, 100);
  const protein = proteinFromNitrogen(nitrogen);
  return percent(constant - EXTRACT_LOST_TO_PROTEIN * protein + EXTRACT_FROM_SIZE * thousandCorns);
}

/**
 * Extract, % of the malt as it is, from extract, % of the dry matter, 0–100, at a moisture, % of the whole, 0–50.
 * @example extractAsIs(percent(80), percent(5)) // 76 (80 × 0.95)
 */
export function extractAsIs(
  extract: Quantity<'percent'>,
  moisture: Quantity<'percent'>,
): Quantity<'percent'> {
  within('The extract, %,', extract, 0, 100);
  return percent((extract * (100 - within('The moisture, %,', moisture, 0, 50))) / 100);
}
