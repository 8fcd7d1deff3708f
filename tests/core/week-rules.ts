// What a week that repeats itself must keep to, checked from its beginnings and ends alone, step by step.
import type { TakenVessel } from '../../src/core/week/run-weeks.ts';
import type { Timetable } from '../../src/core/week/timetable.ts';

const HOURS = 168;
const NEAR = 1e-6;

/** True when something that goes on from `start` to `end`, round the week, goes on at a step. */
const times = (t: number, start: number, end: number, week: number) => {
  let n = 0;
  for (let k = -3; k <= 3; k++) if (t + k * week >= start && t + k * week < end) n++;
  return n;
};

/** Hours open by definition: each day's stretch, drawn on a strip of the week. */
function strip(
  { days, from, hours }: { days: number; from: number; hours: number },
  step: number,
): boolean[] {
  const open = new Array<boolean>(HOURS / step).fill(false);
  for (let day = 0; day < days; day++)
    for (let h = 0; h < hours; h += step) open[((24 * day + from + h) / step) % open.length] = true;
  return open;
}

/** Every rule that a week breaks, in words. */
export function brokenRules(table: Timetable): readonly string[] {
  const { needs, step, number } = table;
  const week = HOURS / step;
  const broken = new Set<string>();
  const steps = (hours: number) => Math.ceil(hours / step - NEAR);
  const within = (open: boolean[], { start, end }: TakenVessel) => {
    for (let t = start; t < end; t++) if (!open[t % week]) return false;
    return true;
  };
  const many = (list: readonly TakenVessel[], t: number) =>
    list.reduce((sum, { start, end }) => sum + times(t, start, end, week), 0);

  const mayMash = strip(needs.mashing, step);
  const mayDistil = strip(needs.distilling, step);
  const stop = needs.distilling.days === 7 ? Infinity : 24 * (needs.distilling.days - 1) + needs.distilling.hours;
  if (table.mashes.length !== number || table.washbacks.length !== number) broken.add('mashes are missing');
  if (!table.mashes.every((mash) => within(mayMash, mash))) broken.add('a mash outside its shift');
  for (const { start, full, ready, emptied, end } of table.washbacks) {
    const since = (((full * step - needs.distilling.from) % HOURS) + HOURS) % HOURS;
    const least = since + needs.short > stop ? Math.max(needs.short, needs.weekend) : needs.short;
    if (ready - full < steps(least)) broken.add('a fermentation that is too short');
    if (emptied < ready) broken.add('a washback emptied before it is ready');
    if (end - emptied < steps(needs.turnRound)) broken.add('a washback not cleaned');
    if (full <= start) broken.add('a washback that fills in no time');
  }
  needs.stages.forEach(({ groups, charged }, s) => {
    const runs = table.runs[s]!;
    if (Math.abs(runs.reduce((sum, { charge }) => sum + charge.part, 0) - 1) > NEAR) broken.add('liquid left over');
    for (const run of runs) {
      const group = groups[run.charge.group]!;
      if (!within(mayDistil, run)) broken.add('a run outside its shift');
      if (run.end - run.start < steps(group.hours)) broken.add('a run that is too short');
      if (run.charge.part * charged * number > group.charge * (1 + NEAR)) broken.add('a still too full');
    }
  });

  // Counted up from the week's first hour: what is ripe, what has been drawn, what is in the receiver.
  const level = { low: table.stock, kept: table.stock };
  needs.stages.forEach(({ back }, s) => {
    for (const { start, end, charge } of [...table.runs[s]!, ...table.before.runs[s]!])
      if (start < 0 && end > 0) level.kept += back * charge.part * number;
  });
  const drawnSoFar = (t: number) =>
    table.runs[0]!.filter(({ start }) => start <= t).reduce((sum, { charge }) => sum + charge.part * number * needs.wash, 0);
  const ripe = (t: number) => table.washbacks.reduce((sum, { ready }) => sum + Math.floor((t - ready) / week) + 1, 0);
  const empty = (t: number) => table.washbacks.reduce((sum, { emptied }) => sum + Math.floor((t - emptied) / week) + 1, 0);
  const stand: number[] = []; // wash emptied less wash drawn
  for (let t = 0; t < week; t++) {
    if (many(table.mashes, t) > needs.tuns.reduce((sum, each) => sum + each.number, 0)) broken.add('more mashes than tuns');
    if (many(table.washbacks, t) > needs.washbacks) broken.add('more mashes than washbacks');
    needs.stages.forEach(({ groups, drawn, back }, s) => {
      groups.forEach((group, g) => {
        const those = table.runs[s]!.filter(({ charge }) => charge.group === g);
        if (many(those, t) > group.number) broken.add('more runs than stills');
      });
      for (const { start, end, charge } of table.runs[s]!) {
        if (end % week === t) level.low += back * charge.part * number;
        if (start % week === t) {
          level.low -= drawn * charge.part * number;
          level.kept += (back - drawn) * charge.part * number;
        }
      }
    });
    if (level.low < -1) broken.add('a receiver with less than nothing');
    if (level.kept > needs.receiver + 1) broken.add('a receiver too full');
    stand.push(empty(t) * needs.wash - drawnSoFar(t));
  }
  if (Math.abs(level.low - table.stock) > 1) broken.add('a receiver that does not end as it began');
  // Wash drawn by the week's beginning is not told by a week alone: it is the most that leaves the charger no fuller than it is.
  const most = needs.charger - Math.max(...stand);
  for (let t = 0; t < week; t++) {
    const ahead = stand[t]! + most;
    if ((ripe(t) - empty(t)) * needs.wash + ahead < -1) broken.add('wash drawn before it was ready');
  }
  return [...broken];
} // prettier-ignore
