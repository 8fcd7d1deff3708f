// A sealed sheet: its questions as text and nothing that answers them; beside them a seal that the trainer's key opens, with what the questions were drawn from.
// The desk marks what the seal holds, whatever the link said. A time and a pass mark set at sealing lie in the seal, and stand only where the sheet has none.
// A field that goes out needs a row in tests/exercises/sealed.test.ts.
import type { Chart } from '../../calculators/define.ts';
import { kinds as units } from '../../core/kinds.ts';
import { UNSEEN } from '../../core/shown.ts';
import { isChoiceQuestion, isNumberQuestion, isOrderQuestion, type Question } from '../question.ts';
import { askFor } from '../wording.ts';

/** What a trainee is asked, as text. */
export interface SealedQuestion {
  readonly form: 'number' | 'choice' | 'order';
  readonly prompt: string;
  /** How the answer is asked for. */
  readonly ask: string;
  readonly marks: number;
  /** The options or the steps, behind their letters. */
  readonly lines?: readonly string[];
  /** The curve that is read. */
  readonly curve?: Pick<Chart, 'caption' | 'columns' | 'as' | 'below'>;
}
export interface SealedVersion {
  readonly version: number;
  readonly questions: readonly SealedQuestion[];
}
export interface SealedSheet {
  /** Made by chance, so that it tells nothing. */
  readonly id: string;
  readonly title: string;
  /** Minutes allowed; 0 for as long as it takes. */
  readonly minutes: number;
  /** The trainer's public key, to which answers are sealed. */
  readonly to: string;
  readonly versions: readonly SealedVersion[];
  /** What only the trainer's key opens, in base64url. */
  readonly seal: string;
}
/** What the seal holds: the sheet itself, as its link or its text, and a code of each version's questions as they went out. */
export interface SealedSource {
  readonly sheet: { readonly own: string } | { readonly link: string };
  readonly seen: Readonly<Record<string, string>>;
  /** What was set at sealing, for a sheet that has no time or no pass mark itself; left out where nothing was. */
  readonly rules?: SealedRules;
}
/** Minutes allowed, and per cent of the marks to pass; 0 for none. */
export interface SealedRules {
  readonly minutes: number;
  readonly passMark: number;
}

/** The rules of a sheet: its own, and where it has none those that were set at sealing. */
export const rulesOf = (sheet: SealedRules, set: SealedRules = { minutes: 0, passMark: 0 }): SealedRules => ({
  minutes: sheet.minutes || set.minutes,
  passMark: sheet.passMark || set.passMark,
});

export const SEALED_FORMAT = 'malt-spirit-handbook/sealed-sheet';
const SOURCE_FORMAT = 'malt-spirit-handbook/sealed-source';
const VERSION = 1; // raised when a text changes its meaning; the old one is read ever after
export const LONGEST_SEALED = 1_000_000; // characters of a sealed sheet's text that are read
const LIMITS = { versions: 99, questions: 60, marks: 20, minutes: 480, title: 60, prompt: 2000, lines: 12, line: 800, values: 1000, seal: 400_000, pass: 100 } as const; // prettier-ignore
const ID = /^[0-9a-z]{12}$/;
const PUBLIC_KEY = /^[\w-]{87}$/;
const SEAL = /^[\w-]+$/;
const CODE = /^[\w-]{16}$/;
const PLACES = 6; // figures of a value of a curve: more than can be drawn or read

/** What a seal of a sheet is about, and what a seal of answers to it. */
export const aboutSource = (id: string): string => `source ${id}`;
export const aboutHandIn = (id: string): string => `hand-in ${id}`;

/** A question as it is asked, without anything that answers it: not its kind, working, answer, mistakes or sources. */
export function askedOnly(question: Question, marks: number): SealedQuestion {
  const asked = { prompt: question.prompt, ask: askFor(question), marks };
  if (isChoiceQuestion(question)) return { form: 'choice', ...asked, lines: question.options.map(({ text }) => text) };
  if (isOrderQuestion(question)) return { form: 'order', ...asked, lines: question.items };
  const curve = isNumberQuestion(question) ? question.curve : undefined;
  if (!curve) return { form: 'number', ...asked };
  const columns = curve.columns.map(({ kind, label, values, empty }) => ({ kind, label, values: values.map((value) => Number(value.toPrecision(PLACES))), ...(empty === undefined ? {} : { empty }) }));
  return { form: 'number', ...asked, curve: { caption: curve.caption, columns, ...(curve.as && { as: curve.as }), ...(curve.below === undefined ? {} : { below: curve.below }) } };
} // prettier-ignore

/** The one text of a version's questions, of which a code is kept. */
export const seenText = (questions: readonly SealedQuestion[]): string =>
  JSON.stringify(questions.map(({ form, prompt, ask, marks, lines, curve }) => [form, prompt, ask, marks, lines ?? [], curve?.columns.map(({ values }) => values) ?? []])); // prettier-ignore

export const sealedText = (sheet: SealedSheet): string =>
  JSON.stringify({ format: SEALED_FORMAT, version: VERSION, ...sheet });

const isWhole = (given: unknown, low: number, high: number): given is number =>
  typeof given === 'number' && Number.isInteger(given) && given >= low && given <= high;
const isText = (given: unknown, most: number): given is string =>
  typeof given === 'string' &&
  given.length <= most &&
  given.replace(UNSEEN, '') === given.replaceAll('\n', '');
const recordOf = (given: unknown): Readonly<Record<string, unknown>> =>
  typeof given === 'object' && given !== null && !Array.isArray(given) ? { ...given } : {}; // prettier-ignore

function curveRead(given: unknown): SealedQuestion['curve'] {
  const { caption, columns, as, below } = recordOf(given);
  if (!isText(caption, LIMITS.line) || !Array.isArray(columns) || columns.length < 2 || columns.length > 6) return undefined;
  const isColumn = (column: unknown) => {
    const { kind, label, values, empty } = recordOf(column);
    return (
      typeof kind === 'string' && Object.hasOwn(units, kind) &&
      isText(label, LIMITS.line) &&
      Array.isArray(values) && values.length >= 2 && values.length <= LIMITS.values &&
      values.length === (recordOf(columns[0])['values'] as readonly unknown[] | undefined)?.length &&
      values.every((value) => typeof value === 'number' && Number.isFinite(value)) &&
      (empty === undefined || isWhole(empty, 0, LIMITS.values))
    );
  };
  if (!columns.every(isColumn) || (as !== undefined && as !== 'bars')) return undefined;
  if (below !== undefined && !isWhole(below, 1, columns.length - 1)) return undefined;
  return { caption, columns, ...(as === 'bars' && { as }), ...(below === undefined ? {} : { below }) };
} // prettier-ignore

function questionRead(given: unknown): SealedQuestion | undefined {
  const { form, prompt, ask, marks, lines, curve } = recordOf(given);
  if (!isText(prompt, LIMITS.prompt) || prompt === '' || !isText(ask, LIMITS.line)) return undefined;
  if (typeof marks !== 'number' || !(marks > 0 && marks <= LIMITS.marks)) return undefined;
  if (form === 'number') {
    const read = curve === undefined ? undefined : curveRead(curve);
    return curve !== undefined && !read
      ? undefined
      : { form, prompt, ask, marks, ...(read && { curve: read }) };
  }
  const isLettered = Array.isArray(lines) && lines.length >= 2 && lines.length <= LIMITS.lines && lines.every((line) => isText(line, LIMITS.line)); // prettier-ignore
  return (form === 'choice' || form === 'order') && isLettered
    ? { form, prompt, ask, marks, lines: lines as readonly string[] }
    : undefined;
}

/** Reads a sealed sheet; a sentence when it is damaged. */
export function readSealed(text: string): SealedSheet | string {
  const damaged = 'This sealed sheet is damaged; ask whoever sent it to send it once more.';
  if (text.length > LONGEST_SEALED) return damaged;
  let of: Readonly<Record<string, unknown>>;
  try {
    of = recordOf(JSON.parse(text));
  } catch {
    return damaged;
  }
  const { id, title, minutes, to, versions, seal } = of;
  if (of['format'] !== SEALED_FORMAT) return 'This is no sealed sheet.';
  if (of['version'] !== VERSION) return 'This sealed sheet was made by a newer handbook. Bring this handbook up to date, and open it again.'; // prettier-ignore
  const isSound =
    typeof id === 'string' && ID.test(id) &&
    isText(title, LIMITS.title) &&
    isWhole(minutes, 0, LIMITS.minutes) &&
    typeof to === 'string' && PUBLIC_KEY.test(to) &&
    typeof seal === 'string' && seal.length <= LIMITS.seal && SEAL.test(seal) &&
    Array.isArray(versions) && versions.length >= 1 && versions.length <= LIMITS.versions; // prettier-ignore
  if (!isSound) return damaged;
  const read: SealedVersion[] = [];
  for (const each of versions) {
    const { version, questions } = recordOf(each);
    if (!isWhole(version, 1, LIMITS.versions) || read.some((other) => other.version === version))
      return damaged;
    if (!Array.isArray(questions) || questions.length < 1 || questions.length > LIMITS.questions)
      return damaged;
    const found = questions.map(questionRead);
    if (found.includes(undefined)) return damaged;
    read.push({ version, questions: found.filter((question) => question !== undefined) });
  }
  return { id, title, minutes, to, versions: read, seal };
}

/** One version of it alone, for a link of its own. */
export const onlyVersion = (sheet: SealedSheet, version: number): SealedSheet => ({
  ...sheet,
  versions: sheet.versions.filter((each) => each.version === version),
});

export const sourceText = (source: SealedSource): string =>
  JSON.stringify({ format: SOURCE_FORMAT, version: VERSION, ...source });

/** Rules as a trainer typed them, an empty field for none; a sentence where one is none. */
export function rulesTyped(minutes: string, passMark: string): SealedRules | string {
  const [time, pass] = [minutes, passMark].map((text) => (text.trim() === '' ? 0 : Number(text.trim())));
  if (!isWhole(time, 0, LIMITS.minutes)) return `The time is a whole number of minutes, at most ${LIMITS.minutes}.`;
  if (!isWhole(pass, 0, LIMITS.pass)) return `The pass mark is a whole number of per cent, at most ${LIMITS.pass}.`;
  return { minutes: time, passMark: pass };
} // prettier-ignore

/** Reads what a seal held; a sentence when it is damaged. The sheet in it goes through its own reader. */
export function readSource(text: string): SealedSource | string {
  const damaged = 'What is in the seal of this sheet cannot be read.';
  try {
    const of = recordOf(JSON.parse(text));
    const { own, link } = recordOf(of['sheet']);
    const seen = Object.entries(recordOf(of['seen']));
    if (of['format'] !== SOURCE_FORMAT || of['version'] !== VERSION || seen.length > LIMITS.versions)
      return damaged;
    if (!seen.every(([version, code]) => /^[1-9]\d?$/.test(version) && typeof code === 'string' && CODE.test(code))) return damaged; // prettier-ignore
    const { minutes, passMark } = recordOf(of['rules']);
    if (of['rules'] !== undefined && !(isWhole(minutes, 0, LIMITS.minutes) && isWhole(passMark, 0, LIMITS.pass))) return damaged; // prettier-ignore
    const rest = {
      seen: Object.fromEntries(seen) as Readonly<Record<string, string>>,
      ...(of['rules'] === undefined ? {} : { rules: { minutes, passMark } as SealedRules }),
    };
    if (typeof own === 'string' && link === undefined) return { sheet: { own }, ...rest };
    return typeof link === 'string' && own === undefined ? { sheet: { link }, ...rest } : damaged;
  } catch {
    return damaged;
  }
}
