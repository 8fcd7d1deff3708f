// What goes on in a house at an hour of its week.
import type { Doings } from './run-weeks.ts';
import type { Timetable } from './timetable.ts';

export const vesselDoings = {
  mash: 'mashing',
  fill: 'filling',
  ferment: 'fermenting',
  wait: 'ready, waiting for the still',
  clean: 'emptied, being cleaned',
  run: 'running',
} as const;
export type Doing = keyof typeof vesselDoings;

export type WeekVesselName = 'Mash tun' | 'Washback' | 'Wash still' | 'Intermediate still' | 'Spirit still';
const stillNamed = {
  wash: 'Wash still',
  intermediate: 'Intermediate still',
  spirit: 'Spirit still',
} as const;

/** A stretch of a vessel's week, h from Monday's midnight; it may have begun in the week before and end in the next. */
export interface Stretch {
  readonly vessel: WeekVesselName;
  /** Which of its kind, from 1. */
  readonly which: number;
  readonly doing: Doing;
  readonly start: number;
  readonly end: number;
}

/** Every stretch of work of doings, vessel by vessel along the line, each in the order of its beginnings. Rest is what lies between. */
function stretchesOf({ mashes, washbacks, runs }: Doings, { needs, step }: Timetable): readonly Stretch[] {
  const all: Stretch[] = [];
  const put = (vessel: WeekVesselName, which: number, doing: Doing, start: number, end: number) =>
    end > start && all.push({ vessel, which: which + 1, doing, start: start * step, end: end * step });
  for (const { vessel, start, end } of mashes) put('Mash tun', vessel, 'mash', start, end);
  for (const { vessel, start, full, ready, emptied, end } of washbacks) {
    put('Washback', vessel, 'fill', start, full);
    put('Washback', vessel, 'ferment', full, ready);
    put('Washback', vessel, 'wait', ready, emptied);
    put('Washback', vessel, 'clean', emptied, end);
  }
  for (const [i, stage] of runs.entries())
    for (const { vessel, start, end } of stage)
      put(stillNamed[needs.stages[i]!.id], vessel, 'run', start, end);
  return all;
}

/**
 * Every stretch of the week: those that went on into it, then those that begin in it.
 * @example vesselStretches({ mashes: [{ vessel: 0, start: 0, end: 32 }], washbacks: [], runs: [], before: { mashes: [], washbacks: [], runs: [] }, needs: { stages: [] }, step: 0.25 }) // [{ vessel: 'Mash tun', which: 1, doing: 'mash', start: 0, end: 8 }] (32 quarters of an hour)
 */
export const vesselStretches = (week: Timetable): readonly Stretch[] => [
  ...stretchesOf(week.before, week).filter(({ end }) => end > 0),
  ...stretchesOf(week, week),
];

/**
 * Vessels of the house, in the order of the line.
 * @example vesselsOf({ needs: { tuns: [{ number: 1 }], washbacks: 2, stages: [] } }) // [{ vessel: 'Mash tun', which: 1 }, { vessel: 'Washback', which: 1 }, { vessel: 'Washback', which: 2 }] (one tun and two washbacks)
 */
export function vesselsOf({
  needs,
}: Timetable): readonly { readonly vessel: WeekVesselName; readonly which: number }[] {
  const many = (vessel: WeekVesselName, number: number) =>
    Array.from({ length: number }, (_, i) => ({ vessel, which: i + 1 }));
  const sum = (groups: readonly { readonly number: number }[]) =>
    groups.reduce((n, { number }) => n + number, 0);
  return [
    ...many('Mash tun', sum(needs.tuns)),
    ...many('Washback', needs.washbacks),
    ...needs.stages.flatMap(({ id, groups }) => many(stillNamed[id], sum(groups))),
  ];
}

/** What a vessel does at an hour, for how long it has done so, and how long it will, h; nothing is rest. */
export interface VesselNow {
  readonly vessel: WeekVesselName;
  readonly which: number;
  readonly doing?: Doing;
  readonly since?: number;
  readonly left?: number;
}

/**
 * What each vessel does at an hour of the week, 0–168.
 * @example vesselsAtHour({ mashes: [{ vessel: 0, start: 0, end: 32 }], washbacks: [], runs: [], before: { mashes: [], washbacks: [], runs: [] }, needs: { tuns: [{ number: 1 }], washbacks: 0, stages: [] }, step: 0.25 }, 3) // [{ vessel: 'Mash tun', which: 1, doing: 'mash', since: 3, left: 5 }] (three hours of eight)
 */
export function vesselsAtHour(week: Timetable, hour: number): readonly VesselNow[] {
  const all = vesselStretches(week).filter(({ start, end }) => start <= hour && hour < end);
  return vesselsOf(week).map(({ vessel, which }) => {
    const now = all.find((each) => each.vessel === vessel && each.which === which);
    if (!now) return { vessel, which };
    return { vessel, which, doing: now.doing, since: hour - now.start, left: now.end - hour };
  });
}
