// A house in an address: its text behind the #, which browsers never send to a server.
import { fromBase64url, toBase64url } from './base64url.ts';
import { SHORT, unpacked } from './unpack.ts';

export const MARK = '#house=';
export const LONGEST_LINK = 20_000; // characters of a link that is still read; the figures of a house need about 2,000 in the long form, 400 in the short

/** The part of an address that carries a house's text. */
export function linkOf(text: string): string {
  return MARK + toBase64url(new TextEncoder().encode(text.toWellFormed()));
}

/** The text in the # part of an address; undefined when it carries none, and a text that no house has when it is damaged. */
export function textOfLink(hash: string): string | undefined {
  if (!hash.startsWith(MARK)) return undefined;
  if (hash.length > LONGEST_LINK) return '';
  const carried = hash.slice(MARK.length);
  if (carried.startsWith(SHORT)) return unpacked(carried.slice(SHORT.length));
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(fromBase64url(carried));
  } catch {
    return '';
  }
}
