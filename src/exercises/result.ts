// A sheet's result as a short code that is copied or read out, and back; the trainer's table of them.
import { quotedGiven, UNSEEN } from '../core/quoted-given.ts';
import { familyNames, type Family } from './families.ts';
import { pointsOf, type Mark, type MarkVerdict } from './verdict.ts';
import { seedOf } from './seed.ts';

export interface SheetResult {
  /** The sheet's fingerprint and the version taken. */
  readonly sheet: string;
  readonly version: number;
  readonly name: string;
  readonly marks: readonly { readonly verdict: MarkVerdict; readonly family?: Family }[];
  /** The day it was handed in, as the trainee's machine had it: 2026-05-14. A code of the first form has none, and none of what follows. */
  readonly day?: string;
  /** 1 for the first time this sheet was handed in on that machine, 2 for the second. */
  readonly attempt?: number;
  /** A short code of the answers as they were written, by which two that are alike are noticed. */
  readonly answers?: string;
}

const verdicts: readonly MarkVerdict[] = ['unanswered', 'right', 'rounded', 'unit', 'wrong', 'unreadable'];
const FIRST_FAMILY = 10; // a letter stands for a wrong answer of a known family
const LONGEST_NAME = 60;
const LONGEST = 1000; // characters of a code that are read
const MOST_TOLD = 10; // people of whom it is said that a result came more than once

const sign = ({ verdict, family }: Pick<Mark, 'verdict' | 'family'>) =>
  (family === undefined ? verdicts.indexOf(verdict) : FIRST_FAMILY + familyNames.indexOf(family)).toString(
    36,
  );
const check = (text: string) => (seedOf(text) % 36 ** 3).toString(36).padStart(3, '0');

/** A name on one line, of whole characters that can be seen. */
const plainName = (name: string) =>
  name.slice(0, LONGEST_NAME).replace(/\s+/g, ' ').replace(UNSEEN, '').replace(/ +/g, ' ').trim();

const SECOND = 'r2'; // what a code of the second form begins with
export const MOST_ATTEMPTS = 35;
const FIRST_DAY = Date.UTC(2020, 0, 1); // of days as codes count them; three signs reach to the year 2147
const DAY_LENGTH = 86_400_000; // ms
const ANSWER_SIGNS = 4; // of the code of the answers: one pair in 1.7 million is alike by chance
export const NO_ANSWERS = '0'.repeat(ANSWER_SIGNS);

/** A day in three signs; undefined for what is no day, or none that a code can carry. */
function daySigns(day: string): string | undefined {
  const at = Date.parse(`${day}T00:00:00Z`);
  const count = (at - FIRST_DAY) / DAY_LENGTH;
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(day) && count >= 0 && count < 36 ** 3 && dayOf(count) === day;
  return isDay ? count.toString(36).padStart(3, '0') : undefined;
}
const dayOf = (count: number) => new Date(FIRST_DAY + count * DAY_LENGTH).toISOString().slice(0, 10);

/** A code of the answers as they were written, whatever their spaces and capitals; that of no answers is all noughts. */
export function answersCode(answers: readonly string[]): string {
  const plain = answers.map((answer) => answer.toLowerCase().replace(/\s+/g, ''));
  if (plain.every((answer) => answer === '')) return NO_ANSWERS;
  const most = 36 ** ANSWER_SIGNS - 1;
  return ((seedOf(plain.join('\n')) % most) + 1).toString(36).padStart(ANSWER_SIGNS, '0');
}

/**
 * The code of a result. The second form: what it begins with, sheet, version, a sign for each question, day, attempt, code of
 * the answers, a check, the name. Without a day that a code can carry, the first form: sheet, version, signs, check, name.
 */
export function resultCode({ sheet, version, name, marks, day, attempt = 1, answers = NO_ANSWERS }: SheetResult): string {
  const plain = plainName(name);
  const signs = `${sheet}-${version}-${signsOfMarks(marks)}`;
  const on = day === undefined ? undefined : daySigns(day);
  const time = Math.min(Math.max(1, attempt), MOST_ATTEMPTS).toString(36);
  const body = on === undefined ? signs : `${SECOND}-${signs}-${on}${time}-${answers}`;
  return `${body}-${check(`${body}-${plain}`)}-${encodeURIComponent(plain).replaceAll('_', '%5F').replaceAll('%20', '_').replaceAll('.', '%2E')}`;
} // prettier-ignore

/** What a sign stands for; undefined for one that stands for nothing. */
function markOf(each: string): SheetResult['marks'][number] | undefined {
  const place = parseInt(each, 36);
  const family = familyNames[place - FIRST_FAMILY];
  if (family) return { verdict: 'wrong', family };
  const verdict = verdicts[place];
  return verdict && { verdict };
}

const FORMS =
  /^(?<body>(?:(?<second>r2)-)?(?<sheet>[0-9a-z]{7})-(?<version>[1-9]\d?)-(?<signs>[0-9a-z]{1,60})(?:-(?<on>[0-9a-z]{3})(?<time>[1-9a-z])-(?<answers>[0-9a-z]{4}))?)-(?<sum>[0-9a-z]{3})-(?<written>\S*)$/;

/** The signs of marks, one for each question, as a code and a class book carry them. */
export const signsOfMarks = (marks: SheetResult['marks']): string => marks.map(sign).join('');
/** The marks of such signs; undefined when one stands for nothing. */
export function marksOfSigns(signs: string): SheetResult['marks'] | undefined {
  const marks = [...signs].map(markOf);
  return marks.includes(undefined) ? undefined : marks.filter((each) => each !== undefined);
}

/** Reads a code of either form; a sentence when it is damaged. */
export function readResult(code: string): SheetResult | string {
  const damaged = `“${quotedGiven(code)}” is not a whole result code; ask for it once more.`;
  if (code.length > LONGEST) return damaged;
  const found = FORMS.exec(code.trim())?.groups as Partial<Record<string, string>> | undefined;
  if (!found || (found['second'] === undefined) !== (found['on'] === undefined)) return damaged;
  const { body, sheet, version, signs, on, time, answers, sum, written } = found;
  let name: string;
  try {
    name = decodeURIComponent(written!.replaceAll('_', '%20'));
  } catch {
    return damaged;
  }
  if (plainName(name) !== name) return damaged;
  if (check(`${body}-${name}`) !== sum) return damaged;
  const marks = marksOfSigns(signs!);
  if (!marks) return damaged;
  return {
    sheet: sheet!,
    version: Number(version),
    name,
    marks,
    ...(on === undefined ? {} : { day: dayOf(parseInt(on, 36)), attempt: parseInt(time!, 36), answers: answers! }),
  };
} // prettier-ignore

/** The questions that were missed, wholly or in part, by their numbers on the sheet from 1. */
export const missedIn = ({ marks }: Pick<SheetResult, 'marks'>): readonly number[] =>
  marks.flatMap(({ verdict }, i) => (verdict === 'right' ? [] : [i + 1]));

/** Points of a result. */
export const scoreOfMarks = ({ marks }: Pick<SheetResult, 'marks'>): number =>
  marks.reduce((sum, { verdict }) => sum + pointsOf(verdict), 0);

/** How often each family of mistake was met, the most frequent first. */
export function missesOf(marks: SheetResult['marks']): readonly (readonly [Family, number])[] {
  const met = new Map<Family, number>();
  for (const { family } of marks) if (family) met.set(family, (met.get(family) ?? 0) + 1);
  return [...met].sort((a, b) => b[1] - a[1]);
}

type Group = readonly [SheetResult, ...SheetResult[]];

/** Results in groups of those that are alike in a way, in the order in which they came. */
function groups(results: readonly SheetResult[], way: (result: SheetResult) => unknown): readonly Group[] {
  const found = new Map<string, [SheetResult, ...SheetResult[]]>();
  for (const result of results) {
    const key = JSON.stringify(way(result));
    const there = found.get(key);
    if (there) there.push(result);
    else found.set(key, [result]);
  }
  return [...found.values()];
}

const inRow = (sentences: readonly string[]) => sentences.join(sentences.length > 2 ? ', ' : ' and ');

/**
 * One result of each person for each version and attempt of a sheet: of several the one that was pasted last, where the first stood;
 * and what is to be said of it. Those without a name may be of different people, and all stay.
 */
export function resultsOnce(results: readonly SheetResult[]): {
  readonly results: readonly SheetResult[];
  readonly notes: readonly string[];
} {
  const named = groups(
    results.filter(({ name }) => name !== ''),
    ({ sheet, version, name, attempt = 1 }) => [sheet, version, name.normalize(), attempt],
  );
  const lastOf = new Map(named.map((group) => [group[0], group.at(-1)!]));
  const once = results.flatMap((result) => (result.name === '' ? [result] : (lastOf.get(result) ?? [])));
  const isAlike = (group: Group) => groups(group, ({ marks }) => marks).length === 1;
  const repeated = named.filter(({ length }) => length > 1);
  const [alike, differing] = [repeated.filter(isAlike), repeated.filter((group) => !isAlike(group))];
  const nameless = groups(
    results.filter(({ name }) => name === ''),
    ({ sheet, version, marks }) => [sheet, version, marks],
  ).filter(({ length }) => length > 1);
  const times = alike
    .slice(0, MOST_TOLD)
    .map(
      ([{ name }, ...rest], i) =>
        `${i === 0 ? `The result of ${name} was pasted` : `that of ${name}`} ${rest.length + 1} times`,
    );
  return {
    results: once,
    notes: [
      ...(times.length > 0
        ? [
            `${inRow(times)}${alike.length > MOST_TOLD ? `, and those of ${alike.length - MOST_TOLD} more` : ''}; each is listed once.`,
          ]
        : []),
      ...nameless.map(
        ({ length }) =>
          `${length} results without a name are alike; all are listed, as they may be of different people.`,
      ),
      ...differing
        .slice(0, MOST_TOLD)
        .map(
          ([{ name, version }, ...rest]) =>
            `${name} handed in version ${version} of one sheet ${rest.length + 1} times, with answers that differ; the one pasted last counts. If they are two people, have one write a fuller name.`,
        ),
      ...(differing.length > MOST_TOLD
        ? [`So did ${differing.length - MOST_TOLD} more; of each the one pasted last counts.`]
        : []),
    ],
  };
}
