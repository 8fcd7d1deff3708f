// Text with holes for figures: written when the site is built, filled from the reader’s own house.
import type { LedgerPace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { withoutUnit } from './without-unit.ts';
import { figureText } from './prose.ts';

interface Hole {
  readonly of: string;
  readonly per: string;
  readonly digits: string;
  readonly bare: boolean;
}

const HOLE = /\{([\w.]+);(\w*);(-?\d*);(bare)?\}/g;

/** A figure as a hole, without spaces, so that no text is cut within one. */
export const holeFor = ({ of, per, digits, bare }: Hole): string =>
  `{${of};${per};${digits};${bare ? 'bare' : ''}}`;

/** A text with its holes filled from the line of a house. */
export const filledFrom = (line: Line, text: string): string =>
  text.replace(HOLE, (_, of: string, per: string, digits: string, bare: string | undefined) => {
    const told = figureText(line, of, per === '' ? undefined : (per as LedgerPace), digits === '' ? undefined : Number(digits)); // prettier-ignore
    return bare ? withoutUnit(told) : told;
  });
