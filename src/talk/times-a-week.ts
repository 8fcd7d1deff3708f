// “Three times a day, six days a week”: one quantity, eighteen in the week.
import { tidy } from '../core/reading/numbers.ts';
import type { Found } from './found.ts';
import type { Dimension } from './units.ts';

const often = new Set<Dimension>(['bare', 'times', 'mashes']);
const aDay = /^\s+(?:a|per|each|every|in\s+the|in\s+a)\s+day\b[\s,]*/i;
const onceADay = /\b(?:once|one)\s+(?:a|per|in\s+the)\s+day\b[\s,]*/gi;
const daysInWords =
  /^(?:and\s+)?(?:(?:every|all)\s+(?:single\s+)?day\b(?:\s+of\s+the\s+week)?|monday\s+(?:to|till|until|through)\s+(friday|saturday|sunday))/i;
const aWeek = /^\s+(?:a|per|in\s+the|of\s+the|each|every)\s+week\b/i;
const lastDay: Readonly<Record<string, number>> = { friday: 5, saturday: 6, sunday: 7 };

/** The days of the week told at a place: how many, and where they end. */
function daysAt(
  text: string,
  at: number,
  next: Found | undefined,
): { days: number; end: number } | undefined {
  if (next && next.start === at && next.unit === 'days' && next.low === undefined && next.value <= 7)
    return { days: next.value, end: next.end + (aWeek.exec(text.slice(next.end))?.[0].length ?? 0) };
  const words = daysInWords.exec(text.slice(at));
  return words ? { days: lastDay[words[1]?.toLowerCase() ?? ''] ?? 7, end: at + words[0].length } : undefined;
}

/** What is done so often a day on so many days, as one number of the week. */
export function joinDays(text: string, found: readonly Found[]): Found[] {
  const once = [...text.matchAll(onceADay)].flatMap(({ 0: said, index }) => {
    const days = daysAt(text, index + said.length, found.find(({ start }) => start === index + said.length));
    return days ? [{ index, ...days }] : [];
  });
  const joined: Found[] = [];
  for (let i = 0; i < found.length; i++) {
    const each = found[i]!;
    if (once.some(({ index, end }) => each.start >= index && each.start < end)) continue;
    const day = often.has(each.dimension) && each.low === undefined ? aDay.exec(text.slice(each.end)) : null;
    const at = each.end + (day?.[0].length ?? 0);
    const days = day ? daysAt(text, at, found[i + 1]) : undefined;
    if (!days) joined.push(each);
    else {
      if (found[i + 1] && found[i + 1]!.start < days.end) i++;
      joined.push({ ...each, end: days.end, value: tidy(each.value * days.days), dimension: 'times' });
    }
  }
  const said = { value: 1, first: 0, next: 1, scale: 1, fraction: false };
  const rest = once.map(({ index, end, days }): Found => ({ start: index, end, value: days, said, unit: '', dimension: 'times', year: false }));
  return rest.length === 0 ? joined : [...joined, ...rest].sort((a, b) => a.start - b.start);
} // prettier-ignore
