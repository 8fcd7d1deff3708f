// The units last said before each quantity: what a bare “off at 107” or “two seventy” is in.
import type { TalkFigure } from './figures.ts';
import type { SpokenQuantity } from './quantities.ts';
import type { SaidDimension } from './units.ts';

export interface UnitsBefore {
  readonly strength: string;
  readonly temperature: string;
  readonly volume: string;
  readonly mass: string;
  readonly time: string;
  /** The proof that the talk speaks of, where it does. */
  readonly proof?: string;
  /** The scale of extract that the talk speaks of, where it does. */
  readonly extract?: string;
  /** What the quantity before it measures. */
  readonly last: SaidDimension | 'nothing';
}

const big = new Set(['L', 'hL', 'm³', 'US gal', 'UK gal']);
const proofs = ['° US proof', '° proof', '° former UK proof'];

/** The units before each quantity; where none was said yet, those of the talk. */
export function unitsBefore(text: string, quantities: readonly SpokenQuantity[]): UnitsBefore[] {
  const says = (...units: readonly string[]) => quantities.some(({ unit, degrees }) => !degrees && units.includes(unit));
  const last = { strength: '% vol', temperature: says('°F') && !says('°C') ? '°F' : '°C', volume: 'L', mass: 'kg', time: 'h' };
  const proof = proofs.find((unit) => says(unit));
  const extract = /\b(?:plato|balling|ballings)\b|\d\s?°?P\b/i.test(text) ? '°P' : /\bbrix\b/i.test(text) ? '° Brix' : undefined;
  let dimension: UnitsBefore['last'] = 'nothing';
  return quantities.map((quantity) => {
    const { unit } = quantity;
    const here = { ...last, last: dimension, ...(proof ? { proof } : {}), ...(extract ? { extract } : {}) };
    dimension = quantity.dimension;
    if (dimension === 'temperature' && !quantity.degrees) last.temperature = unit;
    if (dimension === 'strength' || dimension === 'percent') last.strength = unit === '%' ? '% vol' : unit;
    if (dimension === 'volume' && big.has(unit)) last.volume = unit;
    if (dimension === 'mass') last.mass = unit;
    if (dimension === 'time' && unit !== 's') last.time = unit;
    return here;
  });
} // prettier-ignore

/** The units that a quantity taken for a figure may be in, the likeliest first: its own, or for a bare number the one last said of such figures, and others of its kind. */
export function unitsAs({ dimension, unit, value, degrees }: SpokenQuantity, { kind, unit: own }: TalkFigure, before: UnitsBefore): readonly string[] {
  if (degrees && kind === 'temperature') return [unit, '°C', '°F'];
  if (dimension !== 'bare' && dimension !== 'date') return [unit];
  if (kind === 'strength') return [before.strength, '% vol', ...(before.proof ? [before.proof] : [])];
  if (kind === 'temperature') return [before.temperature, '°C', '°F'];
  if (kind === 'gravity') return before.extract ? ['', before.extract] : [''];
  if (own === 'cL') return [(value ?? 0) <= 3 ? 'L' : (value ?? 0) <= 200 ? 'cL' : 'mL'];
  if (kind === 'mass') return [before.mass];
  if (kind === 'volume') return [before.volume];
  if (kind === 'time') return own === 'h' ? ['h', 'days'] : [own];
  return [''];
} // prettier-ignore
