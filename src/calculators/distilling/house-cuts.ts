// The house's spirit still and its cuts, as inputs that several calculators share.
import type { Cuts } from '../../core/distilling/cuts.ts';
import { ofRuns } from '../../core/distilling/foreshots.ts';
import { roundPlan, spiritCuts, type CutFigures, type RoundFigures } from '../../core/distilling/plan.ts';
import type { RoundPlan } from '../../core/distilling/round.ts';
import type { StillSetting } from '../../core/distilling/still.ts';
import type { Quantity, Spirit } from '../../core/quantity.ts';

export const airPressure = { house: 'airPressure' } as const;
export const washReflux = { house: 'washReflux' } as const;
export const washEnd = { house: 'washEnd' } as const;
export const spiritReflux = { house: 'spiritReflux' } as const;
export const feintsEnd = { house: 'feintsEnd' } as const;

export const houseCuts = {
  foreshotsBy: { house: 'foreshotsBy' },
  foreshotsShare: { house: 'foreshotsShare', usedWhen: { choice: 'foreshotsBy', is: ['share'] } },
  foreshotsVolume: { house: 'foreshotsVolume', usedWhen: { choice: 'foreshotsBy', is: ['volume'] } },
  foreshotsMinutes: { house: 'foreshotsMinutes', usedWhen: { choice: 'foreshotsBy', is: ['minutes'] } },
  foreshotsFlow: { house: 'foreshotsFlow', usedWhen: { choice: 'foreshotsBy', is: ['minutes'] } },
  runs: {
    kind: 'ratio',
    label: 'Runs that the charge is',
    range: [0.01, 100],
    step: 0.1,
    from: 'round.runs',
    usedWhen: { choice: 'foreshotsBy', is: ['volume', 'minutes'] },
  },
  foreshotsStrength: { house: 'foreshotsStrength', usedWhen: { choice: 'foreshotsBy', is: ['strength'] } },
  heartEnd: { house: 'heartEnd' },
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
  dilution: { house: 'dilution' },
  chargeLimit: { house: 'chargeLimit', usedWhen: { choice: 'dilution', is: ['when-needed'] } },
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

export interface GivenCuts extends CutFigures {
  readonly runs: Quantity<'ratio'>;
  readonly spiritReflux: Quantity<'share'>;
  readonly airPressure: Quantity<'pressure'>;
}
export interface GivenRound extends RoundFigures {
  readonly runs: Quantity<'ratio'>;
  readonly washVolume: Quantity<'volume20'>;
  readonly washStrength: Quantity<'strength'>;
}

/** The cuts as the core takes them. */
export function cutsOf(given: GivenCuts): Cuts {
  const cuts = spiritCuts(given);
  return { ...cuts, foreshots: ofRuns(cuts.foreshots, given.runs) };
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
  const plan = roundPlan(given, { volume: given.washVolume, strength: given.washStrength });
  return { ...plan, spiritStill: { ...plan.spiritStill, ...cutsOf(given) } };
}
