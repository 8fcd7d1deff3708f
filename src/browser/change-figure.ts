// What a reader does to the house of the page, one figure at a time.
import { batch } from 'solid-js';
import type { FigureId } from '../core/figures/index.ts';
import type { WayKnown } from '../core/figures/standing.ts';
import type { Giving } from '../core/line/change.ts';
import { enterFigure, withYeast, type Entered } from '../house/entering.ts';
import {
  builtInHouse,
  builtInName,
  isNumberName,
  type FigureName,
  type NumberName,
} from '../house/figures.ts';
import {
  afterTyping,
  countedProblem,
  knownOf,
  knownPart,
  withCounted,
  withGiven,
} from '../house/parts/known.ts';
import { isSamePart } from '../house/parts/part.ts';
import { proposeFigure, wayOf } from '../house/propose.ts';
import {
  changePart,
  wholeHouseNow,
  lastTrial,
  liveHouse,
  liveName,
  putHouse,
  setTrial,
} from './house-store.ts';

/**
 * Changes one figure, and what gives way to it; or says in a sentence why it cannot be so. Moving one figure on and on
 * is one change, from where it stood first. Only readers call this; results never do. What was moved, by a handle, is not measured.
 */
export function changeFigure(
  figure: FigureName,
  value: unknown,
  gives?: Giving,
  isMoved = false,
): string | undefined {
  if (liveHouse()[figure] === value && gives === undefined)
    return liveName() === builtInName ? undefined : giveAsItStands(figure);
  const last = lastTrial()?.figure === figure ? lastTrial() : undefined;
  const before = last?.before ?? liveHouse();
  const { counted } = knownOf(wholeHouseNow());
  const known = last?.known ?? knownOf(wholeHouseNow());
  const wasKnown = figure in known.given;
  const chosen = gives ?? (last?.isChosen ? last.gives : undefined);
  const way = wayOf(before);
  const isBuiltIn = liveName() === builtInName;
  const isTrial = chosen !== undefined || isBuiltIn || (wasKnown && isMoved);
  const entered = isTrial ? undefined : enterFigure(before, figure, value, known, way);
  // A figure that is put right leaves the others that were given as they are, where that can be; else one of them gives way.
  const changed: Entered =
    entered && !('problem' in entered && wasKnown)
      ? entered
      : proposeFigure(before, figure, value, chosen, way);
  const proposal = isBuiltIn ? changed : withYeast(changed, before, figure, known);
  const trial = { figure, value, before, known };
  if ('problem' in proposal) {
    setTrial({ ...trial, after: liveHouse(), gave: [], problem: proposal.problem });
    return proposal.problem;
  }
  const taken = chosen ?? proposal.gives;
  batch(() => {
    putHouse(proposal.house);
    if (isNumberName(figure)) {
      const gave = proposal.gave.map((each) => each.figure);
      const next = { ...afterTyping(known, figure, gave, isMoved), counted };
      // Moved on and on, it is known as it was after the first move: nothing that hangs on that need look again.
      const isTold = wholeHouseNow().parts.known !== undefined && isSamePart(next, knownOf(wholeHouseNow()));
      if (!isTold) changePart(knownPart, next);
    }
    setTrial({
      ...trial,
      after: proposal.house,
      gave: proposal.gave,
      ...(taken && { gives: taken, isChosen: chosen !== undefined }),
    });
  });
  return undefined;
}

/** Keeps the house’s figures and what is known of them as they stand; what it returns puts them back so. */
export function keepFigures(): () => void {
  const [house, known] = [liveHouse(), knownOf(wholeHouseNow())];
  return () =>
    batch(() => {
      putHouse(house);
      changePart(knownPart, known);
    });
}

/** Takes a figure over as it stands: it is the reader's own too. Says how it is known, if that is told. A choice is not put down. */
export function giveAsItStands(figure: FigureName, way?: WayKnown): undefined {
  if (!isNumberName(figure)) return;
  const known = afterTyping(knownOf(wholeHouseNow()), figure, []);
  changePart(knownPart, way === undefined ? known : withGiven(known, figure, way));
}

/** Puts a figure back to the built-in house's; it is then not known. */
export function putFigureBack(figure: NumberName): string | undefined {
  const problem =
    liveHouse()[figure] === builtInHouse[figure] ? undefined : changeFigure(figure, builtInHouse[figure]);
  if (problem === undefined) changePart(knownPart, withGiven(knownOf(wholeHouseNow()), figure, undefined));
  return problem;
}

/** Puts down what was counted of a computed figure, or that it was not. Returns the sentence to show when it cannot be. */
export function countFigure(id: FigureId, value: number | undefined): string | undefined {
  const problem = value === undefined ? undefined : countedProblem(id, value);
  if (problem === undefined) changePart(knownPart, withCounted(knownOf(wholeHouseNow()), id, value));
  return problem;
}

/** Takes the last change back, whole. */
export function takeChangeBack(): void {
  const last = lastTrial();
  if (!last) return;
  const { counted } = knownOf(wholeHouseNow());
  batch(() => {
    putHouse(last.before);
    changePart(knownPart, { ...last.known, counted });
  });
}

/** Goes back to the built-in figures, all at once, none of which is then known; the house keeps its name and its other parts. */
export function resetHouse(): void {
  const { counted } = knownOf(wholeHouseNow());
  batch(() => {
    putHouse({ ...builtInHouse });
    changePart(knownPart, { given: {}, counted });
  });
}
