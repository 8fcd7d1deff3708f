// Numbers in words, in the ways that guides say them: plain, in halves, in hundreds, in pairs, digit by digit.
import { withoutNoise } from './neat.ts';

const ones = 'nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' '); // prettier-ignore
const tens = '  twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const scales = [[1e9, 'billion'], [1e6, 'million'], [1e3, 'thousand']] as const; // prettier-ignore
const quarters: Readonly<Record<number, string>> = {
  0.25: 'a quarter',
  0.5: 'a half',
  0.75: 'three quarters',
};

export interface Spoken {
  /**
   * plain: five thousand four hundred; halves: sixty-three and a half; scaled: five and a half thousand; after: a
   * million and a half; hundreds: twelve hundred; pairs: ten fifty-eight; unsaid: one fifty-four; digits: nine nine eight.
   */
  readonly style: 'plain' | 'halves' | 'scaled' | 'after' | 'hundreds' | 'pairs' | 'unsaid' | 'digits';
  /** What it is counted in where it is scaled: 1000 in "five and a half thousand". */
  readonly scale: number;
  /** British "two hundred and fifty"; without it, American "two hundred fifty". */
  readonly and: boolean;
  /** "A hundred", not "one hundred"; of a speaker who said neither, only up to two hundred and of a round thousand or million. */
  readonly article: boolean | 'short';
  /** "Nought point two five", not "point two five". */
  readonly nought: boolean;
  /** What stands for the mark: "point", or "comma" with those who write one. */
  readonly mark: 'point' | 'comma';
}
/** British words, where nothing else is known of the speaker. */
export const britishStyle: Spoken = {
  style: 'plain',
  scale: 1,
  and: true,
  article: 'short',
  nought: true,
  mark: 'point',
};

function belowThousand(n: number, and: boolean): string {
  if (n < 20) return ones[n]!;
  if (n < 100) return tens[Math.floor(n / 10)]! + (n % 10 === 0 ? '' : `-${ones[n % 10]}`);
  const rest = n % 100;
  const join = and ? ' and ' : ' ';
  return `${ones[Math.floor(n / 100)]} hundred${rest === 0 ? '' : join + belowThousand(rest, and)}`;
}

/** A whole number from 0 to a million million in words. */
export function wholeInWords(n: number, and = true): string {
  if (n < 1000) return belowThousand(n, and);
  const [size, name] = scales.find(([each]) => n >= each)!;
  const rest = n % size;
  const join = rest > 0 && rest < 100 && and ? ' and ' : ' ';
  return `${wholeInWords(Math.floor(n / size), and)} ${name}${rest === 0 ? '' : join + wholeInWords(rest, and)}`;
}

const byDigit = (digits: string) =>
  [...digits].map((digit) => (digit === '0' ? 'oh' : ones[Number(digit)])).join(' ');

/** Words of a number with what stands behind its point said digit by digit. */
function plainly(value: number, { and, nought, mark }: Spoken): string {
  const [whole, part] = String(withoutNoise(value)).split('.');
  if (part === undefined) return wholeInWords(value, and);
  return `${whole === '0' && !nought ? '' : `${wholeInWords(Number(whole), and)} `}${mark} ${byDigit(part)}`;
}

/** Words of a number of whole ones and quarters; nothing for any other. */
function inQuarters(value: number, and: boolean): string | undefined {
  const part = withoutNoise(value % 1);
  if (part === 0) return wholeInWords(value, and);
  return value > 1 && quarters[part] ? `${wholeInWords(Math.floor(value), and)} and ${quarters[part]}` : undefined;
} // prettier-ignore

const named = [[1e7, 'crore'], [1e5, 'lakh'], ...scales] as const; // prettier-ignore
const nameOf = (scale: number) => named.find(([size]) => size === scale)?.[1];

function scaled(value: number, spoken: Spoken): string | undefined {
  const { scale, and, style } = spoken;
  const name = nameOf(scale);
  const many = withoutNoise(value / scale);
  if (!name || many < 1 || many >= 1000) return undefined;
  const part = withoutNoise(many % 1);
  if (style === 'after' && quarters[part])
    return `${wholeInWords(Math.floor(many), and)} ${name} and ${quarters[part]}`;
  const inParts = part === 0 || many < 100 ? inQuarters(many, and) : undefined;
  if (inParts) return `${inParts} ${name}`;
  return scale >= 1e5 && Number.isInteger(withoutNoise(many * 100)) ? `${plainly(many, spoken)} ${name}` : undefined;
} // prettier-ignore

function hundreds(n: number, and: boolean): string | undefined {
  if (n < 1100 || n >= 10_000 || n % 1 !== 0 || Math.floor(n / 100) % 10 === 0) return undefined;
  const rest = n % 100;
  return `${wholeInWords(Math.floor(n / 100))} hundred${rest === 0 ? '' : `${and ? ' and ' : ' '}${belowThousand(rest, and)}`}`;
}

/** Two pairs, as gravities are said; below a thousand digit by digit. */
function pairs(n: number): string | undefined {
  if (n % 1 !== 0 || n >= 10_000) return undefined;
  if (n < 1000) return n >= 100 ? byDigit(String(n)) : undefined;
  const rest = n % 100;
  if (n < 1010 && rest === 0) return undefined;
  const second = rest === 0 ? 'hundred' : rest < 10 ? `oh ${ones[rest]}` : belowThousand(rest, true);
  return `${belowThousand(Math.floor(n / 100), true)} ${second}`;
}

const unsaid = (n: number): string | undefined =>
  n % 1 === 0 && n >= 110 && n < 1000 && n % 100 >= 10
    ? `${ones[Math.floor(n / 100)]} ${belowThousand(n % 100, true)}`
    : undefined;

function inStyle(value: number, spoken: Spoken): string | undefined {
  const { style, and } = spoken;
  if (style === 'halves') return inQuarters(value, and);
  if (style === 'scaled' || style === 'after') return scaled(value, spoken);
  if (style === 'hundreds') return hundreds(value, and);
  if (style === 'pairs') return pairs(value);
  if (style === 'unsaid') return unsaid(value);
  if (style === 'digits' && value % 1 === 0 && value >= 100) return byDigit(String(value));
  return undefined;
}

/** A number from 0 on in words, in a style where the style can say it, else plainly. Below nought with "minus". */
export function numberInWords(value: number, spoken: Spoken = britishStyle): string {
  if (value < 0) return `minus ${numberInWords(-value, spoken)}`;
  const words = inStyle(value, spoken) ?? plainly(value, spoken);
  const ends =
    spoken.article === 'short'
      ? /^one (?=hundred(?: and \S+)?$|(?:thousand|million)$)/
      : /^one (?=hundred|thousand|million|billion)/;
  return spoken.article ? words.replace(ends, 'a ') : words;
}

const normal = (words: string) =>
  words
    .toLowerCase()
    .replace(/[-\s,]+/g, ' ')
    .replace(/^an? |^(?=hundred |thousand |million )/, 'one ')
    .replace(/\bthree quarter\b/g, 'three quarters')
    .replace(/\bzero\b/g, 'oh')
    .replace(/\b(million|thousand)s\b/g, '$1')
    .replace(/\band half\b/g, 'and a half')
    .replace(/^(?:nought|zero|naught) (?=point)/, '')
    .trim();

const styles = ['halves', 'scaled', 'after', 'hundreds', 'plain', 'pairs', 'unsaid', 'digits'] as const;

/** The style in which a number was said: the one that gives those very words again; plain British where none does. */
export function styleOfNumber(words: string, value: number): Spoken {
  const said = normal(words);
  const article = /^an?\b/i.test(words) || (!/^one\b/i.test(words) && 'short');
  const nought = !/^point\b/i.test(words);
  const mark = /\bcomma\b/.test(said) ? 'comma' : 'point';
  const scale = named.find(([size, name]) => said.includes(name) && value >= size)?.[0] ?? 1;
  for (const and of [true, false])
    for (const style of styles) {
      const spoken = { style, scale, and, article, nought, mark } as const;
      const again = inStyle(value, spoken) ?? (style === 'plain' ? plainly(value, spoken) : '');
      const isOwn = style !== 'halves' || value % 1 !== 0;
      if (isOwn && normal(again) === said) return spoken;
    }
  return { ...britishStyle, article, nought, mark, scale };
}
