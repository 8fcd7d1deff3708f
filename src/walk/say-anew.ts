// A quantity said anew in the manner of the words that stood there, for a value that has changed, or in another unit.
import { refuse, type Refusal } from '../core/refusal.ts';
import { counterpart } from './hedges.ts';
import { inKanji, inMan, japaneseUnits, widened } from './japanese.ts';
import { mannerOf, type Manner, type NumberSaid } from './manner.ts';
import { tidied } from './neat.ts';
import { asked, inNumber, nameOf, type Conversion } from './said-units.ts';
import { clockedSaid, oftenSaid, shareSaid } from './said-forms.ts';
import { british, inWords } from './spoken.ts';
import { niceStep, rounded, stepsFrom, type Rounded } from './steps.ts';
import { britishMarks, decimalsOf, europeanMarks, inFigures, inGlyphs } from './written.ts';

export interface Audience {
  /** A unit of the handbook that is wanted instead: US gal, UK gal, lb, °F, ° US proof, kg, L, hL, t, °C, % vol, … */
  readonly unit?: string;
  /** How numbers are to be written. Left out, as the guide writes them. */
  readonly writing?: 'British' | 'American' | 'European' | 'Japanese';
  /** The figure's own unit, where it is known. */
  readonly figureUnit?: string;
}
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

/** Whether the whole number of a count, or a fraction of one thing, takes the name for one. */
const isOne = (value: number) => value === 1;

interface Said {
  readonly number: NumberSaid;
  readonly unit: string;
}

/** "Two tonnes and a half", "an hour", "three quarters of an hour". */
function withUnit(value: number, unit: string, spoken: typeof british, isBehind: boolean): string {
  const one = inNumber(unit.trim(), true);
  const article = spoken.article ? (/^(?:hour|h\b)/i.test(one) ? 'an' : 'a') : 'one';
  const whole = Math.floor(value);
  const part = tidied(value - whole);
  const name = { 0.25: 'a quarter', 0.5: 'half', 0.75: 'three quarters' }[part as 0.25];
  if (whole === 0 && name) return `${name}${part === 0.5 ? '' : ' of'} ${article} ${one}`;
  if (whole > 0 && isBehind && (part === 0 || name)) {
    const head = whole === 1 ? `${article} ${one}` : inWords(whole, spoken) + inNumber(unit, false, true);
    return part === 0 ? head : `${head} and ${part === 0.5 ? 'a half' : name}`;
  }
  return inWords(value, { ...spoken, style: 'halves' }) + inNumber(unit, isOne(value), true);
}

/** A number of figures with as many decimals as it had, or as its step needs. */
function figures(
  value: number,
  { number, unit }: Said,
  { step, isWhole }: Rounded,
  isGravity: boolean,
  wasOne: boolean,
): string {
  if (number.as !== 'figures') return '';
  const { marks, decimals, glyph, scale } = number.written;
  const size = value < scale.size ? 1 : scale.size;
  const many = tidied(value / size);
  const fine = Math.max(decimalsOf(tidied(step / size)), decimalsOf(many));
  const isFixed = size === 1 && scale.size === 1 && (isGravity || !isWhole);
  const least = isGravity || decimals > decimalsOf(number.written.value) ? decimals : 0; // 70.0 keeps its nought
  const text = (glyph ? inGlyphs(many, marks, glyph) : undefined) ?? inFigures(many, Math.max(least, isFixed && !glyph ? fine : decimalsOf(many)), marks); // prettier-ignore
  const named = inNumber(unit, isOne(value), wasOne);
  return text + (size === 1 ? '' : scale.text) + named;
}

/** A rounded value in words or figures, its unit with it. */
function phrase(round: Rounded, said: Said, manner: Manner): string {
  const { value } = round;
  const { number, unit } = said;
  const isGravity = manner.meant.figureUnit === 'gravity';
  const between = manner.hedge?.between ?? '';
  const wasOne = isOne(manner.value);
  switch (number.as) {
    case 'figures':
      return figures(value, { number, unit: between + unit }, round, isGravity, wasOne);
    case 'often':
      return oftenSaid(Math.round(value), number);
    case 'clocked':
      return clockedSaid(value, number);
    case 'share':
      return shareSaid(value, number).words;
    case 'kanji':
      return (Number.isInteger(value) ? inKanji(value) : String(value)) + unit;
    case 'man':
      return (Number.isInteger(value) ? inMan(value) : String(value)) + unit;
    case 'behind':
      return withUnit(value, unit, number.spoken, true) + number.tail;
    case 'part': {
      const { scale } = number.spoken;
      if (scale === 1) return withUnit(value, unit, number.spoken, false) + number.tail;
      const part = { 0.25: 'a quarter of', 0.5: 'half', 0.75: 'three quarters of' }[tidied(value / scale) as 0.25];
      return (part ? `${part} a ${scale === 1e6 ? 'million' : 'thousand'}` : inWords(value, number.spoken)) + unit;
    }
    case 'dozen':
      if (value % 12 === 0 && value <= 72) return `${value === 12 ? 'a' : inWords(value / 12)} dozen${unit}`;
      return inWords(value, number.spoken) + inNumber(unit, isOne(value), wasOne);
    case 'couple':
      return (value === 2 ? number.pair : inWords(value, number.spoken)) + inNumber(unit, isOne(value), wasOne);
    case 'words': {
      const { spoken } = number;
      const isHalf = spoken.style === 'plain' && value % 1 === 0.5 && manner.value % 1 === 0;
      const words = inWords(value, isHalf ? { ...spoken, style: 'halves' } : spoken);
      return words + between + inNumber(unit, isOne(value), wasOne);
    }
  }
} // prettier-ignore

const marksOf = {
  British: britishMarks,
  American: britishMarks,
  European: europeanMarks,
  Japanese: britishMarks,
};

/** How a number and its unit are said to an audience. */
function toAudience({ number, unit }: Said, to: Conversion | undefined, { writing }: Audience): Said {
  const isWords = 'spoken' in number;
  const gap = /^\s*/.exec(unit)![0] || ' ';
  let name = to ? gap + nameOf(to.unit, unit, isWords) : unit;
  let said = number;
  if (to && (number.as === 'behind' || number.as === 'part' || number.as === 'clocked'))
    said = { as: 'words', spoken: { ...british, style: 'halves' } };
  if (writing && said.as === 'figures') said = { ...said, written: { ...said.written, marks: marksOf[writing] } };
  if (writing === 'Japanese' && said.as === 'figures') said = { as: 'man' };
  if (writing === 'Japanese' && /[^\x20-\x7e°]/.test(unit) && to) name = japaneseUnits[to.unit] ?? name;
  if ((writing === 'American' || writing === 'British') && 'spoken' in said)
    said = { ...said, spoken: { ...said.spoken, and: writing === 'British' } };
  if (writing === 'American') name = name.replace(/litre/g, 'liter');
  return { number: said, unit: name };
} // prettier-ignore

const TRIFLE = 0.0015; // part of a value below which it lies neither under nor over what is said

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
  const round = (each: number, by: number) => tidied(Math.round(tidied(each / by)) * by);
  const steps = stepsFrom(first, ends[1], manner);
  const found = steps.find((by) => ends.every((each) => Math.abs(round(each, by) - each) <= quarter)) ?? steps.at(-1)!;
  const shift = round(ends[0] - low, found); // the same for both ends, so that the range stays as wide as it was
  const [newLow, newHigh] = isNear && !to ? [tidied(low + shift), tidied(end!.value + shift)] : [round(ends[0], found), round(ends[1], found)];
  const at = (value: number): Rounded => ({ value, step: found, isFiner: found < first, isWhole: true });
  const second = toAudience({ number: end!.number, unit: manner.unit }, to, audience);
  const lead = toAudience({ number: manner.number, unit: end!.unitOfFirst }, undefined, audience);
  const left = phrase(at(tidied(newLow / end!.lifted)), lead, manner);
  const words = end!.lead + left + end!.between + phrase(at(newHigh), second, manner);
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
  const manner = mannerOf(words, was, audience.figureUnit);
  if (!manner) return refuse(`“${words}” is no quantity that can be said anew.`);
  if (!Number.isFinite(now)) return refuse(`“${words}”: what it is now is not known.`);
  const { meant } = manner;
  const to = audience.unit === undefined || audience.unit === meant.unit ? undefined : asked(audience.unit, meant.figureUnit);
  if (audience.unit !== undefined && audience.unit !== meant.unit && !to)
    return refuse(`“${words}” cannot be said in ${audience.unit}.`);
  const finish = (anew: Anew): Anew => {
    const shown = manner.isCapital ? capital(anew.words) : anew.words;
    return { ...anew, words: manner.isWide ? widened(shown) : shown };
  };
  if (manner.to) return finish(rangeAnew(manner, now, was, audience, to));
  const into = to ?? meant;
  const value = tidied(into.fromFigure(now));
  const slope = to ? Math.abs((to.fromFigure(meant.toFigure(manner.value * 1.01 + 0.01)) - to.fromFigure(meant.toFigure(manner.value))) / (manner.value * 0.01 + 0.01)) : 1;
  const said = toAudience({ number: manner.number, unit: manner.unit }, to, audience);
  const first = to ? niceStep(manner.step * slope) : manner.step;
  const round = manner.number.as === 'share'
    ? { ...rounded(value, manner, first), value: shareSaid(value, manner.number).value }
    : manner.number.as === 'often' ? { value: Math.round(value), step: 1, isFiner: false, isWhole: true } : rounded(value, manner, first);
  const { before, change } = hedgeFor(manner, value, round);
  const body = phrase(round, said, manner);
  const inner = /\ba\s+good\s+$/i.test(before) ? body.replace(/^(?:an?|one)\s+/, '') : body;
  const changes = [...(round.isFiner && !round.isWhole ? ['rounded more finely'] : []), ...(change ? [change] : [])];
  return finish({ words: before + inner + (manner.hedge?.after ?? ''), value: into.toFigure(round.value), step: round.step, changes });
} // prettier-ignore
