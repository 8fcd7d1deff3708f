// What is given back to one who asks: an answer with its place, or that nothing is known, with the nearest.
import type { House } from '../core/line/house.ts';
import type { AskedEntry } from './entry.ts';
import type { Telling } from './holes.ts';
import type { Reckoned } from './reckoned.ts';

export interface Answer extends Reckoned {
  /** The entry that was found; nothing where the answer was reckoned from the question’s own numbers. */
  readonly id?: string;
  /** The entry that may be meant, how likely that is, and others that may be, where that is not sure. */
  readonly meant?: AskedEntry;
  readonly chance?: number;
  readonly others?: readonly AskedEntry[];
  /** True where it is what the book says nearest to it, and may not be what was asked. */
  readonly isQuoted?: true;
  /** True where a sum leaves a number of the question over, and so may not be what was asked. */
  readonly isLoose?: true;
  /** What else was asked in the same breath, answered by itself. */
  readonly also?: readonly Answer[];
  /** True when it is told in the unit that was asked for. */
  readonly inUnit: boolean;
  /** The question that was answered; one that only asks for another unit is the one before it. */
  readonly question: string;
}
export interface NotKnown {
  /** Entries that come nearest, the nearest first. */
  readonly nearest: readonly AskedEntry[];
}

export interface Asking {
  readonly question: string;
  readonly house: House;
  readonly telling?: Omit<Telling, 'line' | 'unit' | 'pace'>;
  /** The question that was answered before, which “what’s that in gallons?” asks again. */
  readonly before?: string | undefined;
}

/** True for an answer, false where nothing was known. */
export const isAnswer = (found: Answer | NotKnown): found is Answer => !('nearest' in found);
/** An answer that is told as sure; nothing where it is not. */
export const sureOf = (found: Answer | NotKnown): Answer | undefined =>
  isAnswer(found) && found.meant === undefined && !found.isQuoted && !found.isLoose ? found : undefined;
