// Numbers that stand for a figure of the house, drawn about the reader's own as they are drawn about the built-in one.
import type { KindName } from '../core/kinds.ts';

/** The generator from which numbers are drawn about the reader's house. */
export const ABOUT_HOUSE_SINCE = 7;

/** Amounts, which grow with the size of a house; all else, strengths and temperatures, lies a little higher or lower. */
const amounts: ReadonlySet<KindName> = new Set([
  'volume',
  'volume20',
  'alcohol',
  'mass',
  'count',
  'land',
  'energy',
]);

const STEPS = [5, 2.5, 2, 1]; // of a power of ten: how coarse clean numbers are

/** The coarsest clean step of which all of these are whole multiples. */
export function gridOf(values: readonly number[]): number {
  for (let power = 9; power >= -6; power--)
    for (const step of STEPS) {
      const grid = step * 10 ** power;
      const isMultiple = (value: number) =>
        value === 0 ||
        (Math.round(value / grid) !== 0 && Math.abs(value / grid - Math.round(value / grid)) < 1e-6);
      if (values.every(isMultiple)) return grid;
    }
  return 1e-6;
}

const onGrid = (value: number, grid: number) => Number((Math.round(value / grid) * grid).toPrecision(12));

/**
 * The values that may be drawn, moved from the built-in house's figure to the reader's: amounts by their ratio, all else by
 * their difference, on a grid as clean as before. Those that leave the range are left out; where fewer than half stay, none is moved.
 */
export function aboutHouse(
  values: readonly number[],
  kind: KindName,
  [built, own]: readonly [number, number],
  [low, high]: readonly [number, number] = [0, Infinity],
  isAmount = amounts.has(kind),
): readonly number[] {
  if (!Number.isFinite(built) || !Number.isFinite(own) || built === own || built <= 0 || own <= 0)
    return values;
  const grid = gridOf(values);
  const ratio = own / built;
  const finer = isAmount ? grid * 10 ** Math.floor(Math.log10(ratio) + 1e-9) : grid;
  const moved = values.map((value) =>
    onGrid(isAmount ? value * ratio : value + own - built, kind === 'count' ? Math.min(grid, 1) : finer),
  );
  const stay = moved.filter((value, i) => value >= low && value <= high && (value > 0 || values[i]! <= 0));
  return new Set(stay).size * 2 < values.length ? values : stay;
}
