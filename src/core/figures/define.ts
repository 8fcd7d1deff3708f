// What a figure is: one entry says all that the handbook knows of it, and every table is made from these.
import type { KindName } from '../kinds.ts';
import type { SourceId } from '../sources.ts';

export const stages = ['malting', 'milling', 'mashing', 'fermenting', 'distilling', 'maturing'] as const;
export type Stage = (typeof stages)[number];

export type RangeEnds = readonly [low: number, high: number];

/** What is usual in the trade, and how that is known. */
export interface Usual {
  readonly range: RangeEnds;
  readonly source: SourceId;
}

/** What is counted, one and many. */
export type Things = readonly [one: string, many: string];

/**
 * Standard spread of a figure said as “about”, and of one said exactly, that is read from an instrument or a book.
 * `part`: of the figure itself; `own`: in the figure's own unit.
 */
export interface Spread {
  readonly as: 'part' | 'own';
  readonly about: number;
  readonly exact: number;
}

/** How a figure is held against others when a guide quotes it. */
export interface QuotedAs {
  /** Where the search begins; a figure that nothing fixes is never told. */
  readonly typical: number;
  readonly spread: Spread;
  /** How far from `typical` houses lie, as a standard spread, where that is weighed for a figure that is not quoted. */
  readonly houses?: { readonly spread: number; readonly why: string; readonly source: SourceId };
}

interface Entry {
  /** Its unit is the kind's. */
  readonly kind: KindName;
  /** As it stands at a field. */
  readonly label: string;
  /** As it stands at the head of a sentence or on a card, where the label does not do. */
  readonly told?: string;
  /** What it can be at all, in a tiny house and a very large one: the limits at every door. */
  readonly limits: RangeEnds;
  readonly usual?: Usual;
  /** Stages beside its own where it is told as often. */
  readonly also?: readonly Stage[];
  /** Where it stands in the line, as “heart.volume”; where it can be meant in more ways, the first is told. A figure that the house gives stands under its name if nothing else is said. */
  readonly at?: string | readonly string[];
  /** An amount of one mash, which grows with the number of mashes. */
  readonly grows?: true;
  /** Decimals in prose where the kind's own would mislead. */
  readonly digits?: number;
  /** What is counted, as it is said. */
  readonly things?: Things;
  /** How a mean becomes a whole number of things: part of a bottle is none, and part of a cask takes one more. */
  readonly whole?: 'up' | 'down';
  readonly quoted?: QuotedAs;
  /** Its name in scripts and cross-checks, where that is another than the house's. */
  readonly alias?: string;
  /** A pocket card may carry it. */
  readonly card?: true;
  /** Looked at when one figure of the house moves. */
  readonly watched?: true;
}
/** A figure that the reader gives: set at will, or measured. */
export interface GivenFigure extends Entry {
  readonly is: 'set' | 'measured';
  /** A house may set it or measure it; `is` says what is usual. */
  readonly either?: true;
  /** What the arrow keys move it by. */
  readonly step: number;
  readonly meaning: string;
  /** What it moves where it moves no alcohol, as the end of a sentence. */
  readonly instead?: string;
  /** Clean values for an invented house of the built-in one's size. */
  readonly clean?: readonly number[];
}
/** A figure that the line computes. */
export interface ComputedFigure extends Entry {
  readonly is: 'computed';
  /** A house counts or reads it as well; what was counted stands beside what is computed. */
  readonly counted?: true;
  /** Reckoned from a rule of thumb: whatever is known, it is an estimate until it is counted. */
  readonly rough?: true;
  readonly at: string | readonly string[];
}
/** A figure that a guide may say and no house gives. */
export interface OnlySaid extends Entry {
  readonly is: 'said';
  readonly at?: never;
}
export type Figure = GivenFigure | ComputedFigure | OnlySaid;

/** A figure of the house that is a choice; each option with its wording. */
export interface FigureChoice {
  readonly label: string;
  readonly meaning: string;
  readonly options: Readonly<Record<string, string>>;
}

/** Common practice, no source: how far spoken figures of each sort lie from the book, and how well the book can know them. */
export const spokenSpreads = {
  volume: { as: 'part', about: 0.03, exact: 0.005 }, // people round to the nearest five hundred litres; a dip or meter knows half a per cent
  mass: { as: 'part', about: 0.02, exact: 0.003 }, // a mash is said in half tonnes; a weigher knows three kilograms in a tonne
  alcohol: { as: 'part', about: 0.03, exact: 0.005 }, // a volume times a strength: the volume's spread governs
  yield: { as: 'part', about: 0.015, exact: 0.005 }, // “about 410” is meant to within six
  strength: { as: 'own', about: 0.5, exact: 0.1 }, // said to the half per cent; a hydrometer knows a tenth
  gravity: { as: 'own', about: 0.001, exact: 0.0003 }, // said to a degree; a saccharometer knows a third of it
  analysis: { as: 'own', about: 0.7, exact: 0.3 }, // from one delivery of malt to the next; repeat of one analysis
  working: { as: 'part', about: 0.05, exact: 0.002 }, // weeks and mashes missed; a plan that is kept
  casks: { as: 'part', about: 0.05, exact: 0.002 }, // counted by the hundred or thousand; counted
  caskSize: { as: 'part', about: 0.05, exact: 0.01 }, // mixed woods, no two alike; gauged
  years: { as: 'part', about: 0.05, exact: 0.01 }, // “ten years or so”; by the book, to the month
  loss: { as: 'own', about: 0.3, exact: 0.1 }, // “about two per cent”; from regauges of the same casks
  bottle: { as: 'part', about: 0.01, exact: 0.001 }, // what the glass says; what the filler gives
  bottles: { as: 'part', about: 0.05, exact: 0.005 }, // by the hundred; counted
} as const satisfies Record<string, Spread>;

/** What most computed figures of a kind have in common; the limits are beyond any house. */
export const computed = {
  mass: { is: 'computed', kind: 'mass', limits: [0, 1e6], grows: true },
  volume: { is: 'computed', kind: 'volume20', limits: [0, 1e6], grows: true },
  strength: { is: 'computed', kind: 'strength', limits: [0, 97] }, // the azeotrope is at 97 % vol
  alcohol: { is: 'computed', kind: 'alcohol', limits: [0, 2e5], grows: true },
} as const satisfies Record<string, Partial<ComputedFigure>>;
