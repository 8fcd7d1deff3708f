// When a kind of question comes round again. The rule is the card box of Sebastian Leitner, So lernt man lernen (1972), from memory, its compartments doubling in days.

export interface Standing {
  /** Compartment, 1 to 5. */
  readonly box: number;
  /** Day on which it is due, counted from 1 January 1970. */
  readonly due: number;
}

const DAYS = [1, 2, 4, 8, 16]; // days until a kind in compartments 1 to 5 is due again

/** Where a kind stands after an answer: right moves it on; right but for form leaves it; a miss takes it back to the first, due the same day. */
export function after(
  before: Standing | undefined,
  outcome: 'right' | 'nearly' | 'missed',
  today: number,
): Standing {
  const box =
    outcome === 'missed'
      ? 1
      : Math.max(1, Math.min(DAYS.length, (before?.box ?? 0) + (outcome === 'right' ? 1 : 0)));
  return { box, due: outcome === 'missed' ? today : today + DAYS[box - 1]! };
}

/**
 * Which kind comes next: first what is due, the longest due before; then what was never asked; then what is due
 * soonest. The one asked last waits, unless it is the only one.
 */
export function nextKind(
  pool: readonly string[],
  standing: Readonly<Record<string, Standing | undefined>>,
  today: number,
  last?: string,
): string | undefined {
  const others = pool.length > 1 ? pool.filter((id) => id !== last) : pool;
  const dueBy = (id: string) => standing[id]?.due ?? Infinity;
  const soonest = [...others].sort((a, b) => dueBy(a) - dueBy(b))[0];
  if (soonest !== undefined && dueBy(soonest) <= today) return soonest;
  return others.find((id) => standing[id] === undefined) ?? soonest;
}
