// A figure as a guide types it: "5,500", "about 42,500", "5,500 to 6,000", "exactly 63.5", "42 ± 2".
import {
  NINETY_FIVE,
  quotableFigures,
  type QuotableName,
  type SaidValue,
} from '../core/cross-check/quoted.ts';
import { readQuantity } from '../core/reading/quantity.ts';
import type { UnitCountry } from '../core/reading/country.ts';
import { isRefusal, type Refusal } from '../core/refusal.ts';

/** What a text says of a figure, in the figure's own unit; or the sentence that says why it cannot be read. What stands behind ± is taken to hold the figure 95 times in a hundred, as a range is. */
export function readSaid(text: string, figure: QuotableName, country?: UnitCountry): SaidValue | Refusal {
  const read = readQuantity(text, { ...quotableFigures[figure], country });
  if (isRefusal(read)) return read;
  if (read.as === 'range') return { as: 'range', low: read.low, high: read.high };
  const { as, value, spread } = read;
  if (as === 'exact' || spread === 0) return { as: 'exact', value };
  if (as === 'about') return { as, value, ...(spread === undefined ? {} : { spread: spread / NINETY_FIVE }) };
  return { as, value, step: Math.min(read.step, Math.abs(value) || read.step) };
}
