// How a number and its unit were said: in figures or words, with a half behind the unit, in dozens, in a form of its own.
import { numbersIn } from '../core/reading/numbers.ts';
import { quantitiesIn } from '../talk/quantities.ts';
import { unitAt, type SaidDimension } from '../talk/units.ts';
import { japaneseAt } from './japanese.ts';
import { clockedIn, oftenIn, shareIn, type Clocked, type Often, type Share } from './said-forms.ts';
import { unitsSaid } from './said-units.ts';
import { britishStyle, styleOfNumber, type Spoken } from './spoken.ts';
import { britishMarks, decimalsWritten, writtenAt, type NumberInTalk } from './written.ts';

/** How the number itself was said. */
export type NumberSaid =
  | { readonly as: 'figures'; readonly written: NumberInTalk }
  | { readonly as: 'words'; readonly spoken: Spoken }
  /** A tonne and a half; half a million litres, three quarters of an hour; `isBare` in “the first half hour”. */
  | {
      readonly as: 'behind' | 'part';
      readonly spoken: Spoken;
      readonly tail: string;
      readonly isBare?: boolean;
    }
  | { readonly as: 'dozen' | 'couple'; readonly spoken: Spoken; readonly pair: string }
  | { readonly as: 'kanji' | 'man' }
  | Clocked
  | Often
  | Share;

/** A number with its unit, before it is known what it was in. */
export interface Phrase {
  readonly number: NumberSaid;
  readonly value: number;
  readonly unit: string;
  readonly of: { readonly unit: string; readonly dimension: SaidDimension };
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
  const spoken = { ...britishStyle, article: article !== undefined };
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
  const spoken = { ...britishStyle, style: 'scaled', scale, article: true } as const;
  const isBare = scale === 1 && /^(?:half|quarter)\s+$/i.test(found[0]);
  return {
    number: { as: 'part', spoken, tail: '', ...(isBare ? { isBare } : {}) },
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
  const spoken = { ...britishStyle, article: true };
  return { number: { as, spoken, pair: found[0].toLowerCase() }, value: many * (as === 'dozen' ? 12 : 2), unit: text.slice(found[0].length), of: unitIn(text, found[0].length) }; // prettier-ignore
}

function spokenIn(text: string): Phrase | undefined {
  const found = wordsAt(text);
  if (!found) return undefined;
  const spoken = styleOfNumber(text.slice(0, found.end), found.value);
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
  const { value } = read;
  const written = { value, marks: britishMarks, decimals: decimalsWritten(value), scale: { text: '', size: 1 }, end: 0 };
  return { number: /^\d/.test(text) ? { as: 'figures', written } : { as: 'words', spoken: britishStyle }, value, unit, of: read };
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
export function phrasesIn(text: string): readonly Phrase[] {
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
