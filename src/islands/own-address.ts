// A trainer's own sheet as the end of an address, and back; what packs and unpacks comes with the first use.
import type { OwnSheet } from '../exercises/own/own-sheet.ts';
import { ownSheetText, readOwnSheet } from '../exercises/own/own-text.ts';

const MARK = '#own=';
/** Characters of a link that are read; a longer sheet goes as a file. */
const LONGEST = 30_000;

export async function ownLink(sheet: OwnSheet): Promise<string> {
  const { packed } = await import('../house/packed.ts');
  return `${MARK}${packed(ownSheetText(sheet))}`;
}
export const isOwnLinkTooLong = (link: string): boolean => link.length > LONGEST;

/** What an address carries: a sheet, with a version where it names one; undefined when none, a sentence when it cannot be read. */
export async function readOwnLink(
  hash: string,
): Promise<{ readonly sheet: OwnSheet; readonly version?: number } | string | undefined> {
  if (!hash.startsWith(MARK)) return undefined;
  const damaged = 'This link to a sheet is damaged; ask whoever sent it to send it once more.';
  const [signs, tail, ...rest] = hash.slice(MARK.length).split('&');
  if (isOwnLinkTooLong(hash) || rest.length > 0) return damaged;
  const unpacking = await import('../house/packed.ts').catch(() => undefined);
  if (!unpacking)
    return 'A part of the book did not come, and without it this link cannot be read; load the page again.';
  const text = unpacking.unpackedText(signs!);
  const sheet = text === undefined ? damaged : readOwnSheet(text);
  if (typeof sheet === 'string') return sheet;
  if (sheet.notes === undefined) return damaged;
  if (tail === undefined) return { sheet };
  const version = /^version=([1-9]\d?)$/.exec(tail)?.[1];
  return version !== undefined && Number(version) <= sheet.versions
    ? { sheet, version: Number(version) }
    : damaged;
}
