// The figures of a house, made from the table of figures, and where each stands before a reader changes it.
import harrowmere from '../../content/houses/harrowmere.json' with { type: 'json' };
import {
  choices,
  figureIds,
  figureTable,
  isGiven,
  stageOf,
  type FigureChoice,
  type ChoiceName,
  type RangeEnds,
  type GivenFigure,
  type KindOf,
  type NumberName,
  type Stage,
} from '../core/figures/index.ts';
import type { House } from '../core/line/house.ts';

export { stages } from '../core/figures/index.ts';
export type { ChoiceName, NumberName, Stage } from '../core/figures/index.ts';
export type FigureName = keyof House;

/** A figure that is a number, from `range[0]` to `range[1]`, moved by `step` with the arrow keys. */
export interface NumberFigure extends Pick<GivenFigure, 'kind' | 'label' | 'meaning' | 'step'> {
  readonly stage: Stage;
  readonly range: RangeEnds;
}
/** A figure that is a choice; each option with its wording. */
export interface ChoiceFigure extends FigureChoice {
  readonly stage: Stage;
}

const numberNames = figureIds.filter((id): id is NumberName => isGiven(figureTable[id]));

export const numberFigures = Object.fromEntries(
  numberNames.map((name) => {
    const { kind, label, meaning, step, limits } = figureTable[name];
    return [name, { stage: stageOf(name), kind, label, meaning, step, range: limits }];
  }),
) as { readonly [N in NumberName]: NumberFigure & { readonly kind: KindOf<N> } };

export const choiceFigures = Object.fromEntries(
  Object.entries(choices).map(([name, choice]) => [name, { stage: stageOf(name as ChoiceName), ...choice }]),
) as { readonly [C in ChoiceName]: ChoiceFigure & (typeof choices)[C] };

export const figureNames = Object.keys(harrowmere.figures) as readonly FigureName[];

/** The built-in house, from content/houses/harrowmere.json. */
export const builtInHouse = harrowmere.figures as unknown as House;
export const builtInName = harrowmere.name;

/** True when a figure is a number and not a choice. */
export function isNumberName(name: string): name is NumberName {
  return Object.hasOwn(numberFigures, name);
}

/** True when a name is one of a choice's. */
export function isChoiceName(name: string): name is ChoiceName {
  return Object.hasOwn(choiceFigures, name);
}

/** What a figure moves where it moves no alcohol, as the end of a sentence; nothing for one that always moves some. */
export function insteadOf(name: FigureName): string | undefined {
  return isNumberName(name) ? figureTable[name].instead : undefined;
}
