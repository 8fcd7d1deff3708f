// Computed figures that a question prints: rounded when it is first drawn, and printed the same ever after from a few codes.
import { formatNumber } from '../core/format.ts';
import { parseNumber } from '../core/reading/plain.ts';
import { CODES_COUNT } from './codes.ts';
import { codesOfFigure, FIGURE, figureOf } from './figure-codes.ts';
import { seedOf } from './seed.ts';

const MOST_FIGURES = 24; // of the texts of a question; further ones are today's

export interface Quotes {
  /** A figure as printed, to some decimals; as it was first printed when its code is carried. */
  readonly quote: (value: number, digits: number) => number;
  /** Texts with their figures as first printed. Codes of other texts than these are not used. */
  readonly texts: (texts: readonly string[]) => readonly string[];
  /** The codes of all that was quoted, in order. */
  readonly codes: readonly number[];
  /** False when what is carried belongs to another wording. */
  readonly isSame: () => boolean;
}

const modulo = (whole: number) => ((whole % CODES_COUNT) + CODES_COUNT) % CODES_COUNT;

/**
 * Quotes for one question. A code is the figure's last places, modulo 4096, so that the figure nearest to today's which has
 * it is the one first printed, as long as it has moved by less than 2048 last places.
 */
export function quotesOf(carried: readonly number[] = []): Quotes {
  const codes: number[] = [];
  let same = true;
  const quote = (value: number, digits: number): number => {
    const today = Math.round((parseNumber(formatNumber(value, digits)) ?? NaN) * 10 ** digits);
    const code = carried[codes.length];
    const back = code === undefined ? 0 : modulo(code - today + CODES_COUNT / 2) - CODES_COUNT / 2;
    codes.push(modulo(today + back));
    return Number(((today + back) / 10 ** digits).toFixed(digits));
  };
  const texts = (given: readonly string[]): readonly string[] => {
    const wording = modulo(seedOf(given.join('\n').replace(FIGURE, '#')));
    if (carried.length > 0 && carried[codes.length] !== wording) same = false;
    codes.push(wording);
    let figures = 0;
    const first = (figure: string): string => {
      if (figures++ >= MOST_FIGURES) return figure;
      const [high = 0, low = 0] = carried.slice(codes.length, codes.length + 2);
      const told = figureOf(high, low) ?? figure;
      codes.push(...codesOfFigure(told));
      return told;
    };
    return given.map((text) => text.replace(FIGURE, first));
  };
  return { quote, texts, codes, isSame: () => same };
}
