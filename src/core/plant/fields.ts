// The figures of each vessel: what a field and a sentence call them, and what each can be.
import type { KindName } from '../kinds.ts';
import type { Holding, MashTuns, Plant, Stills, Washbacks } from './plant.ts';

export interface VesselField {
  readonly kind: KindName;
  /** As it stands at a field, and as a sentence says one that cannot be: “a charge of 90,000 L: a still takes 100 to 60,000 L”. */
  readonly label: string;
  readonly one: string;
  readonly takes: string;
  readonly limits: readonly [low: number, high: number];
  readonly step: number;
  readonly meaning?: string;
}

type Numbers<T> = { readonly [K in keyof T as T[K] extends number ? K : never]: VesselField };

const number = (most: number): VesselField => ({ kind: 'count', label: 'Number', one: 'a number', takes: 'there can be', limits: [1, most], step: 1 }); // prettier-ignore

// The limits are wide enough for a garden shed and for the largest houses; common practice.
export const tunFields: Numbers<MashTuns> = {
  number: number(20),
  hours: { kind: 'hours', label: 'Hours a mash', one: 'a time', takes: 'a mash takes', limits: [2, 48], step: 0.5 },
}; // prettier-ignore

export const washbackFields: Numbers<Washbacks> = {
  number: number(60),
  full: { kind: 'volume20', label: 'Full, to the brim', one: 'a full volume', takes: 'a washback holds', limits: [50, 200_000], step: 500 },
  working: { kind: 'volume20', label: 'Filled to', one: 'a filling', takes: 'a washback is filled to', limits: [50, 200_000], step: 500 },
}; // prettier-ignore

export const stillFields: Numbers<Stills> = {
  number: number(20),
  charge: { kind: 'volume20', label: 'Charge', one: 'a charge', takes: 'a still takes', limits: [100, 60_000], step: 100, meaning: 'The most you charge it with, not what its maker says it holds.' },
  hours: { kind: 'hours', label: 'Hours a charge', one: 'a time', takes: 'a charge takes', limits: [1, 48], step: 0.5 },
  reflux: { kind: 'share', label: 'Reflux', one: 'a reflux', takes: 'a still has', limits: [0, 1], step: 0.01, meaning: 'Part of one further stage that its head and neck give: 0 for none, 1 for a whole one.' },
}; // prettier-ignore

export const holdingField: VesselField = { kind: 'volume20', label: 'Holds', one: 'a volume', takes: 'it can hold', limits: [0, 500_000], step: 500 }; // prettier-ignore

/** Vessels that only hold. 0 L: there is none, or it is not known. */
export const holdingNames = {
  washCharger: 'Wash charger',
  lowWinesReceiver: 'Low wines and feints receiver',
  spiritReceiver: 'Spirit receiver',
} as const satisfies { readonly [K in keyof Plant as Plant[K] extends Holding ? K : never]: string };
export const holdings = Object.keys(holdingNames) as readonly (keyof typeof holdingNames)[];

/** What is set once for the whole plant. */
export const plantFields: Numbers<Plant> = {
  shortFermentation: { kind: 'hours', label: 'Fermentation without a weekend', one: 'a time', takes: 'it takes', limits: [24, 240], step: 1 },
  weekendFermentation: { kind: 'hours', label: 'Fermentation over a weekend', one: 'a time', takes: 'it takes', limits: [24, 240], step: 1 },
  strongFeintsEnd: { kind: 'strength', label: 'Strong feints end at', one: 'a strength', takes: 'they end at', limits: [2, 80], step: 1 },
  runAgain: { kind: 'percent', label: 'Part of the low wines run again', one: 'a part', takes: 'it can be', limits: [1, 100], step: 5 },
}; // prettier-ignore

/** Groups of one kind of vessel that a plant may have. */
export const MOST_VESSEL_GROUPS = 6;
