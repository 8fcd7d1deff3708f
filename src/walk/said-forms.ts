// Quantities that are said in a form of their own: so often a day, hours and minutes, one in so many.
import { numbersIn } from '../core/reading/numbers.ts';
import { withoutNoise } from './neat.ts';
import { numberInWords } from './spoken.ts';

const numberIn = (text: string): number | undefined => {
  if (/^an?$/i.test(text)) return 1;
  const { tokens, numbers } = numbersIn(text);
  const [first] = numbers;
  return first?.first === 0 && first.next === tokens.length ? first.value : undefined;
};
const isFigure = (text: string) => /^\d/.test(text);
const count = (n: number, inFigures: boolean) => (inFigures ? String(n) : numberInWords(n));

/** "Three times a day, six days a week", "two mashes a day, Monday to Friday". */
export interface Often {
  readonly as: 'often';
  readonly value: number;
  readonly days: number;
  readonly inFigures: boolean;
  /** What is done, as it stands behind the number: " times", " mashes", or nothing. */
  readonly what: string;
  /** What stands between the times and the days, the days as said, and what stands behind them: " a day, ", "six days", " a week". */
  readonly aDay: string;
  readonly daysSaid: string;
  readonly aWeek: string;
}
const often = { once: 1, twice: 2, thrice: 3 } as const;
const daysIn = (text: string): number | undefined => {
  if (/^(?:and\s+)?(?:every|all)\s+(?:single\s+)?day(?:\s+of\s+the\s+week)?$/i.test(text)) return 7;
  if (/^monday\s+(?:to|till|until|through)\s+(?:friday|saturday|sunday)$/i.test(text)) return /friday$/i.test(text) ? 5 : /saturday$/i.test(text) ? 6 : 7;
  return numberIn(/^(\S+)\s+days?$/i.exec(text)?.[1] ?? '');
}; // prettier-ignore
export function oftenIn(text: string): Often | undefined {
  const found = /^(once|twice|thrice|(\S+?)((?:\s+(?:times|mash(?:es)?|brews?))?))((?:,?\s+)(?:a|per|each|every|in the)\s+day,?\s*)(.+?)(\s+(?:a|per|in the|of the|every|each)\s+week)?$/i.exec(text);
  if (!found) return undefined;
  const [, said, many, what = ' times', aDay, daysSaid, aWeek = ''] = found;
  const perDay = many ? numberIn(many) : often[said!.toLowerCase() as keyof typeof often];
  const days = daysIn(daysSaid!);
  if (!perDay || !days) return undefined;
  return { as: 'often', value: perDay * days, days, inFigures: isFigure(said!), what, aDay: aDay!, daysSaid: daysSaid!, aWeek };
} // prettier-ignore

/** So often in a week as so many a day on so many days, near the days that it was; plainly where nothing fits. */
export function oftenSaid(value: number, { days, inFigures, what, aDay, daysSaid, aWeek }: Often): string {
  const week = [days, ...[5, 6, 7].sort((a, b) => Math.abs(a - days) - Math.abs(b - days))];
  const fitting = week.find((each) => value % each === 0 && value >= each);
  const things = (n: number) => count(n, inFigures) + (/mash|brew/i.test(what) ? what.replace(/e?s$/i, '') + (n === 1 ? '' : /mash/i.test(what) ? 'es' : 's') : what);
  if (fitting === undefined) return `${things(value)}${what.trim() === '' ? ' times' : ''}${aWeek || ' a week'}`;
  const perDay = value / fitting;
  const isAdverb = what === ' times' && !inFigures && perDay <= 2;
  const isSame = fitting === days;
  return `${isAdverb ? ['once', 'twice'][perDay - 1]! : things(perDay)}${aDay}${isSame ? daysSaid : `${count(fitting, inFigures)} days`}${isSame ? aWeek : aWeek || ' a week'}`;
} // prettier-ignore

/** "7h30", "5 hours 40", "seven hours and thirty-six minutes". */
export interface Clocked {
  readonly as: 'clocked';
  readonly value: number;
  readonly minutes: number;
  readonly hours: number;
  /** Whether minutes are written with two figures, and numbers in words. */
  readonly isTight: boolean;
  readonly inWords: boolean;
  /** "An hour", not "one hour". */
  readonly isArticle: boolean;
  readonly between: string;
  readonly behind: string;
}
export function clockedIn(text: string): Clocked | undefined {
  const found = /^(.+?)(\s?h\s?(?=\d)|:|(?:\s+|(?<=\d))(?:hours?|hrs?)\.?,?\s+(?:and\s+)?)([a-z\d][a-z\d -]*?)(\s*m(?:in(?:ute)?s?)?\.?|\s+hours?|\s?h)?$/i.exec(text); // prettier-ignore
  if (!found) return undefined;
  const [, first, between, second, behind = ''] = found;
  const [hours, minutes] = [numberIn(first!), numberIn(second!)];
  if (hours === undefined || minutes === undefined || minutes >= 60 || minutes % 1 !== 0) return undefined;
  if (between === ':' && !/h/i.test(behind)) return undefined; // 7:36 is a time of day
  return { as: 'clocked', value: hours + minutes / 60, hours, minutes, isTight: /^\d\d$/.test(second!) && !/o/i.test(between!), inWords: !isFigure(first!), isArticle: /^an?$/i.test(first!), between: between!, behind }; // prettier-ignore
}
export function clockedSaid(
  value: number,
  { isTight, inWords: spoken, isArticle, between, behind }: Clocked,
): string {
  const all = Math.round(value * 60);
  const [hours, minutes] = [Math.floor(all / 60), all % 60];
  const first = isArticle && hours === 1 ? 'an' : spoken ? numberInWords(hours) : String(hours);
  const middle = between.replace(/hours?/i, hours === 1 ? 'hour' : 'hours');
  if (minutes === 0 && !isTight) return first + middle.replace(/[\s,]+(?:and\s+)?$/i, '');
  const second = spoken
    ? numberInWords(minutes)
    : isTight
      ? String(minutes).padStart(2, '0')
      : String(minutes);
  return first + middle + second + behind.replace(/minutes?/i, minutes === 1 ? 'minute' : 'minutes');
}

/** "One in ten", "3 out of 10", "two thirds", "half". */
export interface Share {
  readonly as: 'share';
  /** 0 to 1. */
  readonly value: number;
  readonly inFigures: boolean;
  /** " in ", " out of ", and of how many it was; nothing for a part in words. */
  readonly of?: string;
  readonly under?: number;
}
const parts = [[1, 2, 'half'], [1, 3, 'a third'], [2, 3, 'two thirds'], [1, 4, 'a quarter'], [3, 4, 'three quarters'], [1, 5, 'a fifth'], [2, 5, 'two fifths'], [3, 5, 'three fifths'], [4, 5, 'four fifths'], [1, 6, 'a sixth'], [5, 6, 'five sixths'], [1, 8, 'an eighth'], [3, 8, 'three eighths'], [5, 8, 'five eighths'], [7, 8, 'seven eighths'], [1, 10, 'a tenth'], [3, 10, 'three tenths'], [7, 10, 'seven tenths'], [9, 10, 'nine tenths']] as const; // prettier-ignore
const plainly = (text: string) =>
  text.toLowerCase().replace(/[\s-]+/g, ' ').replace(/^(?:an?|one) /, ''); // prettier-ignore

export function shareIn(text: string): Share | undefined {
  const part = parts.find(([, , name]) => plainly(name) === plainly(text));
  if (part) return { as: 'share', value: part[0] / part[1], inFigures: false };
  const [, first, of, second] = /^(\S+)(\s+(?:casks?\s+)?(?:in|out\s+of|from)\s+(?:every\s+)?)(\S+)$/i.exec(text) ?? []; // prettier-ignore
  const [over, under] = [numberIn(first ?? ''), numberIn(second ?? '')];
  if (!over || !under || over >= under || under > 100) return undefined;
  return { as: 'share', value: over / under, inFigures: isFigure(first!), of: of!, under };
}

const oneIn = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15, 20, 25, 30, 40, 50];
const SHARE_OFF = 0.035; // part by which a share in simple parts may differ
/** A share in the simplest parts that come near it, with the value that they say. */
export function shareSaid(share: number, { inFigures, of, under: own = 0 }: Share): { words: string; value: number } {
  const near = (value: number) => Math.abs(value - share) <= SHARE_OFF * share;
  const part = of ? undefined : parts.find(([over, under]) => near(over / under));
  if (part) return { words: part[2], value: part[0] / part[1] };
  const said = (over: number, under: number) => ({ words: count(over, inFigures) + (of ?? ' in ') + count(under, inFigures), value: over / under });
  const again = Math.round(share * own);
  if (again > 0 && again < own && near(again / own)) return said(again, own);
  const simple = oneIn.find((under) => near(1 / under));
  if (simple) return said(1, simple);
  const tenths = Math.round(share * 10);
  if (of && tenths > 0 && tenths < 10 && near(tenths / 10)) return said(tenths, 10);
  const hundredths = Math.max(1, Math.round(100 * withoutNoise(share)));
  return { words: `${count(hundredths, inFigures)} ${of ? 'in a hundred' : inFigures ? '%' : 'per cent'}`, value: hundredths / 100 };
} // prettier-ignore
