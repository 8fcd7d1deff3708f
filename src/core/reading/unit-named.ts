// The unit that a text names, where the kind is known: its own, another of the kind, none, or one that it cannot have.
import type { KindName } from '../kinds.ts';
import type { Dimension } from '../measures.ts';
import { unitsRead, type Unit } from '../units.ts';
import type { UnitCountry } from './country.ts';
import { unitNames } from './unit-names.ts';

/** Units that are of one country or the other. */
const local: Readonly<Record<string, Readonly<Record<UnitCountry, string>>>> = {
  gal: { US: 'US gal', UK: 'UK gal' },
  '° proof': { US: '° US proof', UK: '° former UK proof' },
};

export interface NamedUnit {
  /** `none`: a bare number; `other`: no unit of this kind. */
  readonly unit: Unit | 'none' | 'other';
  /** The units it may be, where the country decides and is not known. */
  readonly either?: readonly Unit[];
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s*');
const per = '\\s*(?:/|per|an?|to\\s+an?|to\\s+the|for\\s+an?)\\s*';
const money = /^(?:[a-z]+|[£$€¥])$/i;

/** Every name of a unit, as a pattern; of one over another, their names with “per” between. */
function namesOf(unit: string): string {
  const said = unitNames
    .filter((each) => each.unit === unit)
    .flatMap(({ says, known }) => [says, known].filter((each) => each !== undefined));
  const parts = unit.split('/');
  const ratio =
    said.length === 0 && parts.length === 2 ? [parts.map((part) => `(?:${namesOf(part)})`).join(per)] : [];
  return [escaped(unit), ...said, ...ratio].map((each) => `(?:${each})`).join('|');
}

const patterns = new Map<string, RegExp>();
/** A pattern for a whole text, made once. */
function whole(says: string): RegExp {
  const made = patterns.get(says) ?? new RegExp(`^(?:${says})\\.?$`, 'i');
  patterns.set(says, made);
  return made;
}

const names = new Map<string, string>();
function spells(unit: string, text: string): boolean {
  if (unit === '') return /^(?:s\.?g\.?|o\.?g\.?|f\.?g\.?)$/i.test(text);
  if (!names.has(unit)) names.set(unit, namesOf(unit));
  return whole(names.get(unit)!).test(text);
}

/**
 * What a text behind a number measures: “a mass” for tonnes; nothing when it is no unit of the table.
 * @example dimensionNamed('tonnes') // 'mass' (what they measure)
 */
export function dimensionNamed(text: string): Dimension | undefined {
  const said = text.trim();
  const inText = unitNames.find(({ says }) => says !== undefined && whole(says).test(said));
  return (inText ?? unitNames.find(({ unit }) => spells(unit, said)))?.dimension;
}

/**
 * The unit that a text names for a kind; a word for the things counted is no unit.
 * @example unitNamed('tonnes', 'mass').unit.unit // 't' (a tonne)
 */
export function unitNamed(text: string, kind: KindName, country?: UnitCountry): NamedUnit {
  const said = text.trim();
  if (said === '') return { unit: 'none' };
  if (kind === 'money') return { unit: money.test(said) ? 'none' : 'other' };
  if (kind === 'temperature' && spells('°', said)) return { unit: 'none' };
  const units = unitsRead(kind);
  const own = units.find(({ unit }) => (unit !== '' || kind === 'gravity') && spells(unit, said));
  if (own) return { unit: own };
  const open = Object.keys(local).find((unit) => spells(unit, said));
  const either = open
    ? Object.entries(local[open]!).flatMap(([of, name]) =>
        country === undefined || country === of ? units.filter(({ unit }) => unit === name) : [],
      )
    : [];
  if (either.length === 1) return { unit: either[0]! };
  if (either.length > 1) return { unit: 'other', either };
  const things =
    kind === 'count' && /^[a-z]{3,}(?: [a-z]+)*$/i.test(said) && dimensionNamed(said) === undefined;
  return { unit: things ? 'none' : 'other' };
}
