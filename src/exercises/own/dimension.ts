// What a unit measures, as powers of a few bases, so that a formula cannot add litres to kilograms.
import { refuse, type Refusal } from '../../core/refusal.ts';
import { quotedGiven } from '../../core/quoted-given.ts';

/** Powers of mass, length, time, energy, temperature and money; a plain number has none. */
export type UnitPowers = Readonly<Partial<Record<Base, number>>>;
type Base = 'mass' | 'length' | 'time' | 'energy' | 'temperature' | 'money' | 'moles';

export const NO_DIMENSION: UnitPowers = {};
const volume: UnitPowers = { length: 3 };
const pressure: UnitPowers = { energy: 1, length: -3 };

/** A sign of a unit: what it measures, and how many of the base units it is: kg, L (so dm, dm²), h, MJ, °C. */
type Sign = readonly [UnitPowers, number];
const each = (
  measures: UnitPowers,
  units: Readonly<Record<string, number>>,
): Readonly<Record<string, Sign>> =>
  Object.fromEntries(Object.entries(units).map(([unit, scale]) => [unit, [measures, scale] as const]));
const plainly = (...units: readonly string[]) =>
  each(NO_DIMENSION, Object.fromEntries(units.map((unit) => [unit, 1])));

/** The signs of units, as `core/kinds.ts` and `core/measures.ts` print them. Litres of pure alcohol are litres; shares and counts are plain. Scales by definition (units of the International System; Weights and Measures Act 1985; NIST Handbook 44). */
const signs: Readonly<Record<string, Sign>> = {
  ...each({ mass: 1 }, { kg: 1, g: 1e-3, mg: 1e-6, t: 1000, lb: 0.45359237, cwt: 50.80234544, 'US tons': 907.18474, 'UK tons': 1016.0469088 }),
  ...each(volume, { L: 1, hL: 100, kL: 1000, dL: 0.1, cL: 0.01, mL: 1e-3, 'm³': 1000, 'UK gal': 4.54609, 'US gal': 3.785411784, 'US proof gal': 1.892705892, 'L pure alcohol': 1, 'hL pure alcohol': 100, 'kL pure alcohol': 1000, 'cL pure alcohol': 0.01, 'mL pure alcohol': 1e-3 }),
  ...each({ length: 1 }, { mm: 0.01, cm: 0.1, m: 10, km: 1e4, 'µm': 1e-5 }),
  ...each({ length: 2 }, { 'm²': 100, 'cm²': 0.01, ha: 1e6 }),
  ...each({ time: 1 }, { h: 1, min: 1 / 60, s: 1 / 3600, days: 24, weeks: 168, months: 730.5, years: 8766 }),
  ...each({ energy: 1 }, { MJ: 1, kJ: 1e-3, GJ: 1000, kWh: 3.6 }),
  ...each({ energy: 1, time: -1 }, { kW: 3.6, W: 3.6e-3 }),
  ...each({ temperature: 1 }, { '°C': 1, K: 1, '°F': 1 }),
  ...each(pressure, { kPa: 1e-6, bar: 1e-4, mbar: 1e-7, psi: 6.894757e-6 }),
  ...each({ money: 1 }, { money: 1, '£': 1, '€': 1, $: 1 }),
  ...each({ moles: 1 }, { mol: 1 }),
  ...plainly('', '1', '%', '% vol', '% mass', 'points', 'ppm', '°P', '° Brix', '°', '° US proof', '° former UK proof', '° gravity', 'million', 'billion'),
}; // prettier-ignore

/** Dimensions multiplied, the second to a power. */
export function dimensionTimes(a: UnitPowers, b: UnitPowers, power = 1): UnitPowers {
  const sum: Partial<Record<Base, number>> = { ...a };
  for (const [base, by] of Object.entries(b) as [Base, number][]) {
    const left = (sum[base] ?? 0) + by * power;
    if (Math.abs(left) < 1e-9) delete sum[base];
    else sum[base] = left;
  }
  return sum;
}

/** A unit taken apart into signs, what stands under its stroke with a power of −1. */
const partsOf = (unit: string): readonly (readonly [sign: string, power: 1 | -1])[] =>
  unit.split('/').flatMap((part, place) => {
    const all = Object.hasOwn(signs, part.trim()) ? [part.trim()] : part.trim().split(/[ ·]+/);
    return all.map((sign) => [sign, place === 0 ? 1 : -1] as const);
  });

/** What a unit measures: signs with a stroke between them, as kg/m³; a refusal where a sign is not known. */
export function dimensionOfSigns(unit: string): UnitPowers | Refusal {
  let found: UnitPowers = NO_DIMENSION;
  for (const [sign, power] of partsOf(unit)) {
    if (!Object.hasOwn(signs, sign))
      return refuse(
        `“${quotedGiven(sign)}” is no unit that a formula knows; it is written as the book prints it.`,
      );
    found = dimensionTimes(found, signs[sign]![0], power);
  }
  return found;
}

/** How many of the base units a known unit is: 1000 for t, and for kg/m³ a thousandth of a kilogram a litre. */
export const scaleOfUnit = (unit: string): number =>
  partsOf(unit).reduce((scale, [sign, power]) => scale * (signs[sign]?.[1] ?? NaN) ** power, 1);

export const isSameDimension = (a: UnitPowers, b: UnitPowers): boolean =>
  Object.keys(dimensionTimes(a, b, -1)).length === 0;

const words: readonly (readonly [string, UnitPowers])[] = [
  ['a plain number', NO_DIMENSION],
  ['a mass', { mass: 1 }],
  ['a volume', volume],
  ['a length', { length: 1 }],
  ['an area', { length: 2 }],
  ['a time', { time: 1 }],
  ['an energy', { energy: 1 }],
  ['a power', { energy: 1, time: -1 }],
  ['a temperature', { temperature: 1 }],
  ['a pressure', pressure],
  ['money', { money: 1 }],
  ['a density', { mass: 1, length: -3 }],
  ['a volume to a mass', { length: 3, mass: -1 }],
  ['a mass in a time', { mass: 1, time: -1 }],
  ['a volume in a time', { length: 3, time: -1 }],
  ['an energy to a mass', { energy: 1, mass: -1 }],
  ['an energy to a volume', { energy: 1, length: -3 }],
];
/** A dimension in words. */
export const dimensionInWords = (of: UnitPowers): string =>
  words.find(([, each]) => isSameDimension(each, of))?.[0] ??
  Object.entries(of)
    .map(([base, power]) => (power === 1 ? base : `${base}^${power}`))
    .join(' × ');
