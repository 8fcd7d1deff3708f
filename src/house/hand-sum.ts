// A sum that a person can redo: its rule in words, and the rule with a house's own numbers as they are printed.
import { format, formatNumber, formatWorking } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { numberAt } from '../core/line/beside.ts';
import type { Line } from '../core/line/line.ts';
import type { SourceId } from '../core/sources.ts';
import { kindOfFigure, wholeCountOf } from './prose.ts';

/** A number that a sum takes: a figure by its place in the line, or one that the core reckons from it, with its kind. */
export type SumUse = string | readonly [kind: KindName, of: (line: Line) => number];

export interface HandSum<N extends string = string> {
  /** The rule, without numbers of the house. */
  readonly rule: string;
  readonly uses: Readonly<Record<N, SumUse>>;
  readonly gives: (v: Readonly<Record<N, number>>) => number;
  /** The sum with its numbers, without the result. */
  readonly sum: (t: Readonly<Record<N, string>>) => string;
  readonly of: KindName;
  readonly digits?: number;
  readonly source: SourceId;
}

/** A declared sum whose own names are forgotten. */
export const handSum = <const N extends string>(of: HandSum<N>): HandSum => of as unknown as HandSum;

/** Decimals of a computed number in a sum, by its kind; five figures where nothing is said. */
const decimals: Partial<Readonly<Record<KindName, number>>> = {
  volume: 1,
  volume20: 1,
  alcohol: 1,
  mass: 1,
  strength: 2,
  plato: 2,
};
const [TOLD, LEAST] = [5, 3]; // significant figures: five as fields show them (core/format.ts), and never fewer than three

/** A number as a sum prints it, which is what the sum then reckons with: what a house gives whole, what is computed rounded. */
function told(value: number, kind: KindName, isGiven: boolean): number {
  const digits = decimals[kind];
  if (isGiven || digits === undefined) return Number(isGiven ? value.toFixed(6) : value.toPrecision(TOLD));
  return Math.abs(value) < 10 ** (LEAST - 1 - digits) ? Number(value.toPrecision(LEAST)) : Number(value.toFixed(digits));
} // prettier-ignore
const printed = (value: number, kind: KindName): string => {
  if (kind === 'gravity') return formatNumber(value, Math.max(3, (String(value).split('.')[1] ?? '').length));
  const text = formatWorking(value, 9);
  return value < 0 ? `(${text})` : text;
};

export interface WorkedSum {
  readonly values: Readonly<Record<string, number>>;
  readonly texts: Readonly<Record<string, string>>;
  readonly value: number;
  /** "1,500 × 6 = 9,000 kg" */
  readonly says: string;
}

/** A sum with the numbers of a line; undefined where the line has one of them not, or the sum gives no number. */
export function workedSum({ uses, gives, sum, of, digits }: HandSum, line: Line): WorkedSum | undefined {
  const values: Record<string, number> = {};
  const texts: Record<string, string> = {};
  for (const [name, use] of Object.entries(uses)) {
    const value = typeof use === 'string' ? numberAt(line, use) : use[1](line);
    if (value === undefined || !Number.isFinite(value)) return undefined;
    const kind = typeof use === 'string' ? (kindOfFigure(use)?.kind ?? 'ratio') : use[0];
    values[name] = told(value, kind, typeof use === 'string' && use.startsWith('house.'));
    texts[name] = printed(values[name], kind);
  }
  const value = gives(values);
  return Number.isFinite(value)
    ? { values, texts, value, says: `${sum(texts)} = ${format(value, of, digits)}` }
    : undefined;
}

const NEAR = 0.01; // part of a figure by which a sum of rounded numbers may miss it: liquids that mix change in volume by half of this, and rounding takes less

/** True where a sum comes to the figure that the book tells: a house of three distillations, or of several malts, has figures that no short sum gives. */
export const sumComesTo = ({ value }: WorkedSum, path: string, line: Line): boolean => {
  const own = numberAt(line, path);
  if (own === undefined) return false;
  const apart = Math.abs(value - own) <= NEAR * Math.abs(own);
  return apart || wholeCountOf(path, value) === wholeCountOf(path, own);
};
