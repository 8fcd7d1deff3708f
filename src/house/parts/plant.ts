// The part “plant”: the vessels of a house, read strictly. A vessel that cannot be is left out, and told of by its name.
import { isData, ownValue } from '../../core/reading/data.ts';
import { canRead, list, number, oneOf, whole } from '../../core/reading/given.ts';
import { formatNumber } from '../../core/format.ts';
import { kinds } from '../../core/kinds.ts';
import {
  holdingField,
  holdingNames,
  MOST_VESSEL_GROUPS,
  plantFields,
  stillFields,
  tunFields,
  washbackFields,
  type VesselField,
} from '../../core/plant/fields.ts';
import {
  condensers,
  heatings,
  schemes,
  washbackMaterials,
  type Plant,
  type Washbacks,
} from '../../core/plant/plant.ts';
import { quotedGiven } from '../../core/quoted-given.ts';
import type { HousePart, PartReading } from './part.ts';

const NONE = { holds: 0 } as const;

/** A house that has named no vessel. */
export const emptyPlant: Plant = {
  mashTuns: [],
  washbacks: [],
  shortFermentation: 60,
  weekendFermentation: 100,
  washCharger: NONE,
  lowWinesReceiver: NONE,
  spiritReceiver: NONE,
  washStills: [],
  intermediateStills: [],
  spiritStills: [],
  scheme: 'twice',
  strongFeintsEnd: 40,
  runAgain: 50,
  usual: ['shortFermentation', 'weekendFermentation'],
};

const withUnit = (value: unknown, { kind, step }: VesselField) => {
  const digits = step < 1 ? 2 : 0;
  const number =
    typeof value === 'number' && Math.abs(value) < 1e15
      ? formatNumber(value, value % 1 === 0 ? 0 : Math.max(1, digits))
      : `“${quotedGiven(value)}”`;
  const { unit } = kinds[kind];
  return unit ? `${number} ${unit}` : number;
};

/** What is wrong with one number of a vessel, or nothing. */
export function problemOfField(vessel: string, field: VesselField, value: unknown): string | undefined {
  const [low, high] = field.limits;
  if (canRead(field.kind === 'count' ? whole(low, high) : number(low, high), value)) return undefined;
  const ends = `${formatNumber(low, low % 1 === 0 ? 0 : 1)} to ${withUnit(high, field)}`;
  const given = value === undefined ? `${field.one} is missing` : `${field.one} of ${withUnit(value, field)}`;
  return `${vessel}: ${given}: ${field.takes} ${ends}.`;
}

/** One way of a vessel to be made: what is wrong with a choice, or nothing. */
function problemOfChoice(
  vessel: string,
  options: Readonly<Record<string, string>>,
  value: unknown,
): string | undefined {
  if (canRead(oneOf(Object.keys(options)), value)) return undefined;
  return `${vessel}: “${quotedGiven(value)}” is none of ${Object.keys(options).join(', ')}.`;
}

/** What is wrong with the list of figures that stand at usual values, or nothing. */
const problemOfUsual = (vessel: string, keys: readonly string[], usual: unknown) =>
  usual === undefined || canRead(list(oneOf(keys), keys.length), usual)
    ? undefined
    : `${vessel}: “${quotedGiven(usual)}” is no list of its figures that are usual values.`; // prettier-ignore
const withUsual = (usual: unknown) =>
  Array.isArray(usual) && usual.length > 0 ? { usual: [...new Set(usual as readonly string[])] } : {};

const washbacksFit = (vessel: string, { working, full }: Washbacks) =>
  working > full
    ? `${vessel}: filled to ${withUnit(working, washbackFields.working)}, and it holds ${withUnit(full, washbackFields.full)} to the brim.`
    : undefined;

/** Reads the groups of one kind; each that cannot be is left out. */
function readGroups<T>(
  data: unknown,
  name: string,
  fields: Readonly<Record<string, VesselField>>,
  choices: Readonly<Record<string, Readonly<Record<string, string>>>>,
  tell: (problem: string) => void,
  together: (vessel: string, group: T) => string | undefined = () => undefined,
): readonly T[] {
  if (data === undefined) return [];
  if (!Array.isArray(data)) return (tell(`${name}s: “${quotedGiven(data)}” is no list of vessels.`), []);
  if (data.length > MOST_VESSEL_GROUPS)
    tell(
      `${name}s: ${data.length} groups are given, and ${MOST_VESSEL_GROUPS} are read; the rest is left out.`,
    );
  return data.slice(0, MOST_VESSEL_GROUPS).flatMap((row: unknown, i): readonly T[] => {
    const vessel = `${name} ${i + 1}`;
    const keys = [...Object.keys(fields), ...Object.keys(choices)];
    if (!isData(row)) return (tell(`${vessel}: “${quotedGiven(row)}” is no vessel.`), []);
    const problems = [
      ...Object.entries(fields).map(([key, field]) => problemOfField(vessel, field, ownValue(row, key))),
      ...Object.entries(choices).map(([key, options]) =>
        problemOfChoice(vessel, options, ownValue(row, key)),
      ),
      ...Object.keys(row)
        .filter((key) => !keys.includes(key) && key !== 'usual')
        .slice(0, MOST_VESSEL_GROUPS)
        .map((key) => `${vessel}: “${quotedGiven(key)}” is nothing that is known of a vessel.`),
      problemOfUsual(vessel, keys, ownValue(row, 'usual')),
    ].filter((problem) => problem !== undefined);
    const figures = Object.fromEntries(keys.map((key) => [key, ownValue(row, key)]));
    const group = { ...figures, ...withUsual(ownValue(row, 'usual')) } as T;
    const apart = problems.length === 0 ? together(vessel, group) : undefined;
    [...problems, apart].forEach((problem) => problem !== undefined && tell(problem));
    return problems.length === 0 && apart === undefined ? [group] : [];
  });
}

function read(data: unknown): PartReading<Plant> {
  const problems: string[] = [];
  const tell = (problem: string) => void problems.push(problem);
  if (!isData(data)) return { value: emptyPlant, problems: [`Stills and vessels: “${quotedGiven(data)}” is no plant.`] };
  const single = (name: keyof typeof plantFields) => {
    const value = ownValue(data, name) ?? emptyPlant[name];
    const problem = problemOfField(plantFields[name].label, plantFields[name], value);
    if (problem) tell(problem);
    return problem ? emptyPlant[name] : (value as number);
  };
  const holding = (name: keyof typeof holdingNames) => {
    const given = ownValue(data, name);
    if (given === undefined) return NONE;
    const holds = isData(given) ? ownValue(given, 'holds') : given;
    const problem = problemOfField(holdingNames[name], holdingField, holds);
    if (problem) tell(problem);
    return problem ? NONE : { holds: holds as number };
  };
  const stills = (name: string, key: string) =>
    readGroups<Plant['washStills'][number]>(ownValue(data, key), name, stillFields, { condenser: condensers, heating: heatings }, tell);
  const scheme = ownValue(data, 'scheme') ?? emptyPlant.scheme;
  const noScheme = problemOfChoice('How it is distilled', schemes, scheme);
  if (noScheme) tell(noScheme);
  for (const key of Object.keys(data).filter((each) => !Object.hasOwn(emptyPlant, each)).slice(0, MOST_VESSEL_GROUPS))
    tell(`Stills and vessels: “${quotedGiven(key)}” is no vessel of a plant.`);
  // A figure that was never written stands as the empty plant has it; one that was, without a list, was given.
  const given = ownValue(data, 'usual') ?? emptyPlant.usual!.filter((name) => !Object.hasOwn(data, name));
  const noUsual = problemOfUsual('Stills and vessels', emptyPlant.usual!, given);
  if (noUsual) tell(noUsual);
  const value: Plant = {
    mashTuns: readGroups(ownValue(data, 'mashTuns'), 'Mash tun', tunFields, {}, tell),
    washbacks: readGroups(ownValue(data, 'washbacks'), 'Washback', washbackFields, { material: washbackMaterials }, tell, washbacksFit),
    shortFermentation: single('shortFermentation'),
    weekendFermentation: single('weekendFermentation'),
    washCharger: holding('washCharger'),
    lowWinesReceiver: holding('lowWinesReceiver'),
    spiritReceiver: holding('spiritReceiver'),
    washStills: stills('Wash still', 'washStills'),
    intermediateStills: stills('Intermediate still', 'intermediateStills'),
    spiritStills: stills('Spirit still', 'spiritStills'),
    scheme: noScheme ? emptyPlant.scheme : (scheme as Plant['scheme']),
    strongFeintsEnd: single('strongFeintsEnd'),
    runAgain: single('runAgain'),
    ...withUsual(noUsual ? [] : given),
  };
  return { value, problems };
} // prettier-ignore

export const plantPart: HousePart<Plant> = {
  id: 'plant',
  title: 'Stills and vessels',
  empty: emptyPlant,
  read,
};
