// When the strength of a cask passes below a limit.
import { litres20, years, type Quantity, type Spirit } from '../quantity.ts';
import { within } from '../range.ts';
import { ageCask, type CaskPlan, type CaskYear } from './cask.ts';

export const LONGEST_FOLLOWED = years(60); // as far as a cask is followed here

export interface Passing {
  /** Years after filling at which the limit is reached; undefined when that does not happen in 60 years. */
  readonly year: Quantity<'years'> | undefined;
  /** The cask then, or after 60 years. */
  readonly cask: Spirit;
  readonly record: readonly CaskYear[];
}

/**
 * The year in which a cask in its store falls below a strength, within 60 years; between the ends of two years the
 * strength is taken to fall evenly. A cask filled below the limit has passed it in year 0.
 * @example fallsBelow({ volume: litres20(200), strength: strength(39), cask: { size: litres(200) }, store: { alcoholLoss: percent(2), humidity: percent(65), steadyHumidity: percent(65) } }, strength(40)).year // 0 (it was filled below)
 */
export function fallsBelow(plan: Omit<CaskPlan, 'years'>, limit: Quantity<'strength'>): Passing {
  const record = ageCask({ ...plan, years: LONGEST_FOLLOWED });
  if (plan.strength < limit) return { year: years(0), cask: record[0]!, record };
  const at = record.findIndex((cask, i) => i > 0 && cask.strength < limit);
  if (at === -1) return { year: undefined, cask: record.at(-1)!, record };
  const [before, after] = [record[at - 1]!, record[at]!];
  const part = Math.max(0, (before.strength - limit) / (before.strength - after.strength));
  const volume = litres20(before.volume + part * (after.volume - before.volume));
  return { year: years(before.year + part), cask: { volume, strength: limit }, record };
}

/**
 * Years until a strength falls to a limit at so many % vol a year, evenly; 0 when it is below already.
 * @example fallsEvenly(strength(60), strength(40), 0.5) // 40 (20 ÷ 0.5)
 */
export function fallsEvenly(
  from: Quantity<'strength'>,
  limit: Quantity<'strength'>,
  yearly: number,
): Quantity<'years'> {
  within('The fall in a year, % vol,', yearly, Number.MIN_VALUE, 100);
  return years(Math.max(0, (from - limit) / yearly));
}
