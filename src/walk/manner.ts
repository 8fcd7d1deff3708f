// The manner in which a quantity was said: words or figures, rounded to what, hedged how, in which unit.
import { numbersIn } from '../core/reading/numbers.ts';
import { quantitiesIn } from '../talk/quantities.ts';
import { unitAt, type Dimension } from '../talk/units.ts';
import { sideOf, withoutHedge, type Side } from './hedges.ts';
import { japaneseAt, narrowed } from './japanese.ts';
import { tidied } from './neat.ts';
import { meantAs, unitsSaid, type Meant } from './said-units.ts';
import { british, spokenAs, type Spoken } from './spoken.ts';
import { clockedIn, oftenIn, shareIn, type Clocked, type Often, type Share } from './said-forms.ts';
import { stepWritten, writtenAt, type Written } from './written.ts';

/** How the number itself was said. */
export type NumberSaid =
  | { readonly as: 'figures'; readonly written: Written }
  | { readonly as: 'words'; readonly spoken: Spoken }
  /** A tonne and a half; half a million litres, three quarters of an hour. */
  | { readonly as: 'behind' | 'part'; readonly spoken: Spoken; readonly tail: string }
  | { readonly as: 'dozen' | 'couple'; readonly spoken: Spoken; readonly pair: string }
  | { readonly as: 'kanji' | 'man' }
  | Clocked
  | Often
  | Share;

export interface Hedge {
  readonly side: Side;
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
  readonly dimension: Dimension;
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

/** A number with its unit, before it is known what it was in. */
export interface Phrase {
  readonly number: NumberSaid;
  readonly value: number;
  readonly unit: string;
  readonly of: { readonly unit: string; readonly dimension: Dimension };
}

const bare = { unit: '', dimension: 'bare' } as const;
const unitIn = (text: string, at: number) => {
  const unit = unitAt(text, at) ?? bare;
  const ofAlcohol = unit.dimension === 'volume' && /\bpure\b|\balcohol\b/i.test(text.slice(at));
  return ofAlcohol ? ({ ...unit, dimension: 'alcohol' } as const) : unit;
};
const parts: Readonly<Record<string, number>> = {
  half: 0.5,
  quarter: 0.25,
  'three quarters': 0.75,
  third: 1 / 3,
};
const partOf = (word: string) => parts[word.toLowerCase().replace(/[\s-]+quarters?$/, ' quarters')]!;

/** A number in words at the beginning of a text. */
function wordsAt(text: string): { value: number; end: number } | undefined {
  const shift = /^point\b/i.test(text)
    ? 'nought '
    : /^(?:hundred|thousand|million)\b/i.test(text)
      ? 'a '
      : '';
  const { tokens, numbers } = numbersIn(shift + text);
  const [first] = numbers;
  if (!first || first.first !== 0) return undefined;
  return { value: first.value, end: tokens[first.next - 1]!.end - shift.length };
}

/** "A tonne and a half", "an hour": the unit before the part, or one of a unit. */
function behindIn(text: string): Phrase | undefined {
  const [, head = text, part, tail = ''] = /^(.*\S)\s+and\s+(?:an?\s+)?(half|quarter|three[\s-]quarters)(\s+(?:per|an?|each)\s+\w+)?$/i.exec(text) ?? []; // prettier-ignore
  const article = /^an?(?=\s+\D)/i.exec(head)?.[0];
  const whole = article && !wordsAt(head) ? { value: 1, end: article.length } : wordsAt(head);
  const unit = whole && unitAt(head, whole.end);
  if (!whole || !unit || unit.end !== head.length || !/\s/.test(head[whole.end] ?? '')) return undefined;
  if (part === undefined && whole.end !== article?.length) return undefined;
  const spoken = { ...british, article: article !== undefined };
  const of = /hour/i.test(tail) && unit.unit === 't' ? ({ unit: 't/h', dimension: 'milling' } as const) : unit;
  return { number: { as: 'behind', spoken, tail }, value: whole.value + (part ? partOf(part) : 0), unit: head.slice(whole.end), of };
} // prettier-ignore

/** "Half an hour", "three quarters of a million litres". */
function partIn(text: string): Phrase | undefined {
  const found = /^(?:(?:an?|one)\s+)?(half|quarter|three[\s-]quarters?)\s+(?:of\s+)?(?:an?\s+)?(?:(million|thousand)(?=\s|$)\s*)?(?=[a-z]|$)/i.exec(text); // prettier-ignore
  if (!found || (!found[2] && found[0].length === text.length)) return undefined;
  const scale = !found[2] ? 1 : /^m/i.test(found[2]) ? 1e6 : 1e3;
  const at = scale === 1 ? found[0].length - 1 : found[0].trimEnd().length;
  const unit = unitIn(text, at);
  if (unit === bare && scale === 1) return undefined;
  const spoken = { ...british, style: 'scaled', scale, article: true } as const;
  return {
    number: { as: 'part', spoken, tail: '' },
    value: partOf(found[1]!) * scale,
    unit: text.slice(at),
    of: unit,
  };
}

/** "A dozen casks", "two dozen", "a couple of hours". */
function dozensIn(text: string): Phrase | undefined {
  const found = /^(.+?)\s+(dozen|couple|pair)(?:\s+of)?\b/i.exec(text);
  if (!found) return undefined;
  const many = /^an?$/i.test(found[1]!) ? 1 : /^half an?$/i.test(found[1]!) ? 0.5 : wordsAt(found[1]!)?.value;
  if (many === undefined) return undefined;
  const as = /^dozen/i.test(found[2]!) ? 'dozen' : 'couple';
  const spoken = { ...british, article: true };
  return { number: { as, spoken, pair: found[0].toLowerCase() }, value: many * (as === 'dozen' ? 12 : 2), unit: text.slice(found[0].length), of: unitIn(text, found[0].length) }; // prettier-ignore
}

function spokenIn(text: string): Phrase | undefined {
  const found = wordsAt(text);
  if (!found) return undefined;
  const spoken = spokenAs(text.slice(0, found.end), found.value);
  return { number: { as: 'words', spoken }, value: found.value, unit: text.slice(found.end), of: unitIn(text, found.end) }; // prettier-ignore
}

function japaneseIn(text: string): Phrase | undefined {
  const found = japaneseAt(text);
  if (!found) return undefined;
  const unit = text.slice(found.end);
  const of = /^リットル|^L/.test(unit) ? { unit: 'L', dimension: 'volume' } as const : /^キロ|^kg/.test(unit) ? { unit: 'kg', dimension: 'mass' } as const : /^トン/.test(unit) ? { unit: 't', dimension: 'mass' } as const : bare; // prettier-ignore
  return {
    number: { as: /\d/.test(text.slice(0, found.end)) ? 'man' : 'kanji' },
    value: found.value,
    unit,
    of,
  };
}

const figuresIn = (text: string): readonly Phrase[] =>
  writtenAt(text).map((written) => ({
    number: { as: 'figures', written },
    value: written.value,
    unit: text.slice(written.end),
    of: /^リットル/.test(text.slice(written.end))
      ? { unit: 'L', dimension: 'volume' }
      : unitIn(text, written.end),
  }));

const formIn = (form: Clocked | Often | Share | undefined): Phrase | undefined =>
  form && {
    number: form,
    value: form.value,
    unit: '',
    of:
      form.as === 'clocked'
        ? { unit: 'h', dimension: 'time' }
        : form.as === 'share'
          ? { unit: '', dimension: 'share' }
          : { unit: '', dimension: 'times' },
  };

/** A quantity as the reader of talks has it, to be said plainly. */
function plainIn(text: string): Phrase | undefined {
  const [read] = quantitiesIn(text);
  const name = read && unitsSaid[read.unit];
  if (read?.value === undefined || read.end - read.start !== text.length || (read.unit !== '' && !name) || /^half-/i.test(text)) return undefined;
  const unit = name ? ` ${name[2]}` : /^(?:twice|thrice)$/i.test(text) ? ' times' : '';
  return { number: { as: 'words', spoken: british }, value: read.value, unit, of: read };
} // prettier-ignore

/** Whether the reader of talks takes a number for what it was taken for here; marks may have been read either way. */
function isReadAlike(text: string, { value, number, of }: Phrase): boolean {
  const [read] = quantitiesIn(text);
  if (read?.value === undefined || read.end - read.start !== text.length || of.unit === 'kL') return true;
  const scale = number.as === 'figures' ? number.written.scale.size : 1;
  if (read.value === value || read.value * scale === value) return true; // 1.3m may be metres, too
  const ratio = read.value / value;
  return Math.abs(ratio - 1) < 1e-6 || (number.as === 'figures' && /[.,]\d{3}/.test(text) && Math.abs(ratio * 1000 - 1) < 1e-6); // prettier-ignore
}

/** Every way to read a number and its unit. */
function phrasesIn(text: string): readonly Phrase[] {
  const alike = waysIn(text).filter((each) => isReadAlike(text, each));
  return alike.length > 0 ? alike : [plainIn(text)].filter((each) => each !== undefined);
}

/** What the first form that reads a number and its unit at all makes of it. */
function waysIn(text: string): readonly Phrase[] {
  const single = formIn(oftenIn(text)) ?? formIn(clockedIn(text)) ?? japaneseIn(text) ?? formIn(shareIn(text)) ?? behindIn(text) ?? partIn(text) ?? dozensIn(text); // prettier-ignore
  if (single) return [single];
  const figures = figuresIn(text);
  return figures.length > 0 ? figures : [spokenIn(text)].filter((each) => each !== undefined);
}

/** What is never said to the ten. */
export const toTheWhole: ReadonlySet<Dimension> = new Set(['strength', 'percent', 'temperature']);

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
  const many = tidied(value / scale);
  if (many % 1 !== 0 && many % 0.25 === 0) return (many % 0.5 === 0 ? 0.5 : 0.25) * scale;
  const decimals = (String(many).split('.')[1] ?? '').length;
  if (decimals > 0) return tidied(10 ** -Math.min(decimals, 6) * scale);
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
export function mannerOf(words: string, was: number, figureUnit?: string): Manner | undefined {
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
