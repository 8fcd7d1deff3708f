// A half said behind the unit: "a tonne and a half", "an hour and a quarter".

/** What "and a half" at a place of a text adds, in the unit before it. */
export function andAHalf(text: string, at: number): { adds: number; end: number } | undefined {
  const tail = /\s+and\s+an?\s+(half|quarter)\b(?!\s+(?:million|thousand|hundred))/iy;
  tail.lastIndex = at;
  const found = tail.exec(text);
  return found
    ? { adds: found[1]!.toLowerCase() === 'half' ? 0.5 : 0.25, end: at + found[0].length }
    : undefined;
}
