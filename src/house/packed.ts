// A text packed for the end of an address, and back.
import { deflateSync, inflateSync } from 'fflate';
import { fromBase64url, toBase64url } from './base64url.ts';

/** A text as packed bytes. */
export const packedBytes = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(deflateSync(new TextEncoder().encode(text.toWellFormed()), { level: 9 }));

/** The text of such bytes; undefined when they are damaged. */
export function unpackedBytes(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(inflateSync(bytes));
  } catch {
    return undefined;
  }
}

/** A text in signs that an address carries. */
export const packed = (text: string): string => toBase64url(packedBytes(text));

/** The text of such signs; undefined when they are damaged. */
export function unpackedText(signs: string): string | undefined {
  const bytes = fromBase64url(signs);
  return bytes && unpackedBytes(bytes);
}
