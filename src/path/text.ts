// What was read, done and signed on the path, as a text and back.
import { isData, jsonIn } from '../core/reading/data.ts';
import { entriesIn, written } from '../core/reading/given.ts';
const FORMAT = 'malt-spirit-handbook/first-weeks';
const VERSION = 1;
const LONGEST = 50_000; // characters that are read
const MOST = 500; // marks that are kept
const MARK = /^(read|work|task|signed|aside):[a-z0-9/#-]{1,80}$/;

/** Each mark with its day, as 2026-05-14. */
export type Ticks = Readonly<Record<string, string>>;

export const encodeTicks = (ticks: Ticks): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, ticks });

/** Reads marks from their text; what cannot be read is left out. Undefined when the text is none. */
export function decodeTicks(text: string): Ticks | undefined {
  const data = jsonIn(text, LONGEST);
  if (!isData(data) || data['format'] !== FORMAT || data['version'] !== VERSION || !isData(data['ticks']))
    return undefined;
  const { sound } = entriesIn(data['ticks'], MARK, written(/^\d{4}-\d\d-\d\d$/));
  return Object.fromEntries(sound.slice(0, MOST));
}
