// What a trainer is told of results that look alike: one version under several names, or the same answers sign for sign.
import { missedIn, NO_ANSWERS, type SheetResult } from './result.ts';

const MOST_TOLD = 10; // findings of each sort that are told one by one
const MOST_NAMED = 6; // people named in one of them

/** Names in a row: Ada, Una and Bo. */
function inRow(names: readonly string[]): string {
  const named = names.slice(0, MOST_NAMED).map((name) => name || 'someone without a name');
  const more = names.length - named.length;
  const all = more > 0 ? [...named, `${more} more`] : named;
  return all.length < 2 ? all.join('') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
}

function grouped(results: readonly SheetResult[], way: (result: SheetResult) => string): readonly (readonly SheetResult[])[] {
  const groups = new Map<string, SheetResult[]>();
  for (const result of results) {
    const key = way(result);
    const there = groups.get(key);
    if (there) there.push(result);
    else groups.set(key, [result]);
  }
  return [...groups.values()];
} // prettier-ignore

const namesOf = (group: readonly SheetResult[]) => [...new Set(group.map(({ name }) => name.normalize()))];
const bounded = (notes: readonly string[]) =>
  notes.length > MOST_TOLD ? [...notes.slice(0, MOST_TOLD), `So it is with ${notes.length - MOST_TOLD} more.`] : notes; // prettier-ignore

/** One version of one sheet, handed in under more than one name. */
function oneVersion(results: readonly SheetResult[]): readonly string[] {
  return grouped(results, ({ sheet }) => sheet).flatMap((ofSheet) => {
    const groups = grouped(ofSheet, ({ version }) => String(version));
    const isOnlyFirst = groups.length === 1 && ofSheet[0]!.version === 1;
    return groups.flatMap((group) => {
      const names = namesOf(group);
      if (names.length < 2) return [];
      const { sheet, version } = group[0]!;
      return isOnlyFirst
        ? [`All ${names.length} results of sheet ${sheet} are of version 1. If it has more versions, each should have had their own.`]
        : [`${inRow(names)} handed in version ${version} of sheet ${sheet}, which is meant for one.`];
    });
  });
} // prettier-ignore

/** The same answers under more than one name, in one version or in several. */
function sameAnswers(results: readonly SheetResult[]): readonly string[] {
  const told = results.filter(({ answers }) => answers !== undefined && answers !== NO_ANSWERS);
  return grouped(told, ({ sheet, answers }) => `${sheet} ${answers}`).flatMap((group) => {
    const names = namesOf(group);
    if (names.length < 2) return [];
    const missed = Math.max(...group.map((result) => missedIn(result).length));
    const weighs =
      missed === 0
        ? 'All of them are right, which can come of itself where both round as they are asked to.'
        : `${missed} of them ${missed === 1 ? 'was' : 'were'} not right: ask both how they came to them.`;
    return [`${inRow(names)} handed in the same answers, sign for sign, to sheet ${group[0]!.sheet}. ${weighs}`];
  });
} // prettier-ignore

/** What is to be looked at, in sentences; none when nothing is. Nothing of it proves anything. */
export const alikeNotes = (results: readonly SheetResult[]): readonly string[] => [
  ...bounded(oneVersion(results)),
  ...bounded(sameAnswers(results)),
];
