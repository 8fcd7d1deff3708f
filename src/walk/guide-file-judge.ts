// Whether a figure that a new guide says is right, near or wrong: judged as people round when they speak.
import type { KindName } from '../core/kinds.ts';
import type { HedgeSide } from './hedges.ts';

export type SaidVerdict = 'right' | 'near' | 'wrong';

/** Common practice of speech, no source: how far off a figure is said and still right, and near. */
const [RIGHT, NEAR] = [0.03, 0.1]; // parts of the figure
const BESIDE = 0.05; // part of the figure within which “just over” and “just under” are right, where they say its side
const FIGURES = 2; // significant figures to which a figure may always be rounded
const degrees: Partial<Readonly<Record<KindName, readonly [right: number, near: number]>>> = {
  strength: [0.5, 2], // % vol: a tenth of 63.5 would be another spirit
  temperature: [0.5, 2], // °C
};
const [GRAVITY_RIGHT, GRAVITY_NEAR] = [0.0005, 0.003]; // half a degree of gravity, and three degrees
const HAIR = 1e-9;
const SIDE = 0.005; // part of a figure by which it may lie on the wrong side of “just under”

/** Whether a kind is judged by its degrees, not by a part of the figure. */
const hasDegrees = (kind: KindName): boolean => kind === 'gravity' || kind in degrees;

/** The rule, as the page says it. */
export const JUDGING_RULE =
  'Right is the figure to two figures, or within 3 %; within 10 % is near. A strength or a temperature is right within half a degree and near within two; a gravity is right to the degree and near within three. With “just under” or “just over” on its side it is right within 5 %, and on the wrong side near.';

/** True when a number is a figure rounded to two figures, up or down where it lies between. */
function isRounded(said: number, value: number): boolean {
  if (value === 0) return said === 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value)) + HAIR) - FIGURES + 1);
  return Math.abs(said / step - Math.round(said / step)) < 1e-6 && Math.abs(said - value) <= (0.5 + 1e-9) * step;
} // prettier-ignore

/** A number said, against the figure of the house, both in the unit of the kind. */
function ofNumber(said: number, value: number, kind: KindName): SaidVerdict {
  const off = Math.abs(said - value);
  if (kind === 'gravity') return off <= GRAVITY_RIGHT + HAIR ? 'right' : off <= GRAVITY_NEAR + HAIR ? 'near' : 'wrong';
  const [right, near] = degrees[kind] ?? [RIGHT * Math.abs(value), NEAR * Math.abs(value)];
  if (isRounded(said, value) || off <= right + HAIR) return 'right';
  return off <= near + HAIR ? 'near' : 'wrong';
} // prettier-ignore

export interface SaidAnswer {
  /** What the words may mean, in the unit of the kind: more than one where no unit was said; the two ends of a range. */
  readonly numbers: readonly number[];
  readonly isRange?: boolean;
  /** The side on which a hedge puts the true figure. */
  readonly side?: HedgeSide;
}

const order: readonly SaidVerdict[] = ['right', 'near', 'wrong'];
const best = (verdicts: readonly SaidVerdict[]) => order.find((each) => verdicts.includes(each)) ?? 'wrong';

/** Whether what was said is true of the house's figure: of the best of what the words may mean. A range is right about the figure, if its ends are near. */
export function judgeTold({ numbers, isRange, side }: SaidAnswer, value: number, kind: KindName): SaidVerdict {
  const verdicts = numbers.map((each) => ofNumber(each, value, kind));
  if (isRange) {
    const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
    if (value < low || value > high) return best(verdicts) === 'wrong' ? 'wrong' : 'near';
    return verdicts.includes('wrong') ? 'near' : 'right';
  }
  return best(
    numbers.map((said, i) => {
      const above = (value - said) / Math.abs(value || 1);
      const isOther = side === 'under' || side === 'most' ? above > SIDE : side === 'over' || side === 'least' ? above < -SIDE : false;
      const isBeside = (side === 'under' && above < 0) || (side === 'over' && above > 0);
      if (isBeside && Math.abs(above) <= BESIDE && verdicts[i] === 'near' && !hasDegrees(kind)) return 'right';
      return isOther && verdicts[i] === 'right' ? 'near' : verdicts[i]!;
    }),
  );
} // prettier-ignore
