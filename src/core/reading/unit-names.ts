// Every name of every unit, in running text and behind a number whose kind is known.
import { measures, type Dimension } from '../measures.ts';

interface Names {
  readonly unit: string;
  /** In running text, as a pattern that does not mind case: what a script is searched for. */
  readonly says?: string;
  /** Further names, for where its kind is known: m is minutes in a time. */
  readonly known?: string;
  /** A sign, behind which a letter may follow. */
  readonly sign?: true;
}

const litre = 'l|lit(?:re|er)s?|ltrs?|lt|litters?|leaders?|leeters?|lighters';
const tonne = 't|tonnes?|tons?';
const alcohol = '(?:(?:pure|absolute|straight)\\s+)?alcohol';
const purely = '(?:pure|absolute)(?:\\s+alcohol)?';
const lpa = 'lpas?|laas?|rlas?|olas?|lofa';
const degree = '(?:°|º|deg(?:ree)?s?\\.?)?\\s*';
const proofDegree = '(?:(?:°|º|degrees?|deg\\.?)\\s*)?';
const perCent = '%|(?:per[\\s-]?(?:cents?|sent)|percents?|percentage|pct|p\\.c\\.)(?![a-z])';
const points = '(?:(?:%|percentage)[\\s-]?)?points?';

/** The longer stand before the shorter: in running text the first that fits counts. */
// prettier-ignore
const names: readonly Names[] = [
  { unit: 'L pure alcohol/t', says: `(?:${lpa}|(?:${litre})(?:\\s+of)?(?:\\s+(?:${alcohol}|pure|absolute))?)(?:\\s*/\\s*|\\s+(?:per|by|to|from|for|out\\s+of|a|each|every|the)\\s+)(?:(?:a|each|every|one|the|metric)\\s+){0,2}(?:${tonne})` },
  { unit: 'hL pure alcohol', says: `(?:hl|hectolit(?:re|er)s?)\\s*(?:of\\s+)?(?:${purely})|hlpa`, known: `(?:hl|hectolit(?:re|er)s?)(?:\\s*(?:of\\s+)?${alcohol})?` },
  { unit: 'kL pure alcohol', says: `(?:kl|kilolit(?:re|er)s?)\\s*(?:of\\s+)?(?:${purely})|klpa`, known: `(?:kl|kilolit(?:re|er)s?)(?:\\s*(?:of\\s+)?${alcohol})?` },
  { unit: 'cL pure alcohol', known: `(?:cls?|centilit(?:re|er)s?)(?:\\s*(?:of\\s+)?${alcohol})?` },
  { unit: 'mL pure alcohol', known: `(?:mls?|millilit(?:re|er)s?)(?:\\s*(?:of\\s+)?${alcohol})?` },
  { unit: 'L pure alcohol', says: `${lpa}|(?:${litre})\\s*(?:of\\s+)?(?:${purely})`, known: `(?:${litre})(?:\\s*(?:of\\s+)?${alcohol})?` },
  { unit: 'US proof gal', says: '(?:us|american)\\s+proof\\s+gal(?:lon)?s?', known: '(?:us\\s*)?proof\\s*gal(?:lon)?s?\\.?' },
  { unit: 'hL', says: 'hl|hectolit(?:re|er)s?' },
  { unit: 'kL', says: 'kls?|kilolit(?:re|er)s?' },
  { unit: 'dL', says: 'dls?|decilit(?:re|er)s?' },
  { unit: 'cL', says: 'cls?|centilit(?:re|er)s?|centileaders?' },
  { unit: 'mL', says: 'mls?|mils|millilit(?:re|er)s?', known: 'mil' },
  { unit: 'L', says: `(?:bulk\\s+)?(?:${litre})` },
  { unit: 'US gal', says: '(?:us|u\\.s\\.|american|wine)\\s+gal(?:lon)?s?', known: '(?:us|u\\.s\\.)\\s*gal(?:lon)?s?' },
  { unit: 'UK gal', says: '(?:imperial|english|british|uk)\\s+gal(?:lon)?s?', known: '(?:uk|imp\\.?)\\s*gal(?:lon)?s?' },
  { unit: 'gal', says: '(?:bulk\\s+)?gal(?:lon)?s?' },
  { unit: 'fl oz', says: '(?:fluid\\s+|fl\\.?\\s*)?(?:ounces?|oz)' },
  { unit: 'pints', says: 'pints?' },
  { unit: 'm³', says: 'cubic\\s+met(?:re|er)s?|cubes|m3|m³' },
  { unit: 'US tons', says: '(?:short|us|american)\\s+tons?' },
  { unit: 'UK tons', says: '(?:long|imperial|english)\\s+tons?' },
  { unit: 't', says: `(?:metric\\s+)?(?:${tonne})` },
  { unit: 'cwt', says: 'cwt|hundredweights?' },
  { unit: 'kg', says: 'kgs?|kilos?|kilogram(?:me)?s?' },
  { unit: 'g', says: 'g|gm|grams?|grammes?' },
  { unit: 'mg', known: 'mgs?|milligram(?:me)?s?' },
  { unit: 'lb', says: 'lbs?|pounds?' },
  { unit: 'ppm', says: 'ppm|p\\.p\\.m|parts\\s+(?:per|in\\s+a)\\s+million' },
  { unit: '% vol', says: '(?:%|per\\s?cents?\\b|percents?\\b|pct\\b)\\s*(?:\\(?\\s*(?:abv|a\\.b\\.v\\.?|alc(?:ohol)?\\b\\.?\\s*(?:/|by)?\\s*vol(?:ume)?|by\\s+vol(?:ume)?|vol(?:ume)?)(?![a-z]))', sign: true },
  { unit: '% vol', says: '(?:abv|% ?v/v)(?![a-z])', known: `${perCent}|${points}|%\\s*alc\\.?|vol\\.?\\s*%`, sign: true },
  { unit: '% mass', known: `(?:${perCent})(?:\\s*(?:by\\s+)?(?:mass|weight)|\\s*[wm]/[wm])` },
  { unit: '%', says: perCent, known: points, sign: true },
  { unit: '° US proof', says: `${proofDegree}(?:us|u\\.s\\.|american)\\s+proof` },
  { unit: '° former UK proof', says: `${proofDegree}(?:former\\s+)?(?:uk|british|english|imperial|sikes)\\s+proof` },
  { unit: '° over proof', says: '(?:degrees?\\s+)?over[\\s-]+proof|o\\.p\\.?' },
  { unit: '° under proof', says: '(?:degrees?\\s+)?under[\\s-]+proof|u\\.p\\.?' },
  { unit: '° proof', says: `${proofDegree}(?:of\\s+)?proof` },
  { unit: '° gravity', says: '(?:°|º|degrees?)\\s*(?:of\\s+)?gravity', known: '°|degrees?' },
  { unit: '°P', says: '(?:°|º)\\s*p|(?:degrees?\\s+)?(?:plato|balling)', known: 'p' },
  { unit: '° Brix', says: '(?:(?:°|º|degrees?)\\s*)?brix', known: '°\\s*bx' },
  { unit: '°F', says: `${degree}(?:fahrenheit|f)` },
  { unit: '°C', says: `${degree}(?:celsius|centigrade|c)|℃` },
  { unit: '°', says: '°|º|deg(?:ree)?s?(?![a-z])\\.?', known: `${proofDegree}(?:of\\s+)?proof`, sign: true },
  { unit: 'K', known: `k|kelvins?|${degree}c(?:elsius)?|°|deg(?:ree)?s?` },
  { unit: 'points', known: `${points}|${perCent}` },
  { unit: 'min', says: 'min(?:ute)?s?', known: 'm' },
  { unit: 's', says: 'secs|seconds', known: 's|sec|second' },
  { unit: 'h', says: 'h|hrs?|hours?' },
  { unit: 'days', says: 'days?', known: 'd' },
  { unit: 'weeks', says: '(?:(?:working|full|whole)\\s+)?(?:weeks?|wks?)' },
  { unit: 'months', says: 'months?' },
  { unit: 'years', says: '(?:(?:long|full|whole)\\s+)?(?:years?|yrs?|yo|y\\.o\\.?|winters?)(?:[\\s-]old)?', known: 'y' },
  { unit: 'mm', says: 'mms?|millimet(?:re|er)s?' },
  { unit: 'µm', known: '[µμu]m|microns?|micromet(?:re|er)s?' },
  { unit: 'cm', says: 'cms?|centimet(?:re|er)s?' },
  { unit: 'km', says: 'kms?|kilomet(?:re|er)s?' },
  { unit: 'miles', says: 'miles?' },
  { unit: 'feet', says: 'feet|foot|ft' },
  { unit: 'inches', says: 'inch(?:es)?', known: 'in|″|"' },
  { unit: 'yards', says: 'yards?' },
  { unit: 'm²', says: 'square\\s+met(?:re|er)s?|m2|m²' },
  { unit: 'm', says: 'm|met(?:re|er)s?' },
  { unit: 'acres', says: 'acres?' },
  { unit: 'ha', says: 'ha|hectares?' },
  { unit: 'bar', says: 'bars?' },
  { unit: 'mbar', known: 'mbar|millibars?' },
  { unit: 'kPa', says: 'kpa' },
  { unit: 'psi', says: 'psi' },
  { unit: 'MJ', known: 'mj|megajoules?' },
  { unit: 'kJ', known: 'kj|kilojoules?' },
  { unit: 'GJ', known: 'gj|gigajoules?' },
  { unit: 'kWh', known: 'kwh|kilowatt[\\s-]?hours?' },
  { unit: '£', says: '(?:pounds?\\s+sterling|quid)' },
  { unit: '€', says: 'euros?' },
  { unit: '$', says: 'dollars?' },
];

const dimensions = new Map(measures.map(({ unit, dimension }) => [unit, dimension]));

/** The names of each unit, with what it measures, in that order. */
export const unitNames: readonly (Names & { readonly dimension: Dimension })[] = names.map((each) => ({
  ...each,
  dimension: dimensions.get(each.unit)!,
}));
