// What practice asks next: a kind by the spacing rule, with numbers that were not seen in this sitting.
import type { House } from '../core/line/house.ts';
import { seededChance } from './seeded-random.ts';
import { drawQuestion } from './draw.ts';
import { dayNumber, type Progress } from './progress.ts';
import type { Question, QuestionKind } from './question.ts';
import { nextKind } from './spacing.ts';
import { topics, type Level, type Topic } from './topics.ts';

const OTHER_NUMBERS = 12; // tries before a question is asked with numbers that were seen

/** The kinds that may be asked, in the order in which new ones come: in a topic the easy ones first, as the book has them; mixed, the topics in turn. */
export function practicePool(
  kinds: readonly QuestionKind[],
  topic: Topic | 'all',
  level: Level | 'all',
  seed: string,
): readonly QuestionKind[] {
  const own = kinds.filter(
    (kind) =>
      kind.until === undefined &&
      (topic === 'all' || kind.topic === topic) &&
      (level === 'all' || kind.level === level),
  );
  const byLevel = (list: readonly QuestionKind[]) => [...list].sort((a, b) => a.level - b.level);
  if (topic !== 'all') return byLevel(own);
  const { shuffle } = seededChance(`practice/${seed}`);
  const lists = shuffle(topics).map((each) => byLevel(shuffle(own.filter((kind) => kind.topic === each))));
  const longest = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: longest }, (_, i) => lists.flatMap((list) => list[i] ?? [])).flat();
}

/** What a sitting is drawn by, and what it has asked so far, in order. */
export interface PracticeSitting {
  readonly progress: Progress;
  /** The day, as 2026-05-14. */
  readonly day: string;
  /** What this browser draws by. */
  readonly seed: string;
  readonly house: House;
  readonly asked: readonly Question[];
}
const kindsAsked = ({ asked }: PracticeSitting) => asked.map(({ kind }) => kind);

/** The kind that comes next of some. */
export const nextKindToPractise = (
  pool: readonly QuestionKind[],
  sitting: PracticeSitting,
): string | undefined =>
  nextKind(
    pool.map(({ id }) => id),
    sitting.progress.standing,
    dayNumber(sitting.day),
    kindsAsked(sitting),
  );

const faceOf = (question: Question) =>
  JSON.stringify([
    question.prompt,
    'options' in question ? question.options : '',
    'items' in question ? question.items : '',
  ]);

/** The question that comes next; a kind that the house does not allow is passed over. Undefined when no kind is left. */
export function nextQuestionToPractise(
  pool: readonly QuestionKind[],
  sitting: PracticeSitting,
): Question | undefined {
  const { progress, day, seed, house, asked } = sitting;
  const base = `practice/${seed}/${day}/${progress.answers}`;
  const seen = new Set(asked.map(faceOf));
  let left = pool;
  while (left.length > 0) {
    const id = nextKindToPractise(left, sitting);
    const kind = left.find((each) => each.id === id)!;
    let first: Question | undefined;
    for (let other = 0; other < OTHER_NUMBERS; other++) {
      const drawn = drawQuestion(kind, other === 0 ? base : `${base}/${asked.length}/${other}`, house);
      if (drawn && !seen.has(faceOf(drawn))) return drawn;
      first ??= drawn;
      if (!drawn) break;
    }
    if (first) return first;
    left = left.filter((each) => each !== kind);
  }
  return undefined;
}
