// The part “stock”: the register of casks by group, and what is known of casks and spirit that it does not list.
import { isData } from '../../core/reading/data.ts';
import { also, called, number, problemIn } from '../../core/reading/given.ts';
import { allowedInWords } from '../../core/format.ts';
import { quotedGiven, wasGiven } from '../../core/quoted-given.ts';
import type { Unlisted } from '../../core/stock/counted.ts';
import type { CaskGroup } from '../../core/stock/group.ts';
import { readGroup, type Fault } from '../../core/stock/read-group.ts';
import { fewProblems } from '../few-problems.ts';
import type { HousePart } from './part.ts';

export interface Stock extends Unlisted {
  /** The year in which the house opened: no cask was filled before it. */
  readonly opened?: number;
  readonly groups: readonly CaskGroup[];
}

export const MOST_CASK_GROUPS = 500; // of up to 700 characters each, within what a house's text may be

/** What stands beside the groups: all of it may be left out. */
export const besideGroups = {
  opened: { label: 'Year of opening', kind: 'years', range: [1600, 2200], whole: true },
  laidElsewhere: {
    label: 'Casks laid elsewhere, not in this register',
    kind: 'count',
    range: [0, 1e7],
    whole: true,
  },
  elsewhereShare: {
    label: 'Or: part of each year’s fillings laid elsewhere',
    kind: 'percent',
    range: [0, 100],
    whole: false,
  },
  soldUnfilled: {
    label: 'Spirit sold unfilled since opening',
    kind: 'alcohol',
    range: [0, 1e9],
    whole: false,
  },
  emptied: { label: 'Casks emptied since opening', kind: 'count', range: [0, 1e7], whole: true },
} as const;
export type BesideName = keyof typeof besideGroups;
const besideNames = Object.keys(besideGroups) as readonly BesideName[];

/** What is wrong with one of the figures beside the groups, or nothing. */
export function besideProblem(name: BesideName, given: unknown): string | undefined {
  const { label, kind, range, whole } = besideGroups[name];
  const can = name === 'opened' ? `it can be from ${range[0]} to ${range[1]}.` : allowedInWords(kind, range);
  const isWhole = (value: number) => !whole || Number.isInteger(value);
  return problemIn(
    called(label, also(number(range[0], range[1], can), isWhole, 'it must be a whole number.')),
    given,
  );
}

/** One sentence for a row that cannot be taken: its number, its name, its first fault, and whether there are more. */
export function rowProblem(row: number, name: unknown, faults: readonly Pick<Fault, 'says'>[]): string {
  const called = typeof name === 'string' && name !== '' ? ` (“${quotedGiven(name)}”)` : '';
  const more = faults.length > 1 ? ` It has ${faults.length - 1} more.` : '';
  return `Row ${row}${called}: ${faults[0]!.says}${more}`;
}

export const stockPart: HousePart<Stock> = {
  id: 'stock',
  title: 'Casks in store',
  empty: { groups: [] },
  read(data) {
    if (!isData(data)) return { value: stockPart.empty, problems: ['Casks in store: this is no register.'] };
    const problems: string[] = [];
    const sound = besideNames.filter((name) => {
      const problem = data[name] === undefined ? undefined : besideProblem(name, data[name]);
      if (problem !== undefined) problems.push(problem);
      return Object.hasOwn(data, name) && data[name] !== undefined && problem === undefined;
    });
    const beside = Object.fromEntries(sound.map((name) => [name, data[name]])) as Omit<Stock, 'groups'>;
    const strange = Object.keys(data).filter((key) => key !== 'groups' && !Object.hasOwn(besideGroups, key));
    problems.push(...strange.map((key) => wasGiven('Casks in store', key, 'a register has no such thing.')));
    const rows: readonly unknown[] = Array.isArray(data['groups']) ? data['groups'] : [];
    if (data['groups'] !== undefined && !Array.isArray(data['groups']))
      problems.push(wasGiven('Casks in store', data['groups'], 'the groups must be a list.'));
    if (rows.length > MOST_CASK_GROUPS)
      problems.push(`The register has ${rows.length} groups; it keeps the first ${MOST_CASK_GROUPS}.`);
    const groups = rows.slice(0, MOST_CASK_GROUPS).flatMap((row, i) => {
      const read = readGroup(isData(row) ? row : {}, beside.opened);
      if ('group' in read) return [read.group];
      problems.push(rowProblem(i + 1, isData(row) ? row['name'] : undefined, read.faults));
      return [];
    });
    return { value: { ...beside, groups }, problems: fewProblems(problems) };
  },
};
