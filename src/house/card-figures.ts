// The figures that a pocket card may carry: what a guide says of each, and where it stands in the line.
import {
  figureIds,
  figureTable,
  headOf,
  pathsOf,
  stageOf,
  type Stage,
  type Things,
} from '../core/figures/index.ts';
import { spokenAs } from '../core/line/spoken.ts';
import type { Line } from '../core/line/line.ts';
import { figureValue, kindOfFigure, wholeOf } from './prose.ts';

export interface CardFigure {
  readonly stage: Stage;
  readonly label: string;
  /** The figure's name in prose. */
  readonly path: string;
  /** What is counted. */
  readonly things: Things | undefined;
}

export const cardFigures: readonly CardFigure[] = figureIds
  .filter((id) => figureTable[id].card)
  .map((id) => ({
    stage: stageOf(id),
    label: headOf(id),
    path: pathsOf(id)[0]!,
    things: figureTable[id].things,
  }));

/** A card's figure as a guide says it. */
export function saidOnCard({ path, things }: CardFigure, line: Line): string {
  return spokenAs(kindOfFigure(path)!.kind, wholeOf(path, figureValue(line, path)), things);
}
