// Whole numbers in words: "a hundred and fifty", "ten fifty-eight", "nine nine eight", "eighteen hundred".
import type { Token } from './tokens.ts';

const ones = 'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' '); // prettier-ignore
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const small = new Map<string, number>([
  ...ones.map((word, i) => [word, i] as const),
  ...tens.map((word, i) => [word, 20 + 10 * i] as const),
  ['nought', 0],
  ['naught', 0],
  ['fourty', 40],
  ['ninty', 90],
  ['fourtyfive', 45],
]);
const digits = new Map([...ones.slice(0, 10).map((word, i) => [word, i] as const), ['oh', 0], ['o', 0], ['nought', 0]] as [string, number][]); // prettier-ignore
const scales: Readonly<Record<string, number>> = { thousand: 1e3, thousands: 1e3, myriad: 1e4, lakh: 1e5, million: 1e6, millions: 1e6, crore: 1e7, billion: 1e9 }; // prettier-ignore

/**
 * True for a word that a number can begin with.
 * @example [isNumberWord('forty'), isNumberWord('cask')] // [true, false] (a cask is no number)
 */
export const isNumberWord = (word: string): boolean =>
  small.has(word) || digits.has(word) || word === 'hundred';

export interface Counted {
  readonly value: number;
  /** The token after the number. */
  readonly next: number;
}

const word = (tokens: readonly Token[], i: number) =>
  tokens[i]?.kind === 'word' ? tokens[i].text : undefined;
const skip = (tokens: readonly Token[], i: number) =>
  tokens[i]?.text === '-' && tokens[i].joined && tokens[i + 1]?.joined ? i + 1 : i;

/** The second part of a number that was begun in words: in words, or in one or two figures, as “a hundred and 46” is written down by ear. */
function tail(tokens: readonly Token[], i: number): Counted | undefined {
  const token = tokens[i];
  return token?.kind === 'figure' && /^[1-9]\d?$/.test(token.text) && !token.joined
    ? { value: token.value!, next: i + 1 }
    : belowHundred(tokens, i);
}

/**
 * A number below a hundred: twenty-two, twenty two, seventeen.
 * @example belowHundred(tokensOf('twenty two'), 0).value // 22 (20 + 2)
 */
export function belowHundred(tokens: readonly Token[], i: number): Counted | undefined {
  const first = small.get(word(tokens, i) ?? '');
  if (first === undefined) return undefined;
  if (first < 20) return { value: first, next: i + 1 };
  const at = skip(tokens, i + 1);
  const digit =
    tokens[at]?.kind === 'figure' && /^[1-9]$/.test(tokens[at].text) && !tokens[at].joined && at === i + 1
      ? tokens[at].value
      : undefined; // “thirty 4”, written down by ear
  const second = small.get(word(tokens, at) ?? '') ?? digit;
  return second !== undefined && second > 0 && second < 10
    ? { value: first + second, next: at + 1 }
    : { value: first, next: i + 1 };
}

/** A digit behind its nought, as in “two hundred zero five”, or tens as in “thirteen thousand zero fifty”. */
function behindNought(tokens: readonly Token[], i: number): Counted | undefined {
  if (!['zero', 'oh', 'nought'].includes(word(tokens, i) ?? '')) return undefined;
  const rest = belowHundred(tokens, i + 1);
  return rest && rest.value > 0 ? rest : undefined;
}

/** Digits said one by one, three or more: nine nine eight, one oh five eight. */
function saidByDigit(tokens: readonly Token[], i: number): Counted | undefined {
  let value = 0;
  let next = i;
  for (; next - i < 6; next++) {
    const digit = digits.get(word(tokens, next) ?? '');
    if (digit === undefined) break;
    value = 10 * value + digit;
  }
  return next - i >= 3 ? { value, next } : undefined;
}

/** Two pairs of digits, as years and gravities are said: ten fifty-eight, nineteen eleven, ten oh four. */
function saidInPairs(tokens: readonly Token[], i: number): Counted | undefined {
  const first = belowHundred(tokens, i);
  if (!first || first.value < 10 || (first.value > 20 && first.value % 10 === 0)) return undefined; // “twenty, seventy, ten” may lose its commas
  const at = skip(tokens, first.next);
  const oh = ['oh', 'o'].includes(word(tokens, at) ?? '');
  const second = tail(tokens, oh ? at + 1 : at);
  if (!second || (oh ? second.value > 9 : second.value < 10)) return undefined;
  if (first.value === 20 && second.value > 49) return undefined;
  if (first.value > 20 && isCompound(tokens, second.next)) return undefined;
  return { value: 100 * first.value + second.value, next: second.next };
}

/** True before the second half of a word such as “twelve-hour”, of which the number is a part. */
const isCompound = (tokens: readonly Token[], i: number) =>
  skip(tokens, i) !== i && !isNumberWord(word(tokens, i + 1) ?? '');

/** Before “one” these point to a thing: “each one 53 gallons”. */
const pointing = new Set(
  'each this that every which the big little other last first any no another'.split(' '),
);

/** So many hundreds with the word left out: one fifty-four, three ten. */
function hundredsUnsaid(tokens: readonly Token[], i: number): Counted | undefined {
  const first = digits.get(word(tokens, i) ?? '');
  if (!first || pointing.has(word(tokens, i - 1) ?? '')) return undefined;
  const rest = tail(tokens, skip(tokens, i + 1));
  if (!rest || rest.value < 10 || isCompound(tokens, rest.next)) return undefined;
  return Object.hasOwn(scales, word(tokens, rest.next) ?? '') || word(tokens, rest.next) === 'hundred'
    ? undefined
    : { value: 100 * first + rest.value, next: rest.next };
}

/** Below a thousand, or so many hundreds: a hundred and fifty, eighteen hundred and forty. */
function hundreds(tokens: readonly Token[], i: number): Counted | undefined {
  const article = ['a', 'an'].includes(word(tokens, i) ?? '');
  if (word(tokens, i) === 'hundred') {
    const rest = tail(tokens, joiner(tokens, i + 1)); // “hundred and twenty”, of those who have no article
    return rest && { value: 100 + rest.value, next: rest.next };
  }
  const unsaid = article ? undefined : hundredsUnsaid(tokens, i);
  if (unsaid) return unsaid;
  const lead = article ? { value: 1, next: i + 1 } : belowHundred(tokens, i);
  if (!lead) return undefined;
  const at = skip(tokens, lead.next);
  if (word(tokens, at) !== 'hundred' && word(tokens, at) !== 'hundreds') return article ? undefined : lead;
  const rest = behindNought(tokens, at + 1) ?? tail(tokens, joiner(tokens, at + 1));
  const value = 100 * lead.value;
  return rest ? { value: value + rest.value, next: rest.next } : { value, next: at + 1 };
}

const joiner = (tokens: readonly Token[], i: number) => (word(tokens, i) === 'and' ? i + 1 : skip(tokens, i));

/**
 * A whole number in words that starts at a token, or nothing.
 * @example cardinal(tokensOf('a hundred and fifty'), 0).value // 150 (100 + 50)
 */
export function cardinal(tokens: readonly Token[], i: number): Counted | undefined {
  const said = saidByDigit(tokens, i) ?? saidInPairs(tokens, i);
  if (said) return said;
  const article = ['a', 'an'].includes(word(tokens, i) ?? '');
  let total = 0;
  let scale = Infinity;
  let next = i;
  for (let at = i; ;) {
    const part =
      (scale < Infinity ? behindNought(tokens, at) : undefined) ??
      hundreds(tokens, at) ??
      (article && at === i ? { value: 1, next: i + 1 } : undefined);
    if (!part) break;
    const own = scales[word(tokens, skip(tokens, part.next)) ?? ''];
    if (own === undefined || own >= scale) {
      if (article && part.value === 1 && at === i) return undefined;
      if (own === undefined && (scale === Infinity || part.value < scale)) {
        total += part.value;
        next = part.next;
      }
      break;
    }
    total += part.value * own;
    scale = own;
    next = skip(tokens, part.next) + 1;
    at = word(tokens, next) === 'and' ? next + 1 : next;
  }
  return next > i ? { value: total, next } : undefined;
}
