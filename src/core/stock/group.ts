// A group of casks that were filled alike, and what the register may say of it: one table, from which all doors are made.
import type { KindName } from '../kinds.ts';
import { CASK_RANGE } from './sizes.ts';

export const woods = {
  american: 'American oak',
  european: 'European oak',
  oak: 'Other oak',
  other: 'Wood other than oak',
} as const;

export const heldBefore = {
  nothing: 'Nothing: new wood',
  bourbon: 'Bourbon',
  malt: 'Malt spirit',
  sherry: 'Sherry',
  port: 'Port or other strong wine',
  wine: 'Wine',
  rum: 'Rum',
  brandy: 'Brandy',
  other: 'Something else',
} as const;

export const firings = {
  none: 'Neither',
  toasted: 'Toasted',
  charred: 'Charred',
  both: 'Toasted and charred',
  again: 'Shaved and fired again',
} as const;

export const storeKinds = {
  dunnage: 'Dunnage',
  racked: 'Racked',
  palletised: 'On pallets',
  other: 'Another kind',
} as const;

export const whereabouts = { here: 'In our stores', elsewhere: 'Laid elsewhere' } as const;
export const owners = { house: 'Ours', sold: 'Sold, lying with us' } as const;

/** Casks filled alike; volumes are of one cask, L at 20 °C. What is not known is left out. */
export interface CaskGroup {
  readonly name?: string;
  readonly casks: number;
  readonly size: number;
  readonly filled: string;
  readonly filledVolume: number;
  readonly filledStrength: number;
  readonly wood?: keyof typeof woods;
  readonly held?: keyof typeof heldBefore;
  readonly fill?: number;
  readonly firing?: keyof typeof firings;
  readonly store?: string;
  readonly storeKind?: keyof typeof storeKinds;
  readonly regauged?: string;
  readonly regaugedVolume?: number;
  readonly regaugedStrength?: number;
  readonly laid?: keyof typeof whereabouts;
  readonly owner?: keyof typeof owners;
}
export type FieldName = keyof CaskGroup;

export type GroupField = { readonly label: string; readonly needed?: true } & (
  | {
      readonly is: 'number';
      readonly kind: KindName;
      readonly range: readonly [number, number];
      readonly whole?: true;
    }
  | { readonly is: 'choice'; readonly options: Readonly<Record<string, string>> }
  | { readonly is: 'day' }
  | { readonly is: 'text' }
);

/** Strongest spirit that a name of malt spirit allows, % vol, just below which it must stay: SI 2009/2890, reg. 3(1)(b). */
export const STRONGEST_MALT_SPIRIT = 94.8;
const STRENGTHS = [20, STRONGEST_MALT_SPIRIT] as const; // % vol; below 20 nothing is filled into wood
/** A cask may hold this many times what its name says: a hogshead of 250 L holds up to 305, trade FAQ 1995. */
export const ROOMIEST = 1.25;
const VOLUMES = [0, ROOMIEST * CASK_RANGE[1]] as const;

/** Every field in the order of a row: its label is the heading of its column. */
// prettier-ignore
export const groupFields: { readonly [F in FieldName]-?: GroupField } = {
  name: { label: 'Name', is: 'text' },
  casks: { label: 'Casks', is: 'number', kind: 'count', range: [1, 100_000], whole: true, needed: true },
  size: { label: 'Size (L)', is: 'number', kind: 'volume', range: CASK_RANGE, needed: true },
  filled: { label: 'Filled on', is: 'day', needed: true },
  filledVolume: { label: 'Filled with (L)', is: 'number', kind: 'volume20', range: [1, VOLUMES[1]], needed: true },
  filledStrength: { label: 'Filled at (% vol)', is: 'number', kind: 'strength', range: STRENGTHS, needed: true },
  wood: { label: 'Wood', is: 'choice', options: woods },
  held: { label: 'Held before', is: 'choice', options: heldBefore },
  fill: { label: 'Which fill', is: 'number', kind: 'count', range: [1, 9], whole: true },
  firing: { label: 'Char or toast', is: 'choice', options: firings },
  store: { label: 'Store', is: 'text' },
  storeKind: { label: 'Kind of store', is: 'choice', options: storeKinds },
  regauged: { label: 'Regauged on', is: 'day' },
  regaugedVolume: { label: 'Regauged (L)', is: 'number', kind: 'volume20', range: VOLUMES },
  regaugedStrength: { label: 'Regauged at (% vol)', is: 'number', kind: 'strength', range: STRENGTHS },
  laid: { label: 'Where it lies', is: 'choice', options: whereabouts },
  owner: { label: 'Whose', is: 'choice', options: owners },
};

export const groupFieldNames = Object.keys(groupFields) as readonly FieldName[];
