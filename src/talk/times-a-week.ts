// “Three times a day, six days a week”: one quantity, eighteen in the week.
import { tidy } from '../core/reading/numbers.ts';
import type { FoundNumber } from './found.ts';
import type { SaidDimension } from './units.ts';

const often = new Set<SaidDimension>(['bare', 'times', 'mashes']);
const aDay = /^\s+(?:(?:a|per|each|every|in\s+the|in\s+a)\s+day|daily)\b[\s,;]*(?:from\s+)?/i;
const onceADay = /\b(?:once|one)\s+(?:a|per|in\s+the|in\s+a|every|each)\s+day\b[\s,]*/gi;
const day = '(mon|tues?|wed|thur?s?|fri|sat|sun)[a-z]*\\.?';
const wholeWeek =
  '(?:(?:every|all)\\s+(?:single\\s+)?day\\b(?:\\s+of\\s+the\\s+week)?|all\\s+seven(?:\\s+days)?|the\\s+whole\\s+week(?:\\s+(?:round|through))?|sundays?\\s+(?:too|included|as\\s+well|and\\s+all))';
const butOne = `(?:(?:and\\s+|but\\s+|with\\s+)?(?:not\\s+)?(?:on\\s+)?sundays?(?:\\s+(?:off|excepted|they\\s+rest|we\\s+rest|is\\s+off|closed))|every\\s+day\\s+(?:but|except|save)\\s+(?:for\\s+)?(?:the\\s+)?(?:${day}))`;
const daysInWords = new RegExp(`^(?:and\\s+)?(?:(?<six>${butOne})|(?<seven>${wholeWeek})|(?<from>${day})\\s*(?:to|till|until|through|[-–])\\s*(?<to>${day}))(?![a-z])`, 'i'); // prettier-ignore
/** Days on each of which one is made: “every day except Sunday”, “Monday to Friday”, “one every weekday”. */
const eachDay = new RegExp(`\\b(?:every\\s+day\\s+(?:but|except|save)\\s+(?:for\\s+)?(?:the\\s+)?${day}|daily,\\s+sundays?\\s+excepted|every\\s+(?:weekday|school\\s+day|working\\s+day)|(?:each\\s+day\\s+from\\s+)?monday\\s+(?:to|till|until|through)\\s+(?:thursday|friday|saturday|sunday))\\b(?:,\\s+one\\s+(?:a|for|each)\\s+day)?`, 'gi'); // prettier-ignore
const aWeek = /^\s+(?:a|per|in\s+the|of\s+the|each|every)\s+week\b/i;
const inOrder = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];
const dayOf = (name: string) => inOrder.indexOf(name.slice(0, 3).toLowerCase());
const fromTo = (from: string, to: string) => ((dayOf(to) - dayOf(from) + 7) % 7) + 1;
const daysOf = ({ groups }: RegExpExecArray): number =>
  groups!.six !== undefined ? 6 : groups!.seven !== undefined ? 7 : fromTo(groups!.from!, groups!.to!);
const daysEach = (said: string): number => {
  const [from, to] = /(\w+day)\s+(?:to|till|until|through)\s+(\w+day)/i.exec(said)?.slice(1) ?? [];
  if (from) return fromTo(from, to!);
  return /except|but|save/i.test(said) ? 6 : 5;
};

const COUNTED = 35; // letters from the days named within which they are counted too: “Monday to Friday, so five”
const openTo = /\b(?:open|shop|tours?|visit\w*|office)\b[^.]{0,40}$/i;

/** The days of the week told at a place: how many, and where they end. */
function daysAt(
  text: string,
  at: number,
  next: FoundNumber | undefined,
): { days: number; end: number } | undefined {
  if (next && next.start === at && next.unit === 'days' && next.low === undefined && next.value <= 7)
    return { days: next.value, end: next.end + (aWeek.exec(text.slice(next.end))?.[0].length ?? 0) };
  const words = daysInWords.exec(text.slice(at));
  return words ? { days: daysOf(words), end: at + words[0].length } : undefined;
}

/** What is done so often a day on so many days, as one number of the week. */
export function joinDays(text: string, found: readonly FoundNumber[]): FoundNumber[] {
  const once = [...text.matchAll(onceADay)].flatMap(({ 0: said, index }) => {
    const days = daysAt(text, index + said.length, found.find(({ start }) => start === index + said.length));
    return days ? [{ index, ...days }] : [];
  });
  for (const { 0: each, index } of text.matchAll(eachDay)) {
    const [end, days] = [index + each.length, daysEach(each)];
    const isTold = found.some((other) => (other.start < index && other.end > index) || (other.value === days && other.start < end + COUNTED && other.end > index - COUNTED));
    const isKnown = once.some((other) => other.index < end && other.end > index);
    const [before] = [text.slice(Math.max(0, index - 60), index)];
    if (!isTold && !isKnown && !openTo.test(before) && !aDay.test(before.slice(-7))) once.push({ index, days, end });
  }
  const joined: FoundNumber[] = [];
  for (let i = 0; i < found.length; i++) {
    const each = found[i]!;
    if (once.some(({ index, end }) => each.start >= index && each.start < end)) continue;
    const day = often.has(each.dimension) && each.low === undefined ? aDay.exec(text.slice(each.end)) : null;
    const at = each.end + (day?.[0].length ?? 0);
    const days = day ? daysAt(text, at, found[i + 1]) : undefined;
    if (!days) joined.push(each);
    else {
      if (found[i + 1] && found[i + 1]!.start < days.end) i++;
      const behind = once.findIndex(({ index }) => index >= each.end && index < days.end);
      if (behind >= 0) once.splice(behind, 1);
      joined.push({ ...each, end: days.end, value: tidy(each.value * days.days), dimension: 'times' });
    }
  }
  const said = { value: 1, first: 0, next: 1, scale: 1, fraction: false };
  const rest = once.map(({ index, end, days }): FoundNumber => ({ start: index, end, value: days, said, unit: '', dimension: 'times', year: false }));
  return rest.length === 0 ? joined : [...joined, ...rest].sort((a, b) => a.start - b.start);
} // prettier-ignore
