// Figures that a guide quotes and the line does not hold: reckoned from it when they are asked for.
import { CASK_SIZES } from '../maturing/filling.ts';
import { lineFor } from './ledger.ts';
import type { Line } from './line.ts';

/** Each by the name it has in the table of figures, “beside.heartBegins”; undefined where the house has no such thing. */
const beside: Readonly<Record<string, (line: Line) => number | undefined>> = {
  /** Litres of pure alcohol from a tonne of malt, as the house makes it. */
  spiritYield: ({ heart, pace }) => heart.alcohol / pace.tonnesPerMash,
  /** Litres of pure alcohol. */
  alcoholPerWeek: ({ heart, house }) => heart.alcohol * house.mashesPerWeek,
  alcoholPerYear: (line) => lineFor('year', line).heart.alcohol * line.pace.mashesPerYear,
  /** Litres of the casks that the house fills. */
  barrel: ({ house }) => (house.barrels > 0 ? CASK_SIZES.barrel : undefined),
  hogshead: ({ house }) => (house.hogsheads > 0 ? CASK_SIZES.hogshead : undefined),
  butt: ({ house }) => (house.barrels + house.hogsheads < 100 ? CASK_SIZES.butt : undefined),
};

/**
 * The number at a place of the line or beside it, in the unit of its kind; undefined where there is none.
 * @example numberAt({ heart: { volume: 900 } }, 'heart.volume') // 900 (where the path leads)
 */
export function numberAt(line: Line, path: string): number | undefined {
  const [first, second] = path.split('.') as [string, string];
  if (first === 'beside') return beside[second]?.(line);
  const value = path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)?.[key], line);
  return typeof value === 'number' ? value : undefined;
}
