// Every figure of the table by all its names: its label, its head, and what the trade also calls it; and the pace that a label tells.
import {
  figureIds,
  figureTable,
  headOf,
  isGiven,
  pathsOf,
  stageOf,
  type FigureId,
} from '../core/figures/index.ts';
import type { LedgerPace } from '../core/line/ledger.ts';
import { kindOfFigure } from '../house/prose.ts';

export interface NamedOfTable {
  readonly id: FigureId;
  readonly path: string;
  readonly names: readonly string[];
  /** The pace in its label, where it has no other: malt a week, mashes in a year. */
  readonly pace?: LedgerPace;
}

/** What the table does not call it. */
const alsoCalled: Partial<Readonly<Record<FigureId, readonly string[]>>> = {
  maltPerMash: ['malt', 'grist'],
  liquorRatio: ['liquor to grist ratio', 'ratio of water to malt'],
  firstWater: ['first water', 'mashing liquor', 'strike water'],
  firstWaterTemperature: ['strike temperature', 'heat of the first water'],
  mashTemperature: ['temperature of the mash'],
  wortVolume: ['wort', 'worts'],
  wortPlato: ['original extract', 'plato of the wort'],
  wortExtract: ['extract in the wort', 'sugar in the wort'],
  mashEfficiency: ['mash efficiency', 'brewhouse efficiency'],
  draff: ['draff', 'spent grains'],
  setTemperature: ['setting temperature', 'temperature when the yeast goes in'],
  yeast: ['yeast'],
  fermentationHours: ['fermentation time', 'hours of fermentation', 'length of the fermentation'],
  finalGravity: ['gravity of the wash', 'gravity at the end'],
  washVolume: ['wash', 'charge of the wash still'],
  washStrength: ['strength of the wash'],
  washAlcohol: ['pure alcohol in the wash'],
  carbonDioxide: ['carbon dioxide', 'gas from fermenting'],
  lowWinesVolume: ['low wines'],
  lowWinesStrength: ['strength of the low wines'],
  potAleVolume: ['pot ale'],
  chargeVolume: ['spirit charge', 'charge of the spirit still'],
  chargeStrength: ['strength of the spirit charge', 'strength of the charge'],
  boilOff: ['heat of both runs', 'heat to distil'],
  foreshotsTaken: ['foreshots'],
  foreshotsMeanStrength: ['foreshots strength'],
  heartBegins: ['start of the heart', 'first cut', 'strength at the start of the heart'],
  heartEnd: ['end of the heart', 'second cut', 'cut to feints', 'strength at the end of the heart'],
  heartVolume: ['new spirit', 'heart', 'new make'],
  heartStrength: ['strength of the heart', 'new make strength', 'heart strength', 'strength off the still'],
  heartAlcohol: ['pure alcohol', 'pure alcohol in the heart', 'output of pure alcohol'],
  feintsVolume: ['feints'],
  feintsStrength: ['feints strength'],
  spentLeesVolume: ['spent lees'],
  fillingStrength: ['cask filling strength', 'entry strength'],
  fillingVolume: ['spirit filled into wood', 'spirit filled into casks', 'filled volume'],
  fillingAlcohol: ['pure alcohol filled into casks'],
  fillingWater: ['water added before filling', 'water added before casking', 'water to filling strength'],
  caskSize: ['average cask', 'mean cask'],
  casksPerMash: ['casks', 'casks filled'],
  casksInStore: ['casks in the warehouse', 'stock of casks', 'casks lying in the store'],
  yearsInWood: ['age at bottling', 'years in the cask'],
  alcoholLoss: ['yearly loss of alcohol', 'angels share a year'],
  maturedVolume: ['spirit out of the casks'],
  maturedStrength: ['strength out of the cask', 'strength after maturing', 'strength at the end of maturing'],
  alcoholLost: ['pure alcohol lost in the wood', 'alcohol lost to the angels'],
  inCasks: ['alcohol left in the emptied casks'],
  inFilters: ['spirit lost in bottling'],
  toWood: ['alcohol soaked into the wood'],
  bottlingVolume: ['spirit bottled'],
  bottlingAlcohol: ['pure alcohol bottled'],
  bottlingWater: ['water added before bottling', 'water to bottling strength', 'reducing water for bottling'],
  bottleSize: ['size of the bottle', 'bottle size'],
  bottles: ['bottles'],
};

/** What the table calls by one word of another figure: these go by these names alone. */
const onlyCalled: Partial<Readonly<Record<FigureId, readonly string[]>>> = {
  foreshotsShare: ['share of the foreshots in the alcohol', 'foreshots as a percentage of the alcohol'],
  foreshotsVolume: ['set litres of the foreshots'],
  foreshotsMinutes: ['minutes of foreshots', 'foreshots in minutes'],
  foreshotsStrength: ['strength at the end of the foreshots'],
  foreshotsBegin: ['strength at the start of the run', 'strength at the start of the foreshots'],
};

const PACE_OF_LABEL = /\s+(?:(?:from|of|for|in)\s+)?an?\s+(mash|week|year)$/i;

/** A name without the pace at its end. */
export const withoutPace = (name: string): string => name.replace(PACE_OF_LABEL, '');

/** The figures that a line holds. */
export const figuresNamed: readonly NamedOfTable[] = figureIds.flatMap((id): NamedOfTable[] => {
  const figure = figureTable[id];
  const path = isGiven(figure) ? `house.${id}` : pathsOf(id).find((at) => !at.startsWith('beside.'));
  const about = path === undefined ? undefined : kindOfFigure(path);
  if (path === undefined || about === undefined) return [];
  const at = figure.at === undefined ? path : pathsOf(id)[0]!;
  const grows = kindOfFigure(at)?.amount === true;
  const pace = PACE_OF_LABEL.exec(figure.label)?.[1]?.toLowerCase() as LedgerPace | undefined;
  const labels = [...new Set([figure.label, headOf(id)])].map((name) => withoutPace(name.replace(/,\s*\d.*$/, '')));
  return [{ id, path: grows ? at : path, names: onlyCalled[id] ?? [...labels, ...(alsoCalled[id] ?? [])], ...(pace && !grows && { pace }) }];
}); // prettier-ignore

/** Words that say where a figure is met, and need not be said of it. */
export const wordsOfStage = {
  malting: 'malting maltings',
  milling: 'mill milling grist',
  mashing: 'mashing tun mash',
  fermenting: 'washback washbacks tub fermenting fermentation tun room',
  distilling: 'still stills run runs distilling distilled stillhouse',
  maturing: 'cask casks wood warehouse store maturing matured bottling bottle',
} as const;
export const stageWords = (id: FigureId): string => wordsOfStage[stageOf(id)];
