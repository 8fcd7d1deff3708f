// Quantities as printed text, and the sentence for what cannot be one.
import { kinds, type KindName } from './kinds.ts';
import { wasGiven } from './quoted-given.ts';
import { unitsOf, type Unit } from './units.ts';

const NARROW_SPACE = '\u202f';
const NO_BREAK_SPACE = '\u00a0';
const SINGULAR: Readonly<Record<string, string>> = { years: 'year', days: 'day', points: 'point' };

/** Fixed decimals, rounded from the number as it is written, a half upwards: 1.005 to 1.01, where the binary number is a hair below. */
function fixed(value: number, digits: number): string {
  const written = String(value).split('.')[1] ?? '';
  const isHalf = written.length === digits + 1 && written.endsWith('5');
  return (isHalf ? value * (1 + Number.EPSILON) : value).toFixed(digits);
}

/**
 * A number below 10²¹ with grouped thousands, a true minus and a fixed count of decimals. Our own, as `Intl` takes longer to wake than all the rest of a page.
 * @example formatNumber(-1234.56, 1) // '−1,234.6' (grouped, with a true minus)
 * @example formatNumber(1.005, 2) // '1.01' (a half goes upwards, as it is written)
 */
export function formatNumber(value: number, digits: number): string {
  const [whole, decimals] = fixed(Math.abs(value), digits).split('.');
  const text = `${whole!.replace(/\B(?=(\d{3})+$)/g, ',')}${decimals === undefined ? '' : `.${decimals}`}`;
  return value < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}

/**
 * A whole number with the thing counted: 1 year, 2 years.
 * @example formatCount(1, 'year') // '1 year' (one is one)
 */
export function formatCount(value: number, one: string, many = `${one}s`): string {
  return `${formatNumber(value, value % 1 === 0 ? 0 : 1)} ${value === 1 ? one : many}`;
}

/**
 * A number as a working prints it: enough digits that the sum comes out by hand, and none that only pad it.
 * @example formatWorking(2.5) // '2.5' (no nought that only pads)
 */
export function formatWorking(value: number, figures = 6): string {
  const before = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value))) + 1;
  const digits = Math.min(9, Math.max(0, figures - before));
  const text = formatNumber(value, digits);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

const decimalsIn = (step: number) => String(step).split('.')[1]?.length ?? 0;
const FIELD_FIGURES = 5; // of a figure of the line in a field: it then gives the book's printed figures again
const FIELD_DECIMALS = 4;

/**
 * Most decimals that a field shows; it shows no more than the number needs.
 * @example fieldDecimals('mass', 100) // 4 (four at least)
 */
export function fieldDecimals(kind: KindName, step: number): number {
  return Math.max(FIELD_DECIMALS, kinds[kind].digits + 1, decimalsIn(step) + 1);
}

/**
 * A figure of the line as a field shows it, and as a sum then takes it: what is printed is what is reckoned with.
 * @example asShown(12.34567) // 12.346 (five figures)
 */
export function asShown(value: number): number {
  const before = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value))) + 1;
  return Number(value.toFixed(Math.min(FIELD_DECIMALS, Math.max(0, FIELD_FIGURES - before))));
}

/** Decimals that fit the size of a number: fewer for large ones, so that 0.23 and 1,234 both read well. */
function fittingDigits(value: number, digits: number): number {
  if (digits === 0 && Math.abs(value) < 10 && value % 1 !== 0) return Math.abs(value) < 1 ? 2 : 1;
  if (digits === 1 && Math.abs(value) >= 1000) return 0;
  return digits;
}

/**
 * A quantity as printed in the book: number, no-break space, unit. `digits` overrides the kind's own.
 * @example format(1250, 'mass').replace(/\s/gu, ' ') // '1,250 kg' (the unit of the kind)
 */
export function format(value: number, kind: KindName, digits?: number): string {
  const { unit, digits: own } = kinds[kind];
  const number = formatNumber(value, digits ?? fittingDigits(value, own));
  if (unit === '' || unit === '°') return number + unit;
  const behind = number === '1' ? (SINGULAR[unit] ?? unit) : unit;
  return `${number}${unit.startsWith('%') ? NARROW_SPACE : NO_BREAK_SPACE}${behind.replaceAll(' ', NO_BREAK_SPACE)}`;
}

/**
 * A quantity shown in another unit of its kind.
 * @example formatIn(1250, 'mass', unitsOf('mass')[1]).replace(/\s/gu, ' ') // '1.250 t' (a thousand kilograms to the tonne)
 */
export function formatIn(value: number, kind: KindName, unit: Unit, digits?: number): string {
  if (unit.unit === kinds[kind].unit) return format(value, kind, digits);
  const number = formatNumber(unit.fromCore(value), unit.digits);
  return `${number}${NO_BREAK_SPACE}${unit.unit.replaceAll(' ', NO_BREAK_SPACE)}`;
}

/**
 * What a quantity of a kind can be, as the end of a sentence: the ends in the unit shown, or the units that it may have.
 * @example allowedInWords('strength', [20, 60]) // 'it can be from 20 to 60 % vol.' (both ends and the unit)
 */
export function allowedInWords(kind: KindName, range?: readonly [number, number], unit?: Unit): string {
  if (!range) {
    const units = unitsOf(kind).flatMap((each) => (each.unit === '' ? [] : [each.unit]));
    return `it can be a number${units.length === 0 ? '' : ` in ${units.join(', ').replace(/, ([^,]*)$/, ' or $1')}`}.`;
  }
  const digits = (end: number) =>
    kind === 'gravity' && !unit?.unit
      ? 3
      : end % 1 === 0
        ? 0
        : Math.max(2, unit?.digits ?? kinds[kind].digits);
  const ends = range
    .map((end) => (unit ? unit.fromCore(end) : end))
    .map((end) => formatNumber(end, digits(end)));
  const behind = unit?.unit ?? kinds[kind].unit;
  return `it can be from ${ends[0]} to ${ends[1]}${behind === '' ? '' : ` ${behind}`}.`;
}

/**
 * The sentence for a number that is missing, unreadable or outside its range; the ends in the unit shown.
 * @example rangeProblem('Wort', 'x', 'volume', [1, 2]) // 'Wort: “x” was given; it can be from 1 to 2 L.' (both ends and the unit)
 */
export function rangeProblem(
  label: string,
  given: unknown,
  kind: KindName,
  range: readonly [number, number],
  unit?: Unit,
): string {
  return wasGiven(label, given, allowedInWords(kind, range, unit));
}
