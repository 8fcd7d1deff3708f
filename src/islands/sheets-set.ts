// The sheets that this browser's trainer handed out, by the short name that a result code carries, so that a sheet is found again from a code.
import { jsonIn } from '../core/reading/data.ts';
import { quietly, record, text, written } from '../core/reading/given.ts';
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';

const KEY = storageKey('sheets-set');
const LONGEST = 1_000_000; // characters that are kept; the oldest go first
const ADDRESS = /^(?:sheet|sheet\/own|sheet\/sealed)\/#(?:sheet|own|sealed)=[^\s"<>]{1,60000}$/;
const MARK = /^[0-9a-z]{7}$/;

export interface SheetSet {
  readonly mark: string;
  readonly title: string;
  /** From the root of the book: sheet/#sheet=… */
  readonly address: string;
  readonly day: string;
}

const sheetSet = record({
  mark: written(MARK),
  title: text(80),
  address: written(ADDRESS),
  day: written(/^\d{4}-\d{2}-\d{2}$/),
});
const isSheet = (given: unknown): given is SheetSet => quietly(sheetSet, given) !== undefined;

/** All of them, the latest first; what cannot be read is passed over, as each can be opened again from its own link. */
export function sheetsSet(): readonly SheetSet[] {
  const given = jsonIn(keptText(KEY) ?? '[]');
  return Array.isArray(given) ? given.filter(isSheet) : [];
}

/** Remembers a sheet that is handed out; false when the browser does not let it. */
export function rememberSheet(sheet: SheetSet): boolean {
  if (!isSheet(sheet)) return false;
  const all = [sheet, ...sheetsSet().filter(({ mark }) => mark !== sheet.mark)];
  while (all.length > 1 && JSON.stringify(all).length > LONGEST) all.pop();
  return keepText(KEY, JSON.stringify(all));
}
