// Things that are counted only to liken something to them: “1,100 casks' worth of angels' share”, “the equivalent of 300 casks”.
import type { SaidDimension } from './units.ts';

const things = new Set<SaidDimension>(['casks', 'bottles', 'mashes', 'washbacks', 'stills']);
const behind = /^\s*['’]?\s*worth\b/i;
const before =
  /\b(?:equivalent\s+(?:of|to)|equal\s+to|enough\s+(?:[a-z]+\s+){0,3}for|(?:angels|evaporat\w*|los(?:e|es|t|ing))\b(?:(?!\b(?:of|from|in|on|through|and|but|while|we|fill\w*)\b)[^\d.;:,!?%])*)\s+(?:(?:about|around|some|nearly|roughly|almost|over|under|just|another|a|the|say|perhaps|maybe)\s+)*$/i;
const REACH = 90; // characters before a quantity in which it is likened

/** True where a quantity is likened to, or lost, and so is not what a house fills, holds or has of those things. */
export function isLikened(text: string, start: number, end: number, dimension: SaidDimension): boolean {
  if (!things.has(dimension)) return false;
  return behind.test(text.slice(end, end + 12)) || before.test(text.slice(Math.max(0, start - REACH), start));
}
