// The units behind an answer, as people write them.
import { kinds, type KindName } from '../core/kinds.ts';
import { unitsOf, type Unit } from '../core/units.ts';

/** Other spellings of a unit as printed; case, dots and spaces do not count. */
const spellings: Readonly<Record<string, RegExp>> = {
  L: /^(l|lit(re|er)s?|ltrs?)$/,
  hL: /^(hl|hectolit(re|er)s?)$/,
  'UK gal': /^((uk|imperial|imp)gal(lon)?s?)$/,
  'US gal': /^((us|american)gal(lon)?s?)$/,
  'L pure alcohol': /^(l|lit(re|er)s?)(of)?(pure)?(alcohol)?$|^(lpa|laa|rla)$/,
  'hL pure alcohol': /^(hl|hectolit(re|er)s?)(of)?(pure)?(alcohol)?$|^hlpa$/,
  'US proof gal': /^(us)?proofgal(lon)?s?$/,
  'L pure alcohol/t': /^(l|lit(re|er)s?)(of)?(pure)?(alcohol)?(\/|per|ato)(t|tonnes?)$|^lpa(\/|per)t(onne)?$/,
  '% vol':
    /^(%|percent|per cent|pct|%?abv|%vol(ume)?|%byvol(ume)?|%alc|vol%|points|%points|percentagepoints)$/,
  '% mass': /^(%mass|%bymass|%w\/w|%weight|%byweight)$/,
  '%': /^(%|percent|pct|points|%points|percentagepoints)$/,
  '° US proof': /^(°|deg(rees)?)?(us)?proof$/,
  '° former UK proof': /^(°|deg(rees)?)?(former)?(uk|sikes)proof$/,
  kg: /^(kgs?|kilos?|kilogram(me)?s?)$/,
  t: /^(t|tonnes?|metrictons?)$/,
  lb: /^(lbs?|pounds?)$/,
  g: /^(g|grams?|grammes?)$/,
  '°C': /^(°c|c|degc|degrees?c?|°|(degrees?)?celsius|℃)$/,
  '°F': /^(°f|f|degf|degreesf|(degrees?)?fahrenheit)$/,
  K: /^(k|kelvins?|°c|c|degrees?c?|°)$/,
  h: /^(h|hrs?|hours?)$/,
  min: /^(mins?|minutes?)$/,
  days: /^(d|days?)$/,
  years: /^(y|yrs?|years?)$/,
  'm³': /^(m3|m³|cubicmet(re|er)s?)$/,
  'm²': /^(m2|m²|squaremet(re|er)s?)$/,
  ha: /^(ha|hectares?)$/,
  'm³/h': /^(m3|m³|cubicmet(re|er)s?)(\/|per|an)(h|hr|hour)$/,
  kWh: /^(kwh|kilowatthours?)$/,
  MJ: /^(mj|megajoules?)$/,
  'g/m³': /^(g|grams?)(\/|per)(m3|m³|cubicmet(re|er))$/,
  '°P': /^(°p|p|plato|degrees?plato)$/,
  '° Brix': /^(°?brix|degrees?brix)$/,
  money: /^.*$/,
};

const times = (unit: string, size: number): Unit => ({
  unit,
  digits: 3,
  fromCore: (value) => value / size,
  toCore: (value) => value * size,
});
const smallVolumes = [times('mL', 0.001), times('cL', 0.01), times('m³', 1000)];
/** Units that a reader may answer in, beside those in which the handbook shows a kind. */
const more: Partial<Record<KindName, readonly Unit[]>> = {
  volume: smallVolumes,
  volume20: smallVolumes,
  mass: [times('g', 0.001)],
  grams: [times('kg', 1000), times('mg', 0.001)],
  hours: [times('min', 1 / 60), times('days', 24)],
  days: [times('h', 1 / 24), times('weeks', 7)],
  minutes: [times('h', 60)],
  share: [times('%', 0.01)],
  energy: [times('kJ', 0.001), times('GJ', 1000)],
  space: [times('L', 0.001)],
  length: [times('cm', 10), times('m', 1000)],
  bottle: [times('mL', 0.1), times('L', 100)],
};

/** Every unit in which an answer of a kind may be given, the handbook's own first. */
export const answerUnits = (kind: KindName): readonly Unit[] => [...unitsOf(kind), ...(more[kind] ?? [])];

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[\s.\u202f\u00a0]/g, '')
    .replace(/³/g, '3')
    .replace(/²/g, '2');

function spells(unit: string, text: string): boolean {
  if (unit === '') return false;
  return plain(unit) === text || (spellings[unit]?.test(text) ?? false);
}

const everyUnit = [...new Set((Object.keys(kinds) as KindName[]).flatMap((kind) => answerUnits(kind)))];

/** The unit that a text names for a kind: one of the kind's, `none` when there is none or a mere word for the things counted, `other` when it is not one for this kind. */
export function unitNamed(text: string, kind: KindName): Unit | 'none' | 'other' {
  const said = plain(text);
  if (said === '') return 'none';
  const own = answerUnits(kind).find(({ unit }) => spells(unit, said));
  if (own) return own;
  const isWord = kinds[kind].unit === '' && /^[a-z ]+$/.test(said);
  return isWord && !everyUnit.some(({ unit }) => unit !== 'money' && spells(unit, said)) ? 'none' : 'other';
}
