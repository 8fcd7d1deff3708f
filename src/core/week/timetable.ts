// A week of mashes set out by what each vessel allows; or the vessel that stands in the way.
import { spreadOverWeek } from './calendar.ts';
import { OWN_CHARGE } from '../plant/group-charges.ts';
import { chargesInOrder, type Division } from './charges.ts';
import { runWeeks, type Behind, type RepeatedWeek, type WeekNeeds } from './run-weeks.ts';
import { usesOf, type VesselUse } from './uses.ts';

export const TIMETABLE_STEP = 0.25; // h; a quarter of an hour, as a timetable is written

export interface Timetable extends RepeatedWeek {
  readonly number: number;
  readonly needs: WeekNeeds;
  /** Mashes spread over the days and hours; or each as soon as a tun and a washback are free. */
  readonly pattern: 'spread' | 'soonest';
  readonly division: Division;
  /** Hours in a step. */
  readonly step: number;
  readonly uses: readonly VesselUse[];
}
const STOCKS = [1, 0.75, 0.5, 0.25]; // parts of the room that a wash charge leaves in the receiver
const PATTERNS = ['spread', 'soonest'] as const;
const quickest = ({ tuns }: WeekNeeds) => Math.min(...tuns.map(({ hours }) => hours));
/**
 * The part of their hours for which vessels are needed; and whether that is more than all.
 * @example usedPart({ needed: 84, available: 168 }) // 0.5 (half)
 */
export const usedPart = ({ needed, available }: VesselUse): number => needed / available;
/** @example isOverused({ needed: 169, available: 168 }) // true (an hour too much) */
export const isOverused = ({ needed, available }: VesselUse) => needed > available * (1 + 1e-9);

/**
 * The hours at which so many mashes may begin in a pattern.
 * @example beginsOf({ mashing: { days: 5, from: 6, hours: 24 } }, 2, 'soonest') // [6, 6] (as soon as mashing begins)
 */
export function beginsOf(
  needs: WeekNeeds,
  mashes: number,
  pattern: (typeof PATTERNS)[number],
): readonly number[] {
  return pattern === 'spread'
    ? spreadOverWeek(mashes, needs.mashing, quickest(needs))
    : Array.from({ length: mashes }, () => needs.mashing.from);
}

/**
 * Uses with every mash at its shortest: more than this no order of the work can save.
 * @example leastUses({ tuns: [{ number: 1, hours: 8 }], washbacks: 1, turnRound: 6, short: 60, weekend: 90, stages: [], mashing: { days: 7, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }, 2, 'fewest') // [{ kind: 'tuns', needed: 16, available: 168 }, { kind: 'washbacks', needed: 148, available: 168 }] (twice 8, and twice 8 + 60 + 6)
 */
export const leastUses = (needs: WeekNeeds, mashes: number, division: Division) =>
  usesOf({ ...needs, weekend: needs.short }, beginsOf(needs, mashes, 'soonest'), division);

/**
 * The weeks run from an empty receiver; where only the receiver stands in the way, from one that is partly filled, and from
 * one with room for no more than a wash charge, as a small one works only with the right stock in it.
 * @example runWithStock({ tuns: [{ number: 1, hours: 30 }], washbacks: 1, turnRound: 6, short: 60, weekend: 60, wash: 8000, charger: 8000, receiver: Infinity, spiritReceiver: Infinity, stages: [], mashing: { days: 1, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }, [0], 'by-mash', 1).behind // Infinity (a mash of thirty hours is never over in a day)
 */
export function runWithStock(
  needs: WeekNeeds,
  begins: readonly number[],
  division: Division,
  step: number,
): RepeatedWeek | Behind {
  const empty = runWeeks(needs, begins, division, step);
  if (!('behind' in empty) || needs.receiver === Infinity) return empty;
  if ('behind' in runWeeks({ ...needs, receiver: Infinity }, begins, division, step)) return empty;
  const { groups, charged, back } = needs.stages[0]!;
  const parts = chargesInOrder(charged, begins.length, groups, division).map(({ part }) => part);
  const room = needs.receiver - Math.max(...parts) * back * begins.length;
  for (const part of STOCKS) {
    const week = runWeeks(needs, begins, division, step, Math.max(0, room * part));
    if (!('behind' in week)) return week;
  }
  return empty;
}

/** How the charges may be divided, the usual way first: each mash by itself, unless it fills no more than half a charge. */
function divisionsOf({ stages }: WeekNeeds): readonly Division[] {
  const isSmall = stages.some(({ charged, groups }) =>
    groups.every(({ charge }) => charged <= OWN_CHARGE * charge),
  );
  return isSmall ? ['fewest', 'by-mash'] : ['by-mash', 'fewest'];
}

/**
 * The first way in which so many mashes fit into a week that repeats itself: spread evenly and charged whole if that can be.
 * @example timetable({ tuns: [{ number: 1, hours: 8 }], washbacks: 1, turnRound: 6, short: 60, weekend: 60, wash: 8000, charger: 8000, receiver: Infinity, spiritReceiver: Infinity, stages: [], mashing: { days: 7, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }, 22) // undefined (twenty-two mashes of eight hours are 176)
 */
export function timetable(needs: WeekNeeds, mashes: number, step = TIMETABLE_STEP): Timetable | undefined {
  for (const pattern of PATTERNS)
    for (const division of divisionsOf(needs)) {
      if (leastUses(needs, mashes, division).some(isOverused)) continue;
      const begins = beginsOf(needs, mashes, pattern);
      const week = runWithStock(needs, begins, division, step);
      if ('behind' in week) continue;
      const starts = week.washbacks.map(({ start }) => start * step);
      return {
        ...week,
        number: mashes,
        needs,
        pattern,
        division,
        step,
        uses: usesOf(needs, starts, division),
      };
    }
  return undefined;
}

/**
 * The most mashes that fit into a week that repeats itself, up to `limit`; 0 when not one does.
 * @example mostMashes({ tuns: [{ number: 1, hours: 8 }], washbacks: 0, turnRound: 6, short: 60, weekend: 60, wash: 8000, charger: 8000, receiver: Infinity, spiritReceiver: Infinity, stages: [], mashing: { days: 7, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }) // 0 (no washback, no mash)
 */
export function mostMashes(needs: WeekNeeds, limit = 100, step = TIMETABLE_STEP): number {
  if (timetable(needs, 1, step) === undefined) return 0;
  let most = limit;
  while (most > 0 && leastUses(needs, most, 'fewest').some(isOverused)) most--;
  while (most > 1 && timetable(needs, most, step) === undefined) most--;
  return most;
}
