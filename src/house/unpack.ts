// The house of a short link as the text that keeps it, to be read as strictly as any other. Imports nothing that pages have already, so that they are not split for it.
import { inflateSync } from 'fflate';
import { dictionary, shortList } from './short-list.ts';

/** The house's text, of the format that is named; empty when the link is damaged, which no house's text is. */
export function unpacked(packed: Uint8Array, format: string): string {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(inflateSync(packed, { dictionary }));
    const [version, name, differing, parts] = JSON.parse(text);
    const figures: Record<string, unknown> = Object.fromEntries(shortList);
    for (let i = 0; i < differing.length; i += 2)
      figures[shortList[differing[i]]?.[0] ?? `figure ${differing[i]} of a newer list`] = differing[i + 1];
    return JSON.stringify({ format, version, name, figures, ...(parts && { parts }) });
  } catch {
    return '';
  }
}
