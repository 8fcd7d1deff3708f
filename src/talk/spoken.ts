// The tokens of a talk, with the number words of Scots as their English, and without the hyphens of numbers that are said one by one.
import { isNumberWord } from '../core/reading/cardinals.ts';
import { tokensOf, type Token } from '../core/reading/tokens.ts';

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

/** The tokens of a text as its speaker meant them; their places are the text's own. */
export function spokenTokens(text: string): Token[] {
  const tokens = tokensOf(text).flatMap(doubled);
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
