// A week of mashes set out by what each vessel allows; or the vessel that stands in the way.
import { spread } from './calendar.ts';
import { divide, type Division } from './charges.ts';
import { runWeeks, type Behind, type RepeatedWeek, type WeekNeeds } from './run-weeks.ts';
import { usesOf, type Use, type VesselKind } from './uses.ts';

const STEP = 0.25; // h; a quarter of an hour, as a timetable is written

export interface Timetable extends RepeatedWeek {
  readonly number: number;
  readonly needs: WeekNeeds;
  /** Mashes spread over the days and hours; or each as soon as a tun and a washback are free. */
  readonly pattern: 'spread' | 'soonest';
  readonly division: Division;
  /** Hours in a step. */
  readonly step: number;
  readonly uses: readonly Use[];
}
/** What is too little for a week of mashes. */
export interface Lack {
  readonly kind: VesselKind | 'receiver' | 'charger';
  /** Hours a week by which the vessels of the kind are too few; 0 where their hours would do but do not fall as they are needed. */
  readonly hours: number;
  /** Hours by which each week falls behind the last; Infinity where the work comes to a stand. */
  readonly behind: number;
  /** L that the receiver would have to hold. */
  readonly litres?: number;
  /** More of this alone would do. */
  readonly alone: boolean;
  readonly uses: readonly Use[];
}

const STOCKS = [1, 0.75, 0.5, 0.25]; // parts of the room that a wash charge leaves in the receiver
const PATTERNS = ['spread', 'soonest'] as const;
const DIVISIONS = ['by-mash', 'fewest'] as const;
const quickest = ({ tuns }: WeekNeeds) => Math.min(...tuns.map(({ hours }) => hours));
const ratio = ({ needed, available }: Use) => needed / available;
const isOver = ({ needed, available }: Use) => needed > available * (1 + 1e-9);

function beginsOf(needs: WeekNeeds, mashes: number, pattern: (typeof PATTERNS)[number]): readonly number[] {
  return pattern === 'spread'
    ? spread(mashes, needs.mashing, quickest(needs))
    : Array.from({ length: mashes }, () => needs.mashing.from);
}

/** Uses with every mash at its shortest: more than this no order of the work can save. */
const leastUses = (needs: WeekNeeds, mashes: number, division: Division) =>
  usesOf({ ...needs, weekend: needs.short }, beginsOf(needs, mashes, 'soonest'), division);

/**
 * The weeks run from an empty receiver; where only the receiver stands in the way, from one that is partly filled, and from
 * one with room for no more than a wash charge, as a small one works only with the right stock in it.
 */
function runWithStock(
  needs: WeekNeeds,
  begins: readonly number[],
  division: Division,
  step: number,
): RepeatedWeek | Behind {
  const empty = runWeeks(needs, begins, division, step);
  if (!('behind' in empty) || needs.receiver === Infinity) return empty;
  if ('behind' in runWeeks({ ...needs, receiver: Infinity }, begins, division, step)) return empty;
  const { groups, charged, back } = needs.stages[0]!;
  const parts = divide(charged, begins.length, groups, division).map(({ part }) => part);
  const room = needs.receiver - Math.max(...parts) * back * begins.length;
  for (const part of STOCKS) {
    const week = runWeeks(needs, begins, division, step, Math.max(0, room * part));
    if (!('behind' in week)) return week;
  }
  return empty;
}

/** The first way in which so many mashes fit into a week that repeats itself: spread evenly and charged whole if that can be. */
export function timetable(needs: WeekNeeds, mashes: number, step = STEP): Timetable | undefined {
  for (const pattern of PATTERNS)
    for (const division of DIVISIONS) {
      if (leastUses(needs, mashes, division).some(isOver)) continue;
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

/** The most mashes that fit into a week that repeats itself, up to `limit`; 0 when not one does. */
export function mostMashes(needs: WeekNeeds, limit = 100, step = STEP): number {
  let most = limit;
  while (most > 0 && leastUses(needs, most, 'fewest').some(isOver)) most--;
  while (most > 0 && timetable(needs, most, step) === undefined) most--;
  return most;
}

const without: Readonly<Record<Lack['kind'], (needs: WeekNeeds, mashes: number) => WeekNeeds>> = {
  tuns: (needs, mashes) => ({ ...needs, tuns: needs.tuns.map((each) => ({ ...each, number: mashes })) }),
  washbacks: (needs, mashes) => ({ ...needs, washbacks: 4 * mashes }),
  wash: (needs) => withStills(needs, 'wash'),
  intermediate: (needs) => withStills(needs, 'intermediate'),
  spirit: (needs) => withStills(needs, 'spirit'),
  charger: (needs, mashes) => ({ ...needs, charger: needs.wash * mashes }),
  receiver: (needs) => ({ ...needs, receiver: Infinity }),
};
function withStills(needs: WeekNeeds, id: VesselKind): WeekNeeds {
  const many = (groups: WeekNeeds['stages'][number]['groups']) =>
    groups.map((each) => ({ ...each, number: each.number * 8 }));
  return { ...needs, stages: needs.stages.map((s) => (s.id === id ? { ...s, groups: many(s.groups) } : s)) };
}

/**
 * What is too little for so many mashes that no timetable takes them. Where a kind of vessel has too few hours, the one
 * with the least for its work; else the one of which more, alone, would let the week repeat itself.
 */
export function lackOf(needs: WeekNeeds, mashes: number, step = STEP): Lack {
  const uses = leastUses(needs, mashes, 'fewest');
  const worst = uses.reduce((a, b) => (ratio(b) > ratio(a) ? b : a));
  if (isOver(worst)) {
    return {
      kind: worst.kind,
      hours: worst.needed - worst.available,
      behind: Infinity,
      alone: uses.filter(isOver).length === 1,
      uses,
    };
  }
  const run = (changed: WeekNeeds) =>
    runWithStock(changed, beginsOf(changed, mashes, 'soonest'), 'fewest', step);
  const own = run(needs);
  const behind = 'behind' in own ? own.behind : 0;
  const kinds = [...uses].sort((a, b) => ratio(b) - ratio(a)).map(({ kind }) => kind);
  for (const kind of [...kinds, 'receiver', 'charger'] as const) {
    const more = run(without[kind](needs, mashes));
    if ('behind' in more) continue;
    return {
      kind,
      hours: 0,
      behind,
      alone: true,
      uses,
      ...(kind === 'receiver' && { litres: more.most }),
    };
  }
  return { kind: worst.kind, hours: 0, behind, alone: false, uses };
}
