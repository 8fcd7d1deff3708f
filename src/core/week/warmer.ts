// What it costs or saves to run a house with warmer wash or warmer cooling water.
import type { Line } from '../line/line.ts';
import { celsius } from '../quantity.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { asSteam, heatOfMash, type HeatOfMash, type Warmth } from './heat.ts';
import type { WeekNeeds } from './run-weeks.ts';

export const warmable = {
  wash: 'wash as it goes into the still',
  water: 'cooling water as it comes',
  washback: 'wash while it ferments',
} as const;

/** Changes by so many degrees; above nothing it is more. */
export interface Warmer {
  /** Of one wash run, h, and of all wash runs of the week. */
  readonly hoursOfRun: number;
  readonly hoursOfWeek: number;
  /** Of the week: steam of 5 bar, kg, or its heat by flame; cooling water, L. */
  readonly steam: number;
  readonly water: number;
  readonly before: HeatOfMash;
  readonly after: HeatOfMash;
  /** What a week then needs. */
  readonly needs: WeekNeeds;
}

/**
 * A wash that is so much warmer as it is charged needs less heat, and with the same heat an hour its run is shorter by that part;
 * all the run's hours are taken to have the heat on. What comes over is the same, so its cooling water is too. Cooling water
 * that comes warmer and leaves as before takes up less, so more of it is needed, and no run is longer for it.
 * Refuses what cannot be told: how much sooner a warmer wash has fermented.
 * @example warmerChange('washback', 2, {}) // refuses: depends on the yeast (it is not reckoned)
 */
export function warmerChange(
  what: keyof typeof warmable,
  by: number,
  given: {
    readonly line: Line;
    readonly needs: WeekNeeds;
    readonly mashes: number;
    readonly warmth: Warmth;
  },
): Warmer | Refusal {
  const { line, needs, mashes, warmth } = given;
  if (what === 'washback')
    return refuse(
      'How much sooner a warmer washback has fermented depends on the yeast and is not reckoned here. Put in the hours of your own warmer fermentations.',
    );
  const before = heatOfMash(line, warmth);
  if (isRefusal(before)) return before;
  const after = heatOfMash(line, { ...warmth, [what]: celsius(warmth[what] + by) });
  if (isRefusal(after)) return after;
  // Mashing liquor is heated from the same water, and is no part of the question.
  const heatOf = ({ stills }: HeatOfMash) => Object.values(stills).reduce((sum, { heat }) => sum + heat, 0);
  const waterOf = ({ stills }: HeatOfMash) =>
    Object.values(stills).reduce((sum, { water }) => sum + water, 0);
  const ratio = after.stills.wash!.heat / before.stills.wash!.heat;
  const [first, ...others] = needs.stages;
  const quicker = {
    ...needs,
    stages: [{ ...first!, groups: first!.groups.map((g) => ({ ...g, hours: g.hours * ratio })) }, ...others],
  };
  const hours = Math.max(...first!.groups.map((group) => group.hours));
  const all = first!.groups.reduce((sum, { number, charge }) => sum + number * charge, 0);
  const runHours = first!.groups.reduce(
    (sum, group) => sum + Math.ceil((mashes * first!.charged * group.number) / all - 1e-9) * group.hours,
    0,
  );
  return {
    hoursOfRun: hours * (ratio - 1),
    hoursOfWeek: runHours * (ratio - 1),
    steam: asSteam((heatOf(after) - heatOf(before)) * mashes),
    water: (waterOf(after) - waterOf(before)) * mashes,
    before,
    after,
    needs: quicker,
  };
}
