// The reflux of a still, from what was measured on it: low wines and pot ale of a wash run, or the safe of a spirit run.
import { formatNumber as n } from '../format.ts';
import { levenbergMarquardt } from '../numerics/levenberg-marquardt.ts';
import { share, type Quantity, type Spirit } from '../quantity.ts';
import { within } from '../range.ts';
import { isRefusal, refuse, type Refusal } from '../refusal.ts';
import { amountsOf } from '../spirit/amounts.ts';
import { potAfter, runStill } from './run.ts';
import { stillCurve } from './still.ts';

export interface FittedReflux {
  readonly reflux: Quantity<'share'>;
  /** Standard uncertainty: of the readings' own ±, or of their scatter about the fit where that is more. */
  readonly sure: Quantity<'share'>;
  /** What the readings would be at this reflux, in their order. */
  readonly fitted: readonly number[];
}

/** One thing measured: its value, its standard uncertainty in the same unit, and how a sentence names it. */
interface Measured {
  readonly value: number;
  readonly sure: number;
  readonly says: (value: number) => string;
}

const START = 0.1; // reflux at which the search begins
const HAIR = 1e-5; // of reflux, for a slope
const FAR = 4; // standard uncertainties beyond which a reading is not that of this still; chance alone, one in 16,000

/** The readings at a reflux and their slopes along it; beyond 0 and 1 straight on, so that a search may pass there. */
function lookAt(readingsAt: (reflux: number) => readonly number[], reflux: number) {
  const inside = Math.min(1, Math.max(0, reflux));
  const step = inside < 0.5 ? HAIR : -HAIR;
  const [here, beside] = [inside, inside + step].map(readingsAt);
  const slopes = here!.map((value, i) => (beside![i]! - value) / step);
  return { values: here!.map((value, i) => value + slopes[i]! * (reflux - inside)), slopes };
}

/**
 * The reflux at which the readings come out nearest, each weighed by its ±.
 * Refuses readings that no reflux from 0 to 1 gives. Source: least squares; JCGM 100 for the ±.
 */
function fitReflux(
  measured: readonly Measured[],
  readingsAt: (reflux: number) => readonly number[],
): FittedReflux | Refusal {
  const weigh = (i: number) => 1 / within('The ± of a reading', measured[i]!.sure, 1e-6, 1e6);
  let last: { readonly at: number; readonly look: ReturnType<typeof lookAt> } | undefined;
  const look = (at: number) => (last?.at === at ? last : (last = { at, look: lookAt(readingsAt, at) })).look;
  const fit = levenbergMarquardt(
    ([reflux], i) => {
      const { values, slopes } = look(reflux!);
      return { height: values[i]! * weigh(i), slopes: [slopes[i]! * weigh(i)] };
    },
    measured.map(({ value }, i) => [i, value * weigh(i)] as const),
    [START],
  );
  const found = fit.parameters[0]!;
  const { slopes } = look(found);
  const scatter = measured.length > 1 ? Math.sqrt(fit.squares / (measured.length - 1)) : 0;
  const own = 1 / Math.hypot(...slopes.map((slope, i) => slope * weigh(i)));
  const reflux = Math.min(1, Math.max(0, found));
  const fitted = readingsAt(reflux);
  if (![own, ...fitted].every(Number.isFinite))
    return refuse('These readings do not depend on the reflux; take others.');
  const sure = own * Math.max(1, scatter);
  const miss = (i: number) => (measured[i]!.value - fitted[i]!) * weigh(i);
  const worst = measured.map((_, i) => i).sort((a, b) => Math.abs(miss(b)) - Math.abs(miss(a)))[0]!;
  if (Math.abs(miss(worst)) > FAR) {
    const { says, value } = measured[worst]!;
    const would =
      reflux === 0
        ? 'without any reflux'
        : reflux === 1
          ? 'with a whole further stage'
          : `at the nearest reflux, ${n(reflux, 2)},`;
    return refuse(
      `No reflux gives these readings: ${would} it would be ${says(fitted[worst]!)}, not ${says(value)}. Look at temperatures, litres and the strength of what was charged.`,
    );
  }
  return { reflux: share(reflux), sure: share(sure), fitted };
}

export interface WashRunMeasured {
  readonly wash: Spirit;
  /** Strength at the safe at which the run ended, % vol. */
  readonly until: Quantity<'strength'>;
  readonly pressure: Quantity<'pressure'>;
  /** What was measured of the low wines, and the pot ale as a part of the wash, 0–1; at least one of them. */
  readonly strength?: Quantity<'strength'>;
  readonly volume?: Quantity<'volume20'>;
  readonly potAle?: Quantity<'share'>;
  /** Standard uncertainty of a strength, % vol, and of a volume, as a part of it. */
  readonly strengthSure: number;
  readonly volumeSure: number;
}

/**
 * The reflux of a wash still from its low wines and pot ale. Refuses what no reflux gives: low wines weaker than a bare
 * pot’s, figures that contradict each other, a wash that never reaches the end of the run.
 * @example fitWashStill({ wash: line.wash, until: house.washEnd, pressure: house.airPressure, strength: line.round.lowWines.strength, strengthSure: 0.2, volumeSure: 0.01 }).reflux - house.washReflux // 0.0000 (the still that made the low wines)
 */
export function fitWashStill(given: WashRunMeasured): FittedReflux | Refusal {
  const { wash, until, pressure, strength, volume, potAle, strengthSure, volumeSure } = given;
  const runAt = (reflux: number) => runStill({ charge: wash, until, pressure, reflux: share(reflux) });
  const bare = runAt(0);
  if (isRefusal(bare)) return bare;
  const measured: Measured[] = [];
  if (strength !== undefined)
    measured.push({ value: strength, sure: strengthSure, says: (v) => `low wines of ${n(v, 1)} % vol` });
  if (volume !== undefined)
    measured.push({ value: volume, sure: volume * volumeSure, says: (v) => `${n(v, 0)} L of low wines` });
  if (potAle !== undefined)
    measured.push({
      value: potAle,
      sure: potAle * volumeSure,
      says: (v) => `${n(100 * v, 1)} % of the wash left as pot ale`,
    });
  if (measured.length === 0) return refuse('Give the low wines’ strength or volume, or the pot ale.');
  return fitReflux(measured, (reflux) => {
    const run = runAt(reflux);
    // With so much reflux the run could not be followed to its end; the search keeps off.
    if (isRefusal(run)) return measured.map(() => NaN);
    const { distillate, residue } = run;
    return [
      ...(strength === undefined ? [] : [distillate.strength]),
      ...(volume === undefined ? [] : [distillate.volume]),
      ...(potAle === undefined ? [] : [residue.volume / wash.volume]),
    ];
  });
}

/** Strength at the safe, % vol, once `volume` litres of a run have come over. */
export interface SafeReading {
  readonly volume: Quantity<'volume20'>;
  readonly strength: Quantity<'strength'>;
}

/**
 * The reflux of a spirit still from two readings of the safe or more, each with the standard uncertainty `strengthSure`, % vol.
 * Refuses readings that grow stronger along the run, lie beyond what the charge can give, or that no reflux gives.
 * @example fitSpiritStill(line.round.charge, house.airPressure, [{ volume: litres20(100), strength: strength(70) }], 0.2) // refuses: two readings (one tells no course)
 */
export function fitSpiritStill(
  charge: Spirit,
  pressure: Quantity<'pressure'>,
  readings: readonly SafeReading[],
  strengthSure: number,
): FittedReflux | Refusal {
  if (readings.length < 2) return refuse('Give two readings of the safe at least.');
  const along = [...readings].sort((a, b) => a.volume - b.volume);
  for (let i = 1; i < along.length; i++) {
    const [before, now] = [along[i - 1]!, along[i]!];
    if (now.volume > before.volume && now.strength > before.strength + FAR * strengthSure)
      return refuse(
        `The safe would rise from ${n(before.strength, 1)} % vol after ${n(before.volume, 0)} L to ${n(now.strength, 1)} after ${n(now.volume, 0)}; a run only grows weaker.`,
      );
  }
  const before = amountsOf(charge);
  const at = (reflux: number) => {
    const setting = { reflux: share(reflux), pressure };
    const { strengthOver } = stillCurve(setting);
    return readings.map(({ volume }) => {
      const pot = potAfter(before, setting, volume);
      return pot === undefined ? undefined : strengthOver(pot);
    });
  };
  // The more reflux, the sooner the pot is empty.
  const missing = at(1).findIndex((strength) => strength === undefined);
  if (missing !== -1)
    return refuse(
      `After ${n(readings[missing]!.volume, 0)} L this charge may have no alcohol left to come over; take earlier readings.`,
    );
  return fitReflux(
    readings.map(({ strength, volume }) => ({
      value: strength,
      sure: strengthSure,
      says: (v) => `${n(v, 1)} % vol after ${n(volume, 0)} L`,
    })),
    (reflux) => at(reflux) as readonly number[],
  );
}
