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

/** What stands about a word: the ones before and behind it, and the one after that. */
type About = readonly [last: string, next: string, then: string];

/** When each word was a number. None counts on another being tried before it. */
const wasNumber: Readonly<Record<string, (about: About) => boolean>> = {
  ate: ([last, next]) => scale.test(next) || next === 'point' || measure.test(next) || isNumberWord(last),
  won: ([last, next]) => scale.test(next) || (next === 'point' && last !== 'we') || isNumberWord(last),
  to: (about) => isOfTens(about) || (scale.test(about[1]) && !isNumberWord(about[0])), // not “sixty to hundred”
  too: (about) => isOfTens(about) || (scale.test(about[1]) && !isNumberWord(about[0])),
  for: (about) => isOfTens(about) || scale.test(about[1]),
};
/** “Sixty for degrees”, “twenty to and a half”: behind tens, and before what they measure. */
function isOfTens([last, next, then]: About): boolean {
  return tens.test(last) && (measure.test(next) || (next === 'and' && /^(?:a|half)$/.test(then)));
}

/** The number that a word was, by what stands about it; nothing where it is the word itself. */
function numberMeant({ text }: Token, about: About): string | undefined {
  return wasNumber[text]?.(about) ? soundsLike[text] : undefined;
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
    const meant = numberMeant(token, [heard.at(-1)?.text ?? '', next?.text ?? '', tokens[i + 2]?.text ?? '']);
    heard.push(meant === undefined ? token : { ...token, text: meant });
  }
  return heard;
}
