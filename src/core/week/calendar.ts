// When a house mashes and when its stills run, over a week that repeats itself; the clock is cut into equal steps.

export const HOURS_IN_WEEK = 168; // h; by definition
const HOURS_IN_DAY = 24; // h; by definition

/** Work that is done on so many days from Monday, from an hour of the day and for so many hours; 24 is round the clock. */
export interface WorkHours {
  /** 1–7. */
  readonly days: number;
  /** 0–23.75. */
  readonly from: number;
  /** Above 0, at most 24. */
  readonly hours: number;
}

/** Hours of a shift in the week. */
const hoursOpen = ({ days, hours }: WorkHours): number => days * hours;

/**
 * True where a shift goes on day and night, all week.
 * @example [isEndless({ days: 7, from: 0, hours: 24 }), isEndless({ days: 6, from: 0, hours: 24 })] // [true, false] (Sunday is missing)
 */
export const isEndless = ({ days, hours }: WorkHours): boolean =>
  hoursOpen({ days, hours, from: 0 }) >= HOURS_IN_WEEK;

/**
 * For each step of the week, how many steps of work may follow without a break if it is begun then; without end in a
 * shift that never stops. `step` in hours.
 * @example [...openFrom({ days: 1, from: 0, hours: 2 }, 1).slice(0, 3)] // [2, 1, 0] (two hours from Monday’s midnight)
 */
export function openFrom(shift: WorkHours, step: number): Float64Array {
  const steps = Math.round(HOURS_IN_WEEK / step);
  const open = new Uint8Array(steps);
  for (let day = 0; day < shift.days; day++) {
    const begins = Math.round((day * HOURS_IN_DAY + shift.from) / step);
    for (let i = 0; i < Math.round(shift.hours / step); i++) open[(begins + i) % steps] = 1;
  }
  const run = new Float64Array(steps);
  if (open.every((each) => each === 1)) return run.fill(Infinity);
  // Twice round, from the end, so that work may go on over Sunday midnight.
  for (let i = 2 * steps - 1; i >= 0; i--)
    run[i % steps] = open[i % steps] === 1 ? run[(i + 1) % steps]! + 1 : 0;
  return run;
}

/** The hour of the week at which the stills stop for the weekend, or undefined where they run on all seven days. */
function weekendBegins(stills: WorkHours): number | undefined {
  return stills.days === 7 ? undefined : (stills.days - 1) * HOURS_IN_DAY + stills.from + stills.hours;
}

/**
 * Hours of fermentation of a wash whose washback is full at an hour of the week: the weekend's where its short
 * fermentation would reach into the weekend, which ends on Monday when the stills begin.
 * @example fermentationOf(0, { short: 60, weekend: 100 }, { days: 7, from: 0, hours: 24 }) // 60 (stills that never stop know no weekend)
 */
export function fermentationOf(
  full: number,
  { short, weekend }: { readonly short: number; readonly weekend: number },
  stills: WorkHours,
): number {
  const begins = weekendBegins(stills);
  if (begins === undefined) return short;
  const sinceMonday = (((full - stills.from) % HOURS_IN_WEEK) + HOURS_IN_WEEK) % HOURS_IN_WEEK;
  return sinceMonday + short > begins - stills.from ? Math.max(short, weekend) : short;
}

/**
 * Hours of the week at which so many mashes may begin, spread evenly over the days mashed and over each day's hours.
 * @example spreadOverWeek(2, { days: 2, from: 6, hours: 24 }, 8) // [6, 30] (one a day, at six)
 */
export function spreadOverWeek(mashes: number, shift: WorkHours, tunHours: number): readonly number[] {
  return Array.from({ length: shift.days }, (_, day) => {
    const upTo = (days: number) => Math.ceil((mashes * days) / shift.days - 1e-9);
    const today = upTo(day + 1) - upTo(day);
    const gap = Math.min(shift.hours / today, Math.max(0, shift.hours - tunHours) / Math.max(1, today - 1));
    return Array.from({ length: today }, (_, i) => day * HOURS_IN_DAY + shift.from + i * gap);
  }).flat();
}
