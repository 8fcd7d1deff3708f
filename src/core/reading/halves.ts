// A half said behind the unit: "a tonne and a half", "an hour and a quarter".

/**
 * What "and a half", "and half" or "and three quarters" at a place of a text adds, in the unit before it.
 * @example andAHalf('a tonne and a half', 7) // { adds: 0.5 } (a half)
 */
export function andAHalf(text: string, at: number): { adds: number; end: number } | undefined {
  const tail =
    /\s+and\s+(?:an?\s+)?(half|quarter|three[\s-]quarters?)\b(?!\s+(?:an?\b|million|thousand|hundred))/iy;
  tail.lastIndex = at;
  const found = tail.exec(text);
  if (!found) return undefined;
  const part = found[1]!.toLowerCase();
  return { adds: part === 'half' ? 0.5 : part === 'quarter' ? 0.25 : 0.75, end: at + found[0].length };
}
