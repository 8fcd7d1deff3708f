// The one reader of what people type for a quantity: a number in figures or words, its unit, about, ±, from … to.
import { allowedInWords, format, formatWorking } from '../format.ts';
import { wasGiven } from '../quoted-given.ts';
import type { KindName } from '../kinds.ts';
import type { Refusal } from '../refusal.ts';
import { unitOf, unitsRead, type Unit } from '../units.ts';
import { gravityFrom } from './gravity.ts';
import { tidy } from './numbers.ts';
import type { Single } from './single.ts';
import { countryOf, type UnitCountry } from './country.ts';
import { dimensionNamed } from './unit-named.ts';
import { readWritten, type Written } from './written.ts';
import type { Dimension } from '../measures.ts';

export interface KindAsked {
  readonly kind: KindName;
  /** The unit of a bare number; the kind’s own without it. */
  readonly unit?: string;
  /** What the figure is called, and what it can be, in the unit of its kind: for the sentence of a refusal. */
  readonly label?: string;
  readonly range?: readonly [number, number];
  /** Whose proof and gallons are meant when no country is named; without it, the country of `unit`. */
  readonly country?: UnitCountry | undefined;
  /** Asked for as a difference or a spread: it has no unit but its own. */
  readonly plain?: boolean;
}

/** A quantity in the unit of its kind. */
export type QuantityOfKind =
  | {
      /** As a plain number; as exactly so much; as about so much, or so much ± its `spread`. */
      readonly as: 'rounded' | 'exact' | 'about';
      readonly value: number;
      /** Size of the last digit as it was written. */
      readonly step: number;
      readonly spread?: number;
      /** The unit that it was written in. */
      readonly unit: Unit;
    }
  | { readonly as: 'range'; readonly low: number; readonly high: number; readonly unit: Unit };

const dimensions: Readonly<Record<Dimension, string>> = {
  mass: 'a mass',
  volume: 'a volume',
  alcohol: 'an amount of pure alcohol',
  yield: 'a yield',
  percent: 'a percentage',
  strength: 'a strength',
  temperature: 'a temperature',
  temperatureDifference: 'a difference of temperatures',
  time: 'a time',
  smoke: 'parts in a million',
  length: 'a length',
  area: 'an area',
  pressure: 'a pressure',
  energy: 'an energy',
  money: 'money',
  gravity: 'a gravity',
};

/**
 * Why a unit cannot stand behind the number, when that can be told.
 * @example unitTrouble({ unitText: 'tonnes' }, 'volume') // 'which is a mass' (tonnes measure no volume)
 */
export function unitTrouble({ either, unitText, number }: Single, kind: KindName): string | undefined {
  if (either) {
    const meanings = either.map(
      (unit) => `${formatWorking(number)} ${unit.unit} (${format(unit.toCore(number), kind, 1)})`,
    );
    return `which may be ${meanings.join(' or ')}: say which`;
  }
  const dimension = dimensionNamed(unitText);
  return dimension && `which is ${dimensions[dimension]}`;
}

/**
 * Reads a text for a kind, in the unit of the kind. Takes figures by the one rule of `figures.ts`, words, fractions,
 * every unit of the kind by every name in `measures.ts`, and times as a clock shows them. A gravity may be said as
 * 1058 or 58. Proof and gallons are of the country that is named, or whose unit the reader has chosen; where neither
 * tells, the refusal names both. Refuses a text with no number, with more than a quantity, or with a unit of another
 * kind, in a sentence that names what was given and what is allowed.
 * @example readQuantity('6.5 t', { kind: 'mass' }).value // 6500 (a thousand kilograms to the tonne)
 * @example readQuantity('6.5 t', { kind: 'volume' }) // refuses: which is a mass (tonnes measure no volume)
 */
export function readQuantity(text: string, asked: KindAsked): QuantityOfKind | Refusal {
  const { kind } = asked;
  const shown = unitOf(kind, asked.plain ? undefined : asked.unit);
  const written = ofThings(readWritten(text, kind, countryOf(shown.unit) ?? asked.country), asked);
  const refuse = (why?: string) => ({ refused: wasGiven(asked.label, text, allowedInWords(kind, asked.range, asked.range && shown), why) }); // prettier-ignore
  if (!written) return refuse();
  if (written.unit === 'other' || (asked.plain && !isOwn(written, kind)))
    return refuse(unitTrouble(written, kind));
  const { to } = written;
  if (to) {
    const ends = [written, to].map((end) => inCore(end, asked, shown));
    return { as: 'range', low: Math.min(...ends), high: Math.max(...ends), unit: unitBehind(written, shown) };
  }
  const value = inCore(written, asked, shown);
  const spread = spreadOf(written, asked, shown);
  if (!Number.isFinite(value) || (written.within && spread === undefined)) return refuse();
  return {
    as: spread !== undefined || written.manner === 'about' ? 'about' : written.manner === 'exact' ? 'exact' : 'rounded',
    value,
    step: stepOf(written, asked, shown),
    ...(spread === undefined ? {} : { spread }),
    unit: unitBehind(written, shown),
  }; // prettier-ignore
}

/** Weeks are no unit of a number, but in “Weeks a year” they are the things counted. */
function ofThings(written: Written | undefined, { kind, label = '' }: KindAsked): Written | undefined {
  const [thing = ''] = /^[a-z]{2,}?(?=s?$)/i.exec(written?.unitText ?? '') ?? [];
  const counts = kind === 'count' && thing !== '' && label.toLowerCase().includes(thing.toLowerCase());
  return written && counts && written.unit === 'other' ? { ...written, unit: 'none' } : written;
}

const isOwn = ({ unit }: Single, kind: KindName) => unit === 'none' || unit === unitsRead(kind)[0];
const unitBehind = ({ unit }: Single, shown: Unit): Unit => (typeof unit === 'string' ? shown : unit);
const isGravity = ({ unit }: Single, { kind, plain }: KindAsked, shown: Unit) =>
  kind === 'gravity' && unit === 'none' && shown.unit === '' && !plain;

function inCore(written: Single, asked: KindAsked, shown: Unit): number {
  if (isGravity(written, asked, shown)) return gravityFrom(written.number);
  return tidy(unitBehind(written, shown).toCore(written.number));
}

/** The size of a step of the number, in the unit of the kind. */
function sized(step: number, written: Single, asked: KindAsked, shown: Unit): number {
  if (isGravity(written, asked, shown))
    return gravityFrom(written.number) === written.number ? step : step / 1000;
  const { toCore } = unitBehind(written, shown);
  const moved =
    toCore(0) === 0 && written.unit !== 'other'
      ? toCore(step)
      : toCore(written.number + step) - toCore(written.number);
  return Number(Math.abs(moved).toPrecision(9));
}

const stepOf = (written: Single, asked: KindAsked, shown: Unit) =>
  sized(isGravity(written, asked, shown) ? Math.min(1, written.place) : written.place, written, asked, shown);

/** What stands behind ±, in the unit of the kind; a percentage of anything else is a part of it. */
function spreadOf(written: Written, asked: KindAsked, shown: Unit): number | undefined {
  const { within } = written;
  if (!within) return undefined;
  if (within.unit === 'other')
    return within.unitText !== '' && dimensionNamed(within.unitText) === 'percent'
      ? sized((Math.abs(written.number) * within.number) / 100, written, asked, shown)
      : undefined;
  return sized(
    within.number,
    within.unit === 'none' ? written : { ...written, unit: within.unit },
    asked,
    shown,
  );
}
