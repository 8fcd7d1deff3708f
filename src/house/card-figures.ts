// The figures that a pocket card may carry: what a guide says of each, and where it stands in the line.
import type { QuotableName } from '../core/line/quoted.ts';
import { spoken, spokenAs, type Things } from '../core/line/spoken.ts';
import type { Line } from '../core/line/line.ts';
import type { Stage } from './figures.ts';
import { figureValue, kindOfFigure } from './prose.ts';

export interface CardFigure {
  readonly stage: Stage;
  readonly label: string;
  /** The figure's name in prose. */
  readonly path: string;
  /** The name under which it is rounded as people speak; without one it is said by its kind. */
  readonly spoken?: QuotableName;
  /** What is counted, where it is said by its kind. */
  readonly things?: Things;
}

// prettier-ignore
export const cardFigures: readonly CardFigure[] = [
  { stage: 'malting', label: 'Barley for a mash', path: 'barley.mass' },
  { stage: 'malting', label: 'Spirit that a tonne of malt could give', path: 'malt.spiritYield', spoken: 'spiritYield' },
  { stage: 'milling', label: 'Malt in a mash', path: 'malt.mass', spoken: 'maltPerMash' },
  { stage: 'milling', label: 'Malt in a week', path: 'pace.maltPerWeek', spoken: 'maltPerWeek' },
  { stage: 'mashing', label: 'First water goes in at', path: 'mash.strike' },
  { stage: 'mashing', label: 'Wort from a mash', path: 'wort.volume', spoken: 'wortVolume' },
  { stage: 'mashing', label: 'Draff from a mash', path: 'mash.draff' },
  { stage: 'fermenting', label: 'Hours in the washback', path: 'house.fermentationHours' },
  { stage: 'fermenting', label: 'Original gravity', path: 'house.originalGravity', spoken: 'originalGravity' },
  { stage: 'fermenting', label: 'Final gravity', path: 'house.finalGravity', spoken: 'finalGravity' },
  { stage: 'fermenting', label: 'Strength of the wash', path: 'wash.strength', spoken: 'washStrength' },
  { stage: 'fermenting', label: 'Carbon dioxide from a mash', path: 'wash.carbonDioxide' },
  { stage: 'distilling', label: 'Low wines from a mash', path: 'lowWines.volume', spoken: 'lowWinesVolume' },
  { stage: 'distilling', label: 'Strength of the low wines', path: 'lowWines.strength', spoken: 'lowWinesStrength' },
  { stage: 'distilling', label: 'Spirit charge for a mash', path: 'charge.volume', spoken: 'chargeVolume' },
  { stage: 'distilling', label: 'Strength of the spirit charge', path: 'charge.strength', spoken: 'chargeStrength' },
  { stage: 'distilling', label: 'The heart ends at', path: 'house.heartEnd', spoken: 'heartEnds' },
  { stage: 'distilling', label: 'New spirit from a mash', path: 'heart.volume', spoken: 'heartVolume' },
  { stage: 'distilling', label: 'Strength of the new spirit', path: 'heart.strength', spoken: 'heartStrength' },
  { stage: 'distilling', label: 'Pure alcohol from a mash', path: 'heart.alcohol', spoken: 'heartAlcohol' },
  { stage: 'maturing', label: 'Filling strength', path: 'filling.strength', spoken: 'fillingStrength' },
  { stage: 'maturing', label: 'Casks filled from a mash', path: 'casks.perMash', things: ['cask', 'casks'] },
  { stage: 'maturing', label: 'Casks filled in a week', path: 'casks.perWeek', spoken: 'casksPerWeek' },
  { stage: 'maturing', label: 'Casks filled in a year', path: 'casks.perYear', spoken: 'casksPerYear' },
  { stage: 'maturing', label: 'Casks in store', path: 'casks.inStore', spoken: 'casksInStore' },
  { stage: 'maturing', label: 'Years in wood', path: 'house.yearsInWood', spoken: 'yearsInWood' },
  { stage: 'maturing', label: 'Alcohol lost in a year', path: 'house.alcoholLoss', spoken: 'alcoholLoss' },
  { stage: 'maturing', label: 'Bottling strength', path: 'bottling.strength', spoken: 'bottlingStrength' },
  { stage: 'maturing', label: 'Bottles from a cask', path: 'bottling.bottlesPerCask', spoken: 'bottlesPerCask' },
  { stage: 'maturing', label: 'Bottles in a year', path: 'bottling.bottlesPerYear', spoken: 'bottlesPerYear' },
];

/** A card's figure as a guide says it. */
export function saidOnCard({ path, spoken: name, things }: CardFigure, line: Line): string {
  const value = figureValue(line, path);
  return name ? spoken(name, value) : spokenAs(kindOfFigure(path)!.kind, value, things);
}
