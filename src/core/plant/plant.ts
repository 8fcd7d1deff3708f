// The vessels of a house, as they stand: what a plan of the rooms would list. Volumes in litres, times in hours.
// Every balance of a plant is the one that charge after charge from empty receivers comes to; one that never rests is refused.
// Tested by tests/core/plant-recycled.test.ts and, by other code, tests/core/plant-rounds.test.ts.

/** Figures that stand at usual values until the reader gives them: their names. */
interface MayBeUsual {
  readonly usual?: readonly string[];
}

/** Mash tuns that are alike. */
export interface MashTuns extends MayBeUsual {
  readonly number: number;
  /** From one mashing-in to the next in the same tun, h: mashing, run-off, draff out. */
  readonly hours: number;
}

export const washbackMaterials = { wood: 'Wood', steel: 'Steel' } as const;

/** Washbacks that are alike. */
export interface Washbacks extends MayBeUsual {
  readonly number: number;
  /** To the brim, L. */
  readonly full: number;
  /** As filled, with room for the head of froth, L. */
  readonly working: number;
  readonly material: keyof typeof washbackMaterials;
}

export const condensers = { 'shell-and-tube': 'Shell and tube', 'worm-tub': 'Worm tub' } as const;
export const heatings = { steam: 'Steam', flame: 'Flame' } as const;

/** Stills that are alike. */
export interface Stills extends MayBeUsual {
  readonly number: number;
  /** What one is charged with, L. */
  readonly charge: number;
  /** From charging to ready for the next charge, h. */
  readonly hours: number;
  /** The share of vapour that falls back before it leaves the still, as in the house's own reflux figures. */
  readonly reflux: number;
  readonly condenser: keyof typeof condensers;
  readonly heating: keyof typeof heatings;
}

export const stillNames = {
  wash: 'Wash stills',
  intermediate: 'Intermediate stills',
  spirit: 'Spirit stills',
} as const;
export type StillKind = keyof typeof stillNames;

/** Vessels that only hold: chargers and receivers. */
export interface Holding {
  /** What it holds when full, L. */
  readonly holds: number;
}

export const schemes = {
  twice: 'Distilled twice',
  thrice: 'Distilled three times',
  'part-thrice': 'Part of it distilled three times',
} as const;

export interface Plant extends MayBeUsual {
  readonly mashTuns: readonly MashTuns[];
  readonly washbacks: readonly Washbacks[];
  /** Hours of fermentation of a mash that has no weekend in it, and of one that has. */
  readonly shortFermentation: number;
  readonly weekendFermentation: number;
  readonly washCharger: Holding;
  readonly lowWinesReceiver: Holding;
  readonly spiritReceiver: Holding;
  readonly washStills: readonly Stills[];
  readonly intermediateStills: readonly Stills[];
  readonly spiritStills: readonly Stills[];
  readonly scheme: keyof typeof schemes;
  /** Where it is distilled three times: strength at the safe at which strong feints end and weak ones begin, % vol. */
  readonly strongFeintsEnd: number;
  /** Where part of it is: the part of the low wines that the intermediate stills run again, %. */
  readonly runAgain: number;
}
