// Numbers that lie below nought, of cold and of gravity: nineteen below, three degrees below water, two under.
import type { FoundNumber } from './found.ts';

/** “Nineteen below”, “three degrees below water”, “down to two under”: where it ends. */
export function belowZero(text: string, { start, end, value, unit }: FoundNumber): number | undefined {
  const [, water, cold, under] = /^(\s+below\s+(?:water|zero|nought))|^(\s+below)(?=\s*(?:out\b|in\s+the\s+yard|[.,;!?]|$))|^(\s+(?:under|below))(?=\s*(?:[.,;]|after\b))/i.exec(text.slice(end, end + 30)) ?? [];
  if (water) return end + water.length;
  if (unit === '°' || !Number.isInteger(value)) return undefined;
  if (cold && value <= 60) return end + cold.length;
  return under && value <= 6 && /\b(?:to|at|on,)\s+$/i.test(text.slice(Math.max(0, start - 6), start)) ? end + under.length : undefined;
} // prettier-ignore
