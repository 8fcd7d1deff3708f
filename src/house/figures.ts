// The table of house figures: what each means, its kind, its range, and where it stands before a reader changes it.
import harrowmere from '../../content/houses/harrowmere.json' with { type: 'json' };
import type { KindName } from '../core/kinds.ts';
import type { House } from '../core/line/house.ts';

export const stages = ['malting', 'milling', 'mashing', 'fermenting', 'distilling', 'maturing'] as const;
export type Stage = (typeof stages)[number];

interface Told {
  readonly stage: Stage;
  readonly label: string;
  readonly meaning: string;
}
/** A figure that is a number, from `range[0]` to `range[1]`, moved by `step` with the arrow keys. */
export interface NumberFigure extends Told {
  readonly kind: KindName;
  readonly range: readonly [number, number];
  readonly step: number;
}
/** A figure that is a choice; each option with its wording. */
export interface ChoiceFigure extends Told {
  readonly options: Readonly<Record<string, string>>;
}

export type FigureName = keyof House;
export type NumberName = { [N in FigureName]: House[N] extends number ? N : never }[FigureName];
export type ChoiceName = Exclude<FigureName, NumberName>;

// prettier-ignore
export const numberFigures = {
  barleyMoisture: { stage: 'malting', kind: 'percent', label: 'Moisture of the barley', range: [8, 20], step: 0.5, meaning: 'Water in the barley as it is stored, part of its whole mass.' },
  maltMoisture: { stage: 'malting', kind: 'percent', label: 'Moisture of the malt', range: [1, 8], step: 0.1, meaning: 'Water in the kilned malt, part of its whole mass.' },
  maltingLoss: { stage: 'malting', kind: 'percent', label: 'Dry matter lost in malting', range: [2, 25], step: 0.5, meaning: 'What breathing, rootlets and steep water take, part of the barley’s dry matter.' },
  solubleExtract: { stage: 'malting', kind: 'percent', label: 'Soluble extract', range: [50, 90], step: 0.1, meaning: 'Part of the malt, as it is, that dissolves in the laboratory’s mash.' },
  fermentability: { stage: 'malting', kind: 'percent', label: 'Fermentability', range: [50, 100], step: 0.1, meaning: 'Part of that extract that yeast can use.' },
  maltPerMash: { stage: 'milling', kind: 'mass', label: 'Malt in a mash', range: [10, 50_000], step: 50, meaning: 'Malt milled and mashed in one go.' },
  husk: { stage: 'milling', kind: 'percent', label: 'Husk in the grist', range: [0, 100], step: 1, meaning: 'Coarse part, kept back by the widest sieve.' },
  flour: { stage: 'milling', kind: 'percent', label: 'Flour in the grist', range: [0, 100], step: 1, meaning: 'Fine part: what passes the flour sieve, 0.253 mm in a laboratory’s stack, 0.212 mm in a hand box. What is neither husk nor flour is grits.' },
  millRate: { stage: 'milling', kind: 'milling', label: 'Rate of the mill', range: [0.05, 50], step: 0.1, meaning: 'Malt that the mill takes in an hour.' },
  mashesPerWeek: { stage: 'mashing', kind: 'count', label: 'Mashes in a week', range: [1, 60], step: 1, meaning: 'Each mash fills one washback; its wash is distilled as one charge, or in several.' },
  weeksPerYear: { stage: 'mashing', kind: 'count', label: 'Working weeks in a year', range: [1, 52], step: 1, meaning: 'Weeks in which the house mashes.' },
  liquorRatio: { stage: 'mashing', kind: 'liquorRatio', label: 'First water to grist', range: [2, 8], step: 0.1, meaning: 'Litres of the first water for each kilogram of grist.' },
  mashTemperature: { stage: 'mashing', kind: 'temperature', label: 'Mash temperature', range: [40, 80], step: 0.5, meaning: 'Temperature of grist and first water once mixed.' },
  gristTemperature: { stage: 'mashing', kind: 'temperature', label: 'Grist temperature', range: [-5, 40], step: 1, meaning: 'Temperature of the grist before it meets the water.' },
  secondWater: { stage: 'mashing', kind: 'temperature', label: 'Second water', range: [50, 98], step: 1, meaning: 'Temperature of the second water.' },
  lastWater: { stage: 'mashing', kind: 'temperature', label: 'Last water', range: [50, 100], step: 1, meaning: 'Temperature of the last, weak water, which goes to the next mash.' },
  wortVolume: { stage: 'mashing', kind: 'volume20', label: 'Wort collected', range: [20, 300_000], step: 50, meaning: 'Wort run into the washback from one mash, at 20 °C.' },
  originalGravity: { stage: 'mashing', kind: 'gravity', label: 'Original gravity', range: [1.02, 1.12], step: 0.001, meaning: 'Density of the wort over that of water, both at 20 °C, before the yeast works.' },
  draffMoisture: { stage: 'mashing', kind: 'percent', label: 'Moisture of the draff', range: [50, 90], step: 1, meaning: 'Water in the spent grains as they leave the tun.' },
  setTemperature: { stage: 'fermenting', kind: 'temperature', label: 'Set temperature', range: [10, 35], step: 0.5, meaning: 'Temperature of the wort when the yeast goes in.' },
  yeast: { stage: 'fermenting', kind: 'mass', label: 'Pressed yeast', range: [0.05, 2000], step: 1, meaning: 'Pressed yeast put into one washback.' },
  fermentationHours: { stage: 'fermenting', kind: 'hours', label: 'Hours in the washback', range: [24, 200], step: 1, meaning: 'From yeast in to wash out.' },
  finalGravity: { stage: 'fermenting', kind: 'gravity', label: 'Final gravity', range: [0.985, 1.04], step: 0.001, meaning: 'Gravity of the wash when the yeast has done; alcohol makes it lighter than water.' },
  airPressure: { stage: 'distilling', kind: 'pressure', label: 'Air pressure', range: [60, 110], step: 0.5, meaning: 'Pressure of the air at the still house; it falls with height and weather.' },
  washReflux: { stage: 'distilling', kind: 'share', label: 'Reflux of the wash still', range: [0, 1], step: 0.01, meaning: 'Part of one further stage that its head and neck give. Set it so that strength and litres of the low wines agree with yours.' },
  washEnd: { stage: 'distilling', kind: 'strength', label: 'Wash run ends at', range: [0.1, 20], step: 0.1, meaning: 'Strength of the low wines at the safe when the wash still is stopped.' },
  spiritReflux: { stage: 'distilling', kind: 'share', label: 'Reflux of the spirit still', range: [0, 1], step: 0.01, meaning: 'Part of one further stage that head and neck give: 0 for none, 1 for a whole one. Set it so that the strength at the start of the run agrees with your safe.' },
  foreshotsShare: { stage: 'distilling', kind: 'percent', label: 'Foreshots, by share', range: [0, 40], step: 0.1, meaning: 'Part of the charge’s alcohol taken as foreshots.' },
  foreshotsVolume: { stage: 'distilling', kind: 'volume20', label: 'Foreshots, by volume', range: [0, 20_000], step: 1, meaning: 'Litres taken as foreshots in one run, at 20 °C.' },
  foreshotsMinutes: { stage: 'distilling', kind: 'minutes', label: 'Foreshots, by time', range: [0, 180], step: 1, meaning: 'Minutes for which the foreshots run.' },
  foreshotsFlow: { stage: 'distilling', kind: 'volumeFlow', label: 'Flow of the foreshots', range: [1, 20_000], step: 10, meaning: 'Litres that come over in an hour while they run; one charge of the house a run.' },
  foreshotsStrength: { stage: 'distilling', kind: 'strength', label: 'Foreshots, by strength', range: [20, 90], step: 0.1, meaning: 'Strength at the safe at which the foreshots end.' },
  heartEnd: { stage: 'distilling', kind: 'strength', label: 'Heart ends at', range: [20, 85], step: 0.1, meaning: 'Strength at the safe at which the heart ends and the feints begin.' },
  feintsEnd: { stage: 'distilling', kind: 'strength', label: 'Feints end at', range: [0.1, 40], step: 0.1, meaning: 'Strength at the safe at which the spirit still is stopped.' },
  chargeLimit: { stage: 'distilling', kind: 'strength', label: 'Strongest spirit charge', range: [15, 60], step: 0.5, meaning: 'A stronger charge is let down to this with water, where the house does that.' },
  fillingStrength: { stage: 'maturing', kind: 'strength', label: 'Filling strength', range: [40, 80], step: 0.1, meaning: 'Strength to which new spirit is let down before it goes into wood.' },
  barrels: { stage: 'maturing', kind: 'percent', label: 'Share of barrels, 200 L', range: [0, 100], step: 1, meaning: 'Barrels in every hundred casks filled.' },
  hogsheads: { stage: 'maturing', kind: 'percent', label: 'Share of hogsheads, 250 L', range: [0, 100], step: 1, meaning: 'Hogsheads in every hundred casks filled. The rest are butts of 500 L.' },
  alcoholLoss: { stage: 'maturing', kind: 'percent', label: 'Alcohol lost in a year', range: [0, 15], step: 0.1, meaning: 'Part of the alcohol in a cask that leaves it in a year.' },
  storeHumidity: { stage: 'maturing', kind: 'percent', label: 'Humidity of the store', range: [20, 98], step: 1, meaning: 'Relative humidity of the air round the casks.' },
  steadyHumidity: { stage: 'maturing', kind: 'percent', label: 'Humidity at which strength is steady', range: [40, 80], step: 1, meaning: 'In this air a cask of 63.5 % vol keeps its strength; fit it to a regauge.' },
  yearsInWood: { stage: 'maturing', kind: 'years', label: 'Years in wood', range: [1, 60], step: 1, meaning: 'Years from filling to bottling.' },
  bottlingStrength: { stage: 'maturing', kind: 'strength', label: 'Bottling strength', range: [37, 70], step: 0.1, meaning: 'Strength to which the spirit is let down for the bottle.' },
  bottleSize: { stage: 'maturing', kind: 'bottle', label: 'Bottle', range: [1, 450], step: 5, meaning: 'What a bottle holds.' },
} as const satisfies Record<NumberName, NumberFigure>;

export const choiceFigures = {
  foreshotsBy: {
    stage: 'distilling',
    label: 'Foreshots end',
    meaning: 'How the stillman decides that the heart begins.',
    options: {
      share: 'after a share of the alcohol',
      volume: 'after so many litres',
      minutes: 'after so many minutes',
      strength: 'at a strength',
    },
  },
  dilution: {
    stage: 'distilling',
    label: 'A charge that is too strong',
    meaning: 'What happens to a spirit charge above the strongest allowed.',
    options: { 'when-needed': 'is let down with water', never: 'is run as it is' },
  },
} as const satisfies Record<ChoiceName, ChoiceFigure>;

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
