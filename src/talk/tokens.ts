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
const fractions = new Map([['½', 1 / 2], ['¼', 1 / 4], ['¾', 3 / 4], ['⅓', 1 / 3], ['⅔', 2 / 3], ['⅛', 1 / 8]]); // prettier-ignore

/** True when a text writes two and a half as 2,5: more such figures in it than figures with a point. */
export function hasDecimalComma(text: string): boolean {
  const commas = text.match(/(?<![\d.,])\d{1,9},\d{1,2}(?![\d,])/g)?.length ?? 0;
  const points = text.match(/(?<![\d.,])\d{1,9}\.\d{1,2}(?![\d.])/g)?.length ?? 0;
  return commas > points;
}

/** Words, figures with their grouping and decimals, single signs; the first that fits counts. */
const pieces = (grouping: string, decimal: string) =>
  new RegExp(
    [
      `[a-zà-öø-ÿ]+(?:['’][a-z]+)*`,
      `[1-9]\\d{0,2}(?:[ \\u00a0\\u202f]\\d{3})+(?![\\d-])(?:${decimal}\\d+)?`, // 12 000
      `[1-9]\\d{0,2}(?:${grouping}\\d{3})+(?!\\d)(?:${decimal}\\d+)?`, // 12,000.5
      `[1-9]\\d{0,2}(?:\\.\\d{3}){2,}(?!\\d)|[1-9]\\d{0,2}(?:,\\d{3}){2,}(?!\\d)`, // 1.000.000
      `(?<![\\d.,])0,\\d+(?!\\d|,\\d)`, // 0,998
      `\\d+(?:(?:${decimal}|·)\\d+(?!\\d|${decimal}\\d))?`,
      `\\S`,
    ].join('|'),
    'gi',
  );
const english = pieces(',', '\\.');
const continental = pieces('\\.', ',');

/** Which signs of a figure group its thousands. */
function groupingOf(figure: string, decimalComma: boolean): RegExp {
  if (/^0,/.test(figure)) return /\s/g;
  if (/[.,]\d+[.,]\d{3}$/.test(figure)) return /[.,\s]/g;
  return decimalComma ? /[.\s]/g : /[,\s]/g;
}

function valueOf(figure: string, decimalComma: boolean): number | undefined {
  const plain = /\D/.test(figure)
    ? figure.replace(groupingOf(figure, decimalComma), '').replace(/[,·]/, '.')
    : figure;
  if (plain.length > LONGEST + 1) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}

const isDigit = (code: number) => code >= 48 && code <= 57;
const isLetter = (code: number) =>
  (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || (code >= 0xc0 && code !== 0xd7 && code !== 0xf7 && code <= 0xff); // prettier-ignore

/** Every word, figure and sign of a text, in order. Takes any text; whole and broken characters alike. */
export function tokensOf(text: string): Token[] {
  const decimalComma = hasDecimalComma(text);
  const piece = decimalComma ? continental : english;
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
      const value = isDigit(code) ? valueOf(found, decimalComma) : fraction;
      if (!isDigit(code) && fraction === undefined) tokens.push({ start, end, text: found, kind: 'sign', joined });
      else tokens.push({ start, end, text: found, kind: 'figure', joined, ...(value === undefined ? {} : { value }) });
    } // prettier-ignore
  }
  return tokens;
}
