// Numbers in a text, in digits or in words, as they are said: five and a half thousand, 63.5, two thirds, 1,058.
import { belowHundred, cardinal, isNumberWord } from './cardinals.ts';
import { tokensOf, type Token } from './tokens.ts';

export interface SaidNumber {
  readonly value: number;
  /** Tokens from `first` up to, not including, `next`. */
  readonly first: number;
  readonly next: number;
  /** What the last word multiplied by: 1000 in "six thousand". */
  readonly scale: number;
  /** A fraction with nothing before it: two thirds, a fifth. */
  readonly fraction: boolean;
}

const scales: Readonly<Record<string, number>> = { hundred: 100, thousand: 1e3, myriad: 1e4, lakh: 1e5, million: 1e6, crore: 1e7, billion: 1e9, dozen: 12, grand: 1e3 }; // prettier-ignore
const parts: Readonly<Record<string, number>> = { half: 2, halves: 2, third: 3, thirds: 3, quarter: 4, quarters: 4, fifth: 5, fifths: 5, sixth: 6, sixths: 6, eighth: 8, eighths: 8, tenth: 10, tenths: 10 }; // prettier-ignore
const pairs: Readonly<Record<string, number>> = { dozen: 12, couple: 2, pair: 2 };

/** Short for a scale, where no unit of that name can be meant: 1.6m litres. */
export const shortScales: Readonly<Record<string, number>> = { k: 1e3, m: 1e6, mn: 1e6, mln: 1e6, mio: 1e6, bn: 1e9 }; // prettier-ignore

const text = (tokens: readonly Token[], i: number) => tokens[i]?.text ?? '';
const isArticle = (word: string) => word === 'a' || word === 'an';
const hyphen = (tokens: readonly Token[], i: number) =>
  text(tokens, i) === '-' && tokens[i + 1]?.joined ? i + 1 : i;

const decimalPoints = new Set(['point', 'comma', 'komma', 'coma']); // as neighbours of the language say it

/** "and a half", "and three quarters", "½" after a number: what it adds, and the token after it. */
function addition(tokens: readonly Token[], i: number): { adds: number; next: number } | undefined {
  const fraction = tokens[i];
  if (fraction?.kind === 'figure' && fraction.value !== undefined && /^[¼-¾⅓-⅞]$/.test(fraction.text))
    return { adds: fraction.value, next: i + 1 };
  if (text(tokens, i) !== 'and') return undefined;
  if (text(tokens, i + 1) === 'half') return { adds: 0.5, next: i + 2 };
  const many = isArticle(text(tokens, i + 1)) ? 1 : (cardinal(tokens, i + 1)?.value ?? 0);
  const at = isArticle(text(tokens, i + 1)) ? i + 2 : (cardinal(tokens, i + 1)?.next ?? i + 1);
  const part = parts[text(tokens, hyphen(tokens, at))];
  return part !== undefined && many > 0 && many < part
    ? { adds: many / part, next: hyphen(tokens, at) + 1 }
    : undefined;
}

/** "point five", "point oh five eight", "comma two" after a number. */
function decimals(tokens: readonly Token[], i: number): { adds: number; next: number } | undefined {
  const hyphened = hyphen(tokens, i);
  if (hyphened !== i) return decimals(tokens, hyphened);
  if (!decimalPoints.has(text(tokens, i))) return undefined;
  let said = '';
  let next = i + 1;
  for (next = hyphen(tokens, next); said.length < 6; next++) {
    if (text(tokens, next) === 'oh' || text(tokens, next) === 'o') said += '0';
    else {
      const digit =
        tokens[next]?.kind === 'figure' ? tokens[next] : cardinal(tokens.slice(next, next + 1), 0);
      const pair = said !== '' && digit?.value! >= 20 ? belowHundred(tokens, next) : undefined; // “point oh seventy-two”
      if (pair) {
        said += String(pair.value);
        next = pair.next;
        break;
      }
      if (digit?.value === undefined || !Number.isInteger(digit.value) || digit.value < 0) break;
      said += String(digit.value);
    }
  }
  return said === '' ? undefined : { adds: Number(`0.${said.slice(0, 9)}`), next };
}

/** The 1/2 of "2 1/2". */
function mixed(tokens: readonly Token[], i: number): { adds: number; next: number } | undefined {
  const [before, part] = [tokens[i - 1], slashed(tokens, i, false)];
  if (!part || tokens[i]!.joined || before?.kind !== 'figure' || !Number.isInteger(before.value))
    return undefined;
  return { adds: part.value, next: part.next };
}

/** Half a million, three quarters of a million, two thirds, 1/2. */
function fractionAt(tokens: readonly Token[], i: number, alone: boolean): SaidNumber | undefined {
  const ratio = slashed(tokens, i, alone);
  if (ratio) return ratio;
  const word = text(tokens, i);
  const many = word === 'half' || isArticle(word) ? { value: 1, next: word === 'half' ? i : i + 1 } : cardinal(tokens, i); // prettier-ignore
  if (!many) return undefined;
  const at = hyphen(tokens, many.next);
  const part = parts[text(tokens, at)];
  if (part === undefined || many.value < 1 || many.value >= part) return undefined;
  let next = at + 1;
  const value = many.value / part;
  const of = text(tokens, next) === 'of' ? next + 1 : next;
  if (!isArticle(text(tokens, of))) {
    const plain =
      many.value === 1 &&
      (part === 2 || (part === 3 && of === next && !/^(?:husks?|grits|flour|full)$/.test(text(tokens, of))));
    return plain ? undefined : { value, first: i, next, scale: 1, fraction: true };
  }
  const scale = scales[text(tokens, of + 1)];
  if (scale !== undefined) {
    next = of + 2;
    return { value: value * scale, first: i, next, scale, fraction: false };
  }
  return { value, first: i, next: of + 1, scale: 1, fraction: false };
}

/** 1/2, 3/4; where the text is one figure alone, any part: 7/12. */
function slashed(tokens: readonly Token[], i: number, alone: boolean): SaidNumber | undefined {
  const [over, slash, under, after] = tokens.slice(i, i + 4);
  if (over?.kind !== 'figure' || slash?.text !== '/' || under?.kind !== 'figure') return undefined;
  if (after?.text === '/' || text(tokens, i - 1) === '/') return undefined;
  const whole = Number.isInteger(over.value) && Number.isInteger(under.value) && under.value! > 0;
  const sound = whole && (alone || ([2, 3, 4, 5, 8].includes(under.value!) && over.value! < under.value!));
  return sound && over.value! > 0
    ? { value: over.value! / under.value!, first: i, next: i + 3, scale: 1, fraction: true }
    : undefined;
}

/**
 * The number that starts at a token, or nothing; `alone` where the text is to be one figure and no more.
 * @example numberAtToken(tokensOf('63.5 per cent'), 0).value // 63.5 (as it stands)
 */
export function numberAtToken(tokens: readonly Token[], i: number, alone = false): SaidNumber | undefined {
  const fraction = fractionAt(tokens, i, alone);
  if (fraction) return fraction;
  const token = tokens[i]!;
  const after = isArticle(token.text) ? pairs[text(tokens, i + 1)] : undefined;
  if (after !== undefined) return { value: after, first: i, next: i + 2, scale: 1, fraction: false };
  const whole =
    token.kind === 'figure'
      ? token.value === undefined
        ? undefined
        : { value: token.value, next: i + 1 }
      : token.text === 'point' && text(tokens, i - 1) !== 'this'
        ? { value: 0, next: i }
        : cardinal(tokens, i);
  if (!whole) return undefined;
  let { value, next } = whole;
  const more = decimals(tokens, next) ?? addition(tokens, next) ?? mixed(tokens, next);
  if (next === i && (!more || more.next - i < 3)) return undefined; // “point” alone is no number, nor “point four” of a list
  if (more) {
    value += more.adds * (token.kind === 'word' && value >= 1e6 && value % 1e6 === 0 ? 1e6 : 1); // a million and a quarter
    next = more.next;
  }
  let scale = token.kind === 'word' && value >= 1000 && value % 1000 === 0 ? 1000 : 1;
  const word = text(tokens, hyphen(tokens, next));
  const short = word !== 'm' && tokens[next]?.joined ? shortScales[word] : undefined; // a joined m may be metres
  if (Object.hasOwn(scales, word) || short !== undefined) {
    scale = short ?? scales[word]!;
    value *= scale;
    next = hyphen(tokens, next) + 1;
    const half = addition(tokens, next); // two million and a half
    if (half && scale === 1e6) {
      value += half.adds * scale;
      next = half.next;
    }
  }
  return value < 1e15 ? { value: tidy(value), first: i, next, scale, fraction: false } : undefined;
}

/**
 * Away with the last bits that 0.1 + 0.2 leaves.
 * @example tidy(0.1 + 0.2) // 0.3 (without the last bits)
 */
export const tidy = (value: number): number => Number(value.toPrecision(12));

const others = new Set(['a', 'an', 'half', 'point']);
/**
 * Whether a number can begin with a token at all; most words are told apart here.
 * @example mayBegin({ kind: 'sign', text: '-' }) // false (a sign alone is no number)
 */
export const mayBegin = ({ kind, text: word }: Token) =>
  kind === 'figure' || (kind === 'word' && (others.has(word) || isNumberWord(word)));

/**
 * Every number of a text, in order, with the text's tokens.
 * @example numbersIn('8 mashes of two tonnes').numbers.map(({ value }) => value) // [8, 2] (two numbers)
 */
export function numbersIn(whole: string, tokens: readonly Token[] = tokensOf(whole)): { tokens: readonly Token[]; numbers: readonly SaidNumber[] } {
  const numbers: SaidNumber[] = [];
  for (let i = 0; i < tokens.length;) {
    const found = mayBegin(tokens[i]!) ? numberAtToken(tokens, i) : undefined;
    if (found) numbers.push(found);
    i = found ? found.next : i + 1;
  }
  return { tokens, numbers };
} // prettier-ignore
