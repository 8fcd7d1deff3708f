// A figure as people say it: rounded, with “about”, “just under” or “just over”.
import { figureSaid, figureTable, type Things } from '../figures/index.ts';
import { formatNumber } from '../format.ts';
import type { KindName } from '../kinds.ts';
import { quotableFigures, type QuotableName } from '../cross-check/quoted.ts';

const units: Partial<Record<KindName, string>> = {
  volume: 'litres',
  volume20: 'litres',
  alcohol: 'litres of pure alcohol',
  yield: 'litres of pure alcohol a tonne',
  hours: 'hours',
  years: 'years',
  bottle: 'centilitres',
};
const words = ['nought', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']; // prettier-ignore

/** Where the figure may lie; what is said must lie in the middle half of it. */
type Ends = readonly [low: number, high: number];
interface Spoken {
  readonly said: number;
  readonly text: string;
}

/** How a rounded number lies to the true one, in words; parts of the true one. */
const SAME = 1e-6; // nearer than this the figure is simply said
const NEAR = 0.012; // nearer than this it is “just” under or over; common practice of speech
const ROUND = 0.02; // a half or a whole thousand is said when it is this near
const FIVE = 0.003; // a third figure of nought or five is said when it is this near

/** The number that is said, the nearest to `value` among multiples of `step`. */
const nearest = (value: number, step: number) => Math.round(value / step) * step;

/** True for a number that needs no rounding to be said, as 42,500 or 9.4. */
const isShort = (value: number) => Math.abs(value - Number(value.toPrecision(3))) < 1e-9 * value;

/** True for a number that a listener takes for a round one: its third figure is nought or five. */
function isRound(said: number): boolean {
  const third = said / 10 ** (Math.floor(Math.log10(said)) - 2);
  return Math.abs(third / 5 - Math.round(third / 5)) < 1e-6;
}

function inMiddle(said: number, ends: Ends | undefined): boolean {
  if (!ends) return true;
  const quarter = (ends[1] - ends[0]) / 4;
  return said >= ends[0] + quarter && said <= ends[1] - quarter;
}

function lead(value: number, said: number): string {
  const off = value / said - 1;
  if (Math.abs(off) < SAME) return '';
  if (Math.abs(off) > NEAR || !isRound(said)) return 'about ';
  return off < 0 ? 'just under ' : 'just over ';
}

/** Thousands and millions in words where they come to a half or a whole up to twelve. */
function largeInWords(value: number, ends: Ends | undefined): Spoken | undefined {
  const [size, name] = value >= 1e6 ? [1e6, 'million'] : [1000, 'thousand'];
  const said = nearest(value / size, 0.5);
  if (isShort(value) && value !== said * size) return undefined;
  if (value < 1000 || said < 1 || said > 12.5 || Math.abs(value / size / said - 1) > ROUND) return undefined;
  if (!inMiddle(said * size, ends)) return undefined;
  return { said: said * size, text: `${halvesInWords(said)} ${name}` };
}

function halvesInWords(said: number): string {
  const whole = Math.floor(said);
  return `${words[whole]}${said > whole ? ' and a half' : ''}`;
}

/** A number of two or three figures, as it is read out. */
function inFigures(value: number, ends: Ends | undefined): Spoken {
  const step = Math.max(0.1, 10 ** (Math.floor(Math.log10(value)) - 2));
  const five = nearest(value, 5 * step);
  const isNear = Math.abs(value / five - 1) <= FIVE && inMiddle(five, ends);
  const said = isShort(value) ? value : isNear ? five : nearest(value, step);
  if (said >= 1e6) return { said, text: `${Number((said / 1e6).toPrecision(3))} million` };
  const digits = said >= 100 || said % 1 === 0 ? 0 : 1;
  const rounded = Number(said.toFixed(digits));
  return { said: rounded, text: formatNumber(rounded, rounded % 1 === 0 ? 0 : digits) };
}

/** A strength or a temperature to the whole or the half, or to the tenth where neither is near; 63.5 is said as it is. */
function byHalves(value: number, unit: string, ends: Ends | undefined): string {
  const whole = Math.round(value);
  const half = Math.abs(value - whole) <= 0.2 ? whole : nearest(value, 0.5);
  const said = Math.abs(value - half) <= 0.2 && inMiddle(half, ends) ? half : Number(value.toFixed(1));
  const off = value - said;
  const rounded = said !== half || off === 0 ? 'about ' : off < 0 ? 'just under ' : 'just over ';
  const before = Math.abs(off) < (said === half ? 0.025 : 1e-9) ? '' : rounded;
  return `${before}${formatNumber(said, said % 1 === 0 ? 0 : 1)} ${unit}`;
}

/**
 * A number of a kind as it is said to visitors, from nothing upwards, in the unit of its kind. Gravities and analyses
 * are said to their last digit, for they are read, not told.
 * @example spokenNumber('gravity', 1.058) // '1058' (as a stillman says it)
 */
export function spokenNumber(kind: KindName, value: number, thing?: Things, ends?: Ends): string {
  if (kind === 'strength') return byHalves(value, '% vol', ends);
  if (kind === 'temperature') return byHalves(value, '°C', ends);
  if (kind === 'gravity') return formatNumber(1000 * value, 0).replace(',', ''); // 1.058 is said as 1058
  if (kind === 'percent') return `${formatNumber(value, value % 1 === 0 ? 0 : 1)} %`;
  if (kind === 'mass') return mass(value, ends);
  if (kind === 'yield') return `some ${formatNumber(nearest(value, 5), 0)} ${units.yield}`;
  const unit = (said: number) => (thing ? thing[said === 1 ? 0 : 1] : (units[kind] ?? ''));
  return amount(value, unit, ends);
}

/**
 * A figure as it is said to visitors: “about five and a half thousand litres”, “just under 9 % vol”. `ends` is the range
 * that it may lie in; what is said then lies in its middle half.
 * @example spokenFigure('heartVolume', -1) // throws: it cannot be said (below nothing)
 */
export function spokenFigure(figure: QuotableName, value: number, ends?: Ends): string {
  const { kind, label } = quotableFigures[figure];
  if (!(value >= 0 && value < 1e12)) throw new RangeError(`${label} is ${value}; it cannot be said.`);
  return spokenNumber(kind, value, figureTable[figureSaid(figure)].things, ends);
}

function amount(value: number, unit: (said: number) => string, ends: Ends | undefined): string {
  if (value < 0.05) return `hardly any ${unit(2)}`;
  const { said, text } = largeInWords(value, ends) ?? inFigures(value, ends);
  return `${lead(value, said)}${text} ${unit(said)}`;
}

/** Kilograms below a tonne, tonnes above. */
function mass(kilograms: number, ends: Ends | undefined): string {
  if (kilograms < 1000)
    return amount(kilograms < 100 ? kilograms : Math.round(kilograms), () => 'kilos', ends); // as it is printed
  const tonnes = kilograms / 1000;
  const inTonnes: Ends | undefined = ends && [ends[0] / 1000, ends[1] / 1000];
  const half = nearest(tonnes, 0.5);
  if (
    half >= 1 &&
    half <= 12.5 &&
    (half === tonnes || !isShort(tonnes)) &&
    Math.abs(tonnes / half - 1) <= ROUND &&
    inMiddle(half, inTonnes)
  ) {
    return `${lead(tonnes, half)}${halvesInWords(half)} ${half === 1 ? 'tonne' : 'tonnes'}`;
  }
  return amount(tonnes, () => 'tonnes', inTonnes);
}
