// A text as words, figures and signs, each with its place.
import { hasDecimalComma, pieceOfText, valueOf } from './figures.ts';

export interface Token {
  readonly start: number;
  readonly end: number;
  /** In lower case; a figure keeps its signs. */
  readonly text: string;
  readonly kind: 'word' | 'figure' | 'sign';
  /** The number behind a figure; missing for words, signs and figures too long to be a number. */
  readonly value?: number;
  /** True when no space stands before it. */
  readonly joined: boolean;
}

const fractions = new Map([['½', 1 / 2], ['⅓', 1 / 3], ['⅔', 2 / 3], ['¼', 1 / 4], ['¾', 3 / 4], ['⅕', 1 / 5], ['⅖', 2 / 5], ['⅗', 3 / 5], ['⅘', 4 / 5], ['⅙', 1 / 6], ['⅚', 5 / 6], ['⅛', 1 / 8], ['⅜', 3 / 8], ['⅝', 5 / 8], ['⅞', 7 / 8]]); // prettier-ignore

const isDigit = (code: number) => code >= 48 && code <= 57;
const isLetter = (code: number) =>
  (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || (code >= 0xc0 && code !== 0xd7 && code !== 0xf7 && code <= 0xff); // prettier-ignore

/**
 * Every word, figure and sign of a text, in order. Takes any text; whole and broken characters alike.
 * @example tokensOf('6.5 t').map(({ kind }) => kind) // ['figure', 'word'] (a number and its unit)
 */
export function tokensOf(text: string): Token[] {
  const decimalComma = hasDecimalComma(text);
  const piece = pieceOfText(decimalComma);
  const tokens: Token[] = [];
  let last = -1;
  piece.lastIndex = 0;
  for (let match = piece.exec(text); match; match = piece.exec(text)) {
    const [found] = match;
    const start = match.index;
    const end = start + found.length;
    const joined = start === last;
    last = end;
    const code = found.charCodeAt(0);
    if (isLetter(code)) tokens.push({ start, end, text: found.toLowerCase(), kind: 'word', joined });
    else {
      const fraction = fractions.get(found);
      const inDigits = isDigit(code) || (found.length > 1 && isDigit(found.charCodeAt(1))); // 5, and .5
      const value = inDigits ? valueOf(found, decimalComma) : fraction;
      if (!inDigits && fraction === undefined) tokens.push({ start, end, text: found, kind: 'sign', joined });
      else tokens.push({ start, end, text: found, kind: 'figure', joined, ...(value === undefined ? {} : { value }) });
    } // prettier-ignore
  }
  return tokens;
}
