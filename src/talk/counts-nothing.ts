// Which numbers of a text count nothing, and where “one” is a count.
import type { SaidNumber } from '../core/reading/numbers.ts';
import type { Token } from '../core/reading/tokens.ts';
import type { SaidDimension } from './units.ts';

const oneIn =
  /^\s+(?:(?:part|cask|barrel)\s+)?(?:in|out\s+of|of(?=\s+(?:each|every)))\s+(?:(?:each|every)\s+)?(?:\d{1,2}\b|five|six|eight|ten|twelve|twenty|thirty|forty|fifty|a\s+hundred)/i;

const oneTo = /^\s+(?:to|or)\s+(?:two|three|[23]\b)/i;

/** A part of a time of day, or a mark beside the text, as 12:34. */
const stamped = (tokens: readonly Token[], i: number) =>
  !isThreeParts(tokens, i) &&
  ((tokens[i + 1]?.text === ':' &&
    tokens[i + 1]!.joined &&
    tokens[i + 2]?.text !== '1' && // 3.5:1 is a ratio
    tokens[i + 2]?.joined &&
    tokens[i + 2]!.kind === 'figure') ||
    (tokens[i]!.joined &&
      tokens[i - 1]?.text === ':' &&
      tokens[i - 1]!.joined &&
      tokens[i - 2]?.kind === 'figure'));
/** 60:30:10, three parts of a hundred. */
function isThreeParts(tokens: readonly Token[], i: number): boolean {
  for (const from of [i, i - 2, i - 4]) {
    const five = tokens.slice(Math.max(0, from), from + 5);
    if (from >= 0 && five.length === 5 && five[1]!.text === ':' && five[3]!.text === ':' && (five[0]!.value ?? 0) + (five[2]!.value ?? 0) + (five[4]!.value ?? 0) === 100)
      return true;
  }
  return false;
} // prettier-ignore

/** What makes a number at the head of a line the number of a heading. */
const heading = /^[.)]\s+\S/;

/** “How many weeks? 38.”: a number at the head of a line that answers the line before, in a text whose lines are not numbered so. */
const isAnswer = (text: string, { start, value }: Token): boolean =>
  /\?["”’)]*\s*$/.test(text.slice(Math.max(0, start - 9), start)) &&
  !new RegExp(`(?:^|\\n)\\s*${value! - 1}[.)]\\s`).test(text.slice(0, start)) &&
  value !== 1;

/** One that is counted: “only one”, “down to one.”, “one a day”. */
const onlyOne =
  /\b(?:only|just)\s+one\b|\b(?:to|have|at|of|flour|husk)\s+one\b(?!\s+[a-z])|\bone\s+(?:a|in\s+the)\s+day/i;

const thousands = new Set('ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ')); // prettier-ignore
/** “One wash still”, behind the one. */
export const oneStill = /^\s+(?:(?:big|small|little|wee|large|copper|wash|spirit|pot)\s+){0,2}(?:stil|still|steel|kettle)\b(?!\s+(?:house|room|man))/i; // prettier-ignore
const oneFor = /^\s+(?:is\s+)?for\s+(?:the\s+)?(?:wash|beer|spirit|second|first|low|it|this)\b/i;
/** “Had one barrel”, “and one spirit”, “fills just one cask”, “minus one”: behind these words one is a count, unless it points to a thing. */
const behindVerb =
  /(?:\b(?:had|has|got|allowed|lost|bought|needs?|pour|and|with|(?:fills?(?:\s+\w+)?)\s+(?:just\s+)?|only|nobbut|exactly|just|perhaps|then|until|till|than|minus|is|there['’]s|that['’]s|times\s+\w+,)\s+|[—–]\s|:\s|\b(?:bags|hens|tank|bigs?|big|small|tun|stills|glasses|five|spirit|washback|mash),\s)$/i;
const pointsOn =
  /^\s*(?:(?:of|day|thing|can|could|must|should|would|will|has|have|hand|is|pays|takes|goes|gets|gives|says|see|needs|who|which|more|another|moment|knows?|wants?|at|or|to|in|from|tonne|ton|week|year|hour|kilo)\b|['’]|-)/i;
const alone = /(?:^|[.?!:;\n]\s*|\b(?:just|only|nobbut)\s+the\s+)$/i;

/** “One wash still”, “one for the wash”, “just the one”, “One.”: where one is a count. */
function isCounted(text: string, { start, end }: Token, dimension: SaidDimension): boolean {
  const [before, after] = [text.slice(Math.max(0, start - 12), start), text.slice(end, end + 40)];
  if (dimension === 'stills') return true;
  if (dimension === 'casks' || dimension === 'mashes' || dimension === 'bottles')
    return /\b(?:fills?(?:\s+\w+)?(?:\s+just)?|only|just|had|exactly|every\s+day|do|with|allowed)\s+$/i.test(
      before,
    );
  if (dimension !== 'bare') return false;
  if (behindVerb.test(text.slice(Math.max(0, start - 24), start)) && !pointsOn.test(after)) return true;
  return oneStill.test(after) || oneFor.test(after) || (alone.test(before) && /^\s*[.,;?!]/.test(after));
}

/** Numbers that count nothing: "one of the best", "the 1st", "CO2", "that one". */
export function idle(
  text: string,
  tokens: readonly Token[],
  { first, next, value }: SaidNumber,
  dimension: SaidDimension,
): boolean {
  const [before, token, after] = [tokens[first - 1], tokens[first]!, tokens[next]];
  if (token.kind === 'figure' && token.joined && before?.kind === 'word') return before.text !== 'x';
  if (
    dimension === 'bare' &&
    /^\d{1,2}$/.test(token.text) &&
    heading.test(text.slice(token.end, token.end + 4)) &&
    /(?:^|\n)\s*$/.test(text.slice(Math.max(0, token.start - 9), token.start)) &&
    !isAnswer(text, token)
  )
    return true;
  if (token.kind === 'figure' && after?.joined && /^(?:st|nd|rd|th)$/.test(after.text)) return true;
  if (token.kind === 'figure' && stamped(tokens, first)) return true;
  if (tokens[first + 1]?.text === 'couple' && dimension === 'bare') return true;
  if (token.text !== 'one' || next !== first + 1 || value !== 1) return false;
  if (before?.text === 'past') return false;
  if (isCounted(text, token, dimension) || thousands.has(before?.text ?? '')) return false;
  if (oneIn.test(text.slice(token.end, token.end + 24)) || oneTo.test(text.slice(token.end, token.end + 12)))
    return false;
  if (dimension === 'casks' || dimension === 'bottles' || dimension === 'mashes') return true;
  if (dimension === 'bare' && onlyOne.test(text.slice(Math.max(0, token.start - 14), token.end + 9)))
    return false;
  return dimension === 'bare'
    ? !(
        /^(?:number|#)$/.test(before?.text ?? '') ||
        (before?.text === '.' && tokens[first - 2]?.text === 'no')
      )
    : /^days?$/.test(after?.text ?? '') && !/^(?:in|only|for)$/.test(before?.text ?? '');
}
