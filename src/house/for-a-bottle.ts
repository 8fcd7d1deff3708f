// What one bottle took, with all that is lost on its way: the spirit distilled for it, and the water and energy that went with it.
import type { KindName } from '../core/kinds.ts';
import type { Line } from '../core/line/line.ts';

export const WATER_OF_TRADE = 190; // L for a litre of pure alcohol; the totals of 2013 in the chapter on water, common practice
export const KWH_OF_TRADE = 6.66; // kWh for a litre of pure alcohol; one trade's total in the chapter on heat, common practice

interface ForABottle {
  readonly kind: KindName;
  readonly digits: number;
  readonly of: (line: Line) => number;
}

/** Pure alcohol distilled for one bottle, L: more than is in it, as casks and filters take their part. */
const alcohol = ({ heart, bottling }: Line) => heart.alcohol / bottling.bottles;

/** Each by the name that prose quotes it by; energy in kWh, which the words beside it say. */
export const forABottle: Readonly<Record<string, ForABottle>> = {
  'bottle.alcohol': { kind: 'alcohol', digits: 2, of: alcohol },
  'bottle.water': { kind: 'volume', digits: 0, of: (line) => WATER_OF_TRADE * alcohol(line) },
  'bottle.energy': { kind: 'count', digits: 1, of: (line) => KWH_OF_TRADE * alcohol(line) },
};
