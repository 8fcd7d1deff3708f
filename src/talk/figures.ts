// The figures that a guide may tell: what each is made of, what it may be said in, and what the table of figures says of it.
import { figureSaid, figureTable, nameWhereSaid, stageOf, type RangeEnds, type FigureId as TableId, type NameWhereSaid, type QuotableName, type Stage } from '../core/figures/index.ts'; // prettier-ignore
import { kinds, type KindName } from '../core/kinds.ts';
import type { SaidDimension } from './units.ts';

/** What a quantity is a measure of, in plain words. */
export type TalkKind =
  | 'mass' | 'volume' | 'alcohol' | 'yield' | 'strength' | 'grist share' | 'humidity' | 'loss' | 'percentage' | 'temperature' | 'time'
  | 'gravity' | 'count' | 'smoke' | 'milling' | 'flow' | 'ratio' | 'length' | 'area' | 'pressure' | 'energy' | 'money' | 'date' | 'clock' | 'number'; // prettier-ignore

interface Told {
  /** What it is made of, for the reader to learn by: of what, which, for how long. Figures that share a part share what is learnt of it. */
  readonly parts: string;
  /** What is heard of it in most houses, of every size. */
  readonly heard: RangeEnds;
  /** What may be believed of it where a talk cannot be asked. Left out, all that the figure can be. */
  readonly believed?: RangeEnds;
  readonly kind?: TalkKind;
  readonly unit?: string;
  readonly takes?: readonly SaidDimension[];
  /** Its name in the table of figures, where that is another. */
  readonly inTable?: TableId;
  /** For a figure that the table does not have. */
  readonly own?: { readonly kind: KindName; readonly label: string; readonly stage: Stage };
}
export interface TalkFigure {
  readonly parts: readonly string[];
  readonly stage: Stage;
  readonly kind: TalkKind;
  /** The handbook's unit for it: what `inUnit` is asked for. */
  readonly unit: string;
  readonly takes: readonly SaidDimension[];
  readonly heard: RangeEnds;
  /** What the figure can be when it is read out of a talk, in its unit. */
  readonly range: RangeEnds;
  readonly label?: string;
  readonly inTable?: TableId;
}

const casks = ['casks', 'bare'] as const;
const share = ['share', 'percent', 'bare', 'casks'] as const;
const distilling = (kind: KindName, label: string) => ({
  own: { kind, label, stage: 'distilling' as const },
});
const maturing = (kind: KindName, label: string) => ({ own: { kind, label, stage: 'maturing' as const } });

// prettier-ignore
const told = {
  barleyMoisture: { heard: [11, 16], parts: 'barley moisture' },
  maltMoisture: { heard: [3.5, 5.5], parts: 'malt moisture' },
  barley: { heard: [300, 18_000], parts: 'barley perMash mass' },
  barleyPerBottle: { heard: [0.7, 1.6], believed: [0.1, 20], parts: 'barley bottle each mass' },
  peat: { heard: [1, 60], believed: [0, 400], kind: 'smoke', unit: 'ppm', takes: ['smoke', 'bare'], own: { kind: 'ppm', label: 'Peat in the malt', stage: 'malting' }, parts: 'peat' },
  solubleExtract: { heard: [70, 84], parts: 'extract' },
  fermentability: { heard: [80, 92], parts: 'fermentable' },
  spiritYield: { heard: [340, 430], takes: ['yield', 'alcohol', 'volume', 'bare'], parts: 'alcohol malt perTonne yield' },
  maltPerMash: { heard: [300, 16_000], parts: 'malt perMash mass' },
  maltPerWeek: { heard: [2000, 400_000], parts: 'malt perWeek mass' },
  maltPerYear: { heard: [50_000, 2e7], parts: 'malt perYear mass' },
  husk: { kind: 'grist share', heard: [10, 30], takes: share, parts: 'grist husk' },
  grits: { kind: 'grist share', heard: [60, 80], takes: share, parts: 'grist grits' },
  flour: { kind: 'grist share', heard: [5, 15], takes: share, parts: 'grist flour' },
  millRate: { kind: 'milling', heard: [0.2, 10], takes: ['milling', 'mass', 'bare'], parts: 'mill rate' },
  millingTime: { heard: [0.5, 3], takes: ['time', 'bare'], parts: 'mill time' },
  mashesPerWeek: { takes: ['mashes', 'times', 'bare'], heard: [3, 28], parts: 'mashes perWeek count' },
  weeksPerYear: { kind: 'time', unit: 'weeks', takes: ['time', 'bare'], believed: [15, 53], heard: [38, 50], parts: 'weeks perYear' },
  mashesPerYear: { takes: ['mashes', 'times', 'bare'], heard: [120, 1400], parts: 'mashes perYear count' },
  liquorRatio: { kind: 'ratio', takes: ['ratio', 'volume', 'bare'], heard: [3.5, 4.2], parts: 'water first ratio' },
  firstWater: { heard: [1000, 70_000], parts: 'water first volume' },
  firstWaterTemperature: { heard: [62, 72], parts: 'water first heat' },
  mashTemperature: { heard: [62, 66], parts: 'mash stands heat' },
  secondWaterTemperature: { heard: [72, 82], parts: 'water second heat' },
  lastWaterTemperature: { heard: [80, 95], parts: 'water last heat' },
  wortVolume: { heard: [1000, 80_000], parts: 'wort volume' },
  originalGravity: { heard: [1.05, 1.068], parts: 'wort gravity before' },
  draff: { heard: [300, 20_000], parts: 'draff mass' },
  setTemperature: { heard: [16, 24], parts: 'yeast set heat' },
  yeastMass: { heard: [1, 300], parts: 'yeast mass' },
  yeastVolume: { believed: [0.2, 20_000], heard: [2, 1000], parts: 'yeast volume' },
  fermentationHours: { heard: [48, 120], takes: ['time', 'bare'], parts: 'ferment time' },
  finalGravity: { heard: [0.995, 1.003], parts: 'wash gravity after' },
  numberOfWashbacks: { takes: ['washbacks', 'bare'], heard: [2, 20], parts: 'washback count' },
  washbackCapacity: { heard: [1500, 90_000], takes: ['volume', 'bare'], kind: 'volume', own: { kind: 'volume', label: 'What a washback holds', stage: 'fermenting' }, parts: 'washback volume full' },
  washVolume: { heard: [1000, 80_000], parts: 'wash volume' },
  washStrength: { heard: [6.5, 9.5], parts: 'wash strength' },
  carbonDioxide: { heard: [50, 5000], parts: 'gas mass' },
  numberOfStills: { takes: ['stills', 'bare'], heard: [2, 16], parts: 'stills count' },
  numberOfWashStills: { takes: ['stills', 'bare'], heard: [1, 8], ...distilling('count', 'Number of wash stills'), parts: 'stills count washStill' },
  numberOfSpiritStills: { takes: ['stills', 'bare'], heard: [1, 8], ...distilling('count', 'Number of spirit stills'), parts: 'stills count spiritStill' },
  washStillCharge: { heard: [500, 35_000], ...distilling('volume20', 'Charge of a wash still'), parts: 'washStill stillCharge volume' },
  spiritStillCharge: { heard: [300, 20_000], ...distilling('volume20', 'Charge of a spirit still'), parts: 'spiritStill stillCharge volume' },
  washRunHours: { heard: [4, 8], takes: ['time', 'bare'], ...distilling('hours', 'Hours of a wash run'), parts: 'washStill time run' },
  spiritRunHours: { heard: [5, 9], takes: ['time', 'bare'], ...distilling('hours', 'Hours of a spirit run'), parts: 'spiritStill time run' },
  lowWinesVolume: { heard: [300, 28_000], parts: 'lowWines volume' },
  lowWinesStrength: { heard: [20, 26], parts: 'lowWines strength' },
  potAle: { heard: [700, 50_000], inTable: 'potAleVolume', parts: 'potAle volume' },
  chargeVolume: { heard: [400, 40_000], parts: 'charge volume spiritStill' },
  chargeStrength: { heard: [25, 30], believed: [10, 80], parts: 'charge strength spiritStill' },
  foreshotsMinutes: { heard: [5, 40], parts: 'foreshots time' },
  foreshotsVolume: { heard: [2, 400], parts: 'foreshots volume' },
  heartBegins: { heard: [70, 76], parts: 'heart begins strength cut' },
  heartEnds: { heard: [58, 66], parts: 'heart ends strength cut' },
  heartVolume: { heard: [80, 9000], parts: 'heart volume' },
  heartStrength: { heard: [66, 72], parts: 'heart strength mean' },
  heartAlcohol: { heard: [50, 6500], parts: 'heart alcohol perMash' },
  alcoholPerWeek: { heard: [500, 200_000], parts: 'alcohol perWeek' },
  alcoholPerYear: { heard: [10_000, 1e7], parts: 'alcohol perYear' },
  feintsEnd: { heard: [0.5, 10], parts: 'feints ends strength' },
  feintsVolume: { heard: [100, 10_000], parts: 'feints volume' },
  feintsStrength: { heard: [25, 50], parts: 'feints strength' },
  spentLees: { heard: [200, 15_000], inTable: 'spentLeesVolume', parts: 'lees volume' },
  fillingStrength: { heard: [58, 64], parts: 'filling strength cask' },
  caskSize: { heard: [150, 260], takes: ['volume', 'bare'], parts: 'cask size' },
  barrelSize: { heard: [190, 205], takes: ['volume', 'bare'], ...maturing('volume', 'Size of a barrel'), parts: 'cask size barrel' },
  hogsheadSize: { heard: [240, 260], takes: ['volume', 'bare'], ...maturing('volume', 'Size of a hogshead'), parts: 'cask size hogshead' },
  buttSize: { heard: [480, 520], takes: ['volume', 'bare'], ...maturing('volume', 'Size of a butt'), parts: 'cask size butt' },
  barrelsShare: { heard: [30, 100], takes: share, inTable: 'barrels', parts: 'cask share barrel' },
  hogsheadsShare: { heard: [5, 50], takes: share, inTable: 'hogsheads', parts: 'cask share hogshead' },
  buttsShare: { heard: [2, 20], takes: share, ...maturing('percent', 'Share of butts'), parts: 'cask share butt' },
  casksPerMash: { takes: casks, heard: [0.5, 45], parts: 'casks perMash count' },
  casksPerWeek: { takes: casks, believed: [0.05, 20_000], heard: [2, 1500], parts: 'casks perWeek count' },
  casksPerYear: { takes: casks, heard: [50, 60_000], parts: 'casks perYear count' },
  casksInStore: { takes: casks, believed: [1, 5e7], heard: [300, 600_000], parts: 'casks store count' },
  yearsInWood: { heard: [3, 16], takes: ['time', 'bare'], parts: 'wood age' },
  alcoholLoss: { kind: 'loss', heard: [1, 6], parts: 'loss perYear' },
  storeHumidity: { kind: 'humidity', heard: [55, 92], parts: 'humidity' },
  strengthOutOfWood: { heard: [54, 65], inTable: 'maturedStrength', parts: 'wood strength after' },
  bottlingStrength: { heard: [40, 50], parts: 'bottle strength' },
  bottleSize: { heard: [50, 75], takes: ['volume', 'bare'], parts: 'bottle size' },
  bottlesPerCask: { takes: ['bottles', 'bare'], heard: [70, 420], parts: 'bottles perCask count' },
  bottlesPerYear: { takes: ['bottles', 'bare'], heard: [2000, 2e7], parts: 'bottles perYear count' },
} as const satisfies Record<QuotableName, Told> & Partial<Record<NameWhereSaid | 'potAle', Told>> & Record<string, Told>;

/** What a guide calls a quantity of a kind, and what it may be said in. */
const saidIn: Partial<Readonly<Record<KindName, readonly [TalkKind, readonly SaidDimension[]]>>> = {
  mass: ['mass', ['mass', 'bare']],
  volume: ['volume', ['volume', 'bare']],
  volume20: ['volume', ['volume', 'bare']],
  bottle: ['volume', ['volume', 'bare']],
  alcohol: ['alcohol', ['alcohol', 'volume', 'bare']],
  yield: ['yield', ['yield']],
  strength: ['strength', ['percent', 'strength', 'bare']],
  percent: ['percentage', ['percent', 'share', 'bare']],
  temperature: ['temperature', ['temperature', 'bare']],
  gravity: ['gravity', ['gravity', 'bare']],
  hours: ['time', ['time', 'bare']],
  years: ['time', ['time', 'bare']],
  minutes: ['time', ['time', 'bare']],
  count: ['count', ['bare']],
};

export type TalkFigureId = keyof typeof told;
export const figureIds = Object.keys(told) as readonly TalkFigureId[];

const inTable = new Set<string>(Object.keys(figureTable).map((id) => nameWhereSaid(id as TableId)));

function talkFigure(name: TalkFigureId): TalkFigure {
  const { parts, own, ...given }: Told = told[name];
  const id = given.inTable ?? (inTable.has(name) ? figureSaid(name as NameWhereSaid) : undefined);
  const kind = id ? figureTable[id].kind : own!.kind;
  const [talkKind, takes] = saidIn[kind] ?? (['number', ['bare']] as const);
  return {
    stage: id ? stageOf(id) : own!.stage,
    kind: talkKind,
    unit: kind === 'gravity' ? 'gravity' : kinds[kind].unit,
    takes,
    range: given.believed ?? (id ? figureTable[id].limits : [given.heard[0] / 5, given.heard[1] * 5]),
    ...given,
    parts: parts.split(' '),
    ...(id ? { inTable: id } : { label: own!.label }),
  };
}

export const talkFigures = Object.fromEntries(
  figureIds.map((name) => [name, talkFigure(name)]),
) as unknown as Readonly<Record<TalkFigureId, TalkFigure>>;
