// A sealed sheet as the end of an address, and back; and a source that is drawn from its own reader. What packs comes with the first use.
import { readSealed, sealedText, type SealedSheet } from '../exercises/sealed/sealed-sheet.ts';

const MARK = '#sealed=';
/** Characters of a link that are read; a longer sheet goes as a file. */
const LONGEST = 60_000;
/** Characters of an address that programs for messages carry as a rule; common-practice. */
export const LONG_LINK = 8000;

export async function sealedLink(sheet: SealedSheet): Promise<string> {
  const { packed } = await import('../house/packed.ts');
  return `${MARK}${packed(sealedText(sheet))}`;
}
/** Whether the end of an address is a sheet that waits to be sealed. */
export const isSheetToSeal = (hash: string): boolean => /^#(?:sheet|own)=/.test(hash);
export const isSealedLinkTooLong = (link: string): boolean => link.length > LONGEST;

/** The sealed sheet of an address; undefined where there is none, a sentence where it cannot be read. */
export async function readSealedLink(address: string): Promise<SealedSheet | string | undefined> {
  const at = address.indexOf(MARK);
  if (at < 0) return undefined;
  const hash = address.slice(at).trim();
  const damaged = 'This link to a sealed sheet is damaged; ask whoever sent it to send it once more.';
  if (isSealedLinkTooLong(hash)) return damaged;
  const { unpackedText } = await import('../house/packed.ts');
  const text = unpackedText(hash.slice(MARK.length));
  return text === undefined ? damaged : readSealed(text);
}
