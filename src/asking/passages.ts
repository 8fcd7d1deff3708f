// What the book itself says nearest to a question, where no entry of the list is sure: a sentence or two, and where they stand.
import { wordMender } from './misspelt.ts';
import type { OtherWords, Passage } from './entry.ts';
import { wordReader } from './words.ts';

export interface QuotedPassage {
  readonly text: string;
  readonly at: string;
  readonly place: string;
  /** What of the question’s words it holds, 0–1, a rare word more than a common one. */
  readonly held: number;
  /** How many of them. */
  readonly words: number;
}

const IN_TITLE = 0.9; // of a word that the title of a section has, and the sentences do not
const ELSEWHERE = 0.35; // of one that stands elsewhere in the section
const STRANGE = 0.8; // weight of a word that the book has not got, of the rarest word’s
const LIKE = 0.8; // of a word that is only like one in the book
const LONGEST = 45; // words that are told in one breath
const BEST = 1.15; // by so much two sentences must hold more than the first alone

const isFaint = (word: string) => word.startsWith('~');
const withoutHoles = (text: string) => text.replace(/\{[^}]*\}/g, ' ');
const lengthOf = (text: string) => text.split(/\s+/).length;

interface Sentence {
  readonly text: string;
  readonly words: ReadonlySet<string>;
}

/** Makes one who finds the passage of a book that holds most of a question’s words. */
export function passageFinder(passages: readonly Passage[], others: OtherWords): (question: string) => QuotedPassage | undefined {
  const { read } = wordReader(others);
  const wordsOf = (text: string) => new Set(read(withoutHoles(text)).filter((word) => !isFaint(word)));
  const sections = passages.map(({ title, text, ...place }) => {
    const sentences = text.split(/(?<=[.?!]”?)\s+(?=[“A-Z{\d])/).map((each): Sentence => ({ text: each, words: wordsOf(each) }));
    const all = new Set(sentences.flatMap(({ words }) => [...words]));
    return { ...place, title: wordsOf(title), sentences, all };
  });
  const counts = new Map<string, number>();
  for (const { title, all } of sections) for (const word of new Set([...title, ...all])) counts.set(word, (counts.get(word) ?? 0) + 1);
  const rarest = Math.log(1 + sections.length);
  const weightOf = (word: string) => (counts.has(word) ? Math.log(1 + sections.length / counts.get(word)!) : STRANGE * rarest);
  const mended = wordMender(counts.keys());

  return (question) => {
    const asked = read(question).filter((word) => !isFaint(word)).map((word) => {
      const known = counts.has(word) ? word : mended(word);
      return { word: known ?? word, weight: weightOf(known ?? word), counts: known === word ? 1 : known ? LIKE : 0 };
    });
    const whole = asked.reduce((sum, { weight }) => sum + weight, 0);
    let best: QuotedPassage | undefined;
    for (const { at, place, title, sentences, all } of sections) {
      if (!asked.some(({ word }) => all.has(word))) continue;
      const heldBy = (lines: readonly Sentence[]) => {
        let [held, words] = [0, 0];
        for (const { word, weight, counts: by } of asked) {
          const isSaid = lines.some((line) => line.words.has(word));
          const share = isSaid ? 1 : title.has(word) ? IN_TITLE : all.has(word) ? ELSEWHERE : 0;
          held += by * share * weight;
          if (isSaid || title.has(word)) words += 1;
        }
        return { held: held / whole, words };
      };
      sentences.forEach((line, i) => {
        const next = sentences[i + 1];
        const alone = heldBy([line]);
        const both = next && lengthOf(line.text) + lengthOf(next.text) <= LONGEST ? heldBy([line, next]) : undefined;
        const isBoth = both !== undefined && both.held > alone.held * BEST;
        const { held, words } = isBoth ? both : alone;
        if (lengthOf(line.text) > LONGEST || held <= (best?.held ?? 0)) return;
        const told = isBoth || (next && lengthOf(line.text) + lengthOf(next.text) <= LONGEST) ? `${line.text} ${next!.text}` : line.text;
        best = { text: told, at, place, held, words };
      });
    }
    return best;
  };
} // prettier-ignore
