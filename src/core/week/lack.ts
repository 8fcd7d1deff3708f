// What stands in the way of so many mashes a week, and by how much.
import { runWeeks, type WeekNeeds } from './run-weeks.ts';
import { beginsOf, isOverused, leastUses, usedPart, runWithStock, TIMETABLE_STEP } from './timetable.ts';
import { overWeekend, usesOf, type VesselUse, type VesselKind } from './uses.ts';

/** What is too little for a week of mashes. */
export interface Lack {
  readonly kind: VesselKind | 'receiver' | 'charger';
  /** Hours a week by which the vessels of the kind are too few when the mashes are spread; 0 where their hours would do but do not fall as they are needed. */
  readonly hours: number;
  /** Hours by which each week falls behind the last; Infinity where the work comes to a stand. */
  readonly behind: number;
  /** Where some order of the work might do: by how many each mash, fermentation or run would have to be shorter. */
  readonly shorter?: number;
  /** Where some order of the work might do: how many more of the vessel would do. */
  readonly more?: number;
  /** L that the receiver or charger would have to hold. */
  readonly litres?: number;
  /** More of this alone would do. */
  readonly alone: boolean;
  /** Fermentations that go over the weekend when the mashes are spread, and whether the week would do were they as short as the rest. */
  readonly weekend: { readonly long: number; readonly isCause: boolean };
  /** Of mashes spread over the days mashed, each with the fermentation that falls to it. */
  readonly uses: readonly VesselUse[];
}

const MANY_STILLS = 16;
const LONGEST_SAVED = 24; // h by which a run may be looked for to be shorter
const LITRES = 50; // L; how finely a receiver that would do is looked for

/** The needs with so many more of a kind of vessel, like the first of them. */
function withMore(needs: WeekNeeds, kind: VesselKind, by: number): WeekNeeds {
  const first = <T extends { readonly number: number }>(groups: readonly T[]) =>
    groups.map((group, i) => (i === 0 ? { ...group, number: group.number + by } : group));
  if (kind === 'tuns') return { ...needs, tuns: first(needs.tuns) };
  if (kind === 'washbacks') return { ...needs, washbacks: needs.washbacks + by };
  return {
    ...needs,
    stages: needs.stages.map((s) => (s.id === kind ? { ...s, groups: first(s.groups) } : s)),
  };
}

/** The needs with every mash, fermentation or run of a kind of vessel so many hours shorter; none below an hour. */
function quicker(needs: WeekNeeds, kind: VesselKind, by: number): WeekNeeds {
  const cut = (hours: number) => Math.max(1, hours - by);
  const all = <T extends { readonly hours: number }>(groups: readonly T[]) =>
    groups.map((group) => ({ ...group, hours: cut(group.hours) }));
  if (kind === 'tuns') return { ...needs, tuns: all(needs.tuns) };
  if (kind === 'washbacks') return { ...needs, short: cut(needs.short), weekend: cut(needs.weekend) };
  return { ...needs, stages: needs.stages.map((s) => (s.id === kind ? { ...s, groups: all(s.groups) } : s)) };
}

/** The needs with so much of one thing that it cannot be what stands in the way. */
const enough: Readonly<Record<Lack['kind'], (needs: WeekNeeds, mashes: number) => WeekNeeds>> = {
  tuns: (needs, mashes) => withMore(needs, 'tuns', mashes),
  washbacks: (needs, mashes) => withMore(needs, 'washbacks', 4 * mashes),
  wash: (needs) => withMore(needs, 'wash', MANY_STILLS),
  intermediate: (needs) => withMore(needs, 'intermediate', MANY_STILLS),
  spirit: (needs) => withMore(needs, 'spirit', MANY_STILLS),
  receiver: (needs) => ({ ...needs, receiver: Infinity }),
  charger: (needs, mashes) => ({ ...needs, charger: needs.wash * mashes }),
};

/** The least of the numbers from `low` to `high`, in steps of `near`, that will do, when more always does too; `high` if none. */
function leastThat(low: number, high: number, near: number, does: (n: number) => boolean): number {
  let [under, over] = [0, Math.ceil((high - low) / near)];
  while (over - under > 1) {
    const middle = Math.floor((under + over) / 2);
    if (does(low + middle * near)) over = middle;
    else under = middle;
  }
  return low + over * near;
}

/**
 * What is too little for so many mashes that no timetable takes them. Where a kind of vessel has too few hours, the one
 * with the least for its work; else the one of which more, alone, would let the week repeat itself, and how much more.
 * @example lackForMashes({ tuns: [{ number: 1, hours: 8 }], washbacks: 1, turnRound: 6, short: 60, weekend: 60, wash: 8000, charger: 8000, receiver: Infinity, spiritReceiver: Infinity, stages: [], mashing: { days: 7, from: 0, hours: 24 }, distilling: { days: 7, from: 0, hours: 24 } }, 10) // { kind: 'washbacks', hours: 572, alone: true } (ten times 8 + 60 + 6 hours in a week of 168)
 */
export function lackForMashes(needs: WeekNeeds, mashes: number, step = TIMETABLE_STEP): Lack {
  const least = leastUses(needs, mashes, 'fewest');
  const worst = least.reduce((a, b) => (usedPart(b) > usedPart(a) ? b : a));
  const spread = beginsOf(needs, mashes, 'spread');
  const uses = usesOf(needs, spread, 'fewest');
  const long = overWeekend(needs, spread);
  const hoursOf = (kind: Lack['kind']) => {
    const use = uses.find((each) => each.kind === kind);
    return use ? Math.max(0, use.needed - use.available) : 0;
  };
  if (isOverused(worst)) {
    const [hours, alone] = [hoursOf(worst.kind), least.filter(isOverused).length === 1];
    return { kind: worst.kind, hours, behind: Infinity, alone, weekend: { long, isCause: false }, uses };
  }
  const begins = beginsOf(needs, mashes, 'soonest');
  const fits = (changed: WeekNeeds) => !('behind' in runWithStock(changed, begins, 'fewest', step));
  const own = runWeeks(needs, begins, 'fewest', step);
  const isCause = needs.weekend > needs.short && fits({ ...needs, weekend: needs.short });
  const lack = { hours: 0, behind: 'behind' in own ? own.behind : 0, weekend: { long, isCause }, uses };
  const kinds = [...least].sort((a, b) => usedPart(b) - usedPart(a)).map(({ kind }) => kind);
  const kind = ([...kinds, 'receiver', 'charger'] as const).find((each) => fits(enough[each](needs, mashes)));
  if (kind === undefined) return { ...lack, kind: worst.kind, hours: hoursOf(worst.kind), alone: false };
  if (kind === 'receiver' || kind === 'charger') {
    const most = kind === 'charger' ? needs.wash * mashes : 8 * Math.max(needs.receiver, needs.wash);
    const litres = leastThat(needs[kind], most, LITRES, (holds) => fits({ ...needs, [kind]: holds }));
    return { ...lack, kind, alone: true, litres };
  }
  const shorter = leastThat(0, LONGEST_SAVED, step, (by) => fits(quicker(needs, kind, by)));
  const more = [1, 2, 3, 4].find((by) => fits(withMore(needs, kind, by)));
  return {
    ...lack,
    kind,
    hours: hoursOf(kind),
    alone: true,
    ...(shorter < LONGEST_SAVED && { shorter }),
    ...(more !== undefined && { more }),
  };
}
