// How a bench of the fault desk is declared: readings with their costs, causes, and what to do first.
import type { Line } from '../core/line/line.ts';
import type { SourceId } from '../core/sources.ts';
import type { TruthOf } from '../core/fault/truth.ts';

export interface BenchReading<Id extends string = string> {
  readonly id: Id;
  /** What is asked for, as an order: “Read the thermometer of the tun”. */
  readonly asks: string;
  /** What it costs, minutes; nothing for what everybody sees first. */
  readonly minutes: number;
  /** How far it may lie from the truth, either way: in its unit, or as a part of what is usual. */
  readonly error: number | { readonly part: number };
  readonly unit: string;
  readonly digits: number;
  /** Where it cannot be less than nothing. */
  readonly from?: 0;
  /** The answer as a sentence, with what is found in it as `valueInWords` has it. */
  readonly finds: (it: string) => string;
  /** True where it looks for vapour or leaking spirit: nobody loses points for looking. */
  readonly isDanger?: true;
  /** For a sign that is there or not: the words for both. */
  readonly signs?: readonly [absent: string, there: string];
}

/** What to do first. One that does harm says what. */
export interface First {
  readonly id: string;
  readonly says: string;
  readonly harms?: string;
}

export interface Cause<Id extends string = string, R extends string = string> {
  readonly id: Id | 'nothing';
  readonly title: string;
  /** Under which head it is offered. */
  readonly group: string;
  /** Readings that find the fault itself, and not only what it is not. */
  readonly confirms: readonly R[];
  /** The first thing to do, by its id. */
  readonly first: string;
  /** Why, and how it looks, in a sentence or two. */
  readonly why: string;
  readonly rests: SourceId;
}

export interface Bench<C extends string = string, R extends string = string> {
  readonly id: string;
  readonly title: string;
  /** What is before the trainee; `shown` and `usual` are told as they stand in the readings. */
  readonly complaint: (shown: (id: R) => string, usual: (id: R) => string) => string;
  readonly readings: readonly BenchReading<R>[];
  readonly causes: readonly Cause<C, R>[];
  readonly firsts: readonly First[];
  /** The caution that belongs to it. */
  readonly caution: string;
  /** The bench of a house: `day` undefined for its usual day, else drawn by chance, 0–1. */
  readonly of: (line: Line, chance?: () => number) => TruthOf<C, R>;
}

/** A number from a range by chance; the middle, or what is usual, on the usual day. */
export const drawnBetween = (usual: number, [least, most]: readonly [number, number], chance?: () => number): number =>
  chance ? least + (most - least) * chance() : usual; // prettier-ignore

/** “4 % more” and, for what is below nothing, “4 % less”, or by other words. */
export const moreOrLess = (it: string, more = 'more', less = 'less'): string =>
  it.startsWith('−') ? `${it.slice(1)} ${less}` : `${it} ${more}`;
