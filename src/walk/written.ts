// Numbers in figures: the marks that a writer puts between thousands and before decimals, read and written.
import { withoutNoise } from './neat.ts';

export interface Marks {
  /** Between thousands: a comma, a point, a space, an apostrophe, or nothing. */
  readonly group: string;
  readonly decimal: '.' | ',';
}
export const britishMarks: Marks = { group: ',', decimal: '.' };
export const europeanMarks: Marks = { group: '.', decimal: ',' };

const glyphs: Readonly<Record<string, number>> = { '¼': 0.25, '½': 0.5, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3 };
const scaleSizes: Readonly<Record<string, number>> = { k: 1e3, m: 1e6, mn: 1e6, hundred: 100, thousand: 1e3, lakh: 1e5, million: 1e6, crore: 1e7, billion: 1e9 }; // prettier-ignore

export interface NumberInTalk {
  readonly value: number;
  readonly marks: Marks;
  /** Digits behind the decimal mark as written. */
  readonly decimals: number;
  /** Written with ½ and the like, or with "and a half" in words behind the figure. */
  readonly glyph?: 'sign' | 'words';
  /** "k" or " million", as it stands behind the figure, and its size. */
  readonly scale: { readonly text: string; readonly size: number };
  readonly end: number;
}

const figure =
  /^([-−]?\d+(?:[.,'’\u00a0\u202f ]\d+)*)?(\s?[¼½¾⅓⅔]|\s+and\s+(?:a\s+)?(?:half|quarter|three[\s-]quarters)\b)?((?:k|mn?)(?![\wà-ÿ])|\s+m(?=\s+(?:l|lpa|laa?|lit(?:re|er)s?|kg|bottles|casks)\b)|\s+(?:hundred|thousand|million|billion|lakh|crore)(?![\wà-ÿ]))?/i;
const grouped = /^-?[1-9]\d{0,2}(?:(?<mark>[.,'’\u00a0\u202f ])\d{3})(?:\k<mark>\d{3})*(?:([.,])(\d+))?$/;
const plain = /^-?\d+(?:([.,])(\d+))?$/;

/** A figure at the beginning of a text, in each way that its marks can be meant. */
export function writtenAt(text: string): readonly NumberInTalk[] {
  const found = figure.exec(text);
  const [whole = '', digits = '', glyph = '', scaleText = ''] = found ?? [];
  if (digits === '' && glyph === '') return [];
  const size = scaleSizes[scaleText.trim().toLowerCase()] ?? 1;
  const number = digits.replace('−', '-');
  const readings: NumberInTalk[] = [];
  const inWords = /half|quarter/i.test(glyph);
  const part = inWords ? (/half/i.test(glyph) ? 0.5 : /three/i.test(glyph) ? 0.75 : 0.25) : (glyphs[glyph.trim()] ?? 0);
  const read = (value: number, marks: Marks, decimals: number) =>
    readings.push({
      value: withoutNoise((value + part) * size),
      marks,
      decimals,
      ...(glyph === '' ? {} : { glyph: inWords ? ('words' as const) : ('sign' as const) }),
      scale: { text: scaleText, size },
      end: whole.length,
    });
  const single = plain.exec(number === '' ? '0' : number);
  if (single) {
    const [, mark, part = ''] = single;
    const group = /\d{4}/.test(number.split(/[.,]/)[0]!) ? '' : mark === ',' ? '.' : ',';
    read(Number((number || '0').replace(',', '.')), { group, decimal: mark === ',' ? ',' : '.' }, part.length);
  }
  const groups = grouped.exec(number);
  const mark = groups?.groups?.mark;
  if (groups && mark && groups[2] !== mark) {
    const [, , decimal, part = ''] = groups;
    const [before] = decimal ? number.split(decimal) : [number];
    const value = Number(`${before!.replaceAll(mark, '')}.${part || 0}`);
    const own = (decimal ?? (mark === '.' ? ',' : '.')) as '.' | ',';
    const reading = { group: mark, decimal: own };
    read(value, reading, part.length);
    if (mark !== '.' || decimal) readings.reverse(); // a comma before three digits groups; a point does not, unless its value says so
  }
  return readings;
} // prettier-ignore

/** Size of the last digit of a figure as written; noughts at the end of a whole number are taken for rounding. */
export function stepWritten({ value, decimals, glyph, scale }: NumberInTalk): number {
  if (glyph) return ((value / scale.size) % 0.5 === 0 ? 0.5 : 0.25) * scale.size;
  if (decimals > 0) return withoutNoise(10 ** -decimals * scale.size);
  let step = scale.size;
  while (value !== 0 && value % (10 * step) === 0) step *= 10;
  return step;
}

/** A number in figures with so many decimals. */
export function inFigures(value: number, decimals: number, { group, decimal }: Marks): string {
  const [whole, part] = withoutNoise(Math.abs(value)).toFixed(decimals).split('.');
  const text = whole!.replace(/\B(?=(\d{3})+$)/g, group) + (part === undefined ? '' : decimal + part);
  return value < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

const inParts: Readonly<Record<number, string>> = {
  0.25: ' and a quarter',
  0.5: ' and a half',
  0.75: ' and three quarters',
};

/** A number with ½, ¼ or ¾ where it has such a part; nothing for other parts. */
export function inGlyphs(value: number, marks: Marks, glyph: 'sign' | 'words'): string | undefined {
  const part = withoutNoise(value % 1);
  if (part === 0) return inFigures(value, 0, marks);
  const sign =
    glyph === 'sign'
      ? Object.entries(glyphs).find(([, size]) => size === part)?.[0]
      : value > 1
        ? inParts[part]
        : undefined;
  return sign && `${value > 1 ? inFigures(Math.floor(value), 0, marks) : ''}${sign}`;
}

/** Decimals that a number needs, at most six. */
export const decimalsWritten = (value: number): number =>
  (String(withoutNoise(value)).split('.')[1] ?? '').slice(0, 6).length;
