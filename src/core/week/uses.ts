// How many hours of its week each kind of vessel is needed for, and has.
import { fermentationOf, HOURS_IN_WEEK, isEndless, type WorkHours } from './calendar.ts';
import { chargesInOrder, type Division } from './charges.ts';
import type { WeekNeeds } from './run-weeks.ts';

export type VesselKind = 'tuns' | 'washbacks' | 'wash' | 'intermediate' | 'spirit';

/** All vessels of a kind together, h a week. */
export interface VesselUse {
  readonly kind: VesselKind;
  readonly needed: number;
  /** Hours of all of them in which whole runs fit into the shift. */
  readonly available: number;
}

/**
 * Hours of a week in which one vessel can do runs that take `hours` each, every run whole within its shift.
 * @example usableHours({ days: 5, from: 6, hours: 10 }, 4) // 40 (two whole runs of four hours on each of five days)
 */
export function usableHours(shift: WorkHours, hours: number): number {
  if (isEndless(shift)) return HOURS_IN_WEEK;
  const [stretches, length] = shift.hours === 24 ? [1, shift.days * 24] : [shift.days, shift.hours];
  return stretches * Math.floor(length / hours + 1e-9) * hours;
}

/**
 * How many of the mashes that begin at the hours `begins` have the long fermentation, as theirs goes over the weekend.
 * @example overWeekend({ tuns: [{ number: 1, hours: 8 }], short: 60, weekend: 90, distilling: { days: 7, from: 0, hours: 24 } }, [0, 24]) // 0 (stills that never stop know no weekend)
 */
export function overWeekend(needs: WeekNeeds, begins: readonly number[]): number {
  const quickest = Math.min(...needs.tuns.map(({ hours }) => hours));
  const hours = begins.map((hour) => fermentationOf(hour + quickest, needs, needs.distilling));
  return hours.filter((each) => each > needs.short).length;
}

/**
 * The use of each kind of vessel by mashes that begin at the hours `begins`, if nothing ever waited.
 * @example usesOf({ tuns: [{ number: 1, hours: 8 }], washbacks: 2, turnRound: 6, short: 60, weekend: 60, stages: [], mashing: { days: 7, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }, [0, 24], 'fewest') // [{ kind: 'tuns', needed: 16, available: 168 }, { kind: 'washbacks', needed: 148, available: 336 }] (twice 8, and twice 8 + 60 + 6)
 */
export function usesOf(
  needs: WeekNeeds,
  begins: readonly number[],
  division: Division,
): readonly VesselUse[] {
  const mashes = begins.length;
  const inWeek = needs.tuns.map(({ number, hours }) => (number * usableHours(needs.mashing, hours)) / hours);
  const mashesPossible = inWeek.reduce((sum, each) => sum + each, 0);
  const available = needs.tuns.reduce(
    (sum, { number, hours }) => sum + number * usableHours(needs.mashing, hours),
    0,
  );
  const quickest = Math.min(...needs.tuns.map(({ hours }) => hours));
  const inWashback = begins.map(
    (hour) => quickest + fermentationOf(hour + quickest, needs, needs.distilling) + needs.turnRound,
  );
  return [
    {
      kind: 'tuns',
      needed: mashesPossible > 0 ? (mashes * available) / mashesPossible : Infinity,
      available,
    },
    {
      kind: 'washbacks',
      needed: inWashback.reduce((sum, each) => sum + each, 0),
      available: needs.washbacks * HOURS_IN_WEEK,
    },
    ...needs.stages.map(({ id, charged, groups }): VesselUse => {
      const charges = chargesInOrder(charged, mashes, groups, division);
      return {
        kind: id,
        needed: charges.reduce((sum, { group }) => sum + groups[group]!.hours, 0),
        available: groups.reduce(
          (sum, { number, hours }) => sum + number * usableHours(needs.distilling, hours),
          0,
        ),
      };
    }),
  ];
}
