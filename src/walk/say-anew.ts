// A quantity said anew in the manner of the words that stood there, for a value that has changed, or in another unit.
import { refuse, type Refusal } from '../core/refusal.ts';
import { toAudience, type Audience } from './audience.ts';
import { converted } from './converted.ts';
import { counterpart } from './hedges.ts';
import { widened } from './japanese.ts';
import { mannerOfSaid, type Manner } from './manner.ts';
import { withoutNoise } from './neat.ts';
import { phraseOfValue } from './phrase.ts';
import { shareSaid } from './said-forms.ts';
import { unitAskedFor, type Conversion } from './said-units.ts';
import { niceStep, roundedInManner, stepsFrom, TRIFLE, type Rounded } from './rounding-steps.ts';

export type { Audience } from './audience.ts';

export interface Anew {
  /** With the hedge, if there is one. */
  readonly words: string;
  /** What they say, in the figure's own unit; of a range its middle. */
  readonly value: number;
  /** What they are rounded to, in the unit as said. */
  readonly step: number;
  /** What is different in the manner, in a few words: a finer step, a hedge that was turned or dropped. Empty where nothing is. */
  readonly changes: readonly string[];
}

/** The hedge for a rounded value: turned where it lies on the other side, dropped where it says nothing true. */
function hedgeFor({ hedge }: Manner, value: number, round: Rounded): { before: string; change?: string } {
  if (!hedge) return { before: '' };
  const { side, before, between } = hedge;
  const error = value - round.value;
  if (side === 'exact') {
    if (Math.abs(error) <= 1e-9 * Math.abs(value)) return { before };
    return { before: '', change: `“${before.trim().toLowerCase()}” left out, as it is rounded` };
  }
  if ((side !== 'under' && side !== 'over') || between !== '') return { before };
  if (Math.abs(error) <= TRIFLE * Math.abs(value))
    return { before: '', change: `“${before.trim().toLowerCase()}” left out, as it is that very figure` };
  if (error < 0 === (side === 'under')) return { before };
  const turned = counterpart(before);
  return { before: `${turned} `, change: `“${turned}” for “${before.trim().toLowerCase()}”` };
}

/** How many of a unit asked for one more of the unit as said makes, about a value. */
function slopeOf(meant: Conversion, to: Conversion, value: number): number {
  const more = Math.abs(value) * 0.01 + 0.01;
  const at = (each: number) => to.fromFigure(meant.toFigure(each));
  return Math.abs(at(value + more) - at(value)) / more;
}

/** A value rounded in a manner; a share to simple parts, a count of times to a whole one. */
function roundedFor(value: number, manner: Manner, step: number): Rounded {
  const { number } = manner;
  if (number.as === 'often') return { value: Math.round(value), step: 1, isFiner: false, isWhole: true };
  const round = roundedInManner(value, manner, step);
  return number.as === 'share' ? { ...round, value: shareSaid(value, number).value } : round;
}

/** True for a plain number: forty-odd and a gravity have ways of their own. */
const mayBeConverted = ({ hedge, meant }: Manner): boolean =>
  !hedge?.between && meant.figureUnit !== 'gravity';

const capital = (words: string) => words.replace(/^[a-zà-þ]/, (first) => first.toUpperCase());

/** What was said as a range moved, or stretched, with the value in it. */
function rangeAnew(manner: Manner, now: number, was: number, audience: Audience, to?: Conversion): Anew {
  const { meant, value: low, to: end, step } = manner;
  const isHeld = was >= meant.toFigure(low) && was <= meant.toFigure(end!.value);
  if (!isHeld) was = meant.toFigure((low + end!.value) / 2);
  const ratio = was === 0 ? 1 : now / was;
  const isNear = ratio > 0.7 && ratio < 1.4;
  const moved = meant.fromFigure(now) - meant.fromFigure(was);
  const into = to ?? meant;
  const endsOf = (each: number) => into.fromFigure(meant.toFigure(isNear ? each + moved : each * ratio));
  const ends = [endsOf(low), endsOf(end!.value)] as const;
  const quarter = (ends[1] - ends[0]) / 4;
  const first = to ? niceStep(step * Math.abs((ends[1] - ends[0]) / (end!.value - low))) : step;
  const round = (each: number, by: number) => withoutNoise(Math.round(withoutNoise(each / by)) * by);
  const steps = stepsFrom(first, ends[1], manner);
  const found = steps.find((by) => ends.every((each) => Math.abs(round(each, by) - each) <= quarter)) ?? steps.at(-1)!;
  const shift = round(ends[0] - low, found); // the same for both ends, so that the range stays as wide as it was
  const [newLow, newHigh] = isNear && !to ? [withoutNoise(low + shift), withoutNoise(end!.value + shift)] : [round(ends[0], found), round(ends[1], found)];
  const at = (value: number): Rounded => ({ value, step: found, isFiner: found < first, isWhole: true });
  const isInFull = to !== undefined && end!.lifted !== 1; // “five to six thousand” of another unit: thirteen hundred is no part of it
  const last = isInFull && 'spoken' in end!.number ? { ...end!.number, spoken: { ...end!.number.spoken, style: 'plain' as const } } : end!.number;
  const second = toAudience({ number: last, unit: manner.unit }, to, audience);
  const lead = toAudience({ number: manner.number, unit: end!.unitOfFirst }, undefined, audience);
  const left = phraseOfValue(at(withoutNoise(newLow / (isInFull ? 1 : end!.lifted))), lead, manner);
  const words = end!.lead + left + end!.between + phraseOfValue(at(newHigh), second, manner);
  return {
    words: `${manner.hedge?.before ?? ''}${words}${manner.hedge?.after ?? ''}`,
    value: into.toFigure((newLow + newHigh) / 2),
    step: found,
    changes: found < first ? ['rounded more finely'] : [],
  };
} // prettier-ignore

/**
 * The words for a value now, in the manner of those that were said of the value before, both in the figure's own unit.
 * Rounded to the same step, or to a finer one where that would be untrue. Refuses words that are no quantity, and a
 * unit that measures something else.
 */
export function sayAnew(words: string, was: number, now: number, audience: Audience = {}): Anew | Refusal {
  const manner = mannerOfSaid(words, was, audience.figureUnit);
  if (!manner) return refuse(`“${words}” is no quantity that can be said anew.`);
  if (!Number.isFinite(now)) return refuse(`“${words}”: what it is now is not known.`);
  const { meant } = manner;
  const to = audience.unit === undefined || audience.unit === meant.unit ? undefined : unitAskedFor(audience.unit, meant.figureUnit);
  const isShare = manner.number.as === 'share' || manner.number.as === 'often'; // a part has no unit to be said in
  if (audience.unit !== undefined && audience.unit !== meant.unit && (!to || isShare))
    return refuse(`“${words}” cannot be said in ${audience.unit}.`);
  const finish = (anew: Anew): Anew => {
    const shown = manner.isCapital ? capital(anew.words) : anew.words;
    return { ...anew, words: manner.isWide ? widened(shown) : shown };
  };
  if (manner.to) return finish(rangeAnew(manner, now, was, audience, to));
  const into = to ?? meant;
  const value = withoutNoise(into.fromFigure(now));
  const said = toAudience({ number: manner.number, unit: manner.unit }, to, audience);
  const first = to ? niceStep(manner.step * slopeOf(meant, to, manner.value)) : manner.step;
  const whole = (round: Rounded, before: string) => {
    const body = phraseOfValue(round, said, manner);
    const inner = /\ba\s+good\s+$/i.test(before) ? body.replace(/^(?:an?|one)\s+/, '') : body;
    return before + inner + (manner.hedge?.after ?? '');
  };
  if (to && mayBeConverted(manner)) {
    const round = (choice: { value: number; step: number }) => ({ ...choice, isFiner: choice.step < first, isWhole: false });
    const isBound = audience.isBound === true || manner.unit.startsWith('-');
    const choice = converted({ manner, value, now, was, to, step: first, isBound, says: (each) => whole(round(each), each.before) });
    const changes = [...(choice.step < first ? ['rounded more finely'] : []), ...(choice.change ? [choice.change] : [])];
    return finish({ words: whole(round(choice), choice.before), value: into.toFigure(choice.value), step: choice.step, changes });
  }
  const isSame = !to && Math.abs(now - was) <= 1e-9 * Math.abs(was);
  const round = isSame ? { value: manner.value, step: first, isFiner: false, isWhole: manner.isExact } : roundedFor(value, manner, first);
  const { before, change } = isSame ? { before: manner.hedge?.before ?? '', change: undefined } : hedgeFor(manner, value, round);
  const changes = [...(round.isFiner && !round.isWhole ? ['rounded more finely'] : []), ...(change ? [change] : [])];
  return finish({ words: whole(round, before), value: into.toFigure(round.value), step: round.step, changes });
} // prettier-ignore
