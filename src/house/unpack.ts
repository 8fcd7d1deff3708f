// A short link's house as the text that keeps it, to be read as strictly as any other.
import { inflateSync } from 'fflate';
import { fromBase64url } from './base64url.ts';
import { FORMAT } from './codec.ts';
import { shortList } from './short-list.ts';

/** What a short link begins with: the number of its form. */
export const SHORT = '1~';

/** The house's text; empty when the link is damaged, which no house's text is. */
export function unpacked(packed: string): string {
  try {
    const bytes = inflateSync(fromBase64url(packed)!);
    const [version, name, differing, parts] = JSON.parse(
      new TextDecoder('utf-8', { fatal: true }).decode(bytes),
    );
    const figures: Record<string, unknown> = Object.fromEntries(shortList);
    for (let i = 0; i < differing.length; i += 2)
      figures[shortList[differing[i]]?.[0] ?? `figure ${differing[i]} of a newer list`] = differing[i + 1];
    return JSON.stringify({ format: FORMAT, version, name, figures, ...(parts && { parts }) });
  } catch {
    return '';
  }
}
