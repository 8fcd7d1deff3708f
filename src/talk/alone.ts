// Numbers that stand alone: a hundred or a thousand without its “a”, a half or a third with nothing behind it.
import type { Token } from '../core/reading/tokens.ts';

export const aloneScale: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000 };

/** “Takes half,”, “and half of the casks”, “about a third.”: a part with nothing behind it. */
export function isLonePart(text: string, tokens: readonly Token[], i: number): boolean {
  const [before, { text: word, end }] = [tokens[i - 1]?.text ?? '', tokens[i]!];
  if (word !== 'half' && !(word === 'third' && (before === 'a' || before === 'one'))) return false;
  const behind = text.slice(end, end + 12);
  if (before === '-' || before === 'past' || (before === 'and' && !/^\s+of\b/.test(behind))) return false;
  return /^(?:\s*[.,;:?!)]|\s+of\s+(?:the|it|that|them|each|our|my)\b|\s+(?:each|and\s+half)\b)/.test(behind);
} // prettier-ignore
