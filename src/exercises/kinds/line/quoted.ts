// Figures of the line as a question prints them: rounded, so that a sum on paper can use them.
import { format, formatNumber } from '../../../core/format.ts';
import type { KindName } from '../../../core/kinds.ts';
import { decimalsOfStep } from '../../exercise.ts';

/** A figure rounded to some figures that count. */
export const quoted = (value: number, figures = 4) => Number(value.toPrecision(figures));

/** The same in print, with its unit. */
export function said(value: number, kind: KindName, figures = 4): string {
  if (kind === 'gravity') return format(value, kind);
  const rounded = quoted(value, figures);
  return format(rounded, kind, decimalsOfStep(rounded));
}

/** How many of a thing, in words that fit one and many. */
export const many = (count: number, one: string, more = `${one}s`) =>
  `${formatNumber(count, 0)} ${count === 1 ? one : more}`;

/** Pure alcohol in print, as it stands within a sentence. */
export const alcoholSaid = (value: number) => `${said(value, 'volume20')} of pure alcohol`;
