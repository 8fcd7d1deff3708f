// What stands in the receivers through a week.
import { HOURS_IN_WEEK } from './calendar.ts';
import type { StillRun } from './run-weeks.ts';
import type { Timetable } from './timetable.ts';

/** L at an hour of the week; between two of them the level moves evenly, and two at one hour are a charge or an emptying. */
export interface LevelAt {
  readonly hour: number;
  readonly litres: number;
}

/**
 * What one charge draws from the low wines and feints receiver and gives back to it, and its spirit, L.
 * @example litresOfCharge({ needs: { stages: [{ drawn: 1000, back: 300, spirit: 200 }] }, number: 5 }, 0, { charge: { part: 0.2 } }) // { drawn: 1000, back: 300, spirit: 200 } (a fifth of five mashes)
 */
export function litresOfCharge({ needs, number }: Timetable, stage: number, run: StillRun) {
  const { drawn, back, spirit } = needs.stages[stage]!;
  const of = (perMash: number) => perMash * number * run.charge.part;
  return { drawn: of(drawn), back: of(back), spirit: of(spirit) };
}

interface Change {
  /** Hour at which it begins; L at once, then L an hour for so long. */
  readonly hour: number;
  readonly atOnce: number;
  readonly rate: number;
  readonly lasts: number;
}

/** A level through the week from changes that come back each week; `start` L at its beginning. */
function through(changes: readonly Change[], start: number): readonly LevelAt[] {
  const points = changes
    .flatMap(({ hour, lasts }) => [hour, hour + lasts])
    .map((hour) => hour % HOURS_IN_WEEK);
  const hours = [...new Set([0, ...points, HOURS_IN_WEEK])].sort((a, b) => a - b);
  const rateAt = (middle: number) =>
    changes.reduce((sum, { hour, rate, lasts }) => {
      const since = (middle - hour + HOURS_IN_WEEK) % HOURS_IN_WEEK;
      return since < lasts ? sum + rate : sum;
    }, 0);
  const levels: LevelAt[] = [];
  let litres = start;
  for (const [i, hour] of hours.entries()) {
    if (i > 0) litres += rateAt((hours[i - 1]! + hour) / 2) * (hour - hours[i - 1]!);
    levels.push({ hour, litres });
    if (hour === HOURS_IN_WEEK) break;
    const atOnce = changes.filter((change) => change.hour === hour).reduce((sum, c) => sum + c.atOnce, 0);
    if (atOnce !== 0) levels.push({ hour, litres: (litres += atOnce) });
  }
  return levels;
}

/**
 * The low wines and feints receiver: a charge is drawn at once, and what a run gives comes evenly over its hours.
 * @example lowWinesLevel({ runs: [], stock: 500, step: 1 }) // [{ hour: 0, litres: 500 }, { hour: 168, litres: 500 }] (no run moves it)
 */
export function lowWinesLevel(week: Timetable): readonly LevelAt[] {
  const { step } = week;
  const changes = week.runs.flatMap((runs, stage) =>
    runs.map((run): Change => {
      const { drawn, back } = litresOfCharge(week, stage, run);
      const lasts = (run.end - run.start) * step;
      return { hour: run.start * step, atOnce: -drawn, rate: back / lasts, lasts };
    }),
  );
  const underWay = changes
    .filter(({ hour, lasts }) => hour + lasts > HOURS_IN_WEEK)
    .reduce((sum, { hour, rate }) => sum + rate * (HOURS_IN_WEEK - hour), 0);
  return through(changes, week.stock + underWay);
}

/**
 * The hours at which the spirit receiver is emptied for filling: before the week's first spirit charge, and before each whose heart would not fit.
 * @example emptyings({ runs: [[{ start: 8, end: 16, charge: { part: 1 } }]], needs: { stages: [{ drawn: 0, back: 0, spirit: 500 }], spiritReceiver: 1000 }, number: 1, step: 1 }) // [8] (before the week’s first charge)
 */
export function emptyings(week: Timetable): readonly number[] {
  const stage = week.runs.length - 1;
  const hours: number[] = [];
  let kept = Infinity;
  for (const run of week.runs[stage]!) {
    const { spirit } = litresOfCharge(week, stage, run);
    if (kept + spirit > week.needs.spiritReceiver || kept === Infinity) {
      hours.push(run.start * week.step);
      const running = week.runs[stage]!.filter(({ start, end }) => start < run.start && end > run.start);
      kept = running.reduce((sum, each) => sum + litresOfCharge(week, stage, each).spirit, 0);
    }
    kept += spirit;
  }
  return hours;
}

/**
 * The spirit receiver: hearts come evenly over their runs, and it is emptied at the hours of `emptyings`.
 * @example spiritLevel({ runs: [[{ start: 0, end: 8, charge: { part: 1 } }]], needs: { stages: [{ drawn: 0, back: 0, spirit: 500 }], spiritReceiver: 1000 }, number: 1, step: 1 }).at(-1) // { hour: 168, litres: 500 } (the week’s one heart)
 */
export function spiritLevel(week: Timetable): readonly LevelAt[] {
  const stage = week.runs.length - 1;
  const hearts = week.runs[stage]!.map((run): Change => {
    const lasts = (run.end - run.start) * week.step;
    return {
      hour: run.start * week.step,
      atOnce: 0,
      rate: litresOfCharge(week, stage, run).spirit / lasts,
      lasts,
    };
  });
  // Twice round, as what stands in it on Monday came after the last emptying of the week before.
  const outs = emptyings(week);
  const filled = through(hearts, 0);
  const total = filled.at(-1)!.litres;
  const made = (hour: number) => {
    const i = filled.findLastIndex((level) => level.hour <= hour);
    const [a, b] = [filled[i]!, filled[Math.min(i + 1, filled.length - 1)]!];
    return b.hour > a.hour
      ? a.litres + ((b.litres - a.litres) * (hour - a.hour)) / (b.hour - a.hour)
      : a.litres;
  };
  if (outs.length === 0) return filled;
  const sinceLast = (hour: number) => {
    const last = outs.findLast((out) => out <= hour);
    return last === undefined ? made(hour) + total - made(outs.at(-1)!) : made(hour) - made(last);
  };
  const hours = [...new Set([...filled.map(({ hour }) => hour), ...outs])].sort((a, b) => a - b);
  return hours.flatMap((hour) => {
    const now = { hour, litres: sinceLast(hour) };
    if (!outs.includes(hour)) return [now];
    const before = outs.findLast((out) => out < hour);
    const full = before === undefined ? made(hour) + total - made(outs.at(-1)!) : made(hour) - made(before);
    return [{ hour, litres: full }, now];
  });
}
