// What a guide says, held against the guide's own house, figure by figure.
import { pathsOf, type FigureId as TableId } from '../core/figures/index.ts';
import type { FigureStanding } from '../core/figures/standing.ts';
import { numberAt } from '../core/line/beside.ts';
import type { Line } from '../core/line/line.ts';
import { measure, NINETY_FIVE, type SaidValue } from '../core/cross-check/quoted.ts';
import { talkFigures, type TalkFigureId } from './figures.ts';
import type { OwnVessels } from './own-vessels.ts';
import { labelOf, numberOf, quotableOf, saidOf } from './labels.ts';
import { isRefusal } from '../core/refusal.ts';

/** Where figures stand that the table does not have. */
const standsAt: Partial<Readonly<Record<TalkFigureId, readonly string[]>>> = {
  barrelSize: ['beside.barrel'],
  hogsheadSize: ['beside.hogshead'],
  buttSize: ['beside.butt'],
};
const isKnown = (figure: TalkFigureId) => figure in standsAt || talkFigures[figure].inTable !== undefined;

/** What a figure can mean in a line, the first of which is told; empty where no house gives it. */
const meanings = (figure: TalkFigureId, line: Line): readonly number[] =>
  (standsAt[figure] ?? pathsOf(talkFigures[figure].inTable!)).flatMap((path) => numberAt(line, path) ?? []);

/** A figure as a line has it; nothing for a figure that no house gives. */
export function ofHouse(figure: TalkFigureId, line: Line): number | undefined {
  return isKnown(figure) ? meanings(figure, line)[0] : undefined;
}

/** How far from the house a figure may be said that is in no table of spreads; common practice of speech, no source. */
const LOOSE = { about: 0.05, exact: 0.01, degreesAbout: 2, degreesExact: 0.5 };

const WIDEST = 0.035; // part of a figure: a round number is not taken for a looser one than this

/** Half the last digit of a number as it was said: 50 for 42,500, 0.5 for 68. */
function halfDigit(value: number): number {
  const decimals = (String(value).split('.')[1] ?? '').length;
  if (decimals > 0) return 10 ** -decimals / 2;
  let step = 1;
  while (value !== 0 && value % (10 * step) === 0) step *= 10;
  return Math.min(step / 2, WIDEST * value);
}

/** How far what was said may lie from the house and still be right. */
function allowed(figure: TalkFigureId, said: Exclude<SaidValue, { as: 'range' }>): number {
  const name = quotableOf(figure);
  const digit = said.as === 'rounded' ? halfDigit(said.value) : 0;
  if (name) {
    const measured = measure({ [name]: said });
    return isRefusal(measured) ? 0 : Math.max(digit, NINETY_FIVE * (measured.measured[0]?.spread ?? 0));
  }
  const [part, degrees] = said.as === 'about' ? [LOOSE.about, LOOSE.degreesAbout] : [LOOSE.exact, LOOSE.degreesExact]; // prettier-ignore
  return Math.max(digit, talkFigures[figure].kind === 'temperature' ? degrees : part * said.value);
}

function fits(figure: TalkFigureId, said: SaidValue, value: number): boolean {
  if (said.as !== 'range') return Math.abs(said.value - value) <= allowed(figure, said);
  const slack = (end: number) => allowed(figure, { as: 'exact', value: end });
  return value >= said.low - slack(said.low) && value <= said.high + slack(said.high);
}

export interface SaidFigure {
  readonly figure: TalkFigureId;
  readonly said: SaidValue;
}
export interface HeldFigure extends SaidFigure {
  /** The house's own figure. */
  readonly house: number;
  readonly agrees: boolean;
  /** True when the house's own figure is only an estimate, as it hangs on what is not known. */
  readonly isEstimate: boolean;
}

/** How the house knows its figures; without it, all of them are known. */
export interface HowKnown {
  readonly standing: (id: TableId) => FigureStanding;
  readonly counted: (id: TableId) => number | undefined;
  /** What its own vessels say; left out where they are not asked. */
  readonly vessels?: OwnVessels;
}

/**
 * What is said of one figure held against a house: against what was counted, where it was. Nothing where the house gives
 * no such figure, or has not given it yet.
 */
export function heldAgainst(
  { figure, said }: SaidFigure,
  line: Line,
  known?: HowKnown,
): HeldFigure | undefined {
  const ofVessels = known?.vessels?.[figure];
  if (!ofVessels && !isKnown(figure)) return undefined;
  const id = talkFigures[figure].inTable;
  const standing = id && known?.standing(id);
  if (standing === 'unknown') return undefined;
  const counted = id && known?.counted(id);
  const values = ofVessels ?? (counted === undefined ? meanings(figure, line) : [counted]);
  if (values.length === 0) return undefined;
  const right = values.find((value) => fits(figure, said, value));
  const isEstimate = standing === 'estimate';
  return { figure, said, house: right ?? values[0]!, agrees: right !== undefined, isEstimate };
}

/** A figure that the house does not bear out, in a sentence. */
export function disagreement({ figure, said, house, isEstimate }: HeldFigure, name: string): string {
  const asFar = isEstimate ? ', as far as is known' : '';
  return `${labelOf(figure)}: you say ${saidOf(figure, said)}; ${name} has ${numberOf(figure, house)}${asFar}.`;
}
