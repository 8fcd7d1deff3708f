// The figures that a guide may quote: the words that point to each or away, and what the table of figures says of it.
import { figureSaid, figureTable, stageOf, type Ends, type NameWhereSaid, type QuotableName, type Stage } from '../core/figures/index.ts'; // prettier-ignore
import { kinds, type KindName } from '../core/kinds.ts';
import type { Dimension } from './units.ts';
import type { ConceptName } from './words.ts';

/** What a quantity is a measure of, in plain words. */
export type TalkKind =
  | 'mass' | 'volume' | 'alcohol' | 'yield' | 'strength' | 'grist share' | 'humidity' | 'loss' | 'percentage' | 'temperature' | 'time'
  | 'gravity' | 'count' | 'smoke' | 'length' | 'area' | 'pressure' | 'money' | 'date' | 'clock' | 'number'; // prettier-ignore

/** The words by which a figure is known in a script, and what its kind does not say of it. */
interface Words {
  readonly kind?: TalkKind;
  readonly unit?: string;
  readonly takes?: readonly Dimension[];
  /** What is heard of it in most houses, of every size: beyond that it is likelier something else. */
  readonly heard: Ends;
  /** What may be believed of it where a script cannot be asked: “three weeks of the year” are not the weeks of work. Left out, all that the figure can be. */
  readonly believed?: Ends;
  /** Words that speak for it, above nought, or against it. */
  readonly cues: Partial<Record<ConceptName, number>>;
  /** Figures that it is often told right after. */
  readonly after?: readonly NameWhereSaid[];
  /** Its place in a fall, "from 72 down to 60". */
  readonly fall?: 'from' | 'to';
}
export interface TalkFigure extends Words {
  readonly stage: Stage;
  /** Other stages where it is told as often. */
  readonly also?: readonly Stage[];
  readonly kind: TalkKind;
  /** The handbook's unit for it: what `inUnit` is asked for. */
  readonly unit: string;
  readonly takes: readonly Dimension[];
  /** What the figure can be when it is read out of a script, in its unit. */
  readonly range: Ends;
}

const alcoholic = { alcoholic: 0.8, moisture: -2 } as const;
const dry = { alcoholic: -1.5 } as const;
const away = { elsewhere: -1.5, law: -1.5, shop: -3, built: -1 } as const;
const notMalt = { delivery: -4, weighs: -4, draff: -4, gas: -4, yeast: -4, barley: 0, perHour: -4 } as const;
const notWater = {
  malting: -3,
  cooled: -3,
  store: -2,
  air: -3,
  condenser: -3,
  cutOn: 0,
  limit: -0.6,
} as const;
const notFlow = { capacity: -2, yeast: -3, water: -1.5, condenser: -2 } as const;

// prettier-ignore
const words = {
  maltPerMash: { heard: [300, 25_000], cues: { ...notMalt, perMash: 3, mash: 2, malt: 1.2, grist: 1, barley: 0.8, tun: 0.5, perWeek: -3, perYear: -3, delivery: -4 } },
  maltPerWeek: { heard: [2000, 400_000], cues: { ...notMalt, perWeek: 4.5, malt: 1, barley: 0.8, perMash: -2, perYear: -2.5 }, after: ['mashesPerWeek', 'maltPerMash'] },
  maltPerYear: { heard: [50_000, 2e7], cues: { ...notMalt, perYear: 4.5, malt: 1, barley: 0.8, perMash: -2, perWeek: -2.5 }, after: ['maltPerWeek', 'weeksPerYear'] },
  mashesPerWeek: { takes: ['mashes', 'times', 'bare'], heard: [2, 30], cues: { perWeek: 4, mash: 2, perYear: -3, cask: -2, washback: -2, stills: -2, ...away } },
  weeksPerYear: { kind: 'time', unit: 'weeks', takes: ['time'], believed: [20, 53], heard: [36, 52], cues: { perYear: 4.5, mash: 1, peat: -3, ferment: -3, age: -1 }, after: ['mashesPerWeek', 'maltPerWeek'] },
  solubleExtract: { heard: [70, 84], cues: { ...dry, extract: 4.5, malt: 0.5, grits: -3, husk: -3, moisture: -1.5, humidity: -2 } },
  fermentability: { heard: [80, 92], cues: { fermentable: 4.5, extract: 0.3 }, after: ['solubleExtract'] },
  spiritYield: { heard: [360, 450], cues: { yields: 2, perTonne: 2, malt: 1 } },
  husk: { kind: 'grist share', heard: [10, 35], cues: { husk: 4, grist: 1.5, grits: 0.3, flour: 0.3 } },
  grits: { kind: 'grist share', heard: [55, 85], cues: { grits: 4, grist: 1.2, husk: 0.3, flour: 0.3 }, after: ['husk'] },
  flour: { kind: 'grist share', heard: [3, 20], cues: { flour: 4, grist: 1.2, husk: 0.3, grits: 0.3 }, after: ['grits'] },
  firstWaterTemperature: { heard: [60, 73], cues: { ...notWater, water: 1.8, first: 2.6, mash: 0.6, tun: 0.6, second: -1, last: -1 } },
  secondWaterTemperature: { heard: [70, 84], cues: { ...notWater, water: 1.5, second: 3, first: -0.5, last: -1 }, after: ['firstWaterTemperature'] },
  lastWaterTemperature: { heard: [78, 98], cues: { ...notWater, water: 1.5, last: 3, kept: 0.7, first: -0.5, second: -0.5 }, after: ['secondWaterTemperature'] },
  wortVolume: { heard: [1000, 150_000], cues: { ...notFlow, wort: 4, collect: 1, gravity: 0.5, washStill: -2, cask: -2, lowWines: -2 } },
  originalGravity: { heard: [1.04, 1.09], cues: { gravity: 3, original: 2, wort: 2.5, finalGravity: -2 }, after: ['wortVolume'] },
  finalGravity: { heard: [0.99, 1.006], cues: { finalGravity: 3.5, gravity: 2, wash: 1, ferment: 1 }, after: ['washStrength', 'fermentationHours'] },
  fermentationHours: { heard: [40, 130], cues: { ferment: 2.5, lasts: 1.5, washback: 1.5, yeast: 1.5, wash: 0.5, malting: -3, spirit: -0.3, store: -2, ...away, perYear: -3 }, after: ['yeastMass', 'yeastVolume'] },
  yeastMass: { heard: [2, 1000], cues: { yeast: 4.5, pitch: 1.5, washback: 0.5, gas: -4, malt: -1, perHour: -3 } },
  yeastVolume: { believed: [0.2, 20_000], heard: [2, 3000], cues: { yeast: 4, cream: 3, pitch: 1.5, wort: -2, wash: -1 } },
  washVolume: { heard: [1000, 150_000], cues: { ...notFlow, wash: 3, washStill: 2.6, charge: 1, lowWines: -1.5, wort: -1.5, spiritStill: -2, heart: -2 } },
  washStrength: { heard: [5.5, 11], cues: { wash: 3,  ferment: 1, washback: 0.6, gravity: 0.3, ...alcoholic, lowWines: -1, loss: -3, angels: -4, moisture: -3 }, after: ['fermentationHours', 'washVolume', 'finalGravity'] },
  lowWinesVolume: { heard: [300, 60_000], cues: { ...notFlow, lowWines: 4, washStill: 0.6, spiritStill: -1.5, feints: -1, spiritCharge: -2, charge: -0.5, heart: -1.5 } },
  lowWinesStrength: { heard: [18, 29], cues: { ...alcoholic, lowWines: 3.5, comesOff: 1.5, washStill: 0.6, spiritStill: -1, feints: -1, spiritCharge: -2, limit: -0.8 }, after: ['lowWinesVolume'] },
  chargeVolume: { heard: [400, 90_000], cues: { ...notFlow, spiritStill: 3, spiritCharge: 3.5, charge: 1.3, feints: 1, lowWines: 0.4, heart: -1.5, washStill: -2.6, cask: -2 } },
  chargeStrength: { heard: [22, 34], cues: { ...alcoholic, spiritStill: 2.6, spiritCharge: 3.5, charge: 1.3, feints: 1, lowWines: 0.3, washStill: -1, limit: -2.5, cutOff: -0.5 }, after: ['chargeVolume'] },
  heartBegins: { heard: [68, 78], cues: { ...alcoholic, comesOff: -3, heart: 2.2, cutOn: 2.2, foreshots: 0.5, spirit: 0.6, average: -3, fill: -2, cask: -2 }, fall: 'from' },
  heartEnds: { heard: [56, 67], cues: { ...alcoholic, lowWines: -4, comesOff: -5, heart: 1.4, cutOff: 2.4, feints: 1, spirit: 0.3, average: -3, fill: -3, cask: -2, bottling: -2 }, after: ['heartBegins'], fall: 'to' },
  heartVolume: { heard: [100, 30_000], cues: { ...notFlow, heart: 3, newSpirit: 2, spirit: 1, pureAlcohol: -1, lowWines: -1.5, spiritStill: -0.5, spiritCharge: -1.5, washStill: -2, cask: -2 }, after: ['heartEnds'] },
  heartStrength: { heard: [64, 74], cues: { ...alcoholic, lowWines: -7, comesOff: 5, heart: 1.8, average: 3, newSpirit: 1, spirit: 0.8, cutOn: -0.6, cutOff: -1.5, fill: -2.5, cask: -2 }, after: ['heartVolume'] },
  heartAlcohol: { heard: [50, 20_000], cues: { heart: 2, perMash: 1, pureAlcohol: 2.5, perYear: -4, perWeek: -3 }, after: ['heartStrength', 'heartVolume'] },
  alcoholPerWeek: { heard: [500, 500_000], cues: { perWeek: 4, pureAlcohol: 2.5, perMash: -2, perYear: -3, cask: -2 } },
  alcoholPerYear: { heard: [10_000, 2e7], cues: { perYear: 4, pureAlcohol: 2.5, perMash: -2, perWeek: -3 } },
  fillingStrength: { heard: [57, 70], cues: { ...alcoholic, fill: 3.5, cask: 1.5, water: 0.5, bottling: -2.5, heart: -1, law: -2, cutOff: -0.5, average: -2, humidity: -2 } },
  caskSize: { heard: [100, 520], cues: { cask: 3.5, fill: 0.5, bottle: -1, yeast: -4, heart: -1 } },
  casksPerWeek: { takes: ['casks', 'bare'], believed: [0.2, 20_000], heard: [2, 3000], cues: { perWeek: 4, cask: 1.5, fill: 1.5, inStore: -1.5, perYear: -2, mash: -2, ...away } },
  casksPerYear: { takes: ['casks', 'bare'], heard: [100, 200_000], cues: { perYear: 4, cask: 1.5, fill: 1, inStore: -2, perWeek: -1.5, bottle: -1.5, mash: -1, ...away }, after: ['casksPerWeek'] },
  casksInStore: { takes: ['casks', 'bare'], believed: [20, 5e7], heard: [500, 2e6], cues: { inStore: 3, store: 1.5, cask: 2, perWeek: -3, perYear: -2, fill: -1, bottle: -1, thisOne: -4 } },
  yearsInWood: { heard: [3, 30], cues: { age: 2, ours: 1.5, cask: 1, store: 1, bottling: 1.5, loss: 0.3, built: -2.5, law: -4, stills: -2, perYear: -1, elsewhere: -1.5, mill: -2 } },
  alcoholLoss: { kind: 'loss', heard: [0.5, 4], cues: { ...dry, loss: 2.5, angels: 3, perYear: 1.5, humidity: -1, bottling: -1, elsewhere: -4 } },
  storeHumidity: { kind: 'humidity', heard: [55, 95], cues: { ...dry, humidity: 4, air: 1.5, store: 0.5, bottling: -2, fill: -2, malt: -2, moisture: -2 } },
  bottlingStrength: { heard: [40, 62], cues: { ...alcoholic, bottling: 3.2, bottle: 1.5, age: 0.6, fill: -2, law: -4, humidity: -2, heart: -1.5 }, after: ['yearsInWood'] },
  bottleSize: { heard: [35, 175], cues: { bottle: 3, bottling: 1.5, cask: -0.5 }, after: ['bottlingStrength', 'bottlesPerCask'] },
  bottlesPerCask: { takes: ['bottles', 'bare'], heard: [100, 900], cues: { perCask: 2.5, cask: 1.5, bottle: 2, perYear: -3, perWeek: -3 } },
  bottlesPerYear: { takes: ['bottles', 'bare'], heard: [2000, 5e7], cues: { perYear: 4, bottle: 2, sell: 1, perCask: -1.5, angels: -2.5 } },
  numberOfWashbacks: { takes: ['washbacks', 'bare'], heard: [2, 30], cues: { washback: 3.2, perWeek: -3, ferment: 0.5, mash: -1 } },
  numberOfStills: { takes: ['stills', 'bare'], heard: [2, 30], cues: { stills: 3.2, perWeek: -3, washStill: -0.8, spiritStill: -0.8 } },
} as const satisfies Record<QuotableName, Words> & Partial<Record<NameWhereSaid, Words>>;

/** What a guide calls a quantity of a kind, and what it may be said in. */
const saidIn: Partial<Readonly<Record<KindName, readonly [TalkKind, readonly Dimension[]]>>> = {
  mass: ['mass', ['mass']],
  volume: ['volume', ['volume']],
  volume20: ['volume', ['volume']],
  bottle: ['volume', ['volume']],
  alcohol: ['alcohol', ['alcohol', 'volume']],
  yield: ['yield', ['yield']],
  strength: ['strength', ['percent', 'strength', 'bare']],
  percent: ['percentage', ['percent', 'share', 'bare']],
  temperature: ['temperature', ['temperature', 'bare']],
  gravity: ['gravity', ['gravity', 'bare']],
  hours: ['time', ['time']],
  years: ['time', ['time']],
  count: ['count', ['bare']],
};

export type FigureId = keyof typeof words;
export const figureIds = Object.keys(words) as readonly FigureId[];

function talkFigure(name: FigureId): TalkFigure {
  const own: Words = words[name];
  const id = figureSaid(name);
  const { kind, limits, also } = figureTable[id];
  const [talkKind, takes] = saidIn[kind] ?? (['number', ['bare']] as const);
  return {
    stage: stageOf(id),
    ...(also ? { also } : {}),
    kind: talkKind,
    unit: kind === 'gravity' ? 'gravity' : kinds[kind].unit,
    takes,
    range: own.believed ?? limits,
    ...own,
  };
}

export const talkFigures = Object.fromEntries(
  figureIds.map((name) => [name, talkFigure(name)]),
) as unknown as Readonly<Record<FigureId, TalkFigure>>;
