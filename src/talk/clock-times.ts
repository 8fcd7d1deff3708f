// Times of day, so that none of them is taken for an amount: 10.15, half five, eleven at night, “the bus leaves at four thirty”.
import { tidy } from '../core/reading/numbers.ts';
import type { Token } from '../core/reading/tokens.ts';

export interface ClockTime {
  /** Hours from midnight, or from noon where the half of the day is not said. */
  readonly hours: number;
  readonly end: number;
}

const written = /([01]?\d|2[0-3])([.:])([0-5]\d)(?:\s*(?:[ap]\.?m\b\.?|h(?:rs?|ours)?\b|sharp\b))?(?![\d:a-z]|,\d|\.\d|\s*[–—-]\s*\d{1,2}(?![.:\d])|\s*(?:%|°|\/|x\b|per\b|litres?\b|kilos?\b|tonnes?\b|t\b|l\b|kg\b|hl\b|degrees?\b|abv\b|to\s+(?:one|1)\b))/iy; // prettier-ignore
/** What speaks of the hour in the same breath. */
const ofTheHour =
  /\b(?:bus|coach|train|boat|ferry|shop|bar|tent|doors?|gates?|ramp|tours?|visitors|opens?|clos\w+|shuts?|starts?|begins?|leaves?|alarm|checked|lorry|tanker|lunch|dinner|buffet|dram|come|mon|tue|wed|thu|fri|sat|sun|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|till|until|before|now|went\s+in)\b/i;
const hourWords = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const half = new RegExp(`half\\s+(past\\s+)?(${hourWords.join('|')})\\b(?=\\s*(?:[?.,!;)]|$)|\\s+(?:in\\s+the|at\\s+night))`, 'iy'); // prettier-ignore
const partOfDay =
  /^\s+(?:(?:in|of)\s+the\s+(?:early\s+)?(?:morning|afternoon|evening|night)|at\s+night|last\s+night|this\s+morning|sharp)\b/i;
const meeting =
  /\b(?:shuts?|clos(?:es?|ed)|opens?|leaves?|bus|coach|ferry|boat|lunch|dinner|bar|shop|tent|bridge|van|buffet|another)\b[^.?!\n\d]{0,34}\b(?:at|by|till|until)\s+$/i;
const atTheEnd = /^\s*(?:[.,;!?)"”]|$|sharp\b)/;

const namedHours: Readonly<Record<string, number>> = { noon: 12, midday: 12, midnight: 0 };

/** The time that is written in figures at a place, or said as half past an hour. */
export function clockAt(text: string, { start, end, text: word }: Token): ClockTime | undefined {
  const named = namedHours[word];
  if (named !== undefined) return { hours: named, end };
  if (word === 'half') {
    half.lastIndex = start;
    const said = half.exec(text);
    const isTold = said && (said[1] !== undefined || !/\b(?:and|or)\s+(?:an?\s+)?$/i.test(text.slice(Math.max(0, start - 8), start)));
    return isTold ? { hours: hourWords.indexOf(said[2]!.toLowerCase()) + 1.5, end: start + said[0].length } : undefined;
  }
  written.lastIndex = start;
  const found = /^\d/.test(word) ? written.exec(text) : null;
  if (!found) return undefined;
  const before = text.slice(Math.max(0, start - 40), start);
  const isLineHead = /(?:^|\n)\s*[[(]?$/.test(before); // 12:34 beside the text
  const behind = text.slice(start + found[0].length, start + found[0].length + 24);
  const isTime = found[2] === ':' ? !isLineHead && !/[\d:.,]$/.test(before) : ofTheHour.test(before.slice(before.lastIndexOf('\n') + 1)) && (/\b(?:at|by|to|till|until|from|before|now|after|closes:|start|on|mon|tue|wed|thu|fri|sat|sun)\s+$/i.test(before) || /^\s+(?:bus|coach|train|ferry)\b/i.test(behind)); // prettier-ignore
  const noon = Number(found[1]) < 12 && /p\.?m/i.test(found[0]) ? 12 : 0;
  return isTime ? { hours: tidy(noon + Number(found[1]) + Number(found[3]) / 60), end: start + found[0].length } : undefined;
} // prettier-ignore

/** A number that is an hour by what stands about it: “eleven at night”, “the bar shuts at ten”, “leaves at four thirty”. */
export function hourIn(text: string, start: number, end: number, value: number): ClockTime | undefined {
  const after = text.slice(end, end + 26);
  const part = partOfDay.exec(after);
  const before = text.slice(Math.max(0, start - 60), start);
  const hours = value >= 100 ? Math.floor(value / 100) + (value % 100) / 60 : value;
  if (!Number.isInteger(value) || hours < 1 || hours >= 13 || value % 100 >= 60) return undefined;
  if (part) return { hours: tidy(hours), end: end + part[0].length };
  return meeting.test(before) && atTheEnd.test(after) ? { hours: tidy(hours), end } : undefined;
}
