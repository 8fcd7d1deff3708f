// The unit of a quantity as said: what it is in the figure's own unit and back, and how it is written for one or for many.
import { unitsRead } from '../core/units.ts';
import { inUnit, unitAt, type SaidDimension } from '../talk/units.ts';
import { US_PROOF } from './us-proof.ts';

/** A way from a value as said to the figure's own unit, and back. */
export interface Conversion {
  /** The handbook's unit that was said, and that of the figure; empty where it is not known. */
  readonly unit: string;
  readonly figureUnit: string;
  readonly toFigure: (said: number) => number;
  readonly fromFigure: (figure: number) => number;
}

const linear = (unit: string, figureUnit: string, slope: number, from = 0): Conversion => ({
  unit,
  figureUnit,
  toFigure: (said) => from + slope * said,
  fromFigure: (figure) => (figure - from) / slope,
});
const same = (unit: string, figureUnit = unit) => linear(unit, figureUnit, 1);

/** A unit in another of its dimension, both of the handbook's table, where the way is a straight line. */
function straight(unit: string, figureUnit: string): Conversion {
  const nothing = inUnit(0, unit, figureUnit);
  return linear(unit, figureUnit, inUnit(1, unit, figureUnit) - nothing, nothing);
}

function ofKind(kind: 'strength' | 'gravity', unit: string, figureUnit: string): readonly Conversion[] {
  if (kind === 'strength' && unit === '° US proof') return [linear(unit, figureUnit, 1 / US_PROOF)];
  const found = unitsRead(kind).find((each) => each.unit === unit && unit !== '');
  return found ? [{ unit, figureUnit, toFigure: found.toCore, fromFigure: found.fromCore }] : [];
}

const times = ['h', 'years', 'min', 'days', 'weeks', 'months'];
const wanted: Partial<Readonly<Record<SaidDimension, readonly string[]>>> = {
  mass: ['kg', 't'],
  volume: ['L', 'cL', 'L pure alcohol'],
  alcohol: ['L pure alcohol'],
  time: times,
};
const gravity = (unit: string) => linear(unit, 'gravity', 0.001, 1);
const proofs = ['° US proof', '° former UK proof'];
/** What a number without a unit may be in, once it is not the figure's own unit. */
const unsaid = [
  ['t', 'kg'], ['hL', 'L'], ['US gal', 'L'], ['UK gal', 'L'], ['lb', 'kg'], ['L', 'cL'], ['mL', 'cL'], ['°F', '°C'], ['days', 'h'], ['min', 'h'], ['h', 'min'],
] as const; // prettier-ignore

/** Every way that a value in a said unit can be meant, the likeliest first. */
function waysOf(unit: string, dimension: SaidDimension): readonly Conversion[] {
  const strengths = (names: readonly string[]) => names.flatMap((name) => ofKind('strength', name, '% vol'));
  if (unit === 'gal') return ['UK gal', 'US gal'].map((each) => straight(each, 'L'));
  if (unit === '° proof') return strengths([...proofs].reverse());
  if (unit === 'proof gal') return ['proof gal', 'US proof gal'].map((each) => straight(each, 'L pure alcohol'));
  if (unit === '°') return [same('°', '°C'), straight('°F', '°C'), gravity('° gravity'), same('% vol')];
  if (unit === 'kL') return [linear('kL', 'L', 1000)];
  if (unit === '%') return [same('%'), same('%', '% vol'), linear('%', 'share', 0.01)];
  if (unit === '°F') return [straight('°F', '°C'), same('°F')];
  if (unit === '° gravity') return [gravity(unit), same(unit, '')];
  if (unit === 'kg/h') return [linear(unit, 't/h', 0.001), same(unit)];
  if (dimension === 'gravity') return ofKind('gravity', unit, 'gravity');
  if (dimension === 'strength' && unit !== '% vol') return strengths([unit]);
  if (dimension === 'share') return [linear('', '%', 100), linear('', '% vol', 100), same('')];
  if (unit === '')
    return [same(''), linear('', 'gravity', 0.001), gravity(''), linear('', '%', 100), ...[1e3, 1e6, 100, 10].map((size) => linear('', '', size)), ...ofKind('gravity', '°P', 'gravity'), ...unsaid.map(([from, to]) => straight(from, to)), ...strengths(proofs)];
  return (wanted[dimension] ?? [unit]).map((each) => straight(unit, each));
} // prettier-ignore

const GRAVITY = 15; // gravities all lie near 1: four thousandths between two count as six hundredths of another figure
const apart = (a: number, b: number, isGravity: boolean) =>
  isGravity
    ? GRAVITY * Math.abs(a - b)
    : a > 0 && b > 0
      ? Math.abs(Math.log(a / b))
      : Math.abs(a - b) / Math.max(1, Math.abs(a), Math.abs(b));
const NEAR = 0.06; // part: the first way that comes as near as this is taken, though a later one may come nearer by chance

const BY_CHANCE = 0.1; // beyond this a number without a unit is not taken to be in hundreds, or in another unit than the figure's

export interface Meant extends Conversion {
  /** How far the value as said lies from what it stood for: the logarithm of their ratio. */
  readonly apart: number;
}

/** What a said value was in, by the value that it stood for; `figureUnit` where it is known. */
export function meantAs(
  said: number,
  { unit, dimension }: { readonly unit: string; readonly dimension: SaidDimension },
  was: number,
  figureUnit?: string,
): Meant {
  const all = waysOf(unit, dimension);
  const isOwn = (each: Conversion) => ['', figureUnit].includes(each.figureUnit);
  const isGravity = figureUnit === 'gravity' || (figureUnit === undefined && was > 0.98 && was < 1.15);
  const fitting = figureUnit === undefined ? all : all.filter(isOwn);
  const ways = (fitting.length > 0 ? fitting : all).map((each) => ({
    ...each,
    apart: apart(each.toFigure(said), was, isGravity),
  }));
  const nearest = ways.toSorted((a, b) => a.apart - b.apart)[0] ?? {
    ...same(unit),
    apart: apart(said, was, isGravity),
  };
  const isByChance = unit === '' && nearest.apart > BY_CHANCE;
  const first = ways.find((each) => each.apart < NEAR) ?? (isByChance ? (ways[0] ?? nearest) : nearest);
  const own = figureUnit ?? (isGravity && unit === '' ? 'gravity' : undefined);
  return first.figureUnit === '' && own !== undefined ? { ...first, figureUnit: own } : first;
}

/** A unit that an audience asked for, from the figure's own; nothing where it measures something else. */
export function unitAskedFor(unit: string, figureUnit: string): Conversion | undefined {
  if (unit === figureUnit) return same(unit);
  if (unit === '°F') return figureUnit === '°C' ? straight('°F', '°C') : undefined;
  if (figureUnit === '% vol' || figureUnit === '%') return ofKind('strength', unit, '% vol')[0];
  if (figureUnit === 'gravity') return unit === '° gravity' ? gravity(unit) : ofKind('gravity', unit, 'gravity')[0];
  const read = unitAt(unit, 0);
  const own = unitAt(figureUnit, 0);
  const isAlike = read && own && read.unit === unit && read.dimension === own.dimension;
  return isAlike && inUnit(1, unit, figureUnit) !== 1 ? straight(unit, figureUnit) : undefined;
} // prettier-ignore

/** How each unit that can be asked for is written short, and for one and for many. */
export const unitsSaid: Readonly<Record<string, readonly [short: string, one: string, many: string]>> = {
  L: ['L', 'litre', 'litres'],
  hL: ['hl', 'hectolitre', 'hectolitres'],
  'US gal': ['US gal', 'US gallon', 'US gallons'],
  'UK gal': ['imperial gal', 'imperial gallon', 'imperial gallons'],
  kg: ['kg', 'kilo', 'kilos'],
  t: ['t', 'tonne', 'tonnes'],
  lb: ['lb', 'pound', 'pounds'],
  min: ['min', 'minute', 'minutes'],
  h: ['h', 'hour', 'hours'],
  days: ['days', 'day', 'days'],
  '°C': ['°C', 'degree Celsius', 'degrees Celsius'],
  '°F': ['°F', 'degree Fahrenheit', 'degrees Fahrenheit'],
  '% vol': ['% vol', 'per cent', 'per cent'],
  '° US proof': ['US proof', 'US proof', 'US proof'],
  '° former UK proof': ['UK proof', 'UK proof', 'UK proof'],
  'US proof gal': ['US proof gal', 'US proof gallon', 'US proof gallons'],
};
const isWritten = (said: string) => /[a-z]{4}/i.test(said);

/** A unit that was asked for, in the manner of the one that stood there: short where it was short, joined where it was joined as in “1,500-litre”. */
export function nameOfUnit(unit: string, stood: string, inWords: boolean): string {
  const [short, one, many] = unitsSaid[unit] ?? [unit, unit, unit];
  if (stood.startsWith('-')) return `-${one}`;
  return inWords || isWritten(stood) ? many : short;
}

const nouns =
  /\b(lit(?:re|er)|hectolit(?:re|er)|centilit(?:re|er)|kilo|kilogram(?:me)?|gram|tonne|ton|gallon|pound|pint|hour|minute|day|week|fortnight|month|year|degree|point|wash[\s-]?back|fermenter|tun|cask|barrel|hogshead|butt|puncheon|bottle|still|brew|time|mash|visitor|charge|run|part)(e?s)?\b/i;

/** A unit's name for one, or for more where it stood for one before (`wasOne`); signs, short names and what follows the name stay. */
export function inNumber(said: string, isOne: boolean, wasOne = false): string {
  const found = nouns.exec(said);
  if (!found) return isOne ? said.replace(/\bpeople\b/, 'person') : said;
  if ((!isOne && !wasOne) || said.startsWith('-')) return said;
  const [whole, noun] = found;
  const many = `${noun}${/sh$/.test(noun!) ? 'es' : 's'}`;
  return said.slice(0, found.index) + (isOne ? noun! : many) + said.slice(found.index + whole.length);
}
