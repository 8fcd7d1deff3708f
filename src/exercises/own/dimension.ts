// What a unit measures, as powers of a few bases, so that a formula cannot add litres to kilograms.
import { refuse, type Refusal } from '../../core/refusal.ts';
import { shown } from '../../core/shown.ts';

/** Powers of mass, length, time, energy, temperature and money; a plain number has none. */
export type Dimension = Readonly<Partial<Record<Base, number>>>;
type Base = 'mass' | 'length' | 'time' | 'energy' | 'temperature' | 'money' | 'moles';

export const NONE: Dimension = {};
const volume: Dimension = { length: 3 };
const pressure: Dimension = { energy: 1, length: -3 };

/** The signs of units, as `core/kinds.ts` and `core/measures.ts` print them. Litres of pure alcohol are litres; shares and counts are plain. */
const signs: Readonly<Record<string, Dimension>> = {
  ...Object.fromEntries(['kg', 'g', 'mg', 't', 'lb', 'cwt', 'US tons', 'UK tons'].map((unit) => [unit, { mass: 1 }])),
  ...Object.fromEntries(
    ['L', 'hL', 'cL', 'mL', 'UK gal', 'US gal', 'US proof gal', 'L pure alcohol', 'hL pure alcohol', 'm³'].map((unit) => [unit, volume]),
  ),
  ...Object.fromEntries(['mm', 'cm', 'm', 'km', 'µm'].map((unit) => [unit, { length: 1 }])),
  ...Object.fromEntries(['m²', 'cm²', 'ha'].map((unit) => [unit, { length: 2 }])),
  ...Object.fromEntries(['h', 'min', 's', 'days', 'weeks', 'months', 'years'].map((unit) => [unit, { time: 1 }])),
  ...Object.fromEntries(['MJ', 'kJ', 'GJ', 'kWh'].map((unit) => [unit, { energy: 1 }])),
  ...Object.fromEntries(['kW', 'W'].map((unit) => [unit, { energy: 1, time: -1 }])),
  ...Object.fromEntries(['°C', '°F', 'K'].map((unit) => [unit, { temperature: 1 }])),
  ...Object.fromEntries(['kPa', 'bar', 'mbar', 'psi'].map((unit) => [unit, pressure])),
  ...Object.fromEntries(['money', '£', '€', '$'].map((unit) => [unit, { money: 1 }])),
  mol: { moles: 1 },
  ...Object.fromEntries(
    ['', '1', '%', '% vol', '% mass', 'points', 'ppm', '°P', '° Brix', '°', '° US proof', '° former UK proof', '° gravity', 'million', 'billion'].map((unit) => [unit, NONE]),
  ),
}; // prettier-ignore

/** Dimensions multiplied, the second to a power. */
export function times(a: Dimension, b: Dimension, power = 1): Dimension {
  const sum: Partial<Record<Base, number>> = { ...a };
  for (const [base, by] of Object.entries(b) as [Base, number][]) {
    const left = (sum[base] ?? 0) + by * power;
    if (Math.abs(left) < 1e-9) delete sum[base];
    else sum[base] = left;
  }
  return sum;
}

/** What a unit measures: signs with a stroke between them, as kg/m³; a refusal where a sign is not known. */
export function dimensionOf(unit: string): Dimension | Refusal {
  let found: Dimension = NONE;
  for (const [place, part] of unit.split('/').entries())
    for (const sign of Object.hasOwn(signs, part.trim()) ? [part.trim()] : part.trim().split(/[ ·]+/)) {
      if (!Object.hasOwn(signs, sign))
        return refuse(
          `“${shown(sign)}” is no unit that a formula knows; it is written as the book prints it.`,
        );
      found = times(found, signs[sign]!, place === 0 ? 1 : -1);
    }
  return found;
}

export const isSame = (a: Dimension, b: Dimension): boolean => Object.keys(times(a, b, -1)).length === 0;

const words: readonly (readonly [string, Dimension])[] = [
  ['a plain number', NONE],
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
export const inWords = (of: Dimension): string =>
  words.find(([, each]) => isSame(each, of))?.[0] ??
  Object.entries(of)
    .map(([base, power]) => (power === 1 ? base : `${base}^${power}`))
    .join(' × ');
