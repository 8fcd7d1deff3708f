// The house's spirit still and its cuts, as inputs that several calculators share.
import type { Cuts } from '../../core/distilling/cuts.ts';
import { foreshotsEnd, type ForeshotsPlan } from '../../core/distilling/foreshots.ts';
import type { RoundPlan } from '../../core/distilling/round.ts';
import type { StillSetting } from '../../core/distilling/still.ts';
import type { Quantity, Spirit } from '../../core/quantity.ts';

export const airPressure = {
  kind: 'pressure',
  label: 'Air pressure',
  range: [60, 110],
  step: 0.5,
  house: 'airPressure',
} as const;
export const washReflux = {
  kind: 'share',
  label: 'Reflux of the wash still',
  range: [0, 1],
  step: 0.01,
  house: 'washReflux',
} as const;
export const washEnd = {
  kind: 'strength',
  label: 'Wash run ends at',
  range: [0.1, 20],
  step: 0.1,
  house: 'washEnd',
} as const;
export const spiritReflux = {
  kind: 'share',
  label: 'Reflux of the spirit still',
  range: [0, 1],
  step: 0.01,
  house: 'spiritReflux',
} as const;
export const feintsEnd = {
  kind: 'strength',
  label: 'Feints end at',
  range: [0.1, 40],
  step: 0.1,
  house: 'feintsEnd',
} as const;

export const houseCuts = {
  foreshotsBy: {
    label: 'Foreshots end',
    options: {
      share: 'after a share of the alcohol',
      volume: 'after so many litres',
      minutes: 'after so many minutes',
      strength: 'at a strength',
    },
    house: 'foreshotsBy',
  },
  foreshotsShare: {
    kind: 'percent',
    label: 'Foreshots, by share',
    range: [0, 40],
    step: 0.1,
    house: 'foreshotsShare',
    usedWhen: { choice: 'foreshotsBy', is: ['share'] },
  },
  foreshotsVolume: {
    kind: 'volume20',
    label: 'Foreshots, by volume',
    range: [0, 20_000],
    step: 1,
    house: 'foreshotsVolume',
    usedWhen: { choice: 'foreshotsBy', is: ['volume'] },
  },
  foreshotsMinutes: {
    kind: 'minutes',
    label: 'Foreshots, by time',
    range: [0, 180],
    step: 1,
    house: 'foreshotsMinutes',
    usedWhen: { choice: 'foreshotsBy', is: ['minutes'] },
  },
  foreshotsFlow: {
    kind: 'volumeFlow',
    label: 'Flow of the foreshots',
    range: [1, 20_000],
    step: 10,
    house: 'foreshotsFlow',
    usedWhen: { choice: 'foreshotsBy', is: ['minutes'] },
  },
  foreshotsStrength: {
    kind: 'strength',
    label: 'Foreshots, by strength',
    range: [20, 90],
    step: 0.1,
    house: 'foreshotsStrength',
    usedWhen: { choice: 'foreshotsBy', is: ['strength'] },
  },
  heartEnd: { kind: 'strength', label: 'Heart ends at', range: [20, 85], step: 0.1, house: 'heartEnd' },
  feintsEnd,
  spiritReflux,
  airPressure,
} as const;

/** The wash and what else a whole round needs beside the cuts. */
export const houseWash = {
  washVolume: { kind: 'volume20', label: 'Wash', range: [10, 300_000], step: 10, from: 'wash.volume' },
  washStrength: {
    kind: 'strength',
    label: 'Strength of the wash',
    range: [0.1, 20],
    step: 0.1,
    from: 'wash.strength',
  },
  washReflux,
  washEnd,
} as const;
export const houseLimit = {
  dilution: {
    label: 'A charge that is too strong',
    options: { 'when-needed': 'is let down with water', never: 'is run as it is' },
    house: 'dilution',
  },
  chargeLimit: {
    kind: 'strength',
    label: 'Strongest spirit charge',
    range: [15, 60],
    step: 0.5,
    house: 'chargeLimit',
    usedWhen: { choice: 'dilution', is: ['when-needed'] },
  },
} as const;

export const spiritCharge = {
  volume: { kind: 'volume20', label: 'Charge', range: [1, 600_000], step: 10, from: 'charge.volume' },
  strength: {
    kind: 'strength',
    label: 'Strength of the charge',
    range: [1, 80],
    step: 0.1,
    from: 'charge.strength',
  },
} as const;

export interface GivenCuts extends ForeshotsPlan {
  readonly heartEnd: Quantity<'strength'>;
  readonly feintsEnd: Quantity<'strength'>;
  readonly spiritReflux: Quantity<'share'>;
  readonly airPressure: Quantity<'pressure'>;
}
export interface GivenRound extends GivenCuts {
  readonly washVolume: Quantity<'volume20'>;
  readonly washStrength: Quantity<'strength'>;
  readonly washReflux: Quantity<'share'>;
  readonly washEnd: Quantity<'strength'>;
  readonly dilution: 'when-needed' | 'never';
  readonly chargeLimit: Quantity<'strength'>;
}

/** The cuts as the core takes them. */
export function cutsOf(given: GivenCuts): Cuts {
  return { foreshots: foreshotsEnd(given), heart: given.heartEnd, feints: given.feintsEnd };
}

/** The spirit still as the core takes it. */
export function stillOf({ spiritReflux, airPressure }: GivenCuts): StillSetting {
  return { reflux: spiritReflux, pressure: airPressure };
}

/** The spirit charge as the core takes it. */
export function chargeOf({ volume, strength }: Spirit): Spirit {
  return { volume, strength };
}

/** The whole round as the core takes it. */
export function planOf(given: GivenRound): RoundPlan {
  return {
    wash: { volume: given.washVolume, strength: given.washStrength },
    washStill: { reflux: given.washReflux, until: given.washEnd },
    spiritStill: { ...cutsOf(given), reflux: given.spiritReflux },
    pressure: given.airPressure,
    ...(given.dilution === 'when-needed' ? { diluteTo: given.chargeLimit } : {}),
  };
}
