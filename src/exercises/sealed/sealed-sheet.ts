// A sealed sheet: its questions as text and nothing that answers them; beside them a seal that the trainer's key opens, with what the questions were drawn from.
// The desk marks what the seal holds, whatever the link said. A time and a pass mark set at sealing lie in the seal, and stand only where the sheet has none.
// A field that goes out needs a row in tests/exercises/sealed.test.ts.
import type { Chart } from '../../calculators/define.ts';
import { kinds as units, type KindName } from '../../core/kinds.ts';
import { isData, jsonIn, ownValue } from '../../core/reading/data.ts';
import { also, entriesIn, recordByKind, list, number, oneOf, quietly, record, text, whole, written } from '../../core/reading/given.ts'; // prettier-ignore
import { UNSEEN } from '../../core/quoted-given.ts';
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
export const rulesOfSealed = (
  sheet: SealedRules,
  set: SealedRules = { minutes: 0, passMark: 0 },
): SealedRules => ({
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
export const textAsked = (questions: readonly SealedQuestion[]): string =>
  JSON.stringify(questions.map(({ form, prompt, ask, marks, lines, curve }) => [form, prompt, ask, marks, lines ?? [], curve?.columns.map(({ values }) => values) ?? []])); // prettier-ignore

export const sealedText = (sheet: SealedSheet): string =>
  JSON.stringify({ format: SEALED_FORMAT, version: VERSION, ...sheet });

const lines = (most: number, fewest = 0) =>
  text(most, (given) => given.length >= fewest && given.replace(UNSEEN, '') === given.replaceAll('\n', '')); // prettier-ignore
const line = lines(LIMITS.line);
const column = record(
  {
    kind: oneOf(Object.keys(units) as KindName[]),
    label: line,
    values: list(number(-Number.MAX_VALUE, Number.MAX_VALUE), LIMITS.values, 2),
  },
  { empty: whole(0, LIMITS.values) },
);
const curve = also(
  record({ caption: line, columns: list(column, 6, 2) }, { as: oneOf(['bars']), below: whole(1, 5) }),
  ({ columns, below = 1 }) =>
    below < columns.length && columns.every(({ values }) => values.length === columns[0]!.values.length),
  'its columns can be of one length.',
);
const asked = {
  prompt: lines(LIMITS.prompt, 1),
  ask: line,
  marks: number(Number.MIN_VALUE, LIMITS.marks),
};
const lettered = { ...asked, lines: list(line, LIMITS.lines, 2) };
const question = recordByKind('form', {
  number: record(asked, { curve }),
  choice: record(lettered),
  order: record(lettered),
});
const sealed = record({
  id: written(ID),
  title: lines(LIMITS.title),
  minutes: whole(0, LIMITS.minutes),
  to: written(PUBLIC_KEY),
  versions: also(
    list(
      record({ version: whole(1, LIMITS.versions), questions: list(question, LIMITS.questions, 1) }),
      LIMITS.versions,
      1,
    ),
    (versions) => new Set(versions.map(({ version }) => version)).size === versions.length,
    'each version can be there once.',
  ),
  seal: text(LIMITS.seal, (given) => SEAL.test(given)),
});

/** Reads a sealed sheet; a sentence when it is damaged. */
export function readSealed(given: string): SealedSheet | string {
  const damaged = 'This sealed sheet is damaged; ask whoever sent it to send it once more.';
  const of = jsonIn(given, LONGEST_SEALED);
  if (of === undefined) return damaged;
  if (!isData(of) || of['format'] !== SEALED_FORMAT) return 'This is no sealed sheet.';
  if (of['version'] !== VERSION) return 'This sealed sheet was made by a newer handbook. Bring this handbook up to date, and open it again.'; // prettier-ignore
  return quietly<SealedSheet>(sealed, of) ?? damaged;
}

/** One version of it alone, for a link of its own. */
export const onlyVersion = (sheet: SealedSheet, version: number): SealedSheet => ({
  ...sheet,
  versions: sheet.versions.filter((each) => each.version === version),
});

export const sourceText = (source: SealedSource): string =>
  JSON.stringify({ format: SOURCE_FORMAT, version: VERSION, ...source });

const minutes = whole(0, LIMITS.minutes);
const passMark = whole(0, LIMITS.pass);
const rules = record({ minutes, passMark });

/** Rules as a trainer typed them, an empty field for none; a sentence where one is none. */
export function rulesTyped(...typed: readonly [minutes: string, passMark: string]): SealedRules | string {
  const [time, pass] = typed.map((each) => (each.trim() === '' ? 0 : Number(each.trim())));
  if (quietly(minutes, time) === undefined) return `The time is a whole number of minutes, at most ${LIMITS.minutes}.`;
  if (quietly(passMark, pass) === undefined) return `The pass mark is a whole number of per cent, at most ${LIMITS.pass}.`;
  return { minutes: time!, passMark: pass! };
} // prettier-ignore

/** Reads what a seal held; a sentence when it is damaged. The sheet in it goes through its own reader. */
export function readSource(given: string): SealedSource | string {
  const damaged = 'What is in the seal of this sheet cannot be read.';
  const of = jsonIn(given);
  if (!isData(of) || of['format'] !== SOURCE_FORMAT || of['version'] !== VERSION) return damaged;
  const said = ownValue(of, 'sheet');
  const { own: ownSheet, link } = isData(said) ? said : {};
  const sheet =
    typeof ownSheet === 'string' && link === undefined
      ? { own: ownSheet }
      : typeof link === 'string' && ownSheet === undefined
        ? { link }
        : undefined;
  const seen = entriesIn(ownValue(of, 'seen'), /^[1-9]\d?$/, written(CODE));
  const set = of['rules'] === undefined ? undefined : quietly(rules, of['rules']);
  if (!sheet || seen.lost > 0 || seen.sound.length > LIMITS.versions || (of['rules'] !== undefined && !set))
    return damaged;
  return { sheet, seen: Object.fromEntries(seen.sound), ...(set && { rules: set }) };
}
