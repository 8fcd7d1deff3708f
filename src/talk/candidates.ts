// What each quantity of a talk may be: the figures that its unit and size allow, or none of the house's, and why.
import { figureIds, talkFigures, type TalkFigureId, type TalkFigure } from './figures.ts';
import { inAnyHouse, logOf } from './one-house.ts';
import type { SpokenQuantity } from './quantities.ts';
import { ties } from './ties.ts';
import { unitsAs, type UnitsBefore } from './units-before.ts';
import type { SaidDimension } from './units.ts';
import { valuesFor } from './values.ts';

/** Why a quantity is none of the house's figures. */
export const reasons = ['elsewhere', 'law', 'limit', 'capacity', 'machine', 'history', 'people', 'order', 'other'] as const; // prettier-ignore
export type Reason = (typeof reasons)[number];
export type Label = TalkFigureId | `-${Reason}`;
export const labels: readonly Label[] = [...figureIds, ...reasons.map((reason) => `-${reason}` as const)];
export const isFigure = (label: Label): label is TalkFigureId => !label.startsWith('-');

/** What a label is made of: what is learnt of a part serves all that share it. */
export const partsOf = (label: Label): readonly string[] =>
  isFigure(label)
    ? [label, 'figure', `at ${talkFigures[label].stage}`, ...talkFigures[label].parts]
    : [label, 'none'];

export interface Candidate {
  readonly label: Label;
  /** The unit that it is then in, as said; none where it is no figure. */
  readonly unit?: string;
  /** In the figure's unit; empty for none. */
  readonly values: readonly number[];
  /** How well its size goes with the figure in any house. */
  readonly size: number;
  /** The logarithm of its size, where the figure hangs together with others. */
  readonly log?: number;
}

const BEYOND = 2; // times a figure's limits at which it may still be meant: said, and not possible
const ABOVE = 1.15; // the same for what has no size, as a strength or a heat
const sizeless = new Set([
  'strength',
  'temperature',
  'percentage',
  'gravity',
  'loss',
  'humidity',
  'grist share',
]);
const NOWHERE = -3; // the size of what lies far from where the figure is heard

/** How well a value lies where the figure is heard, in the logarithm of a chance. */
function whereHeard({ heard: [low, high] }: TalkFigure, value: number): number {
  if (value <= 0) return NOWHERE;
  const [middle, half] = [Math.log(low * high) / 2, Math.log(high / low) / 2 + 0.01];
  return Math.max(NOWHERE, -0.5 * ((Math.log(value) - middle) / half) ** 2 - Math.log(half));
}

const takenBy = new Map<SaidDimension, readonly TalkFigureId[]>();
for (const dimension of new Set(figureIds.flatMap((id) => talkFigures[id].takes)))
  takenBy.set(
    dimension,
    figureIds.filter((id) => talkFigures[id].takes.includes(dimension)),
  );
const none = reasons.map((reason): Candidate => ({ label: `-${reason}`, values: [], size: 0 }));

const degreesAs: readonly SaidDimension[] = ['temperature', 'gravity', 'strength'];

/** What a quantity may be, figures first. */
export function candidatesOf(quantity: SpokenQuantity, before: UnitsBefore): readonly Candidate[] {
  const { dimension, degrees } = quantity;
  const bare = dimension === 'bare' || dimension === 'date';
  const takes = degrees ? [...new Set(degreesAs.flatMap((each) => takenBy.get(each)!))] : (takenBy.get(dimension === 'date' ? 'bare' : dimension) ?? []); // prettier-ignore
  const figures = takes.flatMap((label): Candidate[] => {
    const figure = talkFigures[label];
    const [low, high] = figure.range;
    const slack = bare || degrees ? 1 : sizeless.has(figure.kind) ? ABOVE : BEYOND;
    const isInReach = (value: number) => value >= low / slack && value <= high * slack;
    const unit = unitsAs(quantity, figure, before).find((each) =>
      valuesFor(quantity, label, each).every(isInReach),
    );
    if (unit === undefined) return [];
    const values = valuesFor(quantity, label, unit);
    const value = values.length === 2 ? (values[0]! + values[1]!) / 2 : values[0]!;
    const log = ties[label] && logOf(label, value);
    return [{ label, unit, values, size: log === undefined ? whereHeard(figure, value) : inAnyHouse(label, log), ...(log === undefined ? {} : { log }) }]; // prettier-ignore
  });
  return [...figures, ...none];
}
