// The tokens of a talk, with the number words of Scots as their English, and without the hyphens of numbers that are said one by one.
import { isNumberWord } from '../core/reading/cardinals.ts';
import { tokensOf, type Token } from '../core/reading/tokens.ts';
import { misheard } from './misheard.ts';

const scots: Readonly<Record<string, string>> = { wan: 'one', yin: 'one', een: 'one', twa: 'two', fower: 'four', sax: 'six', seeven: 'seven', aucht: 'eight', aicht: 'eight', twinty: 'twenty', saxteen: 'sixteen', saxty: 'sixty', seeventy: 'seventy', hunner: 'hundred', hunder: 'hundred', hunnert: 'hundred', hundert: 'hundred', thoosan: 'thousand', thoosand: 'thousand', thousan: 'thousand', thou: 'thousand' }; // prettier-ignore
const digits = new Set('oh zero nought one two three four five six seven eight nine ten'.split(' '));
const behindDigit = new Set('fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')); // prettier-ignore
const parts = /^(?:half|quarter|three|twa|two|a|an|bit|fifth|third|[a-z]+)$/;

/** “The forties leak”, “regular fifty-threes”: things that are named for their size. */
const plural =
  /^(?:(thirt|fort|fift|sixt|sevent|eight|ninet)ies|(two|three|four|five|six|seven|eight|nine)e?s)$/;
const isTens = (tokens: readonly Token[], i: number) =>
  /^(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)$/.test(
    tokens[tokens[i - 1]?.text === '-' ? i - 2 : i - 1]?.text ?? '',
  );

/** Whether a hyphen stands inside a number that is said digit by digit: nine-nine-eight, ten-oh-two, seven-fifty. */
function isSpoken(tokens: readonly Token[], i: number): boolean {
  const word = (k: number) => tokens[k]?.text ?? '';
  const isHyphen = (k: number) => word(k) === '-' && tokens[k]!.joined && tokens[k + 1]?.joined === true;
  if (!isHyphen(i) || !digits.has(word(i - 1))) return false;
  if (behindDigit.has(word(i + 1)) && !digits.has(word(i - 3)) && word(i - 1) !== 'ten') return word(i - 1) !== 'oh' && word(i - 1) !== 'zero';
  if (!digits.has(word(i + 1))) return false;
  if (word(i - 1) === 'oh' && digits.has(word(i - 2))) return true;
  return (isHyphen(i + 2) && digits.has(word(i + 3))) || (isHyphen(i - 2) && digits.has(word(i - 3)));
} // prettier-ignore

/** “One double-oh two”: the digit said twice. */
function doubled(token: Token, i: number, tokens: readonly Token[]): readonly Token[] {
  if (token.text === '-' && (tokens[i - 1]?.text === 'double' || tokens[i + 1]?.text === 'double')) return [];
  if (token.text !== 'double') return [token];
  const digit = tokens[tokens[i + 1]?.text === '-' ? i + 2 : i + 1]?.text ?? '';
  return digits.has(digit) && digit !== 'ten' && digit !== 'one' ? [{ ...token, text: digit }] : [token];
}

/** “Nine ten-thousand litres”, as those say whose own language counts by ten thousands: the multiplier as one word. */
function myriads(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ text }, i) => text === 'ten' && tokens[i + 1]?.text === '-' && tokens[i + 2]?.text === 'thousand')) return tokens;
  return tokens.flatMap((token, i) => {
    const isTen = (k: number) => tokens[k]?.text === 'ten' && tokens[k + 1]?.text === '-' && tokens[k + 2]?.text === 'thousand' && isNumber(tokens[k - 1]);
    if (isTen(i)) return [{ ...token, end: tokens[i + 2]!.end, text: 'myriad' }];
    return isTen(i - 1) || isTen(i - 2) ? [] : [token];
  });
} // prettier-ignore

const raised = new Map([...'⁰¹²³⁴⁵⁶⁷⁸⁹'].map((sign, power) => [sign, power]));
/** “4.79 × 10⁶ L”: a figure and its power of ten as one. */
function powersOfTen(text: string, tokens: readonly Token[]): readonly Token[] {
  if (!/10[⁰¹²³⁴-⁹]/.test(text)) return tokens;
  return tokens.flatMap((token, i) => {
    const isPower = (k: number) => tokens[k]?.text === '×' && tokens[k + 1]?.text === '10' && tokens[k - 1]?.value !== undefined && raised.has(text[tokens[k + 1]!.end] ?? '');
    if (isPower(i + 1)) {
      const { end } = tokens[i + 2]!;
      return [{ ...token, end: end + 1, value: token.value! * 10 ** raised.get(text[end]!)! }];
    }
    return isPower(i) || isPower(i - 1) || (isPower(i - 2) && raised.has(token.text)) ? [] : [token];
  });
} // prettier-ignore

/** The tokens of a text as its speaker meant them; their places are the text's own. */
export function spokenTokens(text: string): Token[] {
  const tokens = myriads(misheard(powersOfTen(text, tokensOf(text)))).flatMap(doubled);
  const isScots = tokens.some(({ text: word }) => word !== 'thou' && word !== 'een' && word !== 'wan' && word in scots); // prettier-ignore
  return tokens.flatMap((token, i) => {
    if (token.kind === 'sign') return isSpoken(tokens, i) ? [] : [token];
    if (token.kind !== 'word') return [token];
    const one = plural.exec(token.text);
    if (one && (one[1] !== undefined || isTens(tokens, i)))
      return [{ ...token, text: one[1] ? `${one[1]}y` : one[2]! }];
    if (token.text === 'thou' && tokens[i - 1]?.kind === 'figure') return [{ ...token, text: 'thousand' }];
    if (!isScots) return [token];
    const isAnd = (token.text === 'an' || token.text === "an'") && tokens[i + 1] !== undefined && parts.test(tokens[i + 1]!.text) && isNumber(tokens[i - 1]); // prettier-ignore
    const meant = isAnd ? 'and' : token.text === 'thou' ? undefined : scots[token.text];
    return [meant === undefined ? token : { ...token, text: meant }];
  });
}

const isNumber = (token: Token | undefined) =>
  token !== undefined &&
  (token.kind === 'figure' || isNumberWord(token.text) || token.text in scots || token.text === 'thousand');
