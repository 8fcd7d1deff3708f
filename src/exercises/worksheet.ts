// A trainer's sheet: what it is made of, and the questions of each of its versions.
import type { House } from '../core/line/house.ts';
import { builtInHouse } from '../house/figures.ts';
import { chanceOf, seedOf } from './chance.ts';
import { drawQuestion } from './draw.ts';
import type { Question, QuestionKind } from './question.ts';
import { randomHouse } from './random-house.ts';
import { topics, type Form, type Level, type Topic } from './topics.ts';

/** Whose figures a sheet speaks of. */
export type SheetHouse = 'built-in' | 'random' | { readonly name: string; readonly house: House };

export interface Worksheet {
  /** The generator that drew it first; later ones draw it the same. */
  readonly generator: number;
  readonly topics: readonly Topic[];
  readonly forms: readonly Form[];
  readonly levels: readonly Level[];
  readonly count: number;
  readonly house: SheetHouse;
  readonly seed: string;
  readonly versions: number;
}

export const MOST_QUESTIONS = 40;
export const MOST_VERSIONS = 60;
const OTHER_SEEDS = 12; // tries before a kind is passed over that repeats a question

/** The kinds, of all there are, that a sheet may draw from. */
export function poolOf(
  { generator, topics, forms, levels }: Omit<Worksheet, 'count' | 'house' | 'seed' | 'versions'>,
  kinds: readonly QuestionKind[],
): readonly QuestionKind[] {
  return kinds
    .filter(
      (kind) =>
        kind.since <= generator &&
        topics.includes(kind.topic) &&
        forms.includes(kind.form) &&
        levels.includes(kind.level),
    )
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** The pool in the order in which a sheet takes from it: one of each topic in turn, mixed by the seed. */
function inTurn(pool: readonly QuestionKind[], seed: string): readonly QuestionKind[] {
  const { shuffle } = chanceOf(`kinds/${seed}`);
  const byTopic = shuffle(topics.map((topic) => shuffle(pool.filter((kind) => kind.topic === topic))));
  const longest = Math.max(...byTopic.map((each) => each.length));
  return Array.from({ length: longest }, (_, i) => byTopic.flatMap((each) => each[i] ?? [])).flat();
}

/** The house of a version. */
export function houseOf({ house, seed }: Pick<Worksheet, 'house' | 'seed'>, version: number): House {
  if (house === 'built-in') return builtInHouse;
  return house === 'random' ? randomHouse(`${seed}/${version}`) : house.house;
}

const faceOf = (question: Question) =>
  JSON.stringify([
    question.prompt,
    'options' in question ? question.answer : '',
    'items' in question ? [...question.items].sort() : '',
  ]);

/**
 * The questions of one version, 1 the first, from all the kinds there are; no two alike. Fewer than asked for when the choice of topics,
 * forms and levels does not hold as many.
 */
export function questionsOf(
  sheet: Worksheet,
  version: number,
  kinds: readonly QuestionKind[],
): readonly Question[] {
  const house = houseOf(sheet, version);
  const order = inTurn(poolOf(sheet, kinds), sheet.seed);
  const questions: Question[] = [];
  const faces = new Set<string>();
  const draw = (kind: QuestionKind, round: number): Question | undefined => {
    for (let other = 0; other < OTHER_SEEDS; other++) {
      const question = drawQuestion(kind, `${sheet.seed}/${version}/${round}/${other}`, house);
      if (!question || !faces.has(faceOf(question))) return question;
    }
    return undefined;
  };
  for (let round = 0; questions.length < sheet.count; round++) {
    const before = questions.length;
    for (const kind of order) {
      if (questions.length === sheet.count) break;
      const question = draw(kind, round);
      if (!question) continue;
      faces.add(faceOf(question));
      questions.push(question);
    }
    if (questions.length === before) break;
  }
  const place = (question: Question) => topics.indexOf(question.topic) * 10 + question.level;
  return questions.sort((a, b) => place(a) - place(b));
}

/** A short name of a sheet's settings, by which a result finds its sheet. */
export function fingerprint(text: string): string {
  return seedOf(text).toString(36).padStart(7, '0');
}
