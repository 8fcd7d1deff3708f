// Every figure of the handbook, once: kind, limits, label, where it stands in the line. All other tables are made from this one.
import { stages, type Figure, type GivenFigure, type QuotedAs, type Stage } from './define.ts';
import { distillingFigures, distillingChoices } from './distilling.ts';
import { fermentingFigures } from './fermenting.ts';
import { maltingFigures } from './malting.ts';
import { mashingFigures, mashingChoices } from './mashing.ts';
import { maturingFigures } from './maturing.ts';
import { millingFigures } from './milling.ts';

export { stages };
export type {
  FigureChoice,
  RangeEnds,
  Figure,
  GivenFigure,
  QuotedAs,
  Spread,
  Stage,
  Things,
  Usual,
} from './define.ts';

const byStage = {
  malting: maltingFigures,
  milling: millingFigures,
  mashing: mashingFigures,
  fermenting: fermentingFigures,
  distilling: distillingFigures,
  maturing: maturingFigures,
} as const;
const figures = {
  ...maltingFigures,
  ...millingFigures,
  ...mashingFigures,
  ...fermentingFigures,
  ...distillingFigures,
  ...maturingFigures,
} as const;
type Figures = typeof figures;

/** The name of a figure in this table. */
export type FigureId = keyof Figures;
type IdOf<F> = { [N in FigureId]: Figures[N] extends F ? N : never }[FigureId];

/** The kind of a figure, as a type. */
export type KindOf<N extends FigureId> = Figures[N]['kind'];
/** A figure of the house that is a number. */
export type NumberName = IdOf<Pick<GivenFigure, 'is'>>;
/** The name of a figure where a guide says it. */
export type NameWhereSaid<N extends FigureId = FigureId> = {
  [M in N]: Figures[M] extends { readonly alias: infer A extends string } ? A : M;
}[N];
/** A figure that is held against others when a guide quotes it, by its name there. */
export type QuotableName = NameWhereSaid<IdOf<{ readonly quoted: QuotedAs }>>;

/** The table, in the order of the line. */
export const figureTable: Readonly<Record<FigureId, Figure>> & {
  readonly [N in NumberName]: GivenFigure & { readonly kind: KindOf<N> };
} = figures;
export const figureIds = Object.keys(figures) as readonly FigureId[];

/** The figures of the house that are choices. */
export const choices = { ...mashingChoices, ...distillingChoices } as const;
export type ChoiceName = keyof typeof choices;
const choicesByStage: Partial<Record<Stage, object>> = {
  mashing: mashingChoices,
  distilling: distillingChoices,
};

const stageById = new Map<string, Stage>(
  stages.flatMap((stage) =>
    Object.keys({ ...byStage[stage], ...choicesByStage[stage] }).map((id) => [id, stage] as const),
  ),
);
/**
 * The stage whose figure or choice it is.
 * @example stageOf('heartEnd') // 'distilling' (the heart is of the spirit still)
 */
export const stageOf = (id: FigureId | ChoiceName): Stage => stageById.get(id)!;

const idWhereSaid = new Map<string, FigureId>(figureIds.map((id) => [figureTable[id].alias ?? id, id]));
/**
 * The figure that goes by a name where a guide says it.
 * @example nameWhereSaid(figureSaid('heartStrength')) // 'heartStrength' (there and back)
 */
export const figureSaid = (name: NameWhereSaid): FigureId => idWhereSaid.get(name)!;
/**
 * The name of a figure where a guide says it.
 * @example figureSaid(nameWhereSaid('heartEnd')) // 'heartEnd' (there and back)
 */
export const nameWhereSaid = (id: FigureId) => (figureTable[id].alias ?? id) as NameWhereSaid;

/**
 * True for a figure that the house gives.
 * @example [isGiven(figureTable.heartEnd), isGiven(figureTable.carbonDioxide)] // [true, false] (the gas is reckoned)
 */
export const isGiven = (figure: Figure): figure is GivenFigure =>
  figure.is === 'set' || figure.is === 'measured';

/**
 * A figure's name as it stands at the head of a sentence or on a card.
 * @example headOf('wortVolume') === (figureTable.wortVolume.told ?? figureTable.wortVolume.label) // true (as a sentence says it, or its label)
 */
export const headOf = (id: FigureId): string => figureTable[id].told ?? figureTable[id].label;

/**
 * Where a figure stands in the line, as “heart.volume”: what it can mean, the first of which is told. Empty where no house gives it.
 * @example pathsOf('carbonDioxide') // ['wash.carbonDioxide'] (where it stands in the line)
 */
export function pathsOf(id: FigureId): readonly string[] {
  const figure = figureTable[id];
  if (figure.at === undefined) return isGiven(figure) ? [`house.${id}`] : [];
  return typeof figure.at === 'string' ? [figure.at] : figure.at;
}
