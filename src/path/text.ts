// What was read, done and signed on the path, as a text and back.
const FORMAT = 'malt-spirit-handbook/first-weeks';
const VERSION = 1;
const LONGEST = 50_000; // characters that are read
const MOST = 500; // marks that are kept

/** Each mark with its day, as 2026-05-14. */
export type Ticks = Readonly<Record<string, string>>;

export const encodeTicks = (ticks: Ticks): string =>
  JSON.stringify({ format: FORMAT, version: VERSION, ticks });

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Reads marks from their text; what cannot be read is left out. Undefined when the text is none. */
export function decodeTicks(text: string): Ticks | undefined {
  if (text.length > LONGEST) return undefined;
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isRecord(data) || data['format'] !== FORMAT || data['version'] !== VERSION || !isRecord(data['ticks']))
    return undefined;
  const entries = Object.entries(data['ticks']).filter(
    (entry): entry is [string, string] =>
      /^(read|work|task|signed|aside):[a-z0-9/#-]{1,80}$/.test(entry[0]) &&
      typeof entry[1] === 'string' &&
      /^\d{4}-\d\d-\d\d$/.test(entry[1]),
  );
  return Object.fromEntries(entries.slice(0, MOST));
}
