// Numbers that a recogniser of speech wrote as the words they sound like: “sixty for degrees”, “ate hundred litres”, “one point oh five ate”.
import { isNumberWord } from '../core/reading/cardinals.ts';
import type { Token } from '../core/reading/tokens.ts';

const soundsLike: Readonly<Record<string, string>> = { to: 'two', too: 'two', for: 'four', ate: 'eight', won: 'one' }; // prettier-ignore
const tens = /^(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)$/;
const scale = /^(?:hundred|thousand)$/;
const measure =
  /^(?:per|percent|degrees?|point|proof|lit(?:re|er)s?|gallons?|tonnes?|tons?|kilos?|pounds?|hours?|minutes?|days?|weeks?|months?|years?|ppm|casks?|barrels?|hogsheads?|bottles?|mashes|stills?|wash|steps?|feet|inches|miles|dollars?|quid)$/;

const FEWEST = 60; // words of a text that tell how it is written down
const STOPS = 0.006; // full stops to a word: fewer, and nobody has put them

/** Whether a text has the look of speech written down by a machine: hardly a stop in it. */
function isUnstopped(tokens: readonly Token[]): boolean {
  const words = tokens.filter(({ kind }) => kind === 'word').length;
  const stops = tokens.filter(({ text }) => text === '.' || text === '!' || text === '?' || text === ';').length; // prettier-ignore
  return words >= FEWEST && stops < STOPS * words;
}

/** The number that a word was, by what stands about it; nothing where it is the word itself. */
function numberMeant(tokens: readonly Token[], i: number): string | undefined {
  const number = soundsLike[tokens[i]!.text];
  if (number === undefined) return undefined;
  const [last, next] = [tokens[i - 1]?.text ?? '', tokens[i + 1]?.text ?? ''];
  if (last === 'and' || /^(?:of|at|in|so|do|about|got|has|have|only|another|is|it's|we've)$/.test(last))
    if (number === 'eight' && measure.test(next)) return number;
  if (scale.test(next)) return number === 'two' && isNumberWord(last) ? undefined : number; // not “sixty to hundred”
  if (number === 'eight' || number === 'one') return isNumberWord(last) || (next === 'point' && last !== 'we') ? number : undefined; // prettier-ignore
  const isHalf = next === 'and' && /^(?:a|half)$/.test(tokens[i + 2]?.text ?? '');
  return tens.test(last) && (measure.test(next) || isHalf) ? number : undefined;
}

/** Tokens in which such words of a text without stops stand as the numbers that were said; “ate tea” is eighty. */
export function misheard(tokens: readonly Token[]): readonly Token[] {
  if (!isUnstopped(tokens)) return tokens;
  const heard: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const [token, next] = [tokens[i]!, tokens[i + 1]];
    if (token.text === 'ate' && /^(?:tea|t)$/.test(next?.text ?? '')) {
      heard.push({ ...token, end: next!.end, text: 'eighty' });
      i++;
      continue;
    }
    const before = heard.at(-1);
    const meant = numberMeant(before ? [before, token, ...tokens.slice(i + 1, i + 3)] : tokens.slice(i, i + 3), before ? 1 : 0); // prettier-ignore
    heard.push(meant === undefined ? token : { ...token, text: meant });
  }
  return heard;
}
