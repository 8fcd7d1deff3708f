// Sizes as soft steps: a value between two knots belongs to both, in part, so that what is learnt of one house serves the next.

const steps = (from: number, to: number, by: number) =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) => Number((from + i * by).toFixed(3)));
const strength = [0, 1, 2, 3, 4, 5, 6.5, 8, 10, 12, 15, 18, 21, 24, 27, 30, 35, 40, 43, 46, 50, 55, 58, 60, 62, 63.5, 65, 67, 69, 71, 73, 75, 78, 82, 88, 95, 100]; // prettier-ignore
const heat = [
  0, 5, 10, 15, 18, 20, 22, 25, 30, 35, 45, 55, 60, 62, 64, 66, 68, 70, 74, 78, 82, 86, 90, 95, 100,
];
const gravity = [
  0.985, 0.994, 0.996, 0.998, 1, 1.002, 1.005, 1.02, 1.04, 1.05, 1.055, 1.06, 1.065, 1.07, 1.09, 1.12,
];

/** The knots of each: % vol, °C, gravity; hours, kilograms, litres and counts in powers of ten. */
export const knotsOf = {
  strength,
  bareStrength: strength,
  heat,
  bareHeat: heat,
  degrees: heat,
  gravity,
  bareGravity: gravity,
  bareExtract: gravity,
  hours: [-1.5, -0.6, -0.3, 0, 0.2, 0.5, 0.7, 0.85, 1, 1.3, 1.6, 1.75, 1.9, 2.1, 2.5, 3, 3.5, 3.9, 4.3, 4.6, 4.8, 5, 5.3, 6],
  mass: steps(-1, 8, 0.5),
  volume: [-1.5, ...steps(-0.6, 0.4, 0.2), ...steps(0.5, 2, 0.5), 2.18, 2.3, 2.4, 2.55, 2.7, 3, 3.3, 3.6, 4, 4.3, 4.6, 5, 6, 7],
  count: [0, 0.3, 0.48, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.3, 1.45, 1.6, 1.66, 1.72, 1.9, 2.2, 2.4, 2.5, 2.6, 2.8, 3, 3.5, 4, 4.5, 5, 6, 7],
} as const satisfies Record<string, readonly number[]>; // prettier-ignore

/** The two knots about a value with their parts; one alone beyond the ends. */
export function hats(
  knots: readonly number[],
  value: number,
  put: (knot: number, part: number) => void,
): void {
  const above = knots.findIndex((knot) => knot >= value);
  if (above <= 0) return put(above === 0 ? knots[0]! : knots.at(-1)!, 1);
  const [low, high] = [knots[above - 1]!, knots[above]!];
  const part = (value - low) / (high - low);
  if (part < 1) put(low, 1 - part);
  if (part > 0) put(high, part);
}
