// A trainer's own sheet as the end of an address, and back.
import { packed, unpackedText } from '../house/packed.ts';
import type { OwnSheet } from '../exercises/own/own-sheet.ts';
import { ownSheetText, readOwnSheet } from '../exercises/own/own-text.ts';

const MARK = '#own=';
/** Characters of a link that are read; a longer sheet goes as a file. */
const LONGEST = 30_000;

export const ownLink = (sheet: OwnSheet): string => `${MARK}${packed(ownSheetText(sheet))}`;
export const isTooLong = (link: string): boolean => link.length > LONGEST;

/** What an address carries: a sheet, with a version where it names one; undefined when none, a sentence when it cannot be read. */
export function readOwnLink(
  hash: string,
): { readonly sheet: OwnSheet; readonly version?: number } | string | undefined {
  if (!hash.startsWith(MARK)) return undefined;
  const damaged = 'This link to a sheet is damaged; ask whoever sent it to send it once more.';
  const [signs, tail, ...rest] = hash.slice(MARK.length).split('&');
  if (isTooLong(hash) || rest.length > 0) return damaged;
  const text = unpackedText(signs!);
  const sheet = text === undefined ? damaged : readOwnSheet(text);
  if (typeof sheet === 'string') return sheet;
  if (sheet.notes === undefined) return damaged;
  if (tail === undefined) return { sheet };
  const version = /^version=([1-9]\d?)$/.exec(tail)?.[1];
  return version !== undefined && Number(version) <= sheet.versions
    ? { sheet, version: Number(version) }
    : damaged;
}
