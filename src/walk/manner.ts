// The manner in which a quantity was said: words or figures, rounded to what, hedged how, in which unit.
import { quantitiesIn } from '../talk/quantities.ts';
import type { SaidDimension } from '../talk/units.ts';
import { sideOf, withoutHedge, type HedgeSide } from './hedges.ts';
import { narrowed } from './japanese.ts';
import { withoutNoise } from './neat.ts';
import { phrasesIn, type NumberSaid, type Phrase } from './number-said.ts';
import { meantAs, type Meant } from './said-units.ts';
import { stepWritten } from './written.ts';

export interface Hedge {
  readonly side: HedgeSide;
  /** With the spaces that stand with it. */
  readonly before: string;
  readonly after: string;
  /** "-odd" between number and unit. */
  readonly between: string;
}

export interface Manner {
  readonly number: NumberSaid;
  /** In the unit as said; of a range its low end. */
  readonly value: number;
  /** The second end of a range, how it was said and what stands between; the first word of "between … and …". */
  readonly to?: { readonly value: number; readonly number: NumberSaid; readonly between: string; readonly lead: string; readonly unitOfFirst: string; readonly lifted: number };
  /** The unit as it stands behind the number, the space before it included; empty where none was said. */
  readonly unit: string;
  readonly dimension: SaidDimension;
  readonly meant: Meant;
  /** What it was rounded to, in the unit as said. */
  readonly step: number;
  readonly hedge?: Hedge;
  /** The true value that it stood for, in the unit as said. */
  readonly stood: number;
  /** Part of the true value by which what was said lay above it. */
  readonly off: number;
  /** Said without a hedge, and it was the very value. */
  readonly isExact: boolean;
  readonly isCapital: boolean;
  /** In wide figures, as in Japanese. */
  readonly isWide: boolean;
} // prettier-ignore

/** What is never said to the ten. */
export const toTheWhole: ReadonlySet<SaidDimension> = new Set(['strength', 'percent', 'temperature']);

/** Size of what a number was rounded to, by the way it was said. */
function stepOf({ number, value, of }: Phrase, meant: Meant): number {
  if (number.as === 'figures') {
    const written = stepWritten(number.written);
    const step = toTheWhole.has(of.dimension) ? Math.min(1, written) : written;
    return meant.figureUnit === 'gravity' && number.written.decimals === 0 ? Math.min(1, step) : step;
  }
  if (number.as === 'clocked') return number.minutes % 15 === 0 ? 0.25 : number.minutes % 5 === 0 ? 1 / 12 : 1 / 60;
  if (number.as === 'often') return 1;
  if (number.as === 'share') return 0.05;
  if (meant.figureUnit === 'gravity' || of.dimension === 'gravity') return 1;
  const scale = 'spoken' in number ? Math.max(1, number.spoken.scale) : 1;
  const many = withoutNoise(value / scale);
  if (many % 1 !== 0 && many % 0.25 === 0) return (many % 0.5 === 0 ? 0.5 : 0.25) * scale;
  const decimals = (String(many).split('.')[1] ?? '').length;
  if (decimals > 0) return withoutNoise(10 ** -Math.min(decimals, 6) * scale);
  let step = scale;
  while (many !== 0 && value % (10 * step) === 0 && !toTheWhole.has(of.dimension)) step *= 10;
  return step;
} // prettier-ignore

interface Read extends Phrase {
  readonly meant: Meant;
  readonly to?: NonNullable<Manner['to']>;
}
const nearest = (all: readonly Read[]): Read | undefined =>
  all.toSorted((a, b) => a.meant.apart - b.meant.apart)[0];

/** "68 to 71 %", "between 20 and 22 hours", "five to six thousand litres". */
function rangeIn(text: string, was: number, figureUnit?: string): Read | undefined {
  const [read, more] = quantitiesIn(text);
  if (!read?.range || more) return undefined;
  const lead = /^between\s+|^from\s+/i.exec(text)?.[0] ?? '';
  for (const { 0: between, index } of text.matchAll(/\s*[–—-]\s*|\s+(?:to|and|or|up\s+to|till|until)\s+/gi)) {
    const [firsts, seconds] = [phrasesIn(text.slice(lead.length, index)), phrasesIn(text.slice(index + between.length))]; // prettier-ignore
    for (const second of seconds)
      for (const first of firsts) {
        const lifted = first.value > 0 && first.value * 50 < second.value ? read.range[0] / first.value : 1;
        const isWhole = Math.abs(first.value * lifted - read.range[0]) < 1e-6 * read.range[0] + 1e-9;
        if (!isWhole || second.value <= first.value) continue;
        const value = first.value * lifted;
        const meant = meantAs((value + second.value) / 2, second.of, was, figureUnit);
        return { ...first, value, unit: second.unit, of: second.of, meant, to: { value: second.value, number: second.number, between, lead, unitOfFirst: first.unit, lifted } }; // prettier-ignore
      }
  }
  return undefined;
}

/** A time of day, a year, money; pounds are money only where no mass is meant. */
const isNone = (text: string, figureUnit?: string) => {
  const [read] = quantitiesIn(text);
  const isMoney = read?.dimension === 'money' && (figureUnit !== 'kg' || /[£$€]/.test(text));
  return isMoney || read?.dimension === 'clock' || read?.dimension === 'date';
};

const FARTHEST = 0.3; // logarithm of the ratio of what was said to what it stood for, beyond which it did not stand for it

/**
 * The manner of a quantity as said, its hedge with it, and of the value that it stood for, in the figure's own unit
 * (`figureUnit`, where it is known: kg, L, cL, h, °C, % vol, gravity, …). Nothing for what is no quantity: a time of
 * day, a year, money.
 */
export function mannerOfSaid(words: string, was: number, figureUnit?: string): Manner | undefined {
  const narrow = narrowed(words);
  const { before, bare: whole, after } = withoutHedge(narrow);
  if (isNone(whole, figureUnit)) return undefined;
  const odd = /^(.*?[a-z\d])([\s-]odd)(?=\s|$)/i.exec(whole);
  const text = odd ? odd[1]! + whole.slice(odd[0].length) : whole;
  const read = rangeIn(text, was, figureUnit) ?? nearest(phrasesIn(text).map((phrase) => ({ ...phrase, meant: meantAs(phrase.value, phrase.of, was, figureUnit) }))); // prettier-ignore
  if (!read || read.meant.apart > FARTHEST) return undefined;
  const { number, value, unit, meant, to } = read;
  const isHedged = before + after !== '' || odd !== null;
  const side = odd ? 'over' : sideOf(before || after);
  const said = meant.toFigure(to ? (value + to.value) / 2 : value);
  const off = was === 0 ? 0 : said / was - 1;
  return {
    number,
    value,
    unit,
    dimension: read.of.dimension,
    meant,
    step: stepOf(read, meant),
    ...(to ? { to } : {}),
    ...(isHedged ? { hedge: { side, before, after, between: odd?.[2] ?? '' } } : {}),
    stood: meant.fromFigure(was),
    off,
    isExact: (!isHedged || side === 'exact') && Math.abs(off) < 1e-4,
    isCapital: /^[A-ZÀ-Þ]/.test(words),
    isWide: /[０-９]/.test(words),
  };
}
