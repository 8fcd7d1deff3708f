// What may be true of one house and not of another: sentences that depend on it show or step aside.
import type { NumberName } from '../core/figures/index.ts';
import type { Line } from '../core/line/line.ts';

/** The figures of a house that are not known; of the built-in house none. */
type Unknown = readonly NumberName[];
const isStoreKnown = (unknown: Unknown) => !unknown.includes('storeHumidity');

export const conditions = {
  'strength-falls': ({ filling, matured }: Line, unknown: Unknown) =>
    isStoreKnown(unknown) && matured.strength < filling.strength - 0.05,
  'strength-rises': ({ filling, matured }: Line, unknown: Unknown) =>
    isStoreKnown(unknown) && matured.strength > filling.strength + 0.05,
  'strength-steady': ({ filling, matured }: Line, unknown: Unknown) =>
    isStoreKnown(unknown) && Math.abs(matured.strength - filling.strength) <= 0.05,
  'store-not-known': (_: Line, unknown: Unknown) => !isStoreKnown(unknown),
  'charge-is-diluted': ({ round }: Line) => round.dilution > 0.5,
  'charge-is-not-diluted': ({ round }: Line) => round.dilution <= 0.5,
  'wash-lighter-than-water': ({ house }: Line) => house.finalGravity < 1,
  'wash-heavier-than-water': ({ house }: Line) => house.finalGravity >= 1,
  'more-extract-than-the-malt-had': ({ mash }: Line) => mash.efficiency > 100,
  'reduced-for-filling': ({ filling }: Line) => filling.water > 0.5,
  'filled-as-it-comes': ({ filling }: Line) => filling.water <= 0.5,
  'reduced-for-bottling': ({ bottling }: Line) => bottling.water > 0.5,
  'bottled-as-it-comes': ({ bottling }: Line) => bottling.water <= 0.5,
  'below-forty': ({ matured }: Line) => matured.strength < 40,
  'long-enough-for-the-alcohol': ({ house }: Line) => house.fermentationHours >= 44,
  'emptied-before-that': ({ house }: Line) => house.fermentationHours < 44,
  'as-strong-as-strong-beer': ({ wash }: Line) => wash.strength < 10,
  'distilled-thrice': ({ round }: Line) => (round.between?.weak.volume ?? 0) > 0,
  'part-distilled-thrice': ({ round }: Line) => round.between?.weak.volume === 0,
  'one-bottle': ({ bottling }: Line) => !bottling.isMixed,
  young: ({ house }: Line) => house.yearsInWood < 3,
} as const satisfies Record<string, (line: Line, unknown: Unknown) => boolean>;

export type Condition = keyof typeof conditions;

/** True when a name is that of a condition. */
export function isCondition(name: string | undefined): name is Condition {
  return name !== undefined && Object.hasOwn(conditions, name);
}
