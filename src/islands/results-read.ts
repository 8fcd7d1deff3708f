// What the codes of a trainer's table say: results, notes on them, and what is damaged.
import { csvOf } from '../exercises/csv.ts';
import { resultsJson } from '../exercises/exchange/results-json.ts';
import { families } from '../exercises/families.ts';
import {
  resultsOnce,
  missedIn,
  missesOf,
  readResult,
  scoreOfMarks,
  type SheetResult,
} from '../exercises/result.ts';
import { alikeNotes } from '../exercises/results-alike.ts';
import { saveFile } from './save-file.ts';

const LONGEST = 200_000; // characters of codes that are read: some thousand
const MOST_TOLD = 10; // codes that are named as damaged one by one

export interface ResultsRead {
  readonly results: readonly SheetResult[];
  readonly notes: readonly string[];
  readonly problems: readonly string[];
}

/** Reads codes that stand apart by white space. */
export function resultsIn(text: string): ResultsRead {
  const readings = text
    .slice(0, LONGEST)
    .split(/\s+/)
    .filter((line) => line !== '')
    .map(readResult);
  const { results, notes } = resultsOnce(readings.filter((each) => typeof each !== 'string'));
  const damaged = readings.filter((each) => typeof each === 'string');
  return {
    results,
    notes: [...notes, ...alikeNotes(results)],
    problems: [
      ...(text.length > LONGEST
        ? [
            `The codes have ${text.length} characters; the first ${LONGEST} are read. Make a second table of the rest.`,
          ]
        : []),
      ...damaged.slice(0, MOST_TOLD),
      ...(damaged.length > MOST_TOLD
        ? [`${damaged.length - MOST_TOLD} more texts are not whole result codes either.`]
        : []),
    ],
  };
}

export const missesInWords = (result: SheetResult): string =>
  missesOf(result.marks)
    .map(([family, times]) => `${families[family]}${times > 1 ? ` (${times})` : ''}`)
    .join('; ');

export const blanksOf = ({ marks }: SheetResult): number =>
  marks.filter(({ verdict }) => verdict === 'unanswered' || verdict === 'unreadable').length;

export const saveAsCsv = (results: readonly SheetResult[]): void =>
  saveFile(
    'results.csv',
    csvOf([
      ['Name', 'Sheet', 'Version', 'Day', 'Attempt', 'Points', 'Questions', 'Not answered', 'Questions missed', 'Misses'], // prettier-ignore
      ...results.map((result) => [
        result.name,
        result.sheet,
        result.version,
        result.day ?? '',
        result.attempt ?? '',
        scoreOfMarks(result),
        result.marks.length,
        blanksOf(result),
        missedIn(result).join(' '),
        missesInWords(result),
      ]),
    ]),
    'text/csv;charset=utf-8',
  );

export const saveAsJson = (results: readonly SheetResult[]): void =>
  saveFile('results.json', resultsJson(results), 'application/json');
