// Counted casks beside those that the house's figures would have laid down since it opened, and what explains the difference.
import { CASK_SIZES } from '../maturing/filling.ts';
import { count, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import type { CaskGroup } from './group.ts';
import { yearsBetween } from './days.ts';

/** What a house says of its fillings: from its figures and its line. */
export interface Fillings {
  readonly casksPerYear: Quantity<'count'>;
  readonly meanSize: Quantity<'volume'>;
  readonly fillingStrength: Quantity<'strength'>;
  readonly yearsInWood: Quantity<'years'>;
  readonly barrels: Quantity<'percent'>;
  readonly hogsheads: Quantity<'percent'>;
}

/** What is known of spirit and casks that the register does not list, all since the house opened. */
export interface Unlisted {
  readonly laidElsewhere?: number;
  /** The part of each year's fillings that is laid elsewhere, %; where it is counted, the count holds. */
  readonly elsewhereShare?: number;
  /** New spirit that went out unfilled, L of pure alcohol. */
  readonly soldUnfilled?: number;
  /** Casks emptied, sold away or broken up; left out, those are taken as gone whose years in wood are up. */
  readonly emptied?: number;
  /** Casks that the house has counted as a whole; it goes by them where the register has fewer. */
  readonly inHouse?: number;
}

export interface CountedMeetsComputed {
  /** Years since the house opened. */
  readonly open: Quantity<'years'>;
  /** Casks that the house would have filled in them, at today's pace. */
  readonly filled: Quantity<'count'>;
  /** Those emptied: as counted, or as the years in wood have it. */
  readonly emptied: Quantity<'count'>;
  /** What would then be there. */
  readonly computed: Quantity<'count'>;
  readonly counted: Quantity<'count'>;
  /** Computed less the house's own count, or less the register's where that has as many; below 0 when more casks are there than reckoned. */
  readonly difference: Quantity<'count'>;
  readonly laidElsewhere: Quantity<'count'>;
  /** Casks of the mean size that the spirit sold unfilled would have filled. */
  readonly soldUnfilled: Quantity<'count'>;
  /** What neither explains. */
  readonly unexplained: Quantity<'count'>;
  /** By size, from the smallest, each as counted and as the mix of casks would have it. */
  readonly bySize: readonly {
    readonly size: number;
    readonly counted: Quantity<'count'>;
    readonly computed: Quantity<'count'>;
  }[];
}

/**
 * The counted register on a day, as 2026-11-28, against the fillings of a house that opened on 1 January of a year. Source: counting.
 * @example countedMeetsComputed([], { casksPerYear: 100, meanSize: 250, fillingStrength: 60, yearsInWood: 10, barrels: 0, hogsheads: 100 }, {}, 2020, '2022-01-01') // { open: 2, filled: 200, emptied: 0, computed: 200, counted: 0, difference: 200, unexplained: 200 } (two years of a hundred, and none is due yet)
 */
export function countedMeetsComputed(
  groups: readonly CaskGroup[],
  fillings: Fillings,
  unlisted: Unlisted,
  opened: number,
  day: string,
): CountedMeetsComputed {
  within('The casks filled in a year', fillings.casksPerYear, 0, 1e7);
  const { casksPerYear, meanSize, fillingStrength, yearsInWood, barrels, hogsheads } = fillings;
  const open = yearsBetween(`${opened}-01-01`, day);
  const filled = casksPerYear * open;
  const emptied = unlisted.emptied ?? casksPerYear * Math.max(0, open - yearsInWood);
  const computed = filled - emptied;
  const { elsewhereShare = 0, soldUnfilled = 0 } = unlisted;
  const laidElsewhere = unlisted.laidElsewhere ?? (computed * elsewhereShare) / 100;
  const counted = groups.reduce((sum, { casks }) => sum + casks, 0);
  const there = Math.max(counted, unlisted.inHouse ?? 0);
  const unfilled = soldUnfilled / ((meanSize * fillingStrength) / 100);
  const mix = new Map<number, number>([
    [CASK_SIZES.barrel, barrels],
    [CASK_SIZES.hogshead, hogsheads],
    [CASK_SIZES.butt, 100 - barrels - hogsheads],
  ]);
  const sizes = new Set([...groups.map(({ size }) => size), ...[...mix].flatMap(([size, share]) => (share > 0 ? [size] : []))]); // prettier-ignore
  return {
    open,
    filled: count(filled),
    emptied: count(emptied),
    computed: count(computed),
    counted: count(counted),
    difference: count(computed - there),
    laidElsewhere: count(laidElsewhere),
    soldUnfilled: count(unfilled),
    unexplained: count(computed - there - laidElsewhere - unfilled),
    bySize: [...sizes]
      .sort((a, b) => a - b)
      .map((size) => ({
        size,
        counted: count(groups.reduce((sum, group) => sum + (group.size === size ? group.casks : 0), 0)),
        computed: count((computed * (mix.get(size) ?? 0)) / 100),
      })),
  };
}
