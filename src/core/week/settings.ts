// What a reader sets of the working week: days, hours, cleaning, and how warm water and wash are. Each with its limits.
import type { KindName } from '../kinds.ts';
import { celsius, percent } from '../quantity.ts';
import { dayNames, timeOfDay } from './clock.ts';
import type { Warmth } from './heat.ts';
import type { Shifts } from './needs.ts';

interface SetFigure {
  readonly label: string;
  readonly kind: KindName;
  readonly limits: readonly [number, number];
  readonly step: number;
  readonly value: number;
}

/** Where no source is named the value is one to begin with, and common practice. */
export const weekFigures = {
  mashDays: { label: 'Mashed on', kind: 'count', limits: [1, 7], step: 1, value: 5 },
  mashFrom: { label: 'First mash at', kind: 'hours', limits: [0, 23], step: 1, value: 6 },
  mashHours: { label: 'Mashing goes on for, hours a day', kind: 'hours', limits: [2, 24], step: 1, value: 24 },
  stillDays: { label: 'Stills run on', kind: 'count', limits: [1, 7], step: 1, value: 6 },
  stillFrom: { label: 'First charge at', kind: 'hours', limits: [0, 23], step: 1, value: 6 },
  stillHours: { label: 'Stills run for, hours a day', kind: 'hours', limits: [2, 24], step: 1, value: 24 },
  turnRound: { label: 'Emptying and cleaning a washback', kind: 'hours', limits: [0, 48], step: 0.5, value: 6 },
  water: { label: 'Water comes at', kind: 'temperature', limits: [1, 35], step: 1, value: 10 },
  waterLeaves: { label: 'Cooling water leaves at', kind: 'temperature', limits: [15, 95], step: 1, value: 50 },
  wash: { label: 'Wash goes into the still at', kind: 'temperature', limits: [5, 90], step: 1, value: 30 },
} as const satisfies Record<string, SetFigure>; // prettier-ignore

export type WeekFigure = keyof typeof weekFigures;
export type WeekSettings = Readonly<Record<WeekFigure, number>>;

export const usualWeek = Object.fromEntries(
  Object.entries(weekFigures).map(([name, { value }]) => [name, value]),
) as WeekSettings;

/**
 * The labels of what lays out a week and was not given: it stands at usual values.
 * @example usualOfWeek({ mashDays: 5, mashFrom: 6, mashHours: 24, stillDays: 6, stillFrom: 6, stillHours: 24 }) // ['emptying and cleaning a washback'] (all else was given)
 */
export const usualOfWeek = (given: Partial<WeekSettings>): readonly string[] =>
  (['mashDays', 'mashFrom', 'mashHours', 'stillDays', 'stillFrom', 'stillHours', 'turnRound'] as const)
    .filter((name) => given[name] === undefined)
    .map((name) => weekFigures[name].label.toLowerCase());

/** Figures that are chosen from a few: how each is written. */
export const daysFromMonday: Readonly<Record<string, string>> = Object.fromEntries(
  dayNames.map((day, i) => [
    i + 1,
    i === 0 ? 'Monday only' : i === 6 ? 'all seven days' : `Monday to ${day}`,
  ]),
);
export const hoursOfDay: Readonly<Record<string, string>> = Object.fromEntries(
  Array.from({ length: 24 }, (_, hour) => [hour, timeOfDay(hour)]),
);

/** @example shiftsOf({ ...usualWeek, turnRound: 4 }).turnRound // 4 (as it was set) */
export const shiftsOf = (set: WeekSettings): Shifts => ({
  mashing: { days: set.mashDays, from: set.mashFrom, hours: set.mashHours },
  distilling: { days: set.stillDays, from: set.stillFrom, hours: set.stillHours },
  turnRound: set.turnRound,
});

const [LOW_WINES, DISTILLATE, EFFICIENCY] = [25, 20, 90]; // °C as charged, °C from the condenser, % of the heat that reaches the liquid: as in the calculator of both stills; common practice

/** @example warmthOf({ ...usualWeek, wash: 40 }).wash // 40 (as it was set) */
export const warmthOf = (set: WeekSettings): Warmth => ({
  water: celsius(set.water),
  waterLeaves: celsius(set.waterLeaves),
  wash: celsius(set.wash),
  lowWines: celsius(LOW_WINES),
  distillate: celsius(DISTILLATE),
  efficiency: percent(EFFICIENCY),
});
