// What a house says of a spirit, as the law asks it, and one definition to hold it against.
import type { SourceId } from '../sources.ts';

/** Facts of a spirit that a legal definition may ask for. Strengths in % vol, sizes in litres. */
export interface Claim {
  readonly madeIn: Country;
  /** "and other whole grain" holds at least 51 % malted barley; the other grain is whole in either. */
  readonly grain:
    'malted barley only' | 'malted barley and other whole grain' | 'less than 51 % malted barley';
  readonly still: 'pot still' | 'other still';
  readonly oneDistillery: boolean;
  /** Strength of the heart as a whole, as gauged before water goes in; not of its first drop. */
  readonly distilledAt: number;
  readonly wood: 'new charred oak' | 'used or uncharred oak' | 'other wood';
  readonly largestCask: number;
  readonly filledAt: number;
  readonly years: number;
  readonly maturedIn: Country;
  /** Where it was made, when left out. */
  readonly bottledIn?: Country;
  readonly bottledAt: number;
  readonly added: 'water only' | 'water and plain caramel' | 'sweetening or flavouring';
}

/** "Ireland" is the island: the rules for Irish whiskey count both parts as one. */
export const countries = [
  'Scotland',
  'England or Wales',
  'Ireland',
  'another EU country',
  'the United States',
  'Canada',
  'Japan',
  'elsewhere',
] as const;
export type Country = (typeof countries)[number];

/** One thing that a definition asks, where it is written, and whether a claim meets it. */
export interface Point {
  readonly asks: string;
  readonly article: string;
  readonly meets: (claim: Claim) => boolean;
}

export interface Definition {
  readonly id: string;
  readonly name: string;
  readonly sources: readonly SourceId[];
  /** From when the rule has held as it stands here: a year, a month or a day, as 2025-01-19. */
  readonly since: string;
  /** The day on which the text was last read, as 2026-11-28. */
  readonly readOn: string;
  /** What was read: the text itself, or who quotes it. */
  readonly readIn: string;
  /** Where a reader finds the text itself: an address without its “https://”. */
  readonly textAt: string;
  readonly points: readonly Point[];
  /** What the label or the maker must mind besides, though the name may be carried. */
  readonly minds?: (claim: Claim) => readonly string[];
}

export interface ClaimVerdict {
  readonly asks: string;
  readonly article: string;
  readonly met: boolean;
}

/**
 * A claim held against a definition, point by point.
 * @example judgeClaim({ years: 2 }, { name: 'A', points: [{ asks: 'Three years', article: '1', meets: ({ years }) => years >= 3 }] }) // [{ asks: 'Three years', article: '1', met: false }] (two are not three)
 */
export function judgeClaim(claim: Claim, { points }: Definition): readonly ClaimVerdict[] {
  return points.map(({ asks, article, meets }) => ({ asks, article, met: meets(claim) }));
}

/**
 * True when every point is met. A handbook's answer, not a lawyer's.
 * @example meetsDefinition({ years: 3 }, { name: 'A', points: [{ asks: 'Three years', article: '1', meets: ({ years }) => years >= 3 }] }) // true (three are)
 */
export function meetsDefinition(claim: Claim, definition: Definition): boolean {
  return judgeClaim(claim, definition).every(({ met }) => met);
}
