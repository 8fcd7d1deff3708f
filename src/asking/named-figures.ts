// Figures of the house by what visitors call them: told in any unit, held beside a figure of the asker’s own house, or asked “of what”.
import { format, formatNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { figureText, figureValue, kindOfFigure } from '../house/prose.ts';
import type { AskedQuantity } from './quantities.ts';
import { inCore, resultInWords, unitOfName, type Numbered, type Reckoner } from './reckoned.ts';

interface NamedFigure {
  readonly says: RegExp;
  readonly path: string;
  readonly called: string;
  /** What a number must be to be of it: from and to, in the unit of its kind. */
  readonly range: readonly [number, number];
}

/** The longer names before the shorter. */
const figures: readonly NamedFigure[] = [
  { says: /\b(?:o\.?g\.?|original gravity|start(?:s|ed|ing)? (?:gravity|at))\b/i, path: 'house.originalGravity', called: 'original gravity', range: [1.02, 1.15] },
  { says: /\b(?:f\.?g\.?|final gravity|finish(?:es|ed|ing)? (?:gravity|at))\b/i, path: 'house.finalGravity', called: 'final gravity', range: [0.98, 1.03] },
  { says: /\bferment/i, path: 'house.fermentationHours', called: 'hours in the washback', range: [20, 400] },
  { says: /\b(?:low wines)\b/i, path: 'lowWines.strength', called: 'low wines', range: [10, 40] },
  { says: /\b(?:wash|beer)\b(?! still)/i, path: 'wash.strength', called: 'wash', range: [3, 15] },
  { says: /\b(?:fill(?:s|ed|ing)?|into (?:the )?casks?|entry)\b/i, path: 'filling.strength', called: 'filling strength', range: [45, 80] },
  { says: /\b(?:bottl(?:e|es|ed|ing))\b.{0,14}\b(?:at|strength|is)\b/i, path: 'bottling.strength', called: 'bottling strength', range: [35, 70] },
  { says: /\b(?:cut|heart end|come off|off spirit)\b/i, path: 'house.heartEnd', called: 'end of the heart', range: [45, 72] },
  { says: /\b(?:new make|new spirit|heart|off the still)\b/i, path: 'heart.strength', called: 'heart', range: [50, 90] },
  { says: /\b(?:angels?|evaporat|loss|lose)/i, path: 'house.alcoholLoss', called: 'yearly loss of alcohol', range: [0.2, 15] },
  { says: /\byield/i, path: 'made.heartOfTonne', called: 'yield in the heart', range: [200, 500] },
  { says: /\b(?:pitch|set(?:ting)? temp)/i, path: 'house.setTemperature', called: 'setting temperature', range: [8, 40] },
  { says: /\bmash(?:es)? a week\b|\btimes a week\b/i, path: 'house.mashesPerWeek', called: 'mashes a week', range: [1, 60] },
  { says: /\bmash|\bgrist|\bmalt\b/i, path: 'malt.mass', called: 'malt in a mash', range: [20, 50_000] },
]; // prettier-ignore

const BESIDE =
  /\b(?:ours?|mine|my|we|i)\b.*\b(?:yours?|you|here|harrowmere)\b|\b(?:yours?|you|here)\b.*\b(?:ours?|mine|my|we)\b/i;
const COMPARES =
  /\byours?\b|\byou\b[^?]*\?|compare|\bmore than\b|\bless than\b|higher|lower|stronger|weaker|bigger|smaller|longer|shorter|same as/i;
const IF = /\bif\b|suppose|instead|why/i;

const kindAt = (path: string): KindName =>
  path === 'made.heartOfTonne' ? 'yield' : kindOfFigure(path)!.kind;
const valueAt = ({ line }: Numbered, path: string) =>
  path === 'made.heartOfTonne' ? line.heart.alcohol / line.pace.tonnesPerMash : figureValue(line, path);

/** A number of the asker’s as a value of that figure; nothing where it cannot be one. */
function asOf(each: AskedQuantity, { path, range }: NamedFigure): number | undefined {
  const kind = kindAt(path);
  const bare = each.unit === undefined || each.dimension === 'percent';
  const dimension: Partial<Record<KindName, string>> = {
    strength: 'strength',
    hours: 'time',
    mass: 'mass',
    temperature: 'temperature',
    yield: 'yield',
    gravity: 'gravity',
  };
  if (!bare && each.dimension !== dimension[kind]) return undefined;
  if (bare && kind === 'mass') return undefined;
  const value = bare
    ? kind === 'gravity' && each.number > 900
      ? each.number / 1000
      : each.number
    : kind === 'yield'
      ? each.number
      : inCore(each, kind);
  return value !== undefined && value >= range[0] && value <= range[1] ? value : undefined;
}

/** “Our wash is at 9 %, and yours?”: theirs beside ours. */
export const besideOurs: Reckoner = (asked) => {
  const { text, quantities, line } = asked;
  const [theirs] = quantities;
  if (!theirs || quantities.length !== 1 || !BESIDE.test(text) || !COMPARES.test(text) || IF.test(text)) return undefined;
  const figure = figures.find((each) => each.says.test(text) && asOf(theirs, each) !== undefined);
  if (!figure) return undefined;
  const kind = kindAt(figure.path);
  const [own, other] = [valueAt(asked, figure.path), asOf(theirs, figure)!];
  const text1 = (value: number) => (kind === 'gravity' ? value.toFixed(3) : format(value, kind));
  const off = other - own;
  const same = Math.abs(off) < (kind === 'gravity' ? 0.0005 : 0.005 * Math.abs(own));
  const by = kind === 'gravity' ? `${formatNumber(1000 * Math.abs(off), 0)} points` : kind === 'strength' || kind === 'percent' || kind === 'temperature' ? text1(Math.abs(off)) : `${formatNumber((100 * Math.abs(off)) / own, 0)} %`;
  const shown = figure.path.startsWith('made.') ? resultInWords(own, kind) : figureText(line, figure.path);
  return {
    says: `Ours, the ${figure.called}: ${shown}. Yours, ${text1(other)}, is ${same ? 'as good as the same' : `${by} ${off > 0 ? 'more' : 'less'}`}.`,
    at: 'house/',
    place: 'The figures of the house',
    paths: kindOfFigure(figure.path) ? [figure.path] : [],
  };
}; // prettier-ignore

/** Vessels of the house, and what of it goes into one. */
export const vessels: readonly (readonly [RegExp, string, string])[] = [
  [/\bwash ?backs?\b|\bfermenters?\b/i, 'wash.volume', 'a washback of ours'],
  [/\bwash still\b/i, 'wash.volume', 'a charge of the wash still'],
  [/\bspirit still\b/i, 'charge.volume', 'a charge of the spirit still'],
  [/\bmash ?tun\b/i, 'mash.firstWater', 'the first water in the tun'],
  [/\b(?:a|one|your|the|each|average|mean) casks?\b/i, 'casks.meanSize', 'the mean cask'],
];

/** “How many pints in a washback?”: a vessel of the house in the unit that is wanted. */
export const vesselIn: Reckoner = ({ text, quantities, wanted, line }) => {
  if (quantities.length > 0 || wanted?.dimension !== 'volume' || !/\bhow (?:many|much)\b/i.test(text) || /\bwater\b|left|lost|lose|year|week|pure|per\b/i.test(text)) return undefined;
  const vessel = vessels.find(([says]) => says.test(text));
  const unit = unitOfName('volume20', wanted.unit);
  if (!vessel || !unit || !/\b(?:in|does|do|is|are|holds?|of|fit|fill)\b/i.test(text)) return undefined;
  if (vessel[1] === 'casks.meanSize' && /\b(?:wash|wort|malt|barley|grain|low wines|feints|draff|pot ale|beer)\b/i.test(text)) return undefined;
  const value = figureValue(line, vessel[1]);
  return {
    says: `About ${resultInWords(value, 'volume20', unit)}, for ${vessel[2]}.`,
    sum: figureText(line, vessel[1]),
    at: 'house/',
    place: 'The figures of the house',
    paths: [vessel[1]],
  };
}; // prettier-ignore
