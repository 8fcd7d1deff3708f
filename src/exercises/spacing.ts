// When a kind of question comes round again. The rule is the card box of Sebastian Leitner, So lernt man lernen (1972), from memory, its compartments doubling in days.

export interface SpacingState {
  /** Compartment, 1 to 5. */
  readonly box: number;
  /** Day on which it is due, counted from 1 January 1970. */
  readonly due: number;
}

const DAYS = [1, 2, 4, 8, 16]; // days until a kind in compartments 1 to 5 is due again

/** Where a kind stands after an answer: right moves it on; right but for form leaves it; a miss takes it back to the first, due the same day. */
export function standingAfter(
  before: SpacingState | undefined,
  outcome: 'right' | 'nearly' | 'missed',
  today: number,
): SpacingState {
  const box =
    outcome === 'missed'
      ? 1
      : Math.max(1, Math.min(DAYS.length, (before?.box ?? 0) + (outcome === 'right' ? 1 : 0)));
  return { box, due: outcome === 'missed' ? today : today + DAYS[box - 1]! };
}

const WAIT = 8; // questions of other kinds before a kind comes again in one sitting
const TIMES = 2; // that a kind is asked in one sitting before it rests for another day

/** The kinds that may come now: not asked just before, nor too often in this sitting; where that leaves none, those asked longest ago. */
function rested(pool: readonly string[], asked: readonly string[]): readonly string[] {
  const times = (id: string) => asked.filter((each) => each === id).length;
  const lately = new Set(asked.slice(-WAIT));
  const may = pool.filter((id) => !lately.has(id) && times(id) < TIMES);
  if (may.length > 0) return may;
  const longest = Math.min(...pool.map((id) => asked.lastIndexOf(id)));
  return pool.filter((id) => asked.lastIndexOf(id) === longest);
}

/**
 * Which kind comes next: first what is due, the longest due before; then what was never asked; then what is due
 * soonest. A kind that was asked in this sitting, answered or passed over, waits for others, and never comes twice
 * running with another such kind while there are new ones. `asked` holds the kinds of this sitting in their order.
 */
export function nextKind(
  pool: readonly string[],
  standing: Readonly<Record<string, SpacingState | undefined>>,
  today: number,
  asked: readonly string[] = [],
): string | undefined {
  const wasRepeat = asked.indexOf(asked.at(-1)!) < asked.length - 1;
  const may = rested(pool, asked);
  const fresh = may.filter((id) => !asked.includes(id));
  const from = wasRepeat && fresh.length > 0 ? fresh : may;
  const dueBy = (id: string) => standing[id]?.due ?? Infinity;
  const soonest = [...from].sort((a, b) => dueBy(a) - dueBy(b))[0];
  if (soonest !== undefined && dueBy(soonest) <= today) return soonest;
  return from.find((id) => standing[id] === undefined && !asked.includes(id)) ?? soonest;
}
