// A house in an address: its text behind the #, which browsers never send to a server.

const MARK = '#house=';
const LONGEST = 20_000; // characters of a link that is still read; the figures of a house need about 2,000

/** The part of an address that carries a house's text. */
export function linkOf(text: string): string {
  const bytes = new TextEncoder().encode(text.toWellFormed());
  const binary = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return MARK + btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The same, where it is not too long to be read again. */
export function linkIfItFits(text: string): string | undefined {
  const link = linkOf(text);
  return link.length <= LONGEST ? link : undefined;
}

/** The text in the # part of an address; undefined when it carries none, and a text that no house has when it is damaged. */
export function textOfLink(hash: string): string | undefined {
  if (!hash.startsWith(MARK)) return undefined;
  if (hash.length > LONGEST) return '';
  try {
    const binary = atob(hash.slice(MARK.length).replaceAll('-', '+').replaceAll('_', '/'));
    return new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(binary, (c) => c.charCodeAt(0)));
  } catch {
    return '';
  }
}
