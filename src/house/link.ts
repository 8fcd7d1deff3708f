// A house in an address: its text behind the #, which browsers never send to a server.
import { fromBase64url, toBase64url } from './base64url.ts';
import { HOUSE_FORMAT } from './codec.ts';

export const HOUSE_LINK_MARK = '#house=';
/** What a short link begins with: the number of its form. No long one does. */
export const SHORT_LINK_MARK = `${HOUSE_LINK_MARK}1~`;
export const LONGEST_HOUSE_LINK = 20_000; // characters of a link that is still read; the figures of a house need about 2,000 in the long form, 400 in the short

/** The part of an address that carries a house's text. */
export function linkOf(text: string): string {
  return HOUSE_LINK_MARK + toBase64url(new TextEncoder().encode(text.toWellFormed()));
}

/** The text in the # part of an address with a long link; undefined when it carries none, and a text that no house has when it is damaged. */
export function textOfLink(hash: string): string | undefined {
  if (!hash.startsWith(HOUSE_LINK_MARK)) return undefined;
  if (hash.length > LONGEST_HOUSE_LINK) return '';
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(
      fromBase64url(hash.slice(HOUSE_LINK_MARK.length)),
    );
  } catch {
    return '';
  }
}

/** True when an address carries a house in the short form. */
export const isShort = (hash: string): boolean => hash.startsWith(SHORT_LINK_MARK);

/** The text in the # part of an address with a short link, like that of a long one. What unpacks it is fetched only here. */
export async function textOfShortLink(hash: string): Promise<string> {
  const packed =
    hash.length > LONGEST_HOUSE_LINK ? undefined : fromBase64url(hash.slice(SHORT_LINK_MARK.length));
  const { unpacked } = await import('./unpack.ts');
  return packed ? unpacked(packed, HOUSE_FORMAT) : '';
}
