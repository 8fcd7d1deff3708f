// What the calculators of several waters ask about the bed, in the same words.
import type { Bed, Water } from '../../core/mashing/waters.ts';
import type { Quantity } from '../../core/quantity.ts';

export const bedInputs = {
  malt: { label: 'Mass of the grist', house: 'maltPerMash' },
  moisture: { house: 'maltMoisture' },
  extract: { label: 'Soluble extract of the malt', house: 'solubleExtract' },
  ratio: { label: 'First water', house: 'liquorRatio' },
  strike: { kind: 'temperature', label: 'First water at', range: [5, 100], step: 0.5, from: 'mash.strike' },
  later: {
    label: 'Later waters',
    columns: {
      ratio: { kind: 'liquorRatio', label: 'Later water', range: [0.1, 8], step: 0.05 },
      temperature: { kind: 'temperature', label: 'Temperature', range: [5, 100], step: 1 },
    },
    value: [
      { ratio: 1.3, temperature: 75 },
      { ratio: 2, temperature: 85 },
    ],
    count: [1, 5],
  },
  collected: { kind: 'count', label: 'Runoffs sent to the washback', range: [1, 6], step: 1, value: 2 },
  held: {
    kind: 'liquorRatio',
    label: 'Water held by the drained grains',
    range: [0.3, 1.5],
    step: 0.01,
    from: 'mash.kept',
  },
  // An assumption, to be fitted to a house’s own gravities; with it the built-in figures agree.
  washing: {
    kind: 'share',
    label: 'Share of it that each later water reaches',
    range: [0, 1],
    step: 0.05,
    value: 0.85,
  },
} as const;

export interface BedGiven extends Bed {
  readonly ratio: Quantity<'liquorRatio'>;
  readonly strike: Quantity<'temperature'>;
  readonly later: readonly Water[];
  readonly collected: Quantity<'count'>;
}

/** All waters in their order, the first among them. */
export function allWaters({ ratio, strike, later }: BedGiven): readonly [Water, ...Water[]] {
  return [{ ratio, temperature: strike }, ...later];
}

/** The sentence for a number of runoffs that cannot be. */
export function refuseRunoffs({ later, collected }: BedGiven): string | undefined {
  if (!Number.isInteger(collected)) return `${collected} runoffs were given; give a whole number.`;
  return collected > later.length + 1
    ? `${collected} runoffs cannot go to the washback where there are only ${later.length + 1}; send fewer, or add a water.`
    : undefined;
}
