// The one table of the units that people say: what each measures, how large it is, and every name that it has.
import { alcoholFromUsProofGallons } from './spirit/proof.ts';

/** What a unit measures. */
export type Dimension =
  | 'mass' | 'volume' | 'alcohol' | 'yield' | 'percent' | 'strength' | 'temperature' | 'temperatureDifference' | 'time' | 'smoke'
  | 'length' | 'area' | 'pressure' | 'energy' | 'money' | 'gravity'; // prettier-ignore

export interface Measure {
  /** As the handbook prints it. */
  readonly unit: string;
  readonly dimension: Dimension;
  /** Its names in running text, as a pattern that does not mind case: what a script is searched for. */
  readonly says?: string;
  /** Further names, for where its kind is known: m is minutes in a time. */
  readonly known?: string;
  /** In kg, L, L pure alcohol, h, mm, m², kPa or MJ; none where it is no mere multiple. */
  readonly size?: number;
  /** A sign, behind which a letter may follow. */
  readonly sign?: true;
  /** Names no one size until the country is known; its size is the British one. A field does not read it. */
  readonly local?: true;
}

const US_GALLON = 3.785411784; // litres; 231 cubic inches, NIST Handbook 44
const UK_GALLON = 4.54609; // litres; Weights and Measures Act 1985
const POUND = 0.45359237; // kg; international yard and pound agreement 1959
const INCH = 25.4; // mm; the same agreement
const POUND_ON_INCH = 6.894757293; // kPa; a pound-force on a square inch, NIST Special Publication 811, B.8
const ACRE = 4046.8564224; // m²; 4,840 square yards of the same agreement
const YEAR = 365.25 * 24; // h; the Julian year

const litre = 'l|lit(?:re|er)s?|ltrs?|lt|litters?|leaders?|leeters?|lighters';
const tonne = 't|tonnes?|tons?';
const alcohol = '(?:(?:pure|absolute|straight)\\s+)?alcohol';
const purely = '(?:pure|absolute)\\s+alcohol';
const lpa = 'lpas?|laas?|rlas?|olas?|lofa';
const degree = '(?:°|º|deg(?:ree)?s?\\.?)?\\s*';
const proofDegree = '(?:(?:°|º|degrees?|deg\\.?)\\s*)?';
const perCent = '%|(?:per[\\s-]?(?:cents?|sent)|percents?|percentage|pct|p\\.c\\.)(?![a-z])';
const points = '(?:(?:%|percentage)[\\s-]?)?points?';

/** The longer stand before the shorter: in running text the first that fits counts. */
// prettier-ignore
export const measures: readonly Measure[] = [
  { unit: 'L pure alcohol/t', dimension: 'yield', says: `(?:${lpa}|(?:${litre})(?:\\s+of)?(?:\\s+${alcohol})?)(?:\\s*/\\s*|\\s+(?:per|to|from|for|out\\s+of|a|each|every|the)\\s+)(?:(?:a|each|every|one|the|metric)\\s+){0,2}(?:${tonne})`, size: 1 },
  { unit: 'hL pure alcohol', dimension: 'alcohol', says: `(?:hl|hectolit(?:re|er)s?)\\s*(?:of\\s+)?(?:${purely})|hlpa`, known: `(?:hl|hectolit(?:re|er)s?)(?:\\s*(?:of\\s+)?${alcohol})?`, size: 100 },
  { unit: 'L pure alcohol', dimension: 'alcohol', says: `${lpa}|(?:${litre})\\s*(?:of\\s+)?(?:${purely})`, known: `(?:${litre})(?:\\s*(?:of\\s+)?${alcohol})?`, size: 1 },
  { unit: 'US proof gal', dimension: 'alcohol', known: '(?:us\\s*)?proof\\s*gal(?:lon)?s?\\.?', size: alcoholFromUsProofGallons(1) },
  { unit: 'hL', dimension: 'volume', says: 'hl|hectolit(?:re|er)s?', size: 100 },
  { unit: 'cL', dimension: 'volume', says: 'cls?|centilit(?:re|er)s?|centileaders?', size: 0.01 },
  { unit: 'mL', dimension: 'volume', says: 'mls?|mils|millilit(?:re|er)s?', known: 'mil', size: 0.001 },
  { unit: 'L', dimension: 'volume', says: `(?:bulk\\s+)?(?:${litre})`, size: 1 },
  { unit: 'US gal', dimension: 'volume', says: '(?:us|u\\.s\\.|american|wine)\\s+gal(?:lon)?s?', known: '(?:us|u\\.s\\.)\\s*gal(?:lon)?s?', size: US_GALLON },
  { unit: 'UK gal', dimension: 'volume', says: '(?:imperial|english|british|uk)\\s+gal(?:lon)?s?', known: '(?:uk|imp\\.?)\\s*gal(?:lon)?s?', size: UK_GALLON },
  { unit: 'gal', dimension: 'volume', says: '(?:bulk\\s+)?gal(?:lon)?s?', size: UK_GALLON, local: true },
  { unit: 'fl oz', dimension: 'volume', says: '(?:fluid\\s+|fl\\.?\\s*)?(?:ounces?|oz)', size: UK_GALLON / 160, local: true }, // 160 to the imperial gallon
  { unit: 'pints', dimension: 'volume', says: 'pints?', size: UK_GALLON / 8, local: true },
  { unit: 'm³', dimension: 'volume', says: 'cubic\\s+met(?:re|er)s?|m3|m³', size: 1000 },
  { unit: 'US tons', dimension: 'mass', says: '(?:short|us|american)\\s+tons?', size: 2000 * POUND },
  { unit: 'UK tons', dimension: 'mass', says: '(?:long|imperial|english)\\s+tons?', size: 2240 * POUND },
  { unit: 't', dimension: 'mass', says: `(?:metric\\s+)?(?:${tonne})`, size: 1000 },
  { unit: 'cwt', dimension: 'mass', says: 'cwt|hundredweights?', size: 112 * POUND },
  { unit: 'kg', dimension: 'mass', says: 'kgs?|kilos?|kilogram(?:me)?s?', size: 1 },
  { unit: 'g', dimension: 'mass', says: 'g|gm|grams?|grammes?', size: 0.001 },
  { unit: 'mg', dimension: 'mass', known: 'mgs?|milligram(?:me)?s?', size: 1e-6 },
  { unit: 'lb', dimension: 'mass', says: 'lbs?|pounds?', size: POUND },
  { unit: 'ppm', dimension: 'smoke', says: 'ppm|p\\.p\\.m|parts\\s+(?:per|in\\s+a)\\s+million' },
  { unit: '% vol', dimension: 'strength', says: '(?:%|per\\s?cents?\\b|percents?\\b|pct\\b)\\s*(?:\\(?\\s*(?:abv|a\\.b\\.v\\.?|alc(?:ohol)?\\b\\.?\\s*(?:/|by)?\\s*vol(?:ume)?|by\\s+vol(?:ume)?|vol(?:ume)?)(?![a-z]))', sign: true },
  { unit: '% vol', dimension: 'strength', says: '(?:abv|% ?v/v)(?![a-z])', known: `${perCent}|${points}|%\\s*alc\\.?|vol\\.?\\s*%`, sign: true },
  { unit: '% mass', dimension: 'strength', known: `(?:${perCent})(?:\\s*(?:by\\s+)?(?:mass|weight)|\\s*[wm]/[wm])` },
  { unit: '%', dimension: 'percent', says: perCent, known: points, sign: true },
  { unit: '° US proof', dimension: 'strength', says: `${proofDegree}(?:us|u\\.s\\.|american)\\s+proof` },
  { unit: '° former UK proof', dimension: 'strength', says: `${proofDegree}(?:former\\s+)?(?:uk|british|english|imperial|sikes)\\s+proof` },
  { unit: '° over proof', dimension: 'strength', says: '(?:degrees?\\s+)?over[\\s-]+proof|o\\.p\\.?' },
  { unit: '° under proof', dimension: 'strength', says: '(?:degrees?\\s+)?under[\\s-]+proof|u\\.p\\.?' },
  { unit: '° proof', dimension: 'strength', says: `${proofDegree}(?:of\\s+)?proof`, local: true },
  { unit: '° gravity', dimension: 'gravity', says: '(?:°|º|degrees?)\\s*(?:of\\s+)?gravity', known: '°|degrees?' },
  { unit: '°P', dimension: 'gravity', says: '(?:°|º)\\s*p|(?:degrees?\\s+)?plato', known: 'p' },
  { unit: '° Brix', dimension: 'gravity', says: '(?:(?:°|º|degrees?)\\s*)?brix', known: '°\\s*bx' },
  { unit: '°F', dimension: 'temperature', says: `${degree}(?:fahrenheit|f)` },
  { unit: '°C', dimension: 'temperature', says: `${degree}(?:celsius|centigrade|c)|℃` },
  { unit: '°', dimension: 'temperature', says: '°|º|deg(?:ree)?s?(?![a-z])\\.?', known: `${proofDegree}(?:of\\s+)?proof`, sign: true },
  { unit: 'K', dimension: 'temperatureDifference', known: `k|kelvins?|${degree}c(?:elsius)?|°|deg(?:ree)?s?` },
  { unit: 'points', dimension: 'percent', known: `${points}|${perCent}` },
  { unit: 'min', dimension: 'time', says: 'min(?:ute)?s?', known: 'm', size: 1 / 60 },
  { unit: 's', dimension: 'time', says: 'secs|seconds', known: 's|sec|second', size: 1 / 3600 },
  { unit: 'h', dimension: 'time', says: 'h|hrs?|hours?', size: 1 },
  { unit: 'days', dimension: 'time', says: 'days?', known: 'd', size: 24 },
  { unit: 'weeks', dimension: 'time', says: '(?:(?:working|full|whole)\\s+)?(?:weeks?|wks?)', size: 24 * 7 },
  { unit: 'months', dimension: 'time', says: 'months?', size: YEAR / 12 },
  { unit: 'years', dimension: 'time', says: '(?:(?:long|full|whole)\\s+)?(?:years?|yrs?|yo|y\\.o\\.?|winters?)(?:[\\s-]old)?', known: 'y', size: YEAR },
  { unit: 'mm', dimension: 'length', says: 'mms?|millimet(?:re|er)s?', size: 1 },
  { unit: 'µm', dimension: 'length', known: '[µμu]m|microns?|micromet(?:re|er)s?', size: 0.001 },
  { unit: 'cm', dimension: 'length', says: 'cms?|centimet(?:re|er)s?', size: 10 },
  { unit: 'km', dimension: 'length', says: 'kms?|kilomet(?:re|er)s?', size: 1e6 },
  { unit: 'miles', dimension: 'length', says: 'miles?', size: 63_360 * INCH },
  { unit: 'feet', dimension: 'length', says: 'feet|foot|ft', size: 12 * INCH },
  { unit: 'inches', dimension: 'length', says: 'inch(?:es)?', known: 'in|″|"', size: INCH },
  { unit: 'yards', dimension: 'length', says: 'yards?', size: 36 * INCH },
  { unit: 'm²', dimension: 'area', says: 'square\\s+met(?:re|er)s?|m2|m²', size: 1 },
  { unit: 'm', dimension: 'length', says: 'm|met(?:re|er)s?', size: 1000 },
  { unit: 'acres', dimension: 'area', says: 'acres?', size: ACRE },
  { unit: 'ha', dimension: 'area', says: 'ha|hectares?', size: 10_000 },
  { unit: 'bar', dimension: 'pressure', says: 'bars?', size: 100 },
  { unit: 'mbar', dimension: 'pressure', known: 'mbar|millibars?', size: 0.1 },
  { unit: 'kPa', dimension: 'pressure', says: 'kpa', size: 1 },
  { unit: 'psi', dimension: 'pressure', says: 'psi', size: POUND_ON_INCH },
  { unit: 'MJ', dimension: 'energy', known: 'mj|megajoules?', size: 1 },
  { unit: 'kJ', dimension: 'energy', known: 'kj|kilojoules?', size: 0.001 },
  { unit: 'GJ', dimension: 'energy', known: 'gj|gigajoules?', size: 1000 },
  { unit: 'kWh', dimension: 'energy', known: 'kwh|kilowatt[\\s-]?hours?', size: 3.6 }, // by definition
  { unit: '£', dimension: 'money', says: '(?:pounds?\\s+sterling|quid)' },
  { unit: '€', dimension: 'money', says: 'euros?' },
  { unit: '$', dimension: 'money', says: 'dollars?' },
];
