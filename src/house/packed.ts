// A text packed for the end of an address, and back.
import { deflateSync, inflateSync } from 'fflate';
import { fromBase64url, toBase64url } from './base64url.ts';

/** A text in signs that an address carries. */
export const packed = (text: string): string =>
  toBase64url(deflateSync(new TextEncoder().encode(text.toWellFormed()), { level: 9 }));

/** The text of such signs; undefined when they are damaged. */
export function unpackedText(signs: string): string | undefined {
  try {
    const bytes = fromBase64url(signs);
    return bytes && new TextDecoder('utf-8', { fatal: true }).decode(inflateSync(bytes));
  } catch {
    return undefined;
  }
}
