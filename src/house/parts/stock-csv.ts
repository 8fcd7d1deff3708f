// The register as rows of a table, for a spreadsheet, and back: every row that cannot be taken is named.
import { formatNumber } from '../../core/format.ts';
import { isRefusal } from '../../core/refusal.ts';
import { readQuantity } from '../../core/reading/quantity.ts';
import { rowsOf, separatorOf, separators } from '../../core/reading/separated.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import { isDay } from '../../core/stock/days.ts';
import {
  groupFieldNames,
  groupFields,
  type CaskGroup,
  type GroupField,
  type FieldName,
} from '../../core/stock/group.ts';
import { mergeAlike } from '../../core/stock/merge.ts';
import { readGroup, type Fault, type GroupRead } from '../../core/stock/read-group.ts';
import { namedSizes } from '../../core/stock/sizes.ts';
import { MOST_CASK_GROUPS, rowProblem } from './stock.ts';

export const LONGEST_TABLE = 1_000_000; // characters or bytes of a table
const MOST_TOLD = 40; // rows that are each told in a sentence; of the others the numbers

export interface TableRead {
  readonly groups: readonly CaskGroup[];
  readonly problems: readonly string[];
  /** How the table was read: what stood between its cells, and which days were taken as day, month, year. */
  readonly how: string;
}

/** The register as rows, headings first. Days stand as 2016-03-14, choices in words, and what is not known is empty. */
export function stockTable(groups: readonly CaskGroup[]): readonly (readonly (string | number)[])[] {
  const cell = (group: CaskGroup, name: FieldName) => {
    const [field, value]: [GroupField, string | number | undefined] = [groupFields[name], group[name]];
    return value === undefined ? '' : field.is === 'choice' ? field.options[value]! : value;
  };
  return [
    groupFieldNames.map((name) => groupFields[name].label),
    ...groups.map((group) => groupFieldNames.map((name) => cell(group, name))),
  ];
}

/** Letters and figures alone: “Size, litres” and “size (L)” differ, “SIZE (l)” and “Size L” do not. */
const bare = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}%]/gu, '');
/** A heading without its unit. */
const unitless = (text: string) => bare(text.replace(/\(.*?\)|,.*$/gu, ''));

/** The field that a heading names: in full, or without its unit where only one field has that name. */
function fieldNamed(heading: string): FieldName | undefined {
  const full = groupFieldNames.find((name) => bare(groupFields[name].label) === bare(heading));
  if (full) return full;
  const same = groupFieldNames.filter((name) => unitless(groupFields[name].label) === bare(heading));
  return same.length === 1 ? same[0] : undefined;
}

/** Sizes by their names, one or many: “Hogshead”, “quarter casks”. */
const sizes: Readonly<Record<string, number>> = Object.fromEntries(
  Object.entries(namedSizes).flatMap(([name, litres]) => [
    [bare(name), litres],
    [`${bare(name)}s`, litres],
  ]),
);
/** The apostrophe that a table for spreadsheets sets before what one would take for a formula, at the start of a cell or behind a separator. */
const GUARD = /(?<=^|[,;\t\r\n])'(?=[\s"]*[=+\-@])/g;
const BRITISH = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4})$/;

/** A cell as the value of its field; what cannot be read stays as it is, for the reader of groups to refuse by name. */
function valueOf(name: FieldName, text: string): unknown {
  const field: GroupField = groupFields[name];
  if (name === 'size' && Object.hasOwn(sizes, bare(text))) return sizes[bare(text)];
  if (field.is === 'number') {
    const read = readQuantity(text, { kind: field.kind });
    return !isRefusal(read) && (read.as === 'rounded' || read.as === 'exact') ? read.value : text;
  }
  if (field.is === 'choice')
    return (
      Object.entries(field.options).find(([key, word]) => [key, word].some((each) => bare(each) === bare(text)))?.[0] ?? text
    ); // prettier-ignore
  if (field.is === 'text') return text.replace(GUARD, '');
  const [, day, month, year] = BRITISH.exec(text) ?? [];
  return year === undefined ? text : `${year}-${month!.padStart(2, '0')}-${day!.padStart(2, '0')}`;
}

/** Rows as a sentence may list them: 7, 9 to 12. */
function listed(rows: readonly number[]): string {
  const runs: number[][] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last && row === last.at(-1)! + 1) last.push(row);
    else runs.push([row]);
  }
  return runs.map((run) => (run.length === 1 ? `${run[0]}` : `${run[0]} to ${run.at(-1)}`)).join(', ');
}

/** Reads one group from texts as they stand in the fields of a form, by the same rules as the cells of a table. */
export function readGroupTexts(
  texts: Readonly<Partial<Record<FieldName, string>>>,
  opened?: number,
  today?: string,
): GroupRead {
  const told = groupFieldNames.filter((name) => (texts[name] ?? '').trim() !== '');
  const given = Object.fromEntries(told.map((name) => [name, valueOf(name, texts[name]!.trim())]));
  return readGroup(given, opened, today);
}

const unread = (problem: string): TableRead => ({ groups: [], problems: [problem], how: '' });

/**
 * Reads a table with headings in plain words, with commas, semicolons or tabs between its cells. Days are ISO 8601,
 * 2016-03-14, or day/month/year, 14/03/2016, never month first. Rows are numbered as a spreadsheet numbers them.
 */
export function readStockTable(text: string, opened?: number, today?: string): TableRead {
  if (text.length > LONGEST_TABLE)
    return unread(
      `The table is ${text.length} characters long; it can have up to ${LONGEST_TABLE}. Nothing was changed.`,
    );
  const separator = separatorOf(text);
  const [headings = [], ...rows] = rowsOf(text, separator);
  const columns = headings.map((heading) => fieldNamed(heading));
  const missing = groupFieldNames.filter((name) => groupFields[name].needed && !columns.includes(name));
  if (missing.length > 0)
    return unread(
      `The first row must name the columns; there is none for ${missing.map((name) => `“${groupFields[name].label}”`).join(', ')}.`,
    );
  const problems: string[] = [];
  columns.forEach((name, i) => {
    if (name === undefined && headings[i]!.trim() !== '')
      problems.push(
        `The column “${quotedGiven(headings[i])}” is not one of the register’s and would not be kept.`,
      );
    else if (name !== undefined && columns.indexOf(name) !== i)
      problems.push(`The column “${groupFields[name].label}” is there twice; the first is read.`);
  });
  const bad: number[] = [];
  const refuse = (row: number, name: unknown, faults: readonly Pick<Fault, 'says'>[]) => {
    if (problems.length < MOST_TOLD) problems.push(rowProblem(row, name, faults));
    else bad.push(row);
  };
  let british = 0;
  const groups: CaskGroup[] = [];
  rows.forEach((cells, i) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    const given: Partial<Record<FieldName, unknown>> = {};
    columns.forEach((name, at) => {
      const cell = cells[at]?.trim() ?? '';
      if (name === undefined || cell === '' || columns.indexOf(name) !== at) return;
      given[name] = valueOf(name, cell);
      if (groupFields[name].is === 'day' && !isDay(cell) && isDay(String(given[name]))) british++;
    });
    const read = readGroup(given, opened, today);
    const over = cells.slice(columns.length).some((cell) => cell.trim() !== '');
    if (over) refuse(i + 2, given.name, [{ says: 'it has more cells than there are headings.' }]);
    else if ('faults' in read) refuse(i + 2, given.name, read.faults);
    else groups.push(read.group);
  });
  if (bad.length > 0) problems.push(`These rows cannot be taken either: ${listed(bad)}.`);
  const kept = groups.length > MOST_CASK_GROUPS ? mergeAlike(groups) : groups;
  const together =
    kept === groups
      ? ''
      : ` ${formatNumber(groups.length, 0)} rows make ${formatNumber(kept.length, 0)} groups: casks of one size, wood, fill, store and year stand as one, with the mean of their fillings; names of single casks are not kept.`;
  if (kept.length > MOST_CASK_GROUPS)
    problems.push(
      `The register keeps ${MOST_CASK_GROUPS} groups; the table has ${kept.length}, casks that are alike put together.`,
    );
  const days = british > 0 ? 'Days such as 04/03/2016 were read as day, month, year.' : 'Days were read as year, month, day.'; // prettier-ignore
  return {
    groups: kept.slice(0, MOST_CASK_GROUPS),
    problems,
    how: `Read with ${separators[separator]} between the cells. ${days}${together}`,
  };
}
