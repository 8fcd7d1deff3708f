// A sheet that was set, from its address: its short name, marks and the kinds that each version asks, as a class book keeps them.
import { lineReady } from '../exercises/own-line.ts';
import type { Work } from '../exercises/class/book.ts';
import { ownSheetMark } from '../exercises/own/own-text.ts';
import { readSheetLink, sheetLink } from '../exercises/sheet-link.ts';
import { askingSheet, sheetMark } from '../exercises/worksheet.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { ownLink, readOwnLink } from './own-address.ts';
import { drawnInSteps } from './use-kinds.ts';

/** The sheet of an address; a sentence when it is none. */
export async function sheetAt(address: string, list: string, day: string): Promise<Work | string> {
  const at = address.indexOf('#');
  const hash = at < 0 ? '' : address.slice(at).trim();
  const own = await readOwnLink(hash);
  if (typeof own === 'string') return own;
  if (own) {
    const { sheet } = own;
    const asked = sheet.items.map(({ kind }) => kind);
    return {
      is: 'work', kind: 'sheet', title: sheet.title || 'A sheet', day, mark: ownSheetMark(sheet),
      address: `sheet/own/${await ownLink(sheet)}`, passMark: sheet.passMark,
      marks: sheet.items.map(({ marks }) => marks),
      kinds: Array.from({ length: sheet.versions }, () => asked),
    }; // prettier-ignore
  }
  const read = readSheetLink(hash);
  if (!read) return 'This is no address of a sheet: copy it whole from where the sheet was made.';
  if ('problem' in read) return read.problem;
  const { sheet } = read;
  await lineReady(sheet.house);
  const kinds: string[][] = [];
  for (let version = 1; version <= sheet.versions; version++) {
    const asked = await drawnInSteps(askingSheet(sheet, version, kindsOf(list)), []);
    if (!asked) return 'A part of the book did not come; load the page again.';
    kinds.push(asked.map(({ question }) => question.kind));
  }
  const link = sheetLink(sheet);
  return { is: 'work', kind: 'sheet', title: sheet.seed, day, mark: sheetMark(link), address: `sheet/${link}`, passMark: 0, marks: [], kinds }; // prettier-ignore
}
