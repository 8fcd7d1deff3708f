// Other units that a kind may be given and shown in; the core itself knows only its own.
import type { KindName } from './kinds.ts';
import { kinds } from './kinds.ts';
import { bracketedRoot } from './numerics/root.ts';
import { gravity, massPercent, strength } from './quantity.ts';
import { alcoholFromUsProofGallons, sikesProof, usProof } from './spirit/proof.ts';
import { massPercentFromStrength, strengthFromMassPercent } from './spirit/strength.ts';
import { platoFromGravity } from './wort/extract.ts';

export interface Unit {
  /** As printed behind the number. */
  readonly unit: string;
  readonly digits: number;
  readonly fromCore: (value: number) => number;
  readonly toCore: (value: number) => number;
}

const US_GALLON = 3.785411784; // litres; 231 cubic inches, NIST Handbook 44
const UK_GALLON = 4.54609; // litres; Weights and Measures Act 1985
const POUND = 0.45359237; // kg; international yard and pound agreement 1959
const MEGAJOULES_IN_KWH = 3.6; // MJ; by definition

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

const volumes = [times('hL', 2, 100), times('UK gal', 1, UK_GALLON), times('US gal', 1, US_GALLON)];

/** The other units of each kind that has any. */
const others: Partial<Record<KindName, readonly Unit[]>> = {
  volume: volumes,
  volume20: volumes,
  alcohol: [times('US proof gal', 1, alcoholFromUsProofGallons(1)), times('hL pure alcohol', 3, 100)],
  strength: [
    searched('° US proof', 1, (value) => usProof(strength(value)), 0, 100),
    searched('° former UK proof', 1, (value) => sikesProof(strength(value)), 0, 100),
    searched('% mass', 2, (value) => massPercentFromStrength(strength(value)), 0, 100),
  ],
  massPercent: [searched('% vol', 2, (value) => strengthFromMassPercent(massPercent(value)), 0, 100)],
  gravity: ['°P', '° Brix'].map((unit) =>
    searched(unit, 2, (value) => platoFromGravity(gravity(value)), 0.98, 1.15),
  ),
  temperature: [
    { unit: '°F', digits: 1, fromCore: (value) => value * 1.8 + 32, toCore: (value) => (value - 32) / 1.8 },
  ],
  mass: [times('t', 3, 1000), times('lb', 1, POUND)],
  energy: [times('kWh', 1, MEGAJOULES_IN_KWH)],
};

const own = (kind: KindName): Unit => ({
  ...kinds[kind],
  fromCore: (value) => value,
  toCore: (value) => value,
});

const all = Object.fromEntries(
  (Object.keys(kinds) as KindName[]).map((kind) => [kind, [own(kind), ...(others[kind] ?? [])]]),
) as unknown as Readonly<Record<KindName, readonly Unit[]>>;

/** Every unit of a kind, the core's own first; the same objects each time. */
export function unitsOf(kind: KindName): readonly Unit[] {
  return all[kind];
}
