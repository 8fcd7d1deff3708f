// Units: those that a kind is given and shown in, and every other that people say; the core itself knows only its own.
import type { KindName } from './kinds.ts';
import { kinds } from './kinds.ts';
import { bracketedRoot } from './numerics/root.ts';
import { gravity, massPercent, strength } from './quantity.ts';
import { sikesProof, usProof } from './spirit/proof.ts';
import { massPercentFromStrength, strengthFromMassPercent } from './spirit/strength.ts';
import { measures, type Dimension } from './measures.ts';
import { platoFromGravity } from './wort/extract.ts';

export interface Unit {
  /** As printed behind the number. */
  readonly unit: string;
  readonly digits: number;
  readonly fromCore: (value: number) => number;
  readonly toCore: (value: number) => number;
}

/** A unit that is the core's times a constant. */
const times = (unit: string, digits: number, size: number): Unit => ({
  unit,
  digits,
  fromCore: (value) => value / size,
  toCore: (value) => value * size,
});

/** A unit whose way back is found by search between two values of the core. */
function searched(
  unit: string,
  digits: number,
  fromCore: (value: number) => number,
  low: number,
  high: number,
): Unit {
  const [least, most] = [fromCore(low), fromCore(high)];
  const toCore = (value: number) =>
    value <= least
      ? low + (value - least)
      : value >= most
        ? high + (value - most)
        : bracketedRoot((core) => fromCore(core) - value, low, high);
  return { unit, digits, fromCore, toCore };
}

const measureOf = new Map(measures.map((measure) => [measure.unit, measure]));

/**
 * What a kind measures, by its own unit; nothing for a kind whose unit has no other beside it.
 * @example dimensionOf('mass') // 'mass' (kilograms measure a mass)
 */
export const dimensionOf = (kind: KindName): Dimension | undefined =>
  measureOf.get(kinds[kind].unit)?.dimension;

/** A measure of the table in the unit of a kind that measures the same. */
const sized = (kind: KindName, unit: string, digits: number): Unit =>
  times(unit, digits, measureOf.get(unit)!.size! / measureOf.get(kinds[kind].unit)!.size!);

const volumes = (kind: KindName) => [
  sized(kind, 'hL', 2),
  sized(kind, 'UK gal', 1),
  sized(kind, 'US gal', 1),
];
const formerProof = searched('° former UK proof', 1, (value) => sikesProof(strength(value)), 0, 100);

/** The other units of each kind that has any. */
const others: Partial<Record<KindName, readonly Unit[]>> = {
  volume: volumes('volume'),
  volume20: volumes('volume20'),
  alcohol: [sized('alcohol', 'US proof gal', 1), sized('alcohol', 'hL pure alcohol', 3)],
  strength: [
    searched('° US proof', 1, (value) => usProof(strength(value)), 0, 100),
    formerProof,
    searched('% mass', 2, (value) => massPercentFromStrength(strength(value)), 0, 100),
  ],
  massPercent: [searched('% vol', 2, (value) => strengthFromMassPercent(massPercent(value)), 0, 100)],
  gravity: ['°P', '° Brix'].map((unit) =>
    searched(unit, 2, (value) => platoFromGravity(gravity(value)), 0.98, 1.15),
  ),
  temperature: [
    { unit: '°F', digits: 1, fromCore: (value) => value * 1.8 + 32, toCore: (value) => (value - 32) / 1.8 },
  ],
  mass: [sized('mass', 't', 3), sized('mass', 'lb', 1)],
  energy: [sized('energy', 'kWh', 1)],
};

const own = (kind: KindName): Unit => ({
  ...kinds[kind],
  fromCore: (value) => value,
  toCore: (value) => value,
});

const all = Object.fromEntries(
  (Object.keys(kinds) as KindName[]).map((kind) => [kind, [own(kind), ...(others[kind] ?? [])]]),
) as unknown as Readonly<Record<KindName, readonly Unit[]>>;

/**
 * Every unit in which a kind is shown, the core's own first; the same objects each time.
 * @example unitsOf('mass').map(({ unit }) => unit) // ['kg', 't', 'lb'] (the core’s own first)
 */
export function unitsOf(kind: KindName): readonly Unit[] {
  return all[kind];
}

/**
 * The unit of bare numbers, by name; the kind's own when it has none of that name.
 * @example unitOf('mass', 't').toCore(2) // 2000 (a thousand kilograms to the tonne)
 */
export const unitOf = (kind: KindName, name: string | undefined): Unit =>
  all[kind].find(({ unit }) => unit === name) ?? all[kind][0]!;

/** So many degrees over or under proof, of the former British scale. */
const fromProof = (unit: string, sign: 1 | -1): Unit => ({
  unit,
  digits: 1,
  fromCore: (value) => sign * (formerProof.fromCore(value) - 100),
  toCore: (value) => formerProof.toCore(100 + sign * value),
});

/** Thousandths above or below the gravity of water. */
const degreesOfGravity: Unit = {
  unit: '° gravity',
  digits: 1,
  fromCore: (value) => 1000 * (value - 1),
  toCore: (value) => 1 + value / 1000,
};

/** Units that are read for a kind and that no size ties to its own. */
const alsoRead: Partial<Record<KindName, readonly Unit[]>> = {
  share: [times('%', 1, 0.01)],
  plato: [times('° Brix', 2, 1)],
  gravity: [degreesOfGravity],
  strength: [fromProof('° over proof', 1), fromProof('° under proof', -1)],
};

const read = new Map<KindName, readonly Unit[]>();

/**
 * Every unit in which a kind is read, those in which it is shown first: all that measure the same, too; the same objects each time.
 * @example unitsRead('mass').find(({ unit }) => unit === 'g').toCore(500) // 0.5 (a thousand grams to the kilogram)
 */
export function unitsRead(kind: KindName): readonly Unit[] {
  const known = read.get(kind) ?? unitsReadFor(kind);
  read.set(kind, known);
  return known;
}

function unitsReadFor(kind: KindName): readonly Unit[] {
  const shown = [...all[kind], ...(alsoRead[kind] ?? [])];
  const base = measureOf.get(kinds[kind].unit);
  if (base?.size === undefined) return shown;
  const same = measures.filter(
    ({ unit, dimension, size, local }) =>
      dimension === base.dimension &&
      size !== undefined &&
      !local &&
      !shown.some((each) => each.unit === unit),
  );
  return [...shown, ...same.map(({ unit }) => sized(kind, unit, 3))];
}
