// A trainer's own sheet: what is asked in which order, with which marks, under which rules; and how each version is drawn.
import type { House } from '../../core/line/house.ts';
import { builtInHouse } from '../../house/figures.ts';
import type { InSteps } from '../in-steps.ts';
import { draw, type DrawnQuestion } from '../draw.ts';
import { hardnessOf } from '../hardness.ts';
import { notesText, readNotes, type NotedStep } from '../notes.ts';
import { isNumberQuestion, type Question, type QuestionKind } from '../question.ts';
import { seedOf } from '../seed.ts';
import { questionOfNote, faceOf, type AskedQuestion, type SheetHouse } from '../worksheet.ts';
import type { OwnQuestion } from './own-question.ts';

export const showings = ['at once', 'at the end', 'never'] as const;
export type Showing = (typeof showings)[number];

/** A question of the sheet: its kind, a number that its draws hang on, its marks, and its numbers where they are kept. */
export interface Item {
  readonly kind: string;
  readonly key: number;
  readonly marks: number;
  /** Every version asks these numbers: the note of the draw, as `notes.ts` writes it. */
  readonly kept?: string;
}
export interface OwnSheet {
  readonly generator: number;
  readonly title: string;
  /** Minutes allowed; 0 for as long as it takes. */
  readonly minutes: number;
  /** Per cent of the marks to pass; 0 for a sheet that is not passed or failed. */
  readonly passMark: number;
  /** When the trainee is shown what is right. */
  readonly shows: Showing;
  readonly seed: string;
  readonly versions: number;
  readonly house: Exclude<SheetHouse, 'random'>;
  readonly items: readonly Item[];
  /** The questions of one's own that it asks, whole. */
  readonly own: readonly OwnQuestion[];
  /** What each version drew, in the order of the items; without it the sheet is not fixed yet. */
  readonly notes?: readonly string[];
}

export const OWN_SHEET_LIMITS = {
  items: 40,
  versions: 30,
  marks: 20,
  minutes: 480,
  title: 60,
  key: 9999,
} as const;
/** Draws among which a question's versions choose. */
const POOL = 48;
/** The stated spread: how far the hardest version may lie above the easiest, as a part of their mean. */
export const HARDNESS_SPREAD = 0.1;

export const houseOfOwn = ({ house }: Pick<OwnSheet, 'house'>): House =>
  house === 'built-in' ? builtInHouse : house.house;
export const marksIn = ({ items }: Pick<OwnSheet, 'items'>): number =>
  items.reduce((all, { marks }) => all + marks, 0);

const isOwn = (id: string) => id.startsWith('own-');
const seedFor = ({ seed }: Pick<OwnSheet, 'seed'>, { key }: Item, other: number) => `${seed}/${key}/${other}`;
const stepOf = (text: string | undefined): NotedStep | undefined => readNotes(text ?? '', 1)?.[0];

/** The next number for an item, that none of a sheet has. */
export const freshKey = (items: readonly Item[]): number =>
  (Math.max(0, ...items.map(({ key }) => key)) % OWN_SHEET_LIMITS.key) + 1;

interface Choice {
  readonly drawn: DrawnQuestion;
  readonly other: number;
  readonly points: number;
}
const answerFace = (question: Question) =>
  isNumberQuestion(question) ? question.answer.toPrecision(6) : faceOf(question);

/** What was drawn for a sheet so far, so that a change of order draws nothing anew; another for each house, and for other questions of one's own. */
export type Drawings = Map<string, readonly Choice[]>;

/** Draws of a question that differ in what they ask and in the answer, those of middling hardness first. */
function* choicesFor(
  sheet: OwnSheet,
  item: Item,
  kind: QuestionKind,
  met: Drawings,
): InSteps<readonly Choice[]> {
  const name = `${kind.id}/${seedFor(sheet, item, 0)}/${sheet.generator}`;
  const known = met.get(name) ?? (yield* choicesAnew(sheet, item, kind));
  met.set(name, known);
  return known;
}

function* choicesAnew(sheet: OwnSheet, item: Item, kind: QuestionKind): InSteps<readonly Choice[]> {
  const found: Choice[] = [];
  const met = new Set<string>();
  for (let other = 0; other < POOL; other++) {
    if (!isOwn(kind.id)) yield kind.id;
    const drawn = draw(kind, seedFor(sheet, item, other), houseOfOwn(sheet), sheet.generator);
    if (!drawn) break;
    const faces = [faceOf(drawn.question), answerFace(drawn.question)];
    if (faces.some((face) => met.has(face))) continue;
    faces.forEach((face) => met.add(face));
    found.push({ drawn, other, points: hardnessOf(drawn.question).points });
  }
  const inOrder = found.map(({ points }) => points).sort((a, b) => a - b);
  const middle = inOrder[Math.floor(inOrder.length / 2)] ?? 0;
  return found.sort((a, b) => Math.abs(a.points - middle) - Math.abs(b.points - middle) || a.other - b.other);
}

/** What is said of a sheet as it was drawn. */
export interface Evenness {
  /** Points of hardness of each version. */
  readonly points: readonly number[];
  /** The same by question: of each version, the points at each place of the sheet; nought where none is asked. */
  readonly byQuestion: readonly (readonly number[])[];
  /** The hardest over the easiest, as a part of their mean. */
  readonly spread: number;
  /** Places, from 0, of questions that have fewer different draws than there are versions; those kept on purpose are not among them. */
  readonly repeated: readonly number[];
  /** Places of questions that this house allows none of. */
  readonly missing: readonly number[];
}

/**
 * A sheet with what each version draws. For each question the draws nearest to its middle hardness are taken, and the
 * hardest of them goes to the version that is easiest so far.
 */
export function* settling(
  sheet: OwnSheet,
  kinds: ReadonlyMap<string, QuestionKind>,
  drawings: Drawings = new Map(),
): InSteps<{ readonly sheet: OwnSheet; readonly evenness: Evenness }> {
  const versions = Array.from({ length: sheet.versions }, (_, i) => i);
  const points = versions.map(() => 0);
  const byQuestion: number[][] = versions.map(() => sheet.items.map(() => 0));
  const steps: NotedStep[][] = versions.map(() => []);
  const repeated: number[] = [];
  const missing: number[] = [];
  for (const [place, item] of sheet.items.entries()) {
    const kind = kinds.get(item.kind);
    const kept = stepOf(item.kept);
    if (kind && kept && kept !== 'passed over') {
      if (!isOwn(kind.id)) yield kind.id;
      const asked = questionOfNote(
        kind,
        seedFor(sheet, item, kept.other),
        houseOfOwn(sheet),
        kept,
        sheet.generator,
      )[0];
      if (!asked) missing.push(place);
      versions.forEach((version) => {
        steps[version]!.push(asked ? kept : 'passed over');
        byQuestion[version]![place] = asked ? hardnessOf(asked.question).points : 0;
        points[version]! += byQuestion[version]![place]!;
      });
      continue;
    }
    const choices = kind ? yield* choicesFor(sheet, item, kind, drawings) : [];
    if (choices.length === 0) {
      missing.push(place);
      steps.forEach((each) => each.push('passed over'));
      continue;
    }
    if (choices.length < sheet.versions) repeated.push(place);
    const taken = versions
      .map((version) => choices[version % choices.length]!)
      .sort((a, b) => b.points - a.points || a.other - b.other);
    // Versions that are alike so far take turns by the sheet's name, so that a neighbour's number tells nothing.
    const turn = (version: number) => seedOf(`${sheet.seed}/${item.key}/turn/${version}`);
    const easiestFirst = [...versions].sort((a, b) => points[a]! - points[b]! || turn(a) - turn(b));
    easiestFirst.forEach((version, i) => {
      const { drawn, other, points: hard } = taken[i]!;
      steps[version]!.push({ ...drawn.note, other });
      byQuestion[version]![place] = hard;
      points[version]! += hard;
    });
  }
  const mean = points.reduce((all, each) => all + each, 0) / points.length;
  return {
    sheet: { ...sheet, notes: steps.map(notesText) },
    evenness: {
      points,
      byQuestion,
      spread: mean > 0 ? (Math.max(...points) - Math.min(...points)) / mean : 0,
      repeated,
      missing,
    },
  };
}

/** A question of a version, with the item that asks it. */
export interface OwnAsked extends AskedQuestion {
  readonly item: Item;
}

/** The questions of one version of a fixed sheet, 1 the first, in the trainer's order. */
export function* askingOwn(
  sheet: OwnSheet,
  version: number,
  kinds: ReadonlyMap<string, QuestionKind>,
): InSteps<readonly OwnAsked[]> {
  const steps = readNotes(sheet.notes?.[version - 1] ?? '', OWN_SHEET_LIMITS.items) ?? [];
  const asked: OwnAsked[] = [];
  for (const [place, item] of sheet.items.entries()) {
    const [kind, step] = [kinds.get(item.kind), steps[place]];
    if (!kind || step === undefined || step === 'passed over') continue;
    if (!isOwn(kind.id)) yield kind.id;
    const found = questionOfNote(
      kind,
      seedFor(sheet, item, step.other),
      houseOfOwn(sheet),
      step,
      sheet.generator,
    )[0];
    if (found) asked.push({ ...found, item });
  }
  return asked;
}

/** The note of a question in a version, by which its numbers are kept; undefined when it has none. */
export function noteOf(sheet: OwnSheet, version: number, place: number): string | undefined {
  const step = readNotes(sheet.notes?.[version - 1] ?? '', OWN_SHEET_LIMITS.items)?.[place];
  return step === undefined || step === 'passed over' ? undefined : notesText([step]);
}

/** Points by marks: each question's own part of them, and whether that is a pass; a sheet without a pass mark has no such verdict. */
export function ownScore(
  { passMark }: Pick<OwnSheet, 'passMark'>,
  marks: readonly number[],
  points: readonly number[],
): { readonly got: number; readonly of: number; readonly isPass?: boolean } {
  const of = marks.reduce((all, each) => all + each, 0);
  const got = marks.reduce((all, each, i) => all + each * (points[i] ?? 0), 0);
  return { got, of, ...(passMark > 0 ? { isPass: got >= (passMark / 100) * of - 1e-9 } : {}) };
}
