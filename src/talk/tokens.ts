// A text as words, figures and signs, each with its place.

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

const LONGEST = 15; // digits that a double keeps
const fractions: Readonly<Record<string, number>> = { '½': 1 / 2, '¼': 1 / 4, '¾': 3 / 4, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 1 / 8 }; // prettier-ignore

/** True when a text writes two and a half as 2,5: more such figures in it than figures with a point. */
export function hasDecimalComma(text: string): boolean {
  const commas = text.match(/(?<![\d.,])\d{1,9},\d{1,2}(?![\d,])/g)?.length ?? 0;
  const points = text.match(/(?<![\d.,])\d{1,9}\.\d{1,2}(?![\d.])/g)?.length ?? 0;
  return commas > points;
}

const pieces = (grouping: string, decimal: string) =>
  new RegExp(
    [
      `(?<spaced>[1-9]\\d{0,2}(?:[ \\u00a0\\u202f]\\d{3})+(?![\\d-])(?:${decimal}\\d+)?)`,
      `(?<grouped>[1-9]\\d{0,2}(?:${grouping}\\d{3})+(?!\\d)(?:${decimal}\\d+)?)`,
      `(?<million>[1-9]\\d{0,2}(?:\\.\\d{3}){2,}(?!\\d)|[1-9]\\d{0,2}(?:,\\d{3}){2,}(?!\\d))`,
      `(?<zero>(?<![\\d.,])0,\\d+(?!\\d|,\\d))`,
      `(?<plain>\\d+(?:(?:${decimal}|·)\\d+(?!\\d|${decimal}\\d))?)`,
      `(?<fraction>[½¼¾⅓⅔⅛])`,
      `(?<word>[a-zà-öø-ÿ]+(?:['’][a-z]+)*)`,
      `(?<sign>\\S)`,
    ].join('|'),
    'gi',
  );
const english = pieces(',', '\\.');
const continental = pieces('\\.', ',');

function valueOf(figure: string, decimalComma: boolean): number | undefined {
  const grouping = /^0,/.test(figure) ? /\s/g : /[.,]\d+[.,]\d{3}$/.test(figure) ? /[.,\s]/g : decimalComma ? /[.\s]/g : /[,\s]/g; // prettier-ignore
  const ungrouped = figure.replace(grouping, '');
  const plain = ungrouped.replace(/[,·]/, '.');
  if (plain.length > LONGEST + 1) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}

/** Every word, figure and sign of a text, in order. Takes any text; whole and broken characters alike. */
export function tokensOf(text: string): Token[] {
  const decimalComma = hasDecimalComma(text);
  const tokens: Token[] = [];
  let last = -1;
  for (const match of text.matchAll(decimalComma ? continental : english)) {
    const [found] = match;
    const place = { start: match.index, end: match.index + found.length, joined: match.index === last };
    last = place.end;
    const groups = match.groups!;
    if (groups['word'] !== undefined) tokens.push({ ...place, text: found.toLowerCase(), kind: 'word' });
    else if (groups['sign'] !== undefined) tokens.push({ ...place, text: found, kind: 'sign' });
    else {
      const value = fractions[found] ?? valueOf(found, decimalComma);
      tokens.push({ ...place, text: found, kind: 'figure', ...(value === undefined ? {} : { value }) });
    }
  }
  return tokens;
}
