// The constants of the steep from the reader's own weighings.
import { leastSquares } from '../numerics/householder.ts';
import { levenbergMarquardt, type Curve } from '../numerics/levenberg-marquardt.ts';
import { quantity, type Quantity } from '../quantity.ts';
import { within } from '../range.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { waterInDry } from './moisture.ts';
import { UPTAKE_LIMITS, type Uptake } from './steep.ts';

/** A drained sample after some hours in water. */
export interface Weighing {
  readonly hours: Quantity<'hours'>;
  readonly mass: Quantity<'grams'>;
}
/** The sample before it went into water. */
export interface DrySample {
  readonly mass: Quantity<'grams'>;
  /** % of the whole, 0–50. */
  readonly moisture: Quantity<'percent'>;
}
export interface SteepFit extends Uptake {
  /** By how much a weighing stands off the curve: root of the squares over the readings beyond two. */
  readonly scatter: Quantity<'grams'>;
}

const LEAST_SPREAD = 0.2; // of the longest time, between first and last weighing; less does not show the bend
const LONGEST_HALF = 500; // hours to half of all the water; beyond, the curve is as good as straight
const SHORTEST_HALF = 0.02; // of the first weighing's time; below, the grain was full before it was first weighed

/** Water taken up, % of the dry matter, after t hours. */
const uptake: Curve = ([k1, k2], t) => {
  const under = k1! + k2! * t;
  return under > 0
    ? { height: t / under, slopes: [-t / under ** 2, -(t * t) / under ** 2] }
    : { height: Infinity, slopes: [0, 0] };
};

function isBent([k1, k2]: readonly number[], times: readonly number[]): boolean {
  const half = k1! / k2!;
  const first = Math.min(...times);
  return k1! > 0 && k2! > 0 && half < LONGEST_HALF && half > SHORTEST_HALF * first;
}

/**
 * The constants whose curve comes nearest to the weighings, each of which counts alike. The start is the straight
 * line t ÷ water = k1 + k2·t, weighted as weighings of equal care would be. At least three weighings.
 * Refuses weighings that show no uptake, that lie too close together, or that do not bend.
 * @example fitSteep({ mass: 125, moisture: 20 }, [{ hours: 2, mass: 120 }, { hours: 5, mass: 150 }, { hours: 10, mass: 175 }]) // refuses: grain in water grows heavier (the first weighs less)
 * @example fitSteep({ mass: 125, moisture: 20 }, [{ hours: 5, mass: 125 + 500 / 15 }, { hours: 10, mass: 175 }, { hours: 40, mass: 205 }]) // { k1: 0.1000, k2: 0.0100 } (weighings made by hand from t ÷ (0.1 + 0.01 t))
 */
export function fitSteep(sample: DrySample, weighings: readonly Weighing[]): SteepFit | Refusal {
  within('The mass of the sample, g,', sample.mass, 1, 1e6);
  within('The moisture of the sample, %,', sample.moisture, 0, 50);
  within('The number of weighings', weighings.length, 3, 100);
  const dry = sample.mass * (1 - sample.moisture / 100);
  const lighter = weighings.find(({ mass }) => mass <= sample.mass);
  if (lighter) {
    return refuse(
      `After ${lighter.hours.toFixed(1)} h a weighing gave ${lighter.mass.toFixed(1)} g, which is no more than the ${sample.mass.toFixed(1)} g at the start; grain in water grows heavier.`,
    );
  }
  const times = weighings.map(({ hours }) => within('The hours in water', hours, 0.05, 1000));
  const [first, last] = [Math.min(...times), Math.max(...times)];
  if (last - first < LEAST_SPREAD * last) {
    return refuse(
      `The weighings lie between ${first.toFixed(1)} and ${last.toFixed(1)} h; spread them wider, so that the bend shows.`,
    );
  }
  const readings = weighings.map(({ hours, mass }) => [hours, (100 * (mass - sample.mass)) / dry] as const);
  const { solution: line } = leastSquares(
    readings.map(([t, water]) => [water ** 2 / t, water ** 2]),
    readings.map(([, water]) => water),
  );
  const fit = isBent(line, times) ? levenbergMarquardt(uptake, readings, line) : undefined;
  if (!fit || !isBent(fit.parameters, times)) {
    return refuse(
      'These weighings do not follow a curve that starts steep and flattens; check the times and masses, and weigh earlier and later.',
    );
  }
  const [k1, k2] = fit.parameters as [number, number];
  const isIn = (value: number, [low, high]: readonly [number, number]) => value >= low && value <= high;
  if (!isIn(k1, UPTAKE_LIMITS.k1) || !isIn(k2, UPTAKE_LIMITS.k2)) {
    return refuse(
      'No grain takes up water as these weighings say; check the masses, and whether all are in grams.',
    );
  }
  const scatter = (Math.sqrt(fit.squares / (weighings.length - 2)) * dry) / 100;
  return {
    startMoisture: sample.moisture,
    k1: quantity('hoursPerPercent', k1),
    k2: quantity('perPercent', k2),
    scatter: quantity('grams', scatter),
  };
}

/**
 * Moisture, % of the whole, of a sample that now weighs `mass`, its dry matter unchanged.
 * @example moistureOfSample({ mass: 100, moisture: 20 }, 160) // 50 (80 g dry in 160)
 */
export function moistureOfSample(sample: DrySample, mass: Quantity<'grams'>): Quantity<'percent'> {
  const dry = sample.mass / (1 + waterInDry(sample.moisture) / 100);
  return quantity('percent', 100 * (1 - dry / within('The mass of the sample, g,', mass, dry, 1e7)));
}
