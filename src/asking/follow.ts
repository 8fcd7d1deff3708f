// A question that leans on the one before it: “and per year?”, “what about the low wines?”, “why?” made whole.
import { flowIn } from './flows.ts';
import { plainQuestion } from './words.ts';

const LEADS =
  /^(?:and |so |but |ok |okay |or )*(?:what about|how about|what of|and|same for|then)\b\s*(?:for |with |in |on |at )?/i;
const PACE =
  /^(?:and |so |but |ok |what about |how about |how much is (?:that|it) |what is (?:that|it) |whats (?:that|it) |that is )*(?:it |that |this )?(?:per|a|an|each|every|in a|for a|over a|by the)\s+(?:year|month|week|day|hour|mash|batch|tonne|ton|cask|bottle|dram|litre|kilo)\s*$/;
const ALONE = /^(?:and |but |so )*(?:why(?: is that| so| not)?|how come|how so)\s*$/;
/** How a question begins: what it asks of the thing. */
const HEAD =
  /^(?:and |so |but |ok )*(?:how (?:much|many)(?: \w+)??(?= (?:do|does|is|are|of|in|from|goes|comes|per|a)\b)|how (?:strong|hot|cold|warm|long|big|large|old|heavy|often|deep|high|far|wide|tall|fast)|what (?:is |are |s )?(?:the )?(?:strength|abv|proof|temperature|temp|volume|size|weight|gravity|yield|price|colour|age|ph)(?: of)?|why(?: is| are| do| does)?|where (?:does|do|is|are)|what is|what are|whats|when (?:is|do|does))\b/;
const ITS_PACE =
  /\b(?:(?:per|an?|each|every|one|in an?)\s+(?:year|month|week|day|hour|mash|batch)|(?:per|each|every|for an?|for one|in an?)\s+(?:bottle|dram|cask|tonne|ton|litre|kilo))\b/i;
const MOST = 7; // words of what leans on another

/** The whole question that a leaning one may stand for, the likeliest first; none where it stands by itself. */
export function wholeQuestions(question: string, before: string): readonly string[] {
  const said = plainQuestion(question);
  const count = said.split(' ').length;
  if (count > MOST || said === '') return [];
  if (ALONE.test(said)) return [`why ${before.replace(/^\s*(?:how|what|when|where)\b\s*/i, '')}`];
  if (PACE.test(said)) return [`${before.replace(ITS_PACE, '').replace(/[?!.\s]+$/, '')} ${said.replace(/^.*?\b(?=(?:per|a|an|each|every|in a|for a|over a|by the)\s+\w+\s*$)/, '')}`];
  if (!LEADS.test(said)) return [];
  const rest = said.replace(LEADS, '');
  const head = HEAD.exec(plainQuestion(before))?.[0];
  if (rest === '') return [];
  const [now, then] = [flowIn(rest), flowIn(before)];
  const swapped = now && then && rest.split(' ').length <= 3 ? [`${before.slice(0, then.at)}${rest.replace(/^the /, '')}${before.slice(then.at).replace(then.flow.says, '')}`] : [];
  return [...swapped, ...(head ? [`${head} ${/(?: of|what is|whats|what are|is|are|does|do)$/.test(head) ? '' : /^(?:how (?:much|many)|what)/.test(head) ? 'of ' : 'is '}${rest}`] : []), `${before.replace(/[?!.\s]+$/, '')} ${rest}`];
} // prettier-ignore
