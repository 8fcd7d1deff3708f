// A sheet about a house that keeps stills, malts or bottles: its questions are drawn by all of these.
import { reckonHouseBy } from '../house/line-of.ts';
import type { HouseParts } from '../house/parts/part.ts';
import type { SheetHouse } from './worksheet.ts';

/** What of a house's parts its line is reckoned with; nothing where it keeps none of them. */
export function partsOfLine({ plant, malts, bottles }: HouseParts): { readonly parts?: HouseParts } {
  const parts = Object.entries({ plant, malts, bottles }).filter(([, part]) => part !== undefined);
  return parts.length === 0 ? {} : { parts: Object.fromEntries(parts) };
}

/** Fetches what the line of a sheet's own house is reckoned with, where it keeps more than figures: to be done before the sheet is drawn. */
export async function lineReady(of: SheetHouse): Promise<void> {
  if (typeof of === 'string' || of.parts === undefined) return;
  const { wayInBook } = await import('../house/line-with.ts');
  reckonHouseBy(of.house, wayInBook({ house: of.house, parts: of.parts }));
}
