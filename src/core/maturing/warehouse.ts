// A store that is filled every year and emptied of its oldest casks.
import { count, litresOfAlcohol, years, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';

export interface Warehouse {
  /** Casks filled each year. */
  readonly filled: Quantity<'count'>;
  /** Pure alcohol in a cask as it is filled, L. */
  readonly alcohol: Quantity<'alcohol'>;
  /** Whole years that a cask lies. */
  readonly years: Quantity<'years'>;
  /** Alcohol that leaves a cask in a year, % of what is in it. */
  readonly loss: Quantity<'percent'>;
}

/** The store just after a year's casks went in and its oldest came out; year 1 is the first filling. */
export interface StoreYear {
  readonly year: Quantity<'years'>;
  readonly casks: Quantity<'count'>;
  readonly alcohol: Quantity<'alcohol'>;
  /** Alcohol lost to the air in the year that follows. */
  readonly lost: Quantity<'alcohol'>;
  /** Alcohol in the casks that came out. */
  readonly emptied: Quantity<'alcohol'>;
}

/**
 * The stock year by year, for `span` years: last year's less its loss, less the casks whose years are up, plus the new ones.
 * From the year of that many years on it stands still. Every cask loses the same part each year.
 * @example buildStock({ filled: count(100), alcohol: litresOfAlcohol(100), years: years(10), loss: percent(2) }, 2) // [{ casks: 100, alcohol: 10000 }, { casks: 200, alcohol: 19800 }] (9,800 left and 10,000 new)
 */
export function buildStock(
  { filled, alcohol, years: kept, loss }: Warehouse,
  span: number,
): readonly StoreYear[] {
  within('The casks filled in a year', filled, 0, 1e7);
  within('The years in wood', kept, 1, 80);
  within('The alcohol lost in a year, %,', loss, 0, 100);
  const left = 1 - loss / 100;
  const emptied = filled * alcohol * left ** kept;
  const record: StoreYear[] = [];
  let stock = 0;
  for (let year = 1; year <= span; year++) {
    const out = year > kept ? emptied : 0;
    stock = stock * left - out + filled * alcohol;
    record.push({
      year: years(year),
      casks: count(filled * Math.min(year, kept)),
      alcohol: litresOfAlcohol(stock),
      lost: litresOfAlcohol((stock * loss) / 100),
      emptied: litresOfAlcohol(out),
    });
  }
  return record;
}
