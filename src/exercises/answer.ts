// The numbers that a written answer may mean: with thousands separators, a decimal comma, a fraction, a power of ten, a unit.
import type { KindName } from '../core/kinds.ts';
import type { Unit } from '../core/units.ts';
import { unitNamed } from './answer-units.ts';

export interface Reading {
  /** As written, in the unit written. */
  readonly number: number;
  /** Size of its last place: 0.1 for 12.5, 1 for 12, 100 for 1,200. */
  readonly place: number;
  readonly unit: Unit | 'none' | 'other';
  /** The unit as written. */
  readonly unitText: string;
}

const LONGEST = 200; // characters of an answer that are read
const vulgar = '½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞';
const vulgarValues = [
  1 / 2,
  1 / 3,
  2 / 3,
  1 / 4,
  3 / 4,
  1 / 5,
  2 / 5,
  3 / 5,
  4 / 5,
  1 / 6,
  5 / 6,
  1 / 8,
  3 / 8,
  5 / 8,
  7 / 8,
];
const space = "[ \\u202f\\u00a0\\u2009’']";

const number = new RegExp(
  `^(?<sign>[-+−–])?\\s*(?:(?:(?<whole>\\d+)\\s+)?(?<over>\\d+)\\s*/\\s*(?<under>\\d+)|(?<mixed>\\d+)?\\s*(?<vulgar>[${vulgar}])|(?<digits>\\d[\\d.,]*(?:${space}\\d{3}(?!\\d)[.,\\d]*)*|[.,]\\d+)(?:\\s*(?:e|[x×*·]\\s*10\\s*(?:\\^|\\*\\*)?)\\s*(?<power>[-+−]?\\d{1,2}|[⁻⁰¹²³⁴-⁹]+))?)`,
  'i',
);

const place = (digits: string): number => {
  const decimals = digits.split('.')[1];
  if (decimals !== undefined) return 10 ** -decimals.length;
  return 10 ** (/0*$/.exec(digits)?.[0].length ?? 0);
};

/** What digits with commas and points may mean, as plain text with a decimal point. */
function meanings(digits: string): readonly string[] {
  const tight = digits.replace(new RegExp(space, 'g'), '').replace(/[.,]$/, '');
  const grouped = (mark: string) => new RegExp(`^\\d{1,3}(\\${mark}\\d{3})+$`).test(tight);
  const asPoint = tight.replace(',', '.');
  if (/^\d*$/.test(tight)) return [tight];
  if (/^\d*\.\d+$/.test(tight)) return grouped('.') ? [tight, tight.replace('.', '')] : [tight];
  if (/^\d*,\d+$/.test(tight)) return grouped(',') ? [tight.replace(',', ''), asPoint] : [asPoint];
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(tight)) return [tight.replaceAll(',', '')];
  if (/^\d{1,3}(\.\d{3})+(,\d+)?$/.test(tight)) return [tight.replaceAll('.', '').replace(',', '.')];
  return [];
}

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const power = (text: string | undefined): number =>
  text === undefined
    ? 0
    : Number(
        [...text.replace(/[−⁻]/g, '-')]
          .map((sign) => (raised.includes(sign) ? raised.indexOf(sign) : sign))
          .join(''),
      );

/** Everything that an answer may mean for a kind, the likeliest first; empty when it cannot be read. */
export function readAnswer(text: string, kind: KindName): readonly Reading[] {
  const bare = text
    .slice(0, LONGEST)
    .trim()
    .replace(/^(?:about|approx(?:imately|\.)?|ca\.?|[=~≈£$€])\s*/i, '');
  const found = number.exec(bare);
  const parts = found?.groups;
  if (!found || !parts) return [];
  const unitText = bare.slice(found[0].length).trim();
  const unit = unitNamed(unitText, kind);
  const sign = parts['sign'] !== undefined && parts['sign'] !== '+' ? -1 : 1;
  const reading = (value: number, size: number): Reading[] =>
    Number.isFinite(value) ? [{ number: sign * value, place: size, unit, unitText }] : [];
  if (parts['over'] !== undefined)
    return reading(Number(parts['whole'] ?? 0) + Number(parts['over']) / Number(parts['under']), 1e-9);
  if (parts['vulgar'] !== undefined)
    return reading(Number(parts['mixed'] ?? 0) + vulgarValues[vulgar.indexOf(parts['vulgar'])]!, 1e-9);
  const times = 10 ** power(parts['power']);
  return meanings(parts['digits']!).flatMap((plain) => reading(Number(plain) * times, place(plain) * times));
}
