// Which of a list of visitors' questions a script does not answer, and where in the script the answer would belong.
import { answeredPlainly } from './answered-plainly.ts';
import { quantitiesIn } from './quantities.ts';
import { mentionsIn } from './words.ts';

export interface UnansweredQuestion {
  readonly id: string;
  /** The chapter that answers it, and its title. */
  readonly chapter: string;
  readonly title: string;
  readonly question: string;
  /** Words that an answer would use: "yeast", "kilos". Slips of the trade's words are known without listing them. */
  readonly words: readonly string[];
}
export interface Unanswered {
  readonly question: UnansweredQuestion;
  /** The part of its words that stand together somewhere in the script, 0 to 1. */
  readonly touched: number;
  /** Where they stand most closely together, in UTF-16 units; missing where none of them is said. */
  readonly at?: number;
}

const PASSAGE = 240; // characters in which an answer's words must stand together
const ANSWERED = 0.66; // the part of them that makes an answer
const wantsNumber = /^how (?:much|many|long|hot|strong|often|big|heavy|far|old)\b/i;

/** A word without its ending, so that fermenting and ferments are one. */
const stem = (word: string) => {
  const short = word.toLowerCase().replace(/['’]s$/, '');
  return short.length > 4 ? short.replace(/(?:ations?|ings?|ed|es|s|e)$/, '') : short;
};

interface Place {
  readonly word: number;
  readonly at: number;
}

/** The longest run of different words that stand within a passage: how many, and where it begins. */
function densest(places: readonly Place[]): { words: number; from: number; to: number } | undefined {
  let best: { words: number; from: number; to: number } | undefined;
  const inside = new Map<number, number>();
  let first = 0;
  for (const { word, at } of places) {
    inside.set(word, (inside.get(word) ?? 0) + 1);
    for (; at - places[first]!.at > PASSAGE; first++) {
      const left = inside.get(places[first]!.word)! - 1;
      if (left === 0) inside.delete(places[first]!.word);
      else inside.set(places[first]!.word, left);
    }
    if (inside.size > (best?.words ?? 0)) best = { words: inside.size, from: places[first]!.at, to: at };
  }
  return best;
}

/** Two sentences each that follow each other, so that an answer may be told in both. */
function pairsOfSentences(text: string): readonly string[] {
  const sentences = text.split(/(?<=[.!?])\s+|\n+/).filter((sentence) => sentence.trim() !== '');
  return sentences.map((sentence, i) => `${sentence} ${sentences[i + 1] ?? ''}`.toLowerCase());
}

/** True where one of the plain ways of answering a question is said. */
const isSaidPlainly = (id: string, pairs: readonly string[]): boolean =>
  Object.hasOwn(answeredPlainly, id) &&
  answeredPlainly[id]!.some((way) => pairs.some((pair) => way.every((words) => words.test(pair))));

/**
 * The questions that a script leaves open, in the order given. A question counts as answered when two thirds of
 * its words stand together in one passage; one that asks how much, how long or how hot needs a number there too; and
 * one of the book's where it is answered in the plain words of guides. It reads words, not meaning, so it may leave a
 * question open that is answered in others.
 */
export function unanswered(text: string, questions: readonly UnansweredQuestion[]): Unanswered[] {
  const said = new Map<string, number[]>();
  for (const { 0: word, index } of text.matchAll(/[a-zà-ÿ]+(?:['’][a-z]+)?/gi)) {
    const places = said.get(stem(word));
    if (places) places.push(index);
    else said.set(stem(word), [index]);
  }
  const mentions = mentionsIn(text);
  const numbers = quantitiesIn(text).map(({ start }) => start);

  const pairs = pairsOfSentences(text);

  return questions.flatMap((question) => {
    if (isSaidPlainly(question.id, pairs)) return [];
    const words = [...new Set(question.words.map((word) => word.trim()).filter((word) => word !== ''))];
    const places: Place[] = words.flatMap((word, i) => {
      const concepts = new Set(mentionsIn(word).map(({ concept }) => concept));
      const slips = mentions.filter(({ concept }) => concepts.has(concept)).map(({ start }) => start);
      return [...(said.get(stem(word)) ?? []), ...slips].map((at) => ({ word: i, at }));
    });
    const best = densest(places.sort((a, b) => a.at - b.at));
    const touched = best && words.length > 0 ? best.words / words.length : 0;
    const counted =
      !wantsNumber.test(question.question) ||
      (best !== undefined && numbers.some((at) => at > best.from - 80 && at < best.to + PASSAGE / 2));
    if (touched >= ANSWERED && counted) return [];
    return [{ question, touched, ...(best ? { at: best.from } : {}) }];
  });
}
