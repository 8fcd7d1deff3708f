// A group of casks from what was given for each field: strictly, with a sentence for each thing that cannot be.
import { allowedInWords, formatNumber } from '../format.ts';
import { UNSEEN, wasGiven } from '../quoted-given.ts';
import { also, number, only, problemIn, text, type Reader } from '../reading/given.ts';
import { firstDay, isDay, lastDay } from './days.ts';
import {
  groupFieldNames,
  groupFields,
  ROOMIEST,
  type CaskGroup,
  type GroupField,
  type FieldName,
} from './group.ts';

export const LONGEST_GROUP_NAME = 40; // characters of a name or a store
const EARLIEST = '1850'; // no cask in a register is older

/** What is wrong with a group, in a sentence that begins with its field. */
export interface Fault {
  readonly field?: FieldName;
  readonly says: string;
}
export type GroupRead = { readonly group: CaskGroup } | { readonly faults: readonly Fault[] };

/** Reads what a field takes. */
function readerOf(field: GroupField): Reader<unknown> {
  switch (field.is) {
    case 'number': {
      const isWhole = (value: number) => !field.whole || Number.isInteger(value);
      const within = number(...field.range, allowedInWords(field.kind, field.range));
      return also(within, isWhole, 'it must be a whole number.');
    }
    case 'choice':
      return only(
        (given) => typeof given === 'string' && Object.hasOwn(field.options, given),
        `it can be ${Object.values(field.options).join(', ')}.`,
      );
    case 'day':
      return text(
        Infinity,
        (given) => isDay(given) && given >= EARLIEST,
        `it can be a day from ${EARLIEST} on, as 2016-03-14 or 14/03/2016.`,
      );
    default:
      return text(
        LONGEST_GROUP_NAME,
        (given) => given !== '' && !given.match(UNSEEN),
        `it can have up to ${LONGEST_GROUP_NAME} characters on one line.`,
      );
  }
}

/** What is wrong with one value of a field by itself, or nothing. */
function fieldProblem(name: FieldName, given: unknown): string | undefined {
  const field: GroupField = groupFields[name];
  if (given !== undefined) return problemIn(readerOf(field), given, field.label);
  return field.needed ? wasGiven(field.label, '', 'it is needed.') : undefined;
}

/** What in a group contradicts itself, or the year in which the house opened, or today, as 2026-11-28. */
function contradictions(group: CaskGroup, opened?: number, today?: string): readonly Fault[] {
  const { size, filled, filledVolume, filledStrength } = group;
  const { regauged, regaugedVolume, regaugedStrength } = group;
  const faults: Fault[] = [];
  const say = (field: FieldName, why: string) =>
    faults.push({ field, says: `${groupFields[field].label}: ${why}` });
  const litres = (volume: number) => `${formatNumber(volume, volume % 1 === 0 ? 0 : 1)} L`;
  if (opened !== undefined && lastDay(filled) < `${opened}`)
    say('filled', `${filled} is before the house opened, in ${opened}.`);
  if (today !== undefined && firstDay(filled) > today) say('filled', `${filled} has not come yet.`);
  if (filledVolume > ROOMIEST * size)
    say('filledVolume', `${litres(filledVolume)} do not go into a cask of ${litres(size)}.`);
  const given = [regauged, regaugedVolume, regaugedStrength].filter((each) => each !== undefined);
  if (given.length === 0) return faults;
  if (regauged === undefined || regaugedVolume === undefined || regaugedStrength === undefined) {
    say('regauged', 'a regauge needs its day, its litres and its strength.');
    return faults;
  }
  if (lastDay(regauged) < firstDay(filled))
    say('regauged', `${regauged} is before the cask was filled, on ${filled}.`);
  if (today !== undefined && firstDay(regauged) > today) say('regauged', `${regauged} has not come yet.`);
  if (regaugedVolume > filledVolume)
    say('regaugedVolume', `${litres(regaugedVolume)} are more than the ${litres(filledVolume)} filled.`);
  else if (regaugedVolume * regaugedStrength > filledVolume * filledStrength)
    say('regaugedStrength', 'there would be more alcohol in the cask than was filled.');
  return faults;
}

/**
 * Reads a group from its fields: numbers as numbers, choices by their key, days as 2016-03-14. Nothing is taken of a
 * group that has a fault; each fault is told by its field. `opened` is the year in which the house opened.
 * @example 'group' in readGroup({ casks: 1, size: 200, filled: '2016', filledVolume: 190, filledStrength: 60 }) // true (all that is needed is there)
 */
export function readGroup(
  given: Readonly<Record<string, unknown>>,
  opened?: number,
  today?: string,
): GroupRead {
  const faults: Fault[] = groupFieldNames.flatMap((field) => {
    const says = fieldProblem(field, given[field]);
    return says === undefined ? [] : [{ field, says }];
  });
  const strange = Object.keys(given).filter((key) => !Object.hasOwn(groupFields, key));
  faults.push(
    ...strange.map((key) => ({ says: wasGiven('A field', key, 'the register has none of that name.') })),
  );
  if (faults.length > 0) return { faults };
  const told = groupFieldNames.filter((name) => given[name] !== undefined);
  const group = Object.fromEntries(told.map((name) => [name, given[name]])) as unknown as CaskGroup;
  const contrary = contradictions(group, opened, today);
  return contrary.length > 0 ? { faults: contrary } : { group };
}
