// A trainer's sheet: what it is made of, and the questions of each of its versions.
// A link promises the numbers drawn, not the answers, so that the physics can be mended: it carries a note of each draw (notes.ts), and an answer that moved is told.
// Held by tests/exercises/promised-sheets.json and tests/exercises/other-sums.test.ts.
import type { House } from '../core/line/house.ts';
import { builtInHouse } from '../house/figures.ts';
import type { HouseParts } from '../house/parts/part.ts';
import { answerBefore } from './answer-code.ts';
import { seededChance } from './seeded-random.ts';
import { draw, drawAgain, type DrawnQuestion, type DrawNote } from './draw.ts';
import { resultAtOnce, type InSteps } from './in-steps.ts';
import { notesText, readNotes, type NotedStep } from './notes.ts';
import { isNumberQuestion, type Question, type QuestionKind } from './question.ts';
import { randomHouse } from './random-house.ts';
import { seedOf } from './seed.ts';
import { topics, topicsOf, type Form, type Level, type Topic } from './topics.ts';

/** Whose figures a sheet speaks of; of a house of one’s own with what else its line is reckoned with. */
export type SheetHouse =
  'built-in' | 'random' | { readonly name: string; readonly house: House; readonly parts?: HouseParts };

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
  /** What each version drew when the sheet was made, as `notes.ts` writes it; without it today's sums decide which numbers will do. */
  readonly notes?: readonly string[];
}

export const MOST_QUESTIONS = 40;
export const MOST_SHEET_VERSIONS = 60;
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
        generator <= (kind.until ?? Infinity) &&
        topics.includes(kind.topic) &&
        forms.includes(kind.form) &&
        levels.includes(kind.level),
    )
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** The pool in the order in which a sheet takes from it: one of each topic in turn, mixed by the seed. */
function inTurn(
  pool: readonly QuestionKind[],
  { seed, generator }: Pick<Worksheet, 'seed' | 'generator'>,
): readonly QuestionKind[] {
  const { shuffle } = seededChance(`kinds/${seed}`);
  const byTopic = shuffle(
    topicsOf(generator).map((topic) => shuffle(pool.filter((kind) => kind.topic === topic))),
  );
  const longest = Math.max(0, ...byTopic.map((each) => each.length));
  return Array.from({ length: longest }, (_, i) => byTopic.flatMap((each) => each[i] ?? [])).flat();
}

/** The kinds that every version of a sheet begins with, as many as it has questions: most or all of what it draws. */
export const firstKinds = (sheet: Worksheet, kinds: readonly QuestionKind[]): readonly QuestionKind[] =>
  inTurn(poolOf(sheet, kinds), sheet).slice(0, sheet.count);

/** The house of a version. */
export function houseOfVersion(
  { house, seed, generator }: Pick<Worksheet, 'house' | 'seed' | 'generator'>,
  version: number,
): House {
  if (house === 'built-in') return builtInHouse;
  return house === 'random' ? randomHouse(`${seed}/${version}`, generator) : house.house;
}

/** What a reader sees of a question: two with one face ask the same. */
export const faceOf = (question: Question): string =>
  JSON.stringify([
    question.prompt,
    'options' in question ? question.answer : '',
    'items' in question ? [...question.items].sort() : '',
  ]);

/** A question of a sheet, and what has become of it since the sheet was made. */
export interface AskedQuestion {
  readonly question: Question;
  /** The answer as it was, in print, when it has moved by more than its tolerance. */
  readonly before?: string;
  /** True when today's sums cannot be done with the numbers that it had, so that it has others. */
  readonly isAnew?: boolean;
}

const seedFor = ({ seed }: Worksheet, version: number, round: number, other: number) =>
  `${seed}/${version}/${round}/${other}`;

/** The rounds of a sheet, without end: in each of them every kind of its pool, in the sheet's order. */
function* turns(sheet: Worksheet, kinds: readonly QuestionKind[]) {
  const order = inTurn(poolOf(sheet, kinds), sheet);
  for (let round = 0; order.length > 0; round++)
    for (const kind of order) yield { kind, round, isFirst: kind === order[0] };
}

/** Draws one version: its questions in the order drawn, no two alike, and none that was taken if that can be, and the notes by which they are drawn again. */
function* drawAll(
  sheet: Worksheet,
  version: number,
  kinds: readonly QuestionKind[],
  taken: ReadonlySet<string> = new Set(),
): InSteps<{
  readonly questions: readonly Question[];
  readonly faces: ReadonlySet<string>;
  readonly steps: readonly NotedStep[];
}> {
  const house = houseOfVersion(sheet, version);
  const questions: Question[] = [];
  const steps: NotedStep[] = [];
  const faces = new Set<string>();
  const oneOf = (kind: QuestionKind, round: number) => {
    let spare: (DrawnQuestion & { readonly other: number }) | undefined;
    for (let other = 0; other < OTHER_SEEDS; other++) {
      const drawn = draw(kind, seedFor(sheet, version, round, other), house, sheet.generator);
      if (!drawn) break;
      const face = faceOf(drawn.question);
      if (faces.has(face)) continue;
      if (!taken.has(face)) return { ...drawn, other };
      spare ??= { ...drawn, other };
    }
    return spare;
  };
  let before = -1; // questions before this round
  for (const { kind, round, isFirst } of turns(sheet, kinds)) {
    if (questions.length === sheet.count || (isFirst && questions.length === before)) break;
    if (isFirst) before = questions.length;
    yield kind.id;
    const drawn = oneOf(kind, round);
    steps.push(drawn ? { ...drawn.note, other: drawn.other } : 'passed over');
    if (!drawn) continue;
    faces.add(faceOf(drawn.question));
    questions.push(drawn.question);
  }
  return {
    questions,
    faces,
    steps: steps.slice(0, steps.findLastIndex((step) => step !== 'passed over') + 1),
  };
}

/** The generator from which the versions of a sheet are drawn one after another, and none repeats what another asks. */
const APART_SINCE = 3;

/** Draws the versions of a sheet up to one, or that one alone where it hangs on no other. */
function* drawUpTo(sheet: Worksheet, version: number, kinds: readonly QuestionKind[]) {
  if (sheet.generator < APART_SINCE) return [yield* drawAll(sheet, version, kinds)];
  const taken = new Set<string>();
  const all = [];
  for (let each = 1; each <= version; each++) {
    const drawn = yield* drawAll(sheet, each, kinds, taken);
    drawn.faces.forEach((face) => taken.add(face));
    all.push(drawn);
  }
  return all;
}

/** The question that a note tells of; where its numbers will no longer do, another of its kind. */
export function questionOfNote(
  kind: QuestionKind,
  seed: string,
  house: House,
  step: DrawNote,
  generator: number,
): readonly AskedQuestion[] {
  const question = drawAgain(kind, seed, house, step, generator)?.question;
  if (!question) {
    const other = draw(kind, seed, house, generator);
    return other ? [{ question: other.question, isAnew: true }] : [];
  }
  const before = isNumberQuestion(question) ? answerBefore(question, step.codes.at(-1)!) : undefined;
  return [before === undefined ? { question } : { question, before }];
}

function* drawnAgain(
  sheet: Worksheet,
  version: number,
  kinds: readonly QuestionKind[],
  steps: readonly NotedStep[],
): InSteps<readonly AskedQuestion[]> {
  const asked: AskedQuestion[] = [];
  const house = houseOfVersion(sheet, version);
  let at = 0;
  for (const { kind, round } of turns(sheet, kinds)) {
    const step = steps[at++];
    if (step === undefined) break;
    if (step === 'passed over') continue;
    yield kind.id;
    asked.push(
      ...questionOfNote(kind, seedFor(sheet, version, round, step.other), house, step, sheet.generator),
    );
  }
  return asked;
}

/** A sheet with what each of its versions draws today, so that its link draws the same ever after. A sheet of the first generator stays as it is. */
export function* fixingSheet(sheet: Worksheet, kinds: readonly QuestionKind[]): InSteps<Worksheet> {
  if (sheet.notes || sheet.generator < 2) return sheet;
  const drawn = [];
  if (sheet.generator >= APART_SINCE) drawn.push(...(yield* drawUpTo(sheet, sheet.versions, kinds)));
  else
    for (let version = 1; version <= sheet.versions; version++)
      drawn.push(yield* drawAll(sheet, version, kinds));
  return { ...sheet, notes: drawn.map(({ steps }) => notesText(steps)) };
}

/**
 * The questions of one version, 1 the first, from all the kinds there are, with what has become of them. Those of a fixed sheet are
 * the ones it was fixed with, and only their answers are today's. Fewer than asked for when the choice of topics, forms and
 * levels does not hold as many.
 */
export function* askingSheet(
  sheet: Worksheet,
  version: number,
  kinds: readonly QuestionKind[],
): InSteps<readonly AskedQuestion[]> {
  const steps = sheet.notes && readNotes(sheet.notes[version - 1] ?? '', sheet.count);
  const asked: readonly AskedQuestion[] = steps
    ? yield* drawnAgain(sheet, version, kinds, steps)
    : (yield* drawUpTo(sheet, version, kinds)).at(-1)!.questions.map((question) => ({ question }));
  const place = ({ question }: AskedQuestion) => topics.indexOf(question.topic) * 10 + question.level;
  return [...asked].sort((a, b) => place(a) - place(b));
}

export const fixedSheet = (sheet: Worksheet, kinds: readonly QuestionKind[]): Worksheet =>
  resultAtOnce(fixingSheet(sheet, kinds));

export const askedOf = (
  sheet: Worksheet,
  version: number,
  kinds: readonly QuestionKind[],
): readonly AskedQuestion[] => resultAtOnce(askingSheet(sheet, version, kinds));

/** The questions alone. */
export const questionsAlone = (
  sheet: Worksheet,
  version: number,
  kinds: readonly QuestionKind[],
): readonly Question[] => askedOf(sheet, version, kinds).map(({ question }) => question);

/** A short name of a sheet's settings, by which a result finds its sheet. */
export function sheetMark(text: string): string {
  return seedOf(text).toString(36).padStart(7, '0');
}
