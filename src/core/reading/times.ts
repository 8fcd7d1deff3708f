// Times as a clock shows them: 7h36, 7 h 36, 7:36 hours.

const tight = /(\d{1,3})\s?h\s?([0-5]\d)(?:\s?m(?:in(?:ute)?s?)?)?(?!\w|[.,:]\d)/iy;
const long = /(\d{1,3})\s?(?:h|hrs?|hours?)\.?\s?(?:and\s)?([0-5]?\d)\s?m(?:in(?:ute)?s?)?(?!\w)/iy;
const colon = /(\d{1,3}):([0-5]\d)(?![\d:.,])/y;
const hoursBehind = /\s?(?:h|hrs?|hours?)(?![\wà-ÿ])/iy;

export interface Time {
  /** In hours. */
  readonly hours: number;
  readonly end: number;
}

/**
 * The time that begins at a place of a text. Without `asTime` 7:36 needs the word hours behind it: it may be a time of day.
 * @example timeAt('7:36 hours', 0, false) // { hours: 7.6, end: 10 } (36 ÷ 60)
 */
export function timeAt(text: string, at: number, asTime: boolean): Time | undefined {
  for (const pattern of [tight, long, colon]) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (!found) continue;
    const end = at + found[0].length;
    hoursBehind.lastIndex = end;
    const behind = pattern === colon ? hoursBehind.exec(text) : null;
    if (pattern === colon && !asTime && !behind) return undefined;
    return { hours: Number(found[1]) + Number(found[2]) / 60, end: end + (behind?.[0].length ?? 0) };
  }
  return undefined;
}
