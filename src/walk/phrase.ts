// A rounded value in words or figures, with its unit, in the form in which the quantity was said.
import { inKanji, inMan } from './japanese.ts';
import type { Manner } from './manner.ts';
import { withoutNoise } from './neat.ts';
import type { NumberSaid } from './number-said.ts';
import { clockedSaid, oftenSaid, shareSaid } from './said-forms.ts';
import { inNumber } from './said-units.ts';
import { britishStyle, numberInWords } from './spoken.ts';
import { isCounted, type Rounded } from './rounding-steps.ts';
import { decimalsWritten, inFigures, inGlyphs } from './written.ts';

/** Whether the whole number of a count, or a fraction of one thing, takes the name for one. */
const isOne = (value: number) => value === 1;

export interface SaidPhrase {
  readonly number: NumberSaid;
  readonly unit: string;
}

/** "Two tonnes and a half", "an hour", "three quarters of an hour". */
function withUnit(value: number, unit: string, spoken: typeof britishStyle, isBehind: boolean, isBare = false): string {
  const one = inNumber(unit.trim(), true);
  const article = spoken.article === true ? (/^(?:hour|h\b)/i.test(one) ? 'an' : 'a') : 'one';
  const whole = Math.floor(value);
  const part = withoutNoise(value - whole);
  const name = { 0.25: 'a quarter', 0.5: 'half', 0.75: 'three quarters' }[part as 0.25];
  if (isBare && value === 0.5) return `half ${one}`;
  if (isBare && value === 1) return one; // the first half hour, the first hour
  if (whole === 0 && name) return `${name}${part === 0.5 ? '' : ' of'} ${article} ${one}`;
  if (whole > 0 && isBehind && (part === 0 || name)) {
    const head = whole === 1 ? `${article} ${one}` : numberInWords(whole, spoken) + inNumber(unit, false, true);
    return part === 0 ? head : `${head} and ${part === 0.5 ? 'a half' : name}`;
  }
  return numberInWords(value, { ...spoken, style: 'halves' }) + inNumber(unit, isOne(value), true);
} // prettier-ignore

/** A number of figures with as many decimals as it had, or as its step needs. */
function figures(
  value: number,
  { number, unit }: SaidPhrase,
  { step, isWhole }: Rounded,
  isGravity: boolean,
  wasOne: boolean,
): string {
  if (number.as !== 'figures') return '';
  const { marks, decimals, glyph, scale } = number.written;
  const size = value < scale.size ? 1 : scale.size;
  const many = withoutNoise(value / size);
  const fine = Math.max(decimalsWritten(withoutNoise(step / size)), decimalsWritten(many));
  const isFixed = size === 1 && scale.size === 1 && (isGravity || !isWhole);
  const least = isGravity || decimals > decimalsWritten(number.written.value) ? decimals : 0; // 70.0 keeps its nought
  const text = (glyph ? inGlyphs(many, marks, glyph) : undefined) ?? inFigures(many, Math.max(least, isFixed && !glyph ? fine : decimalsWritten(many)), marks); // prettier-ignore
  const named = inNumber(unit, isOne(value), wasOne);
  return text + (size === 1 ? '' : scale.text) + named;
}

/** A rounded value in words or figures, its unit with it. */
export function phraseOfValue(round: Rounded, said: SaidPhrase, manner: Manner): string {
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
      if (scale === 1) return withUnit(value, unit, number.spoken, false, number.isBare) + number.tail;
      const part = { 0.25: 'a quarter of', 0.5: 'half', 0.75: 'three quarters of' }[withoutNoise(value / scale) as 0.25];
      return (part ? `${part} a ${scale === 1e6 ? 'million' : 'thousand'}` : numberInWords(value, number.spoken)) + unit;
    }
    case 'dozen':
      if (value % 12 === 0 && value <= 72) return `${value === 12 ? 'a' : numberInWords(value / 12)} dozen${unit}`;
      return numberInWords(value, number.spoken) + inNumber(unit, isOne(value), wasOne);
    case 'couple':
      return (value === 2 ? number.pair : numberInWords(value, number.spoken)) + inNumber(unit, isOne(value), wasOne);
    case 'words': {
      const { spoken } = number;
      const isHalf = spoken.style === 'plain' && value % 1 === 0.5 && manner.value % 1 === 0;
      const isNone = value === 0 && isCounted(manner.dimension) && unit.trim() !== '';
      const words = isNone ? 'no' : numberInWords(value, isHalf ? { ...spoken, style: 'halves' } : spoken);
      return words + between + inNumber(unit, isOne(value), wasOne);
    }
  }
} // prettier-ignore
