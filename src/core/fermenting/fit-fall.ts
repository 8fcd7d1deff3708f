// The S that lies closest to a reader's own gravity readings.
import { levenbergMarquardt, type Curve } from '../numerics/levenberg-marquardt.ts';
import { formatNumber as n } from '../format.ts';
import { hours, plato, quantity, type Quantity } from '../quantity.ts';
import { refuse, type Refusal } from '../refusal.ts';
import { platoFromGravity } from '../wort/extract.ts';
import type { Fall } from './fall.ts';

export interface GravityReading {
  readonly hour: Quantity<'hours'>;
  readonly gravity: Quantity<'gravity'>;
}
export interface FittedFall extends Fall {
  /** Root of the mean squared distance of the readings from the curve, °P. */
  readonly scatter: Quantity<'plato'>;
  /** The reading furthest from the curve. */
  readonly furthest: GravityReading;
}

const PARAMETERS = 4; // initial, final, half, steepness
const SLIP = 0.002; // gravity by which a later reading may lie above an earlier one; a hydrometer read twice
const LEAST_FALL = 0.005; // gravity; a smaller fall drowns in such slips
const IN_THE_FALL = 0.05; // nearer to either end than this part of the fall, a reading says little of its middle
const STEEPEST = 5; // 1/h; half of the fall in less than half an hour is a gap between readings, not a fermentation
const [LOWEST, HIGHEST] = [-5, 34]; // °P; beyond these the sugar table has no gravity

/** The logistic with the logarithm of its steepness, which keeps the steepness above nothing. */
const logistic: Curve = (parameters, hour) => {
  const [initial, final, half, logSteepness] = parameters as [number, number, number, number];
  const steepness = Math.exp(logSteepness);
  const part = 1 / (1 + Math.exp(-steepness * (hour - half)));
  const bend = (final - initial) * part * (1 - part);
  return {
    height: initial + (final - initial) * part,
    slopes: [1 - part, part, -bend * steepness, bend * steepness * (hour - half)],
  };
};

/** The hour at which straight lines between the points first come down to a height. */
function firstAt(height: number, points: readonly (readonly [number, number])[]): number {
  const below = Math.max(1, points.findIndex(([, y]) => y <= height)); // prettier-ignore
  const [[x0, y0], [x1, y1]] = [points[below - 1]!, points[below]!];
  return y0 > y1 ? x0 + ((y0 - height) / (y0 - y1)) * (x1 - x0) : x0;
}

/** A sentence on what makes the readings, in order of time, unfit for a curve; undefined when nothing does. */
function objection(readings: readonly GravityReading[]): string | undefined {
  const times = new Set(readings.map(({ hour }) => hour)).size;
  if (times < PARAMETERS)
    return `The readings were taken at ${times} different hour${times === 1 ? '' : 's'}; the curve has four unknowns and needs readings at four or more.`;
  let lowest = readings[0]!;
  for (const reading of readings) {
    if (reading.gravity > lowest.gravity + SLIP)
      return `The gravity rises from ${n(lowest.gravity, 4)} at ${n(lowest.hour, 1)} h to ${n(reading.gravity, 4)} at ${n(reading.hour, 1)} h; wort that ferments grows lighter, and a slip of reading may be up to ${SLIP}.`;
    if (reading.gravity < lowest.gravity) lowest = reading;
  }
  const fall = Math.max(...readings.map(({ gravity }) => gravity)) - lowest.gravity;
  if (fall < LEAST_FALL)
    return `From the highest to the lowest reading the gravity falls by ${n(fall, 4)}; a curve needs a fall of ${LEAST_FALL} or more.`;
  return undefined;
}

/**
 * The logistic of `extractAt` that fits the readings best by least squares in °P. Gravities 0.98–1.15, at four
 * different hours or more, two of them in the fall itself. Refuses readings that rise, that do not fall, and
 * that do not show the bend: nothing is told of what lies outside their hours but the two ends of the S.
 * Source: the form, Reid et al. 2021; the fit, Marquardt 1963, from memory.
 * @example fitFall([{ hour: 0, gravity: 1.05 }, { hour: 10, gravity: 1.06 }, { hour: 20, gravity: 1.02 }, { hour: 40, gravity: 1 }]) // refuses: wort that ferments grows lighter (the second is heavier)
 */
export function fitFall(given: readonly GravityReading[]): FittedFall | Refusal {
  const readings = [...given].sort((a, b) => a.hour - b.hour);
  const problem = objection(readings);
  if (problem !== undefined) return refuse(problem);
  const points = readings.map(({ hour, gravity }) => [hour, platoFromGravity(gravity) as number] as const);
  const extracts = points.map(([, extract]) => extract);
  const [top, bottom] = [Math.max(...extracts), Math.min(...extracts)];
  const level = (part: number) => top + (bottom - top) * part;
  const inside = points.filter(([, y]) => y < level(IN_THE_FALL) && y > level(1 - IN_THE_FALL));
  if (new Set(inside.map(([x]) => x)).size < 2)
    return refuse(
      `There are readings at ${inside.length === 0 ? 'no hour' : 'only one hour'} of the fall itself, between its first and its last twentieth; two hours or more are needed to tell how steep it is.`,
    );
  const [early, half, late] = [0.25, 0.5, 0.75].map((part) => firstAt(level(part), points));
  const steepness = (2 * Math.log(3)) / Math.max(late! - early!, 0.1); // a logistic takes 2 ln 3 ÷ b for its middle half
  const fit = levenbergMarquardt(logistic, points, [top, bottom, half!, Math.log(steepness)]);
  const [initial, final, middle, logSteepness] = fit.parameters as [number, number, number, number];
  const steepest = Math.exp(logSteepness);
  if (steepest > STEEPEST)
    return refuse(
      `Between two readings the extract falls all at once, by a steepness of more than ${STEEPEST} an hour; no washback is so quick, so look for a wrong reading or a wrong hour.`,
    );
  const [first, last] = [points[0]![0], points.at(-1)![0]];
  if (
    !fit.settled ||
    middle < first ||
    middle > last ||
    !(initial < HIGHEST) ||
    !(final > LOWEST) ||
    !(final < initial)
  )
    return refuse(
      `Readings from ${n(first, 1)} to ${n(last, 1)} h do not show both ends of the fall, so no curve can be told from them; the half of the fall must lie between the first reading and the last.`,
    );
  const off = (reading: GravityReading) =>
    Math.abs(platoFromGravity(reading.gravity) - logistic(fit.parameters, reading.hour).height);
  return {
    initial: plato(initial),
    final: plato(final),
    half: hours(middle),
    steepness: quantity('perHour', steepest),
    scatter: plato(Math.sqrt(fit.squares / points.length)),
    furthest: readings.reduce((worst, reading) => (off(reading) > off(worst) ? reading : worst)),
  };
}
