// The figures that a pocket card may carry: what a guide says of each, and where it stands in the line.
import {
  figureIds,
  figureTable,
  headOf,
  pathsOf,
  stageOf,
  type FigureId,
  type Stage,
  type Things,
} from '../core/figures/index.ts';
import { spokenNumber } from '../core/line/spoken.ts';
import type { Line } from '../core/line/line.ts';
import { figureValue, kindOfFigure, secondFigureText, wholeCountOf } from './prose.ts';

export interface CardFigure {
  readonly id: FigureId;
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
    id,
    stage: stageOf(id),
    label: headOf(id),
    path: pathsOf(id)[0]!,
    things: figureTable[id].things,
  }));

/** A card's figure as a guide says it; what was counted, where it was. */
export function saidOnCard({ id, path, things }: CardFigure, line: Line, counted?: number): string {
  const { kind } = kindOfFigure(path)!;
  const value = counted ?? figureValue(line, path);
  const isMean = figureTable[id].digits !== undefined; // its other side gives it with decimals, so a whole more would contradict it
  const said = spokenNumber(kind, isMean ? value : wholeCountOf(path, value), things);
  const full = id === 'casksInStore' && counted === undefined ? ', once the store is full' : '';
  return said + full + secondFigureText(line, path);
}
