// Numbers that stand alone: a hundred or a thousand without its “a”, a half or a third with nothing behind it.
import type { Token } from '../core/reading/tokens.ts';

export const aloneScale: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000 };

const behindHalf =
  /^\s+(?:as\s+(?:much|large|big|many)|what\b|that\b|in\s+each|to\s+each|split\b|(?:the|a)\s+(?:wash\s*back|wash|back|batch|tank|tub|fermenter|vat|year|price)\b|of\s+(?:tank|price)\b|(?:is|are)\s+(?:barrels|butts|hogsheads|sherry|bourbon))/i;
const behindThird = /^\s+(?:is|are|of|right|comes?|goes|as|we|you|part\s+of|before)\b/i;

/** “Takes half,”, “and half of the casks”, “about a third.”: a part with nothing behind it. */
export function isLonePart(text: string, tokens: readonly Token[], i: number): boolean {
  const [before, { text: word, end }] = [tokens[i - 1]?.text ?? '', tokens[i]!];
  if (word !== 'half' && !(word === 'third' && (before === 'a' || before === 'one'))) return false;
  const behind = text.slice(end, end + 24);
  if (before === '-' || before === 'past' || (before === 'and' && !/^\s+(?:of|as|in)\b/.test(behind))) return false;
  if (/^(?:\s*(?:[.,;:?!)]|—)|\s+of\s+(?:the|it|that|them|each|our|my)\b|\s+(?:each|and\s+half)\b)/.test(behind)) return true;
  return word === 'half' ? before !== 'other' && behindHalf.test(behind) : behindThird.test(behind);
} // prettier-ignore

const rest = /\bthe\s+(?:other|last|remaining|final)\s+$/i;
const parts: Readonly<Record<string, number>> = { third: 0.333, quarter: 0.25, fifth: 0.2, tenth: 0.1 };
/** “The remaining tenth”, “the other quarter”: a part of a whole, and not the third of several; nothing elsewhere. */
export function lastPart(text: string, { start, end, text: word }: Token): number | undefined {
  const part = parts[word];
  if (part === undefined || !rest.test(text.slice(Math.max(0, start - 16), start))) return undefined;
  const behind = text.slice(end, end + 16);
  const isPart = word === 'tenth' ? !/^\s+(?:year|mash|one|day)\b/.test(behind) : /^(?:['’]s\b|\s+(?:is|are|of|goes)\b)/.test(behind);
  return isPart ? part : undefined;
} // prettier-ignore
