// The whole register on a day: casks, spirit and alcohol, by where it lies, by whose it is, and by age.
import { count, litres20, litresOfAlcohol, years, type Quantity } from '../quantity.ts';
import { isRefusal } from '../refusal.ts';
import type { CaskGroup } from './group.ts';
import { heldOn, type HeldCask, type StoreFigures } from './held.ts';

/** So many casks, and what is in them. */
export interface CaskTotal {
  readonly casks: Quantity<'count'>;
  readonly volume: Quantity<'volume20'>;
  readonly alcohol: Quantity<'alcohol'>;
}

/** Casks of one age, in whole years that are over; where ages are gathered, from `age` to `to`. */
export interface AgeClass extends CaskTotal {
  readonly age: Quantity<'years'>;
  readonly to: Quantity<'years'>;
}

export interface StockTotals {
  readonly all: CaskTotal;
  readonly elsewhere: CaskTotal;
  readonly sold: CaskTotal;
  /** Alcohol that the air will take in the year to come, at today's pace. */
  readonly yearsLoss: Quantity<'alcohol'>;
  /** From the youngest to the oldest, ages without a cask among them. */
  readonly byAge: readonly AgeClass[];
  /** What one cask of each group holds, in the order of the groups; or why that cannot be told. */
  readonly held: readonly ReturnType<typeof heldOn>[];
}

const MOST_CLASSES = 20; // bars on a telephone; older stock is shown by five years
const GATHERED = 5; // years

const amountOf = (parts: readonly { readonly casks: number; readonly held: HeldCask }[]): CaskTotal => ({
  casks: count(parts.reduce((sum, { casks }) => sum + casks, 0)),
  volume: litres20(parts.reduce((sum, { casks, held }) => sum + casks * held.volume, 0)),
  alcohol: litresOfAlcohol(parts.reduce((sum, { casks, held }) => sum + casks * held.alcohol, 0)),
});

/**
 * The register on a day, as 2026-11-28. A group that cannot be followed counts nowhere; `held` says why.
 * @example stockOn([], house, '2026-01-01') // { all: { casks: 0, volume: 0, alcohol: 0 }, byAge: [] } (an empty register)
 */
export function stockOn(groups: readonly CaskGroup[], house: StoreFigures, day: string): StockTotals {
  const held = groups.map((group) => heldOn(group, house, day));
  const known = groups.flatMap((group, i) => {
    const one = held[i]!;
    return isRefusal(one) ? [] : [{ group, casks: group.casks, held: one }];
  });
  const oldest = known.reduce((most, { held }) => Math.max(most, Math.floor(held.age)), 0);
  const span = oldest < MOST_CLASSES ? 1 : GATHERED;
  const classes = known.length === 0 ? 0 : Math.floor(oldest / span) + 1;
  return {
    all: amountOf(known),
    elsewhere: amountOf(known.filter(({ group }) => group.laid === 'elsewhere')),
    sold: amountOf(known.filter(({ group }) => group.owner === 'sold')),
    yearsLoss: litresOfAlcohol(
      known.reduce((sum, { casks, held }) => sum + (casks * held.alcohol * held.loss) / 100, 0),
    ),
    byAge: Array.from({ length: classes }, (_, i) => ({
      age: years(i * span),
      to: years(i * span + span - 1),
      ...amountOf(known.filter(({ held }) => Math.floor(Math.floor(held.age) / span) === i)),
    })),
    held,
  };
}
