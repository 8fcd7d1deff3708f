// The units that guides say, in their many spellings, and what each is in the handbook's own units.
import { unitsOf } from '../core/units.ts';

/** What a unit measures; a number with no unit measures `bare`. */
export type Dimension =
  | 'mass' | 'volume' | 'alcohol' | 'yield' | 'percent' | 'strength' | 'temperature' | 'time' | 'smoke' | 'length' | 'area'
  | 'pressure' | 'money' | 'clock' | 'gravity' | 'mashes' | 'washbacks' | 'stills' | 'casks' | 'bottles' | 'times' | 'people' | 'share' | 'date' | 'bare'; // prettier-ignore

export interface SaidUnit {
  /** As the handbook prints it; empty for things counted. */
  readonly unit: string;
  readonly dimension: Dimension;
  /** How many of the handbook's own unit (kg, L, h) one is; nothing where there is none. */
  readonly size?: number;
}

interface Spelling extends SaidUnit {
  readonly says: RegExp;
}

const US_GALLON = 3.785411784; // litres; 231 cubic inches, NIST Handbook 44
const UK_GALLON = 4.54609; // litres; Weights and Measures Act 1985

const litre = 'l|lit(?:re|er)s?|ltrs?|lt|litters?|leaders?|leeters?|lighters';
const tonne = 't|tonnes?|tons?';
const alcohol = '(?:(?:pure|absolute|straight)\\s+)?alcohol';
const purely = '(?:pure|absolute)\\s+alcohol';
const lpa = 'lpas?|laas?|rlas?|olas?|lofa';
const week = 24 * 7;
const year = 365.25 * 24;

const spelling = (unit: string, dimension: Dimension, says: string, size?: number): Spelling => ({
  unit,
  dimension,
  says: new RegExp(`(?:${says})(?![\\wà-ÿ])`, 'iy'),
  ...(size === undefined ? {} : { size }),
});
/** For signs, after which a letter may follow. */
const sign = (unit: string, dimension: Dimension, says: string): Spelling => ({
  unit,
  dimension,
  says: new RegExp(says, 'iy'),
});
/** Things counted, with up to three words that describe them before: wooden wash backs, Oregon pine washbacks. */
const described = "(?:(?!(?:of|in|and|or|the|a|an|at|to|for|with|is|are|from|per|on|we|it|its|that|this|then|times?|by|into|so|but|low|litres?|liters?|tonnes?|days?|weeks?|years?|hours?)\\b)[a-zà-ÿ]{2,14}[\\s-]){0,3}?"; // prettier-ignore
const counted = (dimension: Dimension, says: string) => spelling('', dimension, `${described}(?:${says})`);

// The first that fits counts, so the longer stand before the shorter.
const spellings: readonly Spelling[] = [
  spelling('L pure alcohol/t', 'yield', `(?:${lpa}|(?:${litre})(?:\\s+of)?(?:\\s+${alcohol})?)(?:\\s*/\\s*|\\s+(?:per|to|from|for|out\\s+of|a|each|every|the)\\s+)(?:(?:a|each|every|one|the|metric)\\s+){0,2}(?:${tonne})`, 1), // prettier-ignore
  spelling('hL pure alcohol', 'alcohol', `(?:hl|hectolit(?:re|er)s?)\\s*(?:of\\s+)?(?:${purely})|hlpa`, 100),
  spelling('L pure alcohol', 'alcohol', `${lpa}|(?:${litre})\\s*(?:of\\s+)?(?:${purely})`, 1),
  spelling('hL', 'volume', 'hl|hectolit(?:re|er)s?', 100),
  spelling('cL', 'volume', 'cls?|centilit(?:re|er)s?|centileaders?', 0.01),
  spelling('mL', 'volume', 'mls?|millilit(?:re|er)s?', 0.001),
  spelling('L', 'volume', `(?:bulk\\s+)?(?:${litre})`, 1),
  spelling('US gal', 'volume', '(?:us|u\\.s\\.|american|wine)\\s+gal(?:lon)?s?', US_GALLON),
  spelling('UK gal', 'volume', '(?:imperial|english|british|uk)\\s+gal(?:lon)?s?', UK_GALLON),
  spelling('gal', 'volume', '(?:bulk\\s+)?gal(?:lon)?s?', UK_GALLON),
  spelling('fl oz', 'volume', '(?:fluid\\s+|fl\\.?\\s*)?(?:ounces?|oz)', UK_GALLON / 160), // 160 to the imperial gallon
  spelling('pints', 'volume', 'pints?', UK_GALLON / 8),
  spelling('m³', 'volume', 'cubic\\s+met(?:re|er)s?|m3|m³', 1000),
  spelling('US tons', 'mass', '(?:short|us|american)\\s+tons?', 907.18474), // 2,000 lb
  spelling('UK tons', 'mass', '(?:long|imperial|english)\\s+tons?', 1016.0469088), // 2,240 lb
  spelling('t', 'mass', `(?:metric\\s+)?(?:${tonne})`, 1000),
  spelling('cwt', 'mass', 'cwt|hundredweights?', 50.80234544), // 112 lb
  spelling('kg', 'mass', 'kgs?|kilos?|kilogram(?:me)?s?', 1),
  spelling('g', 'mass', 'g|gm|grams?|grammes?', 0.001),
  spelling('lb', 'mass', 'lbs?|pounds?', 0.45359237), // international yard and pound agreement 1959
  spelling('ppm', 'smoke', 'ppm|p\\.p\\.m|parts\\s+(?:per|in\\s+a)\\s+million'),
  sign('% vol', 'strength', '(?:%|per\\s?cents?\\b|percents?\\b|pct\\b)\\s*(?:\\(?\\s*(?:abv|a\\.b\\.v\\.?|alc(?:ohol)?\\b\\.?\\s*(?:/|by)?\\s*vol(?:ume)?|by\\s+vol(?:ume)?|vol(?:ume)?)(?![a-z]))'), // prettier-ignore
  sign('% vol', 'strength', '(?:abv|% ?v/v)(?![a-z])'),
  sign('%', 'percent', '%|(?:per[\\s-]?(?:cents?|sent)|percents?|percentage|pct|p\\.c\\.)(?![a-z])'),
  spelling('° US proof', 'strength', '(?:(?:°|º|degrees?|deg\\.?)\\s*)?(?:us|u\\.s\\.|american)\\s+proof'),
  spelling('° over proof', 'strength', '(?:degrees?\\s+)?over[\\s-]+proof|o\\.p\\.?'),
  spelling('° under proof', 'strength', '(?:degrees?\\s+)?under[\\s-]+proof|u\\.p\\.?'),
  spelling('° proof', 'strength', '(?:(?:°|º|degrees?|deg\\.?)\\s*)?(?:of\\s+)?proof'),
  spelling('°P', 'gravity', '(?:°|º)\\s*p|(?:degrees?\\s+)?plato'),
  spelling('°F', 'temperature', '(?:°|º|deg(?:ree)?s?\\.?)?\\s*(?:fahrenheit|f)'),
  spelling('°C', 'temperature', '(?:°|º|deg(?:ree)?s?\\.?)?\\s*(?:celsius|centigrade|c)|℃'),
  sign('°', 'temperature', '°|º|deg(?:ree)?s?(?![a-z])\\.?'),
  spelling('min', 'time', 'min(?:ute)?s?', 1 / 60),
  spelling('s', 'time', 'secs|seconds', 1 / 3600),
  spelling('h', 'time', 'h|hrs?|hours?', 1),
  spelling('days', 'time', 'days?', 24),
  spelling('weeks', 'time', "(?:(?:working|full|whole)\\s+)?(?:weeks?|wks?)", week), // prettier-ignore
  spelling('months', 'time', 'months?', year / 12),
  spelling(
    'years',
    'time',
    '(?:(?:long|full|whole)\\s+)?(?:years?|yrs?|yo|y\\.o\\.?|winters?)(?:[\\s-]old)?',
    year,
  ),
  spelling('mm', 'length', 'mms?|millimet(?:re|er)s?'),
  spelling('cm', 'length', 'cms?|centimet(?:re|er)s?'),
  spelling('km', 'length', 'kms?|kilomet(?:re|er)s?'),
  spelling('miles', 'length', 'miles?'),
  spelling('feet', 'length', 'feet|foot|ft'),
  spelling('inches', 'length', 'inch(?:es)?'),
  spelling('yards', 'length', 'yards?'),
  spelling('m²', 'area', 'square\\s+met(?:re|er)s?|m2|m²'),
  spelling('m', 'length', 'm|met(?:re|er)s?'),
  spelling('acres', 'area', 'acres?'),
  spelling('ha', 'area', 'ha|hectares?'),
  spelling('bar', 'pressure', 'bars?'),
  spelling('kPa', 'pressure', 'kpa'),
  spelling('psi', 'pressure', 'psi'),
  spelling('£', 'money', '(?:pounds?\\s+sterling|quid)'),
  spelling('€', 'money', 'euros?'),
  spelling('$', 'money', 'dollars?'),
  spelling('', 'clock', "o['’]?\\s?clock|[ap]\\.?m\\.?"),
  spelling('', 'times', 'times|x'),
  counted('washbacks', 'wash[\\s-]?backs?|wash\\s+bags|fermenters?|fermentors?|vats'),
  counted('mashes', 'mash(?:es|ings)|brews'),
  counted('stills', 'stills|steels|kettles|stils'),
  counted('casks', 'casks?|casts|barrels?|hogsheads?|butts|hoggies|puncheons?'),
  counted('bottles', 'bottles?|btls?'),
  counted('people', 'people|men|women|persons?|guests?|visitors?|staff'),
];

const afterwards = /(\s+|\s?-\s?)?/y;

/** The unit that begins at a place in a text, after spaces or a hyphen, and where it ends. */
export function unitAt(text: string, at: number): (SaidUnit & { readonly end: number }) | undefined {
  afterwards.lastIndex = at;
  const gap = afterwards.exec(text)?.[0] ?? '';
  if (gap.length > 3 || /\n\s*\n/.test(gap)) return undefined;
  const from = at + gap.length;
  for (const { says, ...unit } of spellings) {
    says.lastIndex = from;
    const found = says.exec(text);
    if (found) return { ...unit, end: from + found[0].length };
  }
  return undefined;
}

const proof = (unit: string) => unitsOf('strength').find((each) => each.unit === unit)!.toCore;
const ukProof = proof('° former UK proof');
const usProof = proof('° US proof');
const platoToGravity = unitsOf('gravity').find((each) => each.unit === '°P')!.toCore;
const sizes = new Map(spellings.map(({ unit, size }) => [unit, size]));

/** What a value in a said unit is in a unit of the handbook: kg, L, cL, h, years, °C, % vol, gravity. NaN never: an unknown unit stays as it is. */
export function inUnit(value: number, unit: string, wanted: string): number {
  if (unit === wanted) return value;
  if (unit === '°F') return (value - 32) / 1.8;
  if (unit === '° proof') return ukProof(Math.min(Math.max(value, 0), 175));
  if (unit === '° US proof') return usProof(Math.min(Math.max(value, 0), 200));
  if (wanted === 'gravity') return unit === '°P' ? platoToGravity(Math.min(Math.max(value, 0), 32)) : value >= 800 ? value / 1000 : value; // prettier-ignore
  const own = sizes.get(unit);
  const other = wanted === 'kg' || wanted === 'L' ? 1 : sizes.get(wanted);
  return own === undefined || other === undefined ? value : (value * own) / other;
}
