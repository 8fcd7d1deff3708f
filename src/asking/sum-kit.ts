// What the sums of a plant share: a range, what stands behind a number, a number as it is told, temperatures that are asked with.
import { formatNumber } from '../core/format.ts';
import type { AskedQuantity } from './quantities.ts';
import { inCore, type Numbered } from './reckoned.ts';

/** True for a value from the first to the second of a range. */
export const isWithinRange = ([least, most]: readonly [number, number], value: number): boolean =>
  value >= least && value <= most;
/** The text behind a number and its unit. */
export const textBehind = (text: string, { end }: AskedQuantity): string => text.slice(end);
/** A number with a decimal where it has one. */
export const numberText = (value: number): string => formatNumber(value, value % 1 === 0 ? 0 : 1);

const FIT_FOR_LIQUID = [-10, 110] as const; // °C

/** Temperatures that a question gives, °C, those without a unit among them. */
export const temperaturesIn = ({ text, quantities }: Numbered): readonly number[] =>
  quantities.flatMap((each) => {
    if (each.dimension === 'temperature' && each.unit !== '°') return [inCore(each, 'temperature')!];
    const isMeant = each.unit === '°' || (each.unit === undefined && (/(?:from|to|at|boil|up to|is|was)\s*$/i.test(text.slice(0, each.start)) || /^\s*cel[cs]iu?s/i.test(textBehind(text, each))));
    return isMeant && isWithinRange(FIT_FOR_LIQUID, each.number) ? [each.number] : [];
  }); // prettier-ignore
