// A sheet's result as a short code that is copied or read out, and back; the trainer's table of them.
import { shown, UNSEEN } from '../core/shown.ts';
import { familyNames, type Family } from './families.ts';
import { pointsOf, type Mark, type Verdict } from './verdict.ts';
import { seedOf } from './seed.ts';

export interface Result {
  /** The sheet's fingerprint and the version taken. */
  readonly sheet: string;
  readonly version: number;
  readonly name: string;
  readonly marks: readonly { readonly verdict: Verdict; readonly family?: Family }[];
}

const verdicts: readonly Verdict[] = ['unanswered', 'right', 'rounded', 'unit', 'wrong', 'unreadable'];
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

/** The code of a result: sheet, version, a sign for each question, a check, the name. */
export function resultCode({ sheet, version, name, marks }: Result): string {
  const plain = plainName(name);
  const body = `${sheet}-${version}-${marks.map(sign).join('')}`;
  return `${body}-${check(`${body}-${plain}`)}-${encodeURIComponent(plain).replaceAll('_', '%5F').replaceAll('%20', '_').replaceAll('.', '%2E')}`;
}

/** What a sign stands for; undefined for one that stands for nothing. */
function markOf(each: string): Result['marks'][number] | undefined {
  const place = parseInt(each, 36);
  const family = familyNames[place - FIRST_FAMILY];
  if (family) return { verdict: 'wrong', family };
  const verdict = verdicts[place];
  return verdict && { verdict };
}

/** Reads a code; a sentence when it is damaged. */
export function readResult(code: string): Result | string {
  const damaged = `“${shown(code)}” is not a whole result code; ask for it once more.`;
  if (code.length > LONGEST) return damaged;
  const found = /^([0-9a-z]{7})-([1-9]\d?)-([0-9a-z]{1,60})-([0-9a-z]{3})-(\S*)$/.exec(code.trim());
  if (!found) return damaged;
  const [, sheet, version, signs, sum, written] = found as unknown as [
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  let name: string;
  try {
    name = decodeURIComponent(written.replaceAll('_', '%20'));
  } catch {
    return damaged;
  }
  if (plainName(name) !== name) return damaged;
  if (check(`${sheet}-${version}-${signs}-${name}`) !== sum) return damaged;
  const marks = [...signs].map(markOf);
  if (marks.includes(undefined)) return damaged;
  return { sheet, version: Number(version), name, marks: marks.filter((each) => each !== undefined) };
}

/** Points of a result. */
export const scoreOf = ({ marks }: Pick<Result, 'marks'>): number =>
  marks.reduce((sum, { verdict }) => sum + pointsOf(verdict), 0);

/** How often each family of mistake was met, the most frequent first. */
export function missesOf(marks: Result['marks']): readonly (readonly [Family, number])[] {
  const met = new Map<Family, number>();
  for (const { family } of marks) if (family) met.set(family, (met.get(family) ?? 0) + 1);
  return [...met].sort((a, b) => b[1] - a[1]);
}

type Group = readonly [Result, ...Result[]];

/** Results in groups of those that are alike in a way, in the order in which they came. */
function groups(results: readonly Result[], way: (result: Result) => unknown): readonly Group[] {
  const found = new Map<string, [Result, ...Result[]]>();
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
 * One result of each person for each version of a sheet: of several the one that was pasted last, where the first stood;
 * and what is to be said of it. Those without a name may be of different people, and all stay.
 */
export function eachOnce(results: readonly Result[]): {
  readonly results: readonly Result[];
  readonly notes: readonly string[];
} {
  const named = groups(
    results.filter(({ name }) => name !== ''),
    ({ sheet, version, name }) => [sheet, version, name.normalize()],
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
