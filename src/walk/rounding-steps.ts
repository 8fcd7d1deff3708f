// What a number may be rounded to: the step it was said to, finer ones after it, and how untrue a rounded number may be.
// How untrue a rounded figure may be stands here alone. tests/walk/manner.json was written by hand, not by the code.
import type { SaidDimension } from '../talk/units.ts';
import { wasGivenNeatly, withoutNoise } from './neat.ts';
import { toTheWhole, type Manner } from './manner.ts';

const CLOCKED = [0.25, 1 / 12, 1 / 60]; // hours: quarters, five minutes, minutes
const LOOSE = 0.035; // part of a figure: a rounded one is not taken for a looser one than this, as in talk/own-house.ts
const JUST = 0.025; // the same for "just under" and its like; common practice of speech, no source
const BOUND = 0.07; // the same for "at least" and "up to"
/** Part of a figure by which a guide's own looseness is followed; common practice of speech, no source. */
export const WORST = 0.1;

/** Part of a value below which it lies neither under nor over what is said. */
export const TRIFLE = 0.0015;

/** Whether a guide who says it so says halves and quarters of one, or of a thousand. */
function partsOf({ number }: Manner): { halves: boolean; quarters: boolean } {
  if (number.as === 'figures') return { halves: number.written.glyph !== undefined, quarters: number.written.glyph !== undefined };
  if (number.as === 'behind' || number.as === 'part') return { halves: true, quarters: true };
  if (number.as !== 'words') return { halves: false, quarters: false };
  const { style } = number.spoken;
  return { halves: style !== 'digits' && style !== 'pairs' && style !== 'unsaid', quarters: ['halves', 'scaled', 'after'].includes(style) };
} // prettier-ignore

/** Steps from the one given on, each finer than the one before, down to a millionth of the value. */
export function stepsFrom(step: number, value: number, manner: Manner): readonly number[] {
  if (manner.number.as === 'clocked') return CLOCKED.filter((each) => each <= step + 1e-9);
  const { halves, quarters } = partsOf(manner);
  const steps: number[] = [];
  for (let now = step; now > Math.abs(value) * 1e-6 && steps.length < 24;) {
    steps.push(now);
    const power = withoutNoise(10 ** Math.floor(Math.log10(now * 1.0000001)));
    const lead = Math.round((now / power) * 100) / 100;
    const isHalved = power >= 10 || (power === 1 && halves);
    if (lead === 1) now = withoutNoise(isHalved ? power / 2 : power / 10);
    else if (lead === 5) now = withoutNoise(quarters && power >= 0.1 && power !== 10 ? now / 2 : power);
    else now = withoutNoise(lead > 1 ? power : power / 10);
  }
  return steps;
}

/** The coarsest of 1, 5 or 2.5 and noughts that is no coarser than a step. */
export function niceStep(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step * 1.0000001));
  return withoutNoise(step >= 5 * power ? 5 * power : power);
}

/** Part of a value by which it may be said too high or too low in a manner. */
export function looseness({ hedge, off }: Pick<Manner, 'hedge' | 'off'>): number {
  const isJust = /just|shade|touch|little|bit|slight/i.test(hedge?.before ?? '');
  const usual = hedge?.side === 'least' || hedge?.side === 'most' ? BOUND : isJust ? JUST : LOOSE;
  return Math.max(usual, Math.min(Math.abs(off), WORST));
}

const FEW = 10; // things
const HAIR = 0.05; // a degree or a hundredth is not said finer than to the tenth, however small the figure

/** How far off a figure may always be said, in the unit as said: things that are counted to the whole, a few of them to the quarter. */
export function leastOff({ dimension }: Manner, value: number): number {
  if (counted.has(dimension)) return value < FEW ? 0.125 : 0.5;
  return toTheWhole.has(dimension) ? HAIR : 0;
}

export interface Rounded {
  readonly value: number;
  readonly step: number;
  /** Said to a finer step than before, as the same one would have been untrue. */
  readonly isFiner: boolean;
  /** The very value, not a rounded one. */
  readonly isWhole: boolean;
}

const counted = new Set<SaidDimension>([
  'mashes',
  'washbacks',
  'stills',
  'casks',
  'bottles',
  'people',
  'times',
]);
/** Whether a quantity is of things that are counted. */
export const isCounted = (dimension: SaidDimension): boolean => counted.has(dimension);
const measured = new Set<SaidDimension>(['mass', 'volume', 'time']);
/** Whether a value can stand in words as it is: of days and tonnes a guide says halves and quarters, not 3.6; of millions tenths as well. */
function isSayable(value: number, { number, dimension }: Manner): boolean {
  if (counted.has(dimension) && value >= FEW && value % 1 !== 0) return false;
  if (!('spoken' in number)) return true;
  const { scale } = number.spoken;
  const many = value / (scale >= 1e5 ? scale : 1);
  const isInQuarters = withoutNoise(many * 4) % 1 === 0;
  return scale >= 1e5
    ? isInQuarters || withoutNoise(many * 10) % 1 === 0
    : isInQuarters || !measured.has(dimension);
}

/** A value rounded in a manner, from a step on: to the coarsest that is true enough. */
export function roundedInManner(value: number, manner: Manner, step: number): Rounded {
  const { hedge, isExact } = manner;
  const isOdd = hedge !== undefined && hedge.between !== '';
  const side = isOdd || hedge?.side === 'least' ? Math.floor : hedge?.side === 'most' ? Math.ceil : Math.round;
  const to = (each: number) => withoutNoise(side(withoutNoise(value / each)) * each);
  if (isOdd) return { value: to(10), step: 10, isFiner: false, isWhole: false };
  if (isExact && manner.number.as !== 'clocked' && isSayable(value, manner) && wasGivenNeatly(value, manner.value))
    return { value: withoutNoise(value), step, isFiner: to(step) !== withoutNoise(value), isWhole: true };
  if (manner.meant.figureUnit === 'gravity') return { value: to(step), step, isFiner: false, isWhole: false };
  const steps = stepsFrom(step, value, manner);
  const allowed = Math.max(looseness(manner) * Math.abs(value), leastOff(manner, value));
  const isTrue = (each: number) => Math.abs(to(each) - value) <= allowed;
  const found = steps.find(isTrue) ?? steps.at(-1) ?? step;
  return { value: to(found), step: found, isFiner: found < step, isWhole: false };
} // prettier-ignore
