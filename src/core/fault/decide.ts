// Which readings tell one cause from the others, and what the cheapest set of them costs.

/** A reading as it may be asked for: its cost, and how far from the truth it may lie either way. */
export interface Priced {
  readonly id: string;
  readonly minutes: number;
  readonly error: number;
}
type Values = Readonly<Record<string, number>>;
/** A cause between two sizes of it, with what each reading would be at both. Between them a reading lies between. */
export interface Supposed {
  readonly cause: string;
  readonly ends: readonly [Values, Values];
}

/**
 * True where a reading tells what was found from a cause: it lies further from all that the cause would show than both errors together.
 * @example tellsApart({ id: 'safe', error: 1 }, { safe: 70 }, { cause: 'scale', ends: [{ safe: 60 }, { safe: 65 }] }) // true (70 is beyond 65 and twice the error)
 */
export function tellsApart({ id, error }: Priced, found: Values, { ends: [one, other] }: Supposed): boolean {
  const [low, high] = [Math.min(one[id]!, other[id]!), Math.max(one[id]!, other[id]!)];
  return found[id]! < low - 2 * error || found[id]! > high + 2 * error;
}

/**
 * Causes that readings leave open: those of which some size fits all that was read.
 * @example leftOpen([{ id: 'safe', error: 1 }], { safe: 70 }, [{ cause: 'scale', ends: [{ safe: 60 }, { safe: 65 }] }, { cause: 'dip', ends: [{ safe: 69 }, { safe: 75 }] }]) // ['dip'] (70 lies in its reach alone)
 */
export function leftOpen(readings: readonly Priced[], found: Values, supposed: readonly Supposed[]): readonly string[] {
  const open = supposed.filter((one) => !readings.some((each) => tellsApart(each, found, one)));
  return [...new Set(open.map(({ cause }) => cause))];
} // prettier-ignore

/**
 * The cheapest set of readings, at most sixteen to choose from, that leaves no cause open but the true one; of two alike the shorter list.
 * Undefined where even all of them leave another open.
 * @example cheapestReadings([{ id: 'safe', error: 1, minutes: 5 }, { id: 'meter', error: 1, minutes: 1 }], 'dip', { safe: 70, meter: 0 }, [{ cause: 'scale', ends: [{ safe: 60, meter: 0 }, { safe: 65, meter: 0 }] }]).map(({ id }) => id) // ['safe'] (the meter tells nothing apart)
 */
export function cheapestReadings<R extends Priced>(readings: readonly R[], cause: string, found: Values, supposed: readonly Supposed[]): readonly R[] | undefined {
  const others = supposed.filter((each) => each.cause !== cause);
  const apart = readings.map((each) => others.map((other) => tellsApart(each, found, other)));
  let best: { readonly chosen: readonly number[]; readonly cost: number } | undefined;
  for (let set = 0; set < 1 << readings.length; set++) {
    const chosen = readings.flatMap((_, i) => (set & (1 << i) ? [i] : []));
    const cost = chosen.reduce((sum, i) => sum + readings[i]!.minutes, 0);
    if (best && (cost > best.cost || (cost === best.cost && chosen.length >= best.chosen.length))) continue;
    if (others.every((_, other) => chosen.some((i) => apart[i]![other]))) best = { chosen, cost };
  }
  return best && best.chosen.map((i) => readings[i]!);
} // prettier-ignore
