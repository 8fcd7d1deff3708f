// A question in another language, brought into English word by word as far as the list of phrases goes: enough to find what is meant.
import type { OtherWords } from './entry.ts';

const MOST_OF = 0.6; // of its words that must be in the list
const FEWEST = 2; // of them that are words of no English
/** Words of the list that are English as well: they tell no language. */
const ENGLISH = new Set('a an and as in is it i e u y o on no the of so me my we be do he at are how why what when where who which whisky whiskey water malt grain litres liter litre kilo kilos die was des des par per pro pure alcohol fermentation temperature transparent legal color code come son es met van el an fume hart korn los las lo je sent mash has warm week dag of en den de la wood'.split(' ')); // prettier-ignore
const ASKS_IN_ENGLISH = /\b(?:how|what|why|where|when|which|who|the|does|do|you|your|is there|are)\b/i;

const bare = (text: string) =>
  text
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[’‘'-]/g, ' ')
    .replace(/[^a-z0-9.,%°\s]|[.,](?!\d)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** Makes a reader of foreign questions; what is English, or cannot be read, comes back as it was. */
export function intoEnglish(phrases: OtherWords): (question: string) => string {
  const english = new Map<string, string>();
  for (const [phrase, others] of Object.entries(phrases))
    for (const other of others) if (!english.has(bare(other))) english.set(bare(other), phrase);
  const longest = Math.max(1, ...[...english.keys()].map((each) => each.split(' ').length));
  return (question) => {
    if (ASKS_IN_ENGLISH.test(question)) return question;
    const words = bare(question).split(' ');
    const told: string[] = [];
    let [held, foreign] = [0, 0];
    for (let at = 0; at < words.length; ) {
      let length = Math.min(longest, words.length - at);
      while (length > 0 && !english.has(words.slice(at, at + length).join(' '))) length--;
      const said = words.slice(at, at + Math.max(length, 1));
      told.push(english.get(said.join(' ')) ?? said[0]!);
      if (length > 0 || /\d/.test(said[0]!)) held += said.length;
      if (length > 0 && said.some((word) => !ENGLISH.has(word))) foreign += 1;
      at += said.length;
    }
    return held >= MOST_OF * words.length && foreign >= Math.min(FEWEST, words.length) ? told.join(' ') : question;
  };
} // prettier-ignore
