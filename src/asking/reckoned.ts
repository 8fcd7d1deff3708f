// An answer that is reckoned from the numbers in a question: what all of them share.
import { formatWorking } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import type { UnitCountry } from '../core/reading/country.ts';
import { unitsRead, type Unit } from '../core/units.ts';
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import type { Dimension } from '../core/measures.ts';
import { inOtherUnit, unitMeant, type Telling } from './holes.ts';
import type { AskedQuantity } from './quantities.ts';

export interface Reckoned {
  readonly says: string;
  readonly sum?: string;
  readonly at: string;
  readonly place: string;
  /** Figures of the house that it rests on, by their places in the line. */
  readonly paths: readonly string[];
  /** What a fact of the trade in it rests on, where no source does. */
  readonly rests?: 'common practice' | 'memory' | undefined;
  /** Where an entry of the list tells it better: what such an entry is asked with. */
  readonly plainly?: readonly RegExp[];
}

/** A question with numbers, read. */
export interface Numbered {
  readonly text: string;
  readonly quantities: readonly AskedQuantity[];
  readonly wanted: { readonly unit: string; readonly dimension: Dimension } | undefined;
  readonly country: UnitCountry | undefined;
  readonly house: House;
  readonly line: Line;
  readonly telling: Telling;
}

/** What can be reckoned of a question; undefined where it is not such a question. */
export type Reckoner = (asked: Numbered) => Reckoned | undefined;

/** The kind in which each dimension is reckoned. */
export const kindOfDimension: Readonly<Partial<Record<Dimension, KindName>>> = {
  mass: 'mass',
  volume: 'volume20',
  alcohol: 'alcohol',
  strength: 'strength',
  temperature: 'temperature',
  temperatureDifference: 'temperatureDifference',
  gravity: 'gravity',
  time: 'hours',
  length: 'length',
  area: 'area',
  pressure: 'pressure',
  energy: 'energy',
};

export const unitOfName = (kind: KindName, name: string): Unit | undefined =>
  unitMeant(kind, name === 'gravity' ? '' : name);

/** A quantity of a question in the unit of its kind. */
export function inCore(quantity: AskedQuantity, kind: KindName): number | undefined {
  const unit = quantity.unit === undefined ? unitsRead(kind)[0] : unitOfName(kind, quantity.unit);
  return unit?.toCore(quantity.number);
}

/** A number as it was asked, with its unit. */
export function asGiven({ number, unit = '' }: AskedQuantity): string {
  const text = formatWorking(number, 9);
  return unit === '' || unit === '°' ? text + unit : `${text}\u00a0${unit.replaceAll(' ', '\u00a0')}`;
}

const FIGURES = 5;
/** A result, in the unit wanted or the book’s own. */
export function resultInWords(value: number, kind: KindName, unit?: Unit): string {
  const to = unit ?? unitsRead(kind)[0]!;
  if (kind === 'gravity' && to.unit === '') return value.toFixed(3);
  const shown = to.fromCore(value);
  const number = formatWorking(Number(shown.toPrecision(FIGURES - 1)), FIGURES);
  return to.unit === ''
    ? number
    : inOtherUnit(value, { ...to, fromCore: () => Number(shown.toPrecision(FIGURES - 1)) });
}

/** The percentages of a question, as strengths. */
export const strengthsIn = (quantities: readonly AskedQuantity[]): readonly number[] =>
  quantities.flatMap((each) => {
    if (each.dimension !== 'strength' && each.dimension !== 'percent') return [];
    const value = each.dimension === 'percent' ? each.number : inCore(each, 'strength');
    return value !== undefined && value > 0 && value <= 100 ? [value] : [];
  });
