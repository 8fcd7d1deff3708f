// A question as the words that matter: endings taken off, other words for a thing brought to one, and what is asked for.
import type { OtherWords } from './entry.ts';

/** Words that say nothing of what a question is about. */
const UNHEEDED = new Set(
  'a about actually afternoon again ah all also am an and any anything are as ask at away arent aren awful be bet bit bloody because been being bit but by can could cos d did do does doing done each else er every for from get gets getting give given gives go goes going got guy had has have having he hello her here hey hi him his i if im in into is it its itself just kind know let like ll look lot m maybe me mean might mine more most much my need now of off oh ok on one only or our out over per place please possible quite re really said say see seem she should so some someone something sort stuff sure take taken takes tell than thank that the their them then there these they thing think this those time to too um up us use used uses using usually ve very want was we well were what when where whether which while who whole whose why will with wonder would yes yet you your yours u ur r n lol please pls mate honest honestly lad wife husband dad mum grandad uncle mister sir curious guess suppose technical plain english basically bet whats wots wot dose thats theres im ive id youre dont doesnt isnt arent lot lots loads hell heck everybody nobody everyone anybody goes wouldnt couldnt folk folks chap bloke fella oh aye och hm hmm eh love dear yourselves ourselves themselves myself wee something anyone reckon reckons aid fancy pray shall tonight today brother sister gran granny mother father pal'.split(' '),
); // prettier-ignore

const NUMBERS: Readonly<Record<string, string>> = { zero: '0', two: '2', three: '3', four: '4', five: '5', six: '6', seven: '7', eight: '8', nine: '9', ten: '10', twelve: '12', eighteen: '18', twenty: '20', thirty: '30', forty: '40', fifty: '50', hundred: '100', once: '1', twice: '2' }; // prettier-ignore

/** Endings of a word and what stands for them, the longer first. */
const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/(?<=\w{3})ations?$/, ''],
  [/(?<=\w{3})at(?:ing|ed|es|e|or|ors)$/, ''],
  [/(?<=\w{2})ies$/, 'y'],
  [/(?<=s|x|ch|sh)es$/, ''],
  [/(?<=\w{3})ings?$/, ''],
  [/(?<=\w{3})ed$/, ''],
  [/(?<=\w{2}[^su])s$/, ''],
  [/(?<=\w{4})ly$/, ''],
];

/** A word without its ending: distilling, distilled and distillation are one. */
export function stemOf(word: string): string {
  const [ending, by] = ENDINGS.find(([pattern]) => pattern.test(word)) ?? [];
  const cut = ending ? word.replace(ending, by!) : word;
  return cut.length < 4 ? cut : cut.replace(/([bdfglmnprt])\1$/, '$1').replace(/e$/, '');
}

/** Lower case, without accents and marks; what's as what is. */
export const plainQuestion = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[’‘]/g, "'")
    .replace(/\bwon't\b/g, 'will not')
    .replace(/\bcan't|cannot\b/g, 'can not')
    .replace(/n't\b/g, ' not')
    .replace(/'(?:s|re|ve|ll|d|m)\b/g, '')
    .replace(/(?<=\d),(?=\d{3}\b)/g, '')
    .replace(/[^a-z0-9.%°\s]|(?<!\d)\.|\.(?!\d)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** What is asked for: a number of things, a time, a strength, a reason … */
const SORTS = {
  why: /\b(?:why|how come|reason|what(?: is|s)?\b.{0,30}\bfor|purpose|point of|what does .{1,40} do)\b/,
  long: /\bhow (?:long|old|many (?:hours?|days?|weeks?|months?|years?|minutes?))|how much time|when (?:is|will|does|do|can)\b/,
  strong:
    /\bhow (?:strong|alcoholic|boozy)|what (?:strength|proof|abv|per ?cent|percent)|\b(?:abv|proof|strength)\b/,
  hot: /\bhow (?:hot|cold|warm)|temperature|what heat\b/,
  many: /\bhow (?:many|much|big|large|heavy|far|often|deep|tall|wide|high|fast)|number of|amount|what(?: is)? (?:volume|weight|size)|how (?:frequent)/,
  where: /\bwhere\b/,
  how: /\bhow (?:do|does|is|are|can|did|would|will|you|to)\b/,
  is: /^(?:so |and |but |ok |um )*(?:is|are|do|does|did|can|could|will|would|has|have|should|may|isnt|if|am)\b/,
} as const;
export type Sort = keyof typeof SORTS;

/** The sort of thing that a question asks for; undefined when it does not say. */
export const sortOf = (text: string): Sort | undefined =>
  (Object.keys(SORTS) as Sort[]).find((sort) => SORTS[sort].test(plainQuestion(text)));

export interface WordReader {
  /** The words of a text that matter, each once, and behind a tilde those that matter little: ~how, ~is. */
  readonly read: (text: string) => readonly string[];
}

/** Reads texts by a list of other words. */
export function wordReader(words: OtherWords): WordReader {
  const single = new Map<string, string>();
  const phrases = new Map<string, string>();
  for (const [thing, others] of Object.entries(words)) {
    const name = thing.replace(/\s+/g, '');
    for (const other of [thing, ...others]) {
      const said = plainQuestion(other);
      if (said.includes(' ')) phrases.set(said, name);
      else single.set(stemOf(said), name);
    }
  }
  const longest = [...phrases.keys()].sort((a, b) => b.length - a.length);
  const phrase = new RegExp(`\\b(${longest.join('|').replaceAll('.', '\\.')})s?\\b`, 'g');
  return {
    read(text) {
      const said = longest.length === 0 ? plainQuestion(text) : plainQuestion(text).replace(phrase, (_, found: string) => ` ${phrases.get(found)!} `); // prettier-ignore
      const read = said
        .split(/[\s%°]+/)
        .filter((word) => word !== '')
        .map((word) => {
          if (UNHEEDED.has(word)) return `~${word}`;
          const number = NUMBERS[word] ?? word;
          const name = single.get(stemOf(number)) ?? single.get(number) ?? stemOf(number);
          return name === 'nothing' ? `~${word}` : name;
        });
      return [...new Set(read)];
    },
  };
}
