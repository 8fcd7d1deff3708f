// The parts of a rambling question, and whether each asks something by itself.

const CUTS = /(?<=[.?!;:])\s+|\s+[–—-]\s+|,\s+|\b(?:because|but|and then|so)\b/i;
const ASKS = /\?|\b(?:how|what|why|where|when|which|who|is|are|can|could|do|does|did|will|would|should)\b/i;
const BEGINS = /\?|^(?:how|what|why|is|can|do|does)\b/i; // where another part has a question mark

export interface Clause {
  readonly text: string;
  readonly asks: boolean;
}

/** The parts of what was said; none where it is all one. */
export function clausesOf(question: string): readonly Clause[] {
  const parts = question
    .split(CUTS)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length < 2) return [];
  const asks = parts.some((part) => part.includes('?')) ? BEGINS : ASKS;
  return parts.map((text) => ({ text, asks: asks.test(text) }));
}
