// The part “dates”: the house as it was on earlier days, each version with its day, a name, its figures and what was known of them.
import { isData } from '../../core/reading/data.ts';
import { called, problemIn, text } from '../../core/reading/given.ts';
import type { House } from '../../core/line/house.ts';
import { UNSEEN, quotedGiven } from '../../core/quoted-given.ts';
import { problemOf } from '../problem-of.ts';
import { fewProblems } from '../few-problems.ts';
import { builtInHouse, figureNames } from '../figures.ts';
import { knownPart, type Known } from './known.ts';
import type { HousePart } from './part.ts';

/** The house as it was put down on a day. */
export interface HouseVersion {
  /** As 2026-05-14. */
  readonly day: string;
  readonly name: string;
  readonly figures: House;
  readonly known: Known;
}

export const MOST_HOUSE_VERSIONS = 24; // of up to 4,000 characters each, within what a house's text may be
export const LONGEST_VERSION_NAME = 40; // characters
const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;
const SEEN = /[\p{L}\p{N}\p{P}\p{S}]/u;
const HEAPED = /\p{M}{4}/u; // more marks on one letter would be drawn over the lines around it

/** Days of a month, in the calendar of every year since 1582. */
const daysOf = (year: number, month: number): number =>
  month === 2 ? (year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31; // prettier-ignore

/** True of a day of the calendar, from 1600 on. */
function isInCalendar(day: string): boolean {
  const [, year, month, date] = (DAY.exec(day) ?? []).map(Number);
  return year! >= 1600 && month! >= 1 && month! <= 12 && date! >= 1 && date! <= daysOf(year!, month!);
}
const dayOfVersion = called('The day', text(Infinity, isInCalendar, 'it can be a day such as 2026-05-14, from 1600 on.')); // prettier-ignore
const nameOfVersion = called(
  'What you call it',
  text(
    LONGEST_VERSION_NAME,
    (name) => name === name.trim() && SEEN.test(name) && !HEAPED.test(name) && name.search(UNSEEN) < 0,
    `it can have up to ${LONGEST_VERSION_NAME} characters on one line, none that cannot be seen.`,
  ),
);

/** What is wrong with the day of a version, or nothing. */
export const dayProblem = (day: unknown): string | undefined => problemIn(dayOfVersion, day);

/** What is wrong with the name of a version, or nothing. */
export const versionNameProblem = (name: unknown): string | undefined => problemIn(nameOfVersion, name);

const keys = ['day', 'name', 'figures', 'known'];

/**
 * Reads one version. One without a day, a name or figures cannot be used. A figure that is missing takes the built-in
 * value, as in a house's text, and one that cannot be is told of.
 */
function readVersion(data: unknown, where: string, tell: (problem: string) => void): HouseVersion | undefined {
  if (!isData(data)) return void tell(`${where}: this is no version of a house.`);
  const { day, name, figures, known } = data;
  const wrong = dayProblem(day) ?? versionNameProblem(name) ?? (isData(figures) ? undefined : 'it has no figures.'); // prettier-ignore
  if (wrong !== undefined) return void tell(`${where}: ${wrong}`);
  const given = figures as Readonly<Record<string, unknown>>;
  const sound = figureNames.filter((figure) => {
    const problem = Object.hasOwn(given, figure) ? problemOf(figure, given[figure]) : undefined;
    if (problem !== undefined) tell(`${where}: ${problem}`);
    return Object.hasOwn(given, figure) && problem === undefined;
  });
  for (const key of Object.keys(data).filter((each) => !keys.includes(each)))
    tell(`${where}: “${quotedGiven(key)}” is nothing that a version holds.`);
  for (const key of Object.keys(given).filter((each) => !(figureNames as readonly string[]).includes(each)))
    tell(`${where}: “${quotedGiven(key)}” is not a figure of this handbook.`);
  const ofKnown = known === undefined ? { value: knownPart.empty, problems: [] } : knownPart.read(known);
  ofKnown.problems.forEach((problem) => tell(`${where}: ${problem}`));
  const own = Object.fromEntries(sound.map((figure) => [figure, given[figure]]));
  return { day: day as string, name: name as string, figures: { ...builtInHouse, ...own }, known: ofKnown.value };
} // prettier-ignore

export const datesPart: HousePart<readonly HouseVersion[]> = {
  id: 'dates',
  title: 'Earlier versions',
  empty: [],
  read(data) {
    if (!Array.isArray(data)) return { value: [], problems: ['Earlier versions: this is no list.'] };
    const problems: string[] = [];
    const tell = (problem: string) => void problems.push(problem);
    if (data.length > MOST_HOUSE_VERSIONS)
      tell(`There are ${data.length} earlier versions; the first ${MOST_HOUSE_VERSIONS} are kept.`);
    const value = data
      .slice(0, MOST_HOUSE_VERSIONS)
      .map((each, i) => readVersion(each, `Version ${i + 1}`, tell))
      .filter((each) => each !== undefined);
    return { value, problems: fewProblems(problems) };
  },
};

/** The versions with one more, the latest day first; the same day and name takes the place of the one before. */
export function withVersion(versions: readonly HouseVersion[], next: HouseVersion): readonly HouseVersion[] {
  const others = versions.filter(({ day, name }) => day !== next.day || name !== next.name);
  return [next, ...others].sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0));
}
