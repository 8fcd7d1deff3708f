// A figure as people say it: rounded, with “about”, “just under” or “just over”.
import { formatNumber } from '../format.ts';
import { kinds } from '../kinds.ts';
import { quotableFigures, type QuotableName } from './quoted.ts';

const units: Partial<Record<keyof typeof kinds, string>> = {
  volume: 'litres',
  volume20: 'litres',
  alcohol: 'litres of pure alcohol',
  yield: 'litres of pure alcohol a tonne',
  years: 'years',
  bottle: 'centilitres',
};
/** What is counted, one and many. */
const things: Partial<Record<QuotableName, readonly [string, string]>> = {
  mashesPerWeek: ['mash', 'mashes'],
  weeksPerYear: ['week', 'weeks'],
  casksPerWeek: ['cask', 'casks'],
  casksPerYear: ['cask', 'casks'],
  casksInStore: ['cask', 'casks'],
  bottlesPerCask: ['bottle', 'bottles'],
  bottlesPerYear: ['bottle', 'bottles'],
};
const words = ['nought', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']; // prettier-ignore

/** How a rounded number lies to the true one, in words; parts of the true one. */
const SAME = 0.001; // nearer than this the figure is simply said
const NEAR = 0.012; // nearer than this it is “just” under or over; common practice of speech
const ROUND = 0.02; // a half or a whole thousand is said when it is this near

/** The number that is said, the nearest to `value` among multiples of `step`. */
const nearest = (value: number, step: number) => Math.round(value / step) * step;

/** True for a number that needs no rounding to be said, as 42,500 or 9.4. */
const isShort = (value: number) => Math.abs(value - Number(value.toPrecision(3))) < 1e-9 * value;

function lead(value: number, said: number): string {
  const off = value / said - 1;
  if (Math.abs(off) < SAME) return '';
  if (Math.abs(off) > NEAR) return 'about ';
  return off < 0 ? 'just under ' : 'just over ';
}

/** Thousands and millions in words where they come to a half or a whole up to twelve. */
function largeInWords(value: number): { readonly said: number; readonly text: string } | undefined {
  const [size, name] = value >= 1e6 ? [1e6, 'million'] : [1000, 'thousand'];
  const said = nearest(value / size, 0.5);
  if (isShort(value) && value !== said * size) return undefined;
  if (value < 1000 || said < 1 || said > 12.5 || Math.abs(value / size / said - 1) > ROUND) return undefined;
  const whole = Math.floor(said);
  return { said: said * size, text: `${words[whole]}${said > whole ? ' and a half' : ''} ${name}` };
}

/** A number of two or three figures, as it is read out. */
function inFigures(value: number): { readonly said: number; readonly text: string } {
  const said = isShort(value) ? value : nearest(value, 10 ** Math.floor(Math.log10(value)) / 20);
  if (said >= 1e6) return { said, text: `${Number((said / 1e6).toPrecision(3))} million` };
  const digits = said >= 100 || said % 1 === 0 ? 0 : 1;
  return { said: Number(said.toFixed(digits)), text: formatNumber(said, digits) };
}

/** A strength to the whole or the half per cent; a legal strength, as 63.5, is said as it is. */
function strengthInWords(value: number): string {
  const half = nearest(value, 0.5);
  const whole = Math.round(value);
  const said = Math.abs(value - whole) <= 0.2 ? whole : half;
  const off = value - said;
  const before = Math.abs(off) < 0.025 ? '' : Math.abs(off) > 0.2 ? 'about ' : off < 0 ? 'just under ' : 'just over ';
  return `${before}${formatNumber(said, said % 1 === 0 ? 0 : 1)} % vol`;
} // prettier-ignore

/**
 * A figure as it is said to visitors: “about five and a half thousand litres”, “just under 9 % vol”. `value` in the unit
 * of the figure's kind, above nothing. Gravities and analyses are said to their last digit, for they are read, not told.
 */
export function spoken(figure: QuotableName, value: number): string {
  const { kind } = quotableFigures[figure];
  if (!(value >= 0 && value < 1e12)) throw new RangeError(`${quotableFigures[figure].label} is ${value}; it cannot be said.`);
  if (kind === 'strength') return strengthInWords(value);
  if (kind === 'gravity') return formatNumber(1000 * value, 0).replace(',', ''); // 1.058 is said as 1058
  if (kind === 'percent') return `${formatNumber(value, value % 1 === 0 ? 0 : 1)} %`;
  if (kind === 'mass') return mass(value);
  const thing = things[figure];
  if (kind === 'yield') return `some ${formatNumber(nearest(value, 5), 0)} ${units.yield}`;
  const unit = (said: number) => (thing ? thing[said === 1 ? 0 : 1] : units[kind]!);
  return amount(value, unit);
} // prettier-ignore

function amount(value: number, unit: (said: number) => string): string {
  if (value < 0.05) return `hardly any ${unit(2)}`;
  const { said, text } = largeInWords(value) ?? inFigures(value);
  return `${lead(value, said)}${text} ${unit(said)}`;
}

/** Kilograms below a tonne, tonnes above. */
function mass(kilograms: number): string {
  if (kilograms < 1000) return amount(kilograms, () => 'kilos');
  const tonnes = kilograms / 1000;
  const half = nearest(tonnes, 0.5);
  if (
    half >= 1 &&
    half <= 12.5 &&
    (half === tonnes || !isShort(tonnes)) &&
    Math.abs(tonnes / half - 1) <= ROUND
  ) {
    const whole = Math.floor(half);
    const text = `${words[whole]}${half > whole ? ' and a half' : ''}`;
    return `${lead(tonnes, half)}${text} ${half === 1 ? 'tonne' : 'tonnes'}`;
  }
  return amount(tonnes, () => 'tonnes');
}
