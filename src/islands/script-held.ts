// What is said, held against what the house is known to have: a figure that nobody has given it, or that hangs on such, speaks against nothing.
import type { Line } from '../core/line/line.ts';
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import { heldAgainst, type HeldFigure, type HowKnown, type SaidFigure } from '../talk/own-house.ts';

/** A figure held against the house, where the house is known to have one. */
export function heldByKnown(of: SaidFigure, line: Line, known: HowKnown): HeldFigure | undefined {
  const held = heldAgainst(of, line, known);
  return held?.isEstimate ? undefined : held;
}

/** True for a figure that a house has, and this one not as known. */
export function isNotKnown(figure: TalkFigureId, known: HowKnown): boolean {
  const id = talkFigures[figure].inTable;
  return (
    id !== undefined &&
    known.vessels?.[figure] === undefined &&
    ['unknown', 'estimate'].includes(known.standing(id))
  );
}
