// Numbers in figures, and the one rule for their commas and points.

/**
 * The rule, the same at every door, in this order:
 * spaces and apostrophes between groups of three digits group: 1 250, 1’250;
 * of a comma and a point in one figure the latter is the decimal sign: 1,250.5 and 1.250,5;
 * a sign that stands more than once groups: 1.000.000, and 1,40,000 where lakhs are counted;
 * a comma before exactly three digits groups, 1,500, unless a nought stands before it, 0,998;
 * any other comma or point is the decimal sign, so 1.250 is one and a quarter, however large the figure should be.
 * A text that writes decimals with a comma elsewhere is read as such texts are: there 12.000 is twelve thousand;
 * and so is one with no decimals of one or two digits that writes 27.500 and the like twice.
 * @example [hasDecimalComma('1,5 t und 2,5 t'), hasDecimalComma('1.5 t')] // [true, false] (a comma before one digit)
 */
export function hasDecimalComma(text: string): boolean {
  const commas = text.match(COMMAS)?.length ?? 0;
  const points = text.match(POINTS)?.length ?? 0;
  return commas > points || (commas + points === 0 && (text.match(GROUPED)?.length ?? 0) > 1);
}
const COMMAS =
  /(?<![\d.,])(?:[1-9]\d{0,2}(?:\.\d{3})+,\d+|\d{1,9},(?:\d{1,2}|\d{4,})|\d{4,9},\d{3})(?![\d,])/g;
const GROUPED = /(?<![\d.,])(?!1\.[01])[1-9]\d{0,2}\.\d{3}(?![\d.,])/g;
const POINTS = /(?<![\d.,])\d{1,9}\.\d{1,2}(?![\d.])/g;

/** Words, figures with their grouping and decimals, single signs; the first that fits counts. */
const pieces = (grouping: string, decimal: string) =>
  new RegExp(
    [
      `[a-zà-öø-ÿ]+(?:['’][a-z]+)*`,
      `[1-9]\\d{0,2}(?:[ \\u00a0\\u202f]\\d{3})+(?![\\d-])(?:${decimal}\\d+)?`, // 12 000
      `[1-9]\\d{0,2}(?:['’_]\\d{3})+(?!\\d)(?:[.,]\\d+)?`, // 12’000.5
      `[1-9]\\d?(?:,\\d{2})+,\\d{3}(?![\\d,])`, // 1,40,000: lakhs and thousands
      `[1-9]\\d{0,2}(?:${grouping}\\d{3})+(?!\\d)(?:${decimal}\\d+)?`, // 12,000.5
      `[1-9]\\d{0,2}(?:${decimal}\\d{3})+${grouping}\\d+(?!\\d|[.,]\\d)`, // 12.000,5
      `[1-9]\\d{0,2}(?:\\.\\d{3}){2,}(?!\\d)|[1-9]\\d{0,2}(?:,\\d{3}){2,}(?!\\d)`, // 1.000.000
      `(?<![\\d.,])0[.,]\\d+(?!\\d|[.,]\\d)`, // 0,998
      `(?<![\\w.,’'")\\]])\\.\\d+(?![\\d.,]\\d|\\w)`, // .5
      `\\d+(?:(?:${decimal}|·)\\d+(?!\\d|${decimal}\\d))?`,
      `\\S`,
    ].join('|'),
    'gi',
  );
const english = pieces(',', '\\.');
const continental = pieces('\\.', ',');
/**
 * What a text is cut into.
 * @example '1,250.5 L'.match(pieceOfText(false)) // ['1,250.5', 'L'] (a figure and a word)
 */
export const pieceOfText = (decimalComma: boolean): RegExp => (decimalComma ? continental : english);

const LONGEST = 16; // digits before the decimal sign; a double keeps no more
const LONGEST_PART = 40; // digits behind it

/**
 * The number that a figure means; undefined for one too long to be a number.
 * @example valueOf('1.250,5', false) // 1250.5 (the latter of the two is the decimal sign)
 */
export function valueOf(figure: string, decimalComma: boolean): number | undefined {
  const tight = figure.replace(/[\s'’_]/g, '').replace('·', '.');
  const decimal = decimalSign(tight, decimalComma);
  const plain = tight.replace(/[.,]/g, (_, at: number) => (at === decimal ? '.' : ''));
  const [before, part = ''] = plain.split('.');
  if (before!.length > LONGEST || part.length > LONGEST_PART) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value : undefined;
}

/** Where the decimal sign of a figure stands; −1 when it has none. */
function decimalSign(figure: string, decimalComma: boolean): number {
  const [comma, point] = [figure.lastIndexOf(','), figure.lastIndexOf('.')];
  const last = Math.max(comma, point);
  if (comma >= 0 && point >= 0) return last;
  if (last < 0 || figure.indexOf(figure[last]!) !== last) return -1;
  if (!/^[1-9]\d{0,2}.\d{3}$/.test(figure)) return last;
  return comma >= 0 === decimalComma ? last : -1;
}

/**
 * Size of the last digit of a figure as written: 0.1 for 9.0, 100 for 42,500.
 * @example [lastDigitSize('9.0', false), lastDigitSize('42,500', false)] // [0.1, 100] (the size of the last digit that counts)
 */
export function lastDigitSize(figure: string, decimalComma: boolean): number {
  const tight = figure.replace(/[\s'’_]/g, '').replace('·', '.');
  const decimal = decimalSign(tight, decimalComma);
  if (decimal >= 0) return 10 ** -(tight.length - decimal - 1);
  return 10 ** (/(?<=\d)0*$/.exec(tight.replace(/[.,]/g, ''))?.[0].length ?? 0);
}
