// Which of the kinds that practice is asked for are still to be answered right.
import type { Practised } from '../exercises/progress.ts';

/**
 * The kinds that are left. A lesson asks for each once, ever: what was right stays so. What was missed, or is due, is
 * asked for on a day: it is done when its last answer of that day is right.
 */
export function kindsLeft(
  kinds: readonly string[],
  log: readonly Practised[],
  day: string | undefined,
): readonly string[] {
  return kinds.filter((kind) => {
    const own = log.filter((entry) => entry.kind === kind);
    if (day === undefined) return !own.some(({ verdict }) => verdict === 'right');
    return own.findLast((entry) => entry.day === day)?.verdict !== 'right';
  });
}
