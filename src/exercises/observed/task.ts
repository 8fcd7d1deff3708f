// Practical tasks and oral questions of a stage, as its file in content/tasks declares them, and how they are judged.
import type { SourceId } from '../../core/sources.ts';
import type { Line } from '../../core/line/line.ts';
import { figureText } from '../../house/prose.ts';

export interface Task {
  readonly id: string;
  readonly does: string;
  /** What whoever watches sees when it is done well. */
  readonly see: readonly string[];
  readonly rests: SourceId;
}
export interface Oral {
  readonly id: string;
  readonly asks: string;
  /** The model answer, with holes for figures of the house: {malt.mass}, {malt.mass/year}. */
  readonly model: string;
  readonly rests: SourceId;
}

/** How a thing was done; in the order of the buttons. */
export const outcomes = ['alone', 'prompted', 'not yet'] as const;
export type TaskOutcome = (typeof outcomes)[number];

const HOLE = /\{([\w.]+)(?:\/(week|year|tonne))?\}/g;

/** A model answer with the figures of a house. Throws on a hole that names nothing, so that a slip fails the build. */
export const modelAnswer = (model: string, line: Line): string =>
  model.replace(HOLE, (_, path: string, per: 'week' | 'year' | 'tonne' | undefined) =>
    figureText(line, path, per),
  );
