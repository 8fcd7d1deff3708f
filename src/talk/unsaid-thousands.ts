// Thousands and millions that are left unsaid: “fifteen thousand in each, though they'd hold eighteen”; “nine million a year. In 2009 it was 0.8.”
import { tidy } from '../core/reading/numbers.ts';
import type { FoundNumber } from './found.ts';
import type { SaidDimension } from './units.ts';

const told = new Set<SaidDimension>(['volume', 'alcohol', 'bare']);
const others = new Set<SaidDimension>(['percent', 'strength', 'temperature', 'length', 'gravity', 'smoke']);
const FAR = 170; // letters from the number that was said in full
const holds =
  /\b(?:holds?|held|haud|carry|carries|takes?|swallows?|stop\s+at|fills?|goes|gave\s+(?:him|her|it)|would|more\s+than|could\s+be|called|call\s+it)\s+(?:the\s+|about\s+|nearly\s+|just\s+)?$/i;
const makes =
  /\b(?:was|were|do|does|did|doing|making|make|makes|ran|run|against|budget\s+of|it['’]s|plate['’]s|capacity['’]?s?|now)\s+(?:about\s+|nearly\s+|just\s+)?$|\b(?:more|less)[^.?!]{0,14}[.:]\s+$|[("“]\s*$/i;
const nothingBehind =
  /^\s*(?:[.,;!?)"”—]|$|(?:to\s+the\s+(?:brim|lid|top)|at\s+a\s+pinch|if|because|when|in\s+(?:19|20)\d\d|apiece|each|with\s+the|and\s+you['’]?d?)\b)/i;
const toStrength = /\b(?:per\s*cent|percent|strength|proof|degrees?)\b|%/i;

const isWhole = ({ dimension, low, year, said }: FoundNumber) => dimension === 'bare' && low === undefined && !year && said.scale === 1; // prettier-ignore

/** Lifts each number that stands for so many thousands or millions to what it means. */
export function sayThousands(text: string, found: readonly FoundNumber[]): void {
  found.forEach((each, i) => {
    if (!isWhole(each) || each.value <= 0 || each.value >= 1000) return;
    const before = text.slice(Math.max(0, each.start - 30), each.start);
    const behind = text.slice(each.end, each.end + 24);
    if (!nothingBehind.test(behind) || toStrength.test(behind)) return;
    for (let k = i - 1; k >= 0 && each.start - found[k]!.end < FAR; k--) {
      const { dimension, value, low } = found[k]!;
      if (others.has(dimension)) return;
      if (!told.has(dimension) || low !== undefined || value < 1000) continue;
      const scale = value >= 1e6 ? 1e6 : 1000;
      const ratio = (each.value * scale) / value;
      const isLike = scale === 1000 ? ratio > 0.4 && ratio < 2.6 && holds.test(before) : ratio > 0.08 && ratio < 6 && makes.test(before);
      if (!isLike || (dimension === 'bare' && scale === 1000 && value < 3000)) continue;
      Object.assign(each, { value: tidy(each.value * scale), unit: found[k]!.unit, dimension, said: { ...each.said, scale } });
      return;
    }
  });
} // prettier-ignore
