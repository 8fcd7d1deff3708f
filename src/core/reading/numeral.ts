// The number in a text with a power of ten behind it, and the size of its last digit; in a time, 7:36 as well.
import type { KindName } from '../kinds.ts';
import { dimensionOf, unitsRead, type Unit } from '../units.ts';
import { hasDecimalComma, lastDigitSize } from './figures.ts';
import { mayBegin, numberAtToken } from './numbers.ts';
import { powerAt } from './powers.ts';
import { timeAt } from './times.ts';
import type { Token } from './tokens.ts';

/** A number while it is read: where it begins and ends in the text, and what it is worth. */
export interface Numeral {
  readonly value: number;
  readonly place: number;
  readonly scale: number;
  readonly end: number;
  /** A part of what follows: "of a" may stand between. */
  readonly part: boolean;
  /** The unit that the form itself brings: hours in 7:36. */
  readonly unit?: Unit;
}

const FRACTION = 1e-9; // place of a figure that is written as a fraction, and so is exact

/** Size of the last digit of a number that was said in words. */
function lastDigit(value: number): number {
  const decimals = (String(value).split('.')[1] ?? '').length;
  if (decimals > 0) return decimals > 6 ? FRACTION : 10 ** -decimals;
  let place = 1;
  while (value !== 0 && value % (10 * place) === 0) place *= 10;
  return place;
}

/**
 * The number that begins at a token, with a power of ten behind it.
 * @example numeralAt('1.2e6 L', tokensOf('1.2e6 L'), 0, 'volume').value // 1200000 (1.2 with six places)
 */
export function numeralAt(
  text: string,
  tokens: readonly Token[],
  i: number,
  kind: KindName,
): Numeral | undefined {
  const token = tokens[i];
  if (!token || !mayBegin(token)) return undefined;
  const time = dimensionOf(kind) === 'time' ? timeAt(text, token.start, true) : undefined;
  if (time) {
    const hours = unitsRead(kind).find(({ unit }) => unit === 'h');
    return hours && { value: time.hours, place: 1 / 60, scale: 1, end: time.end, part: false, unit: hours };
  }
  const said = numberAtToken(tokens, i, true);
  if (!said) return undefined;
  const end = tokens[said.next - 1]!.end;
  const power = powerAt(text, end);
  const size = 10 ** (power?.power ?? 0);
  const isFigure = token.kind === 'figure' && /^\d/.test(token.text) && !said.fraction;
  const written = lastDigitSize(token.text, hasDecimalComma(text)) * said.scale;
  const isWhole = said.next === i + 1 || said.scale > 1;
  const isPart = said.fraction || /[/½-¾⅓-⅞]/.test(text.slice(token.start, end));
  const place = isPart ? FRACTION : isFigure && isWhole ? written : lastDigit(said.value);
  return {
    value: said.value * size,
    place: place * size,
    scale: said.scale,
    end: power?.end ?? end,
    part:
      said.fraction || /^(?:couple|dozen|half|halves|thirds?|quarters?)$/.test(tokens[said.next - 1]!.text),
  };
}
