// The name of each figure that a script may tell, as it stands at the head of a sentence, and its numbers as text.
import { headOf } from '../core/figures/index.ts';
import { formatNumber } from '../core/format.ts';
import { plain, quotableFigures, type QuotableName, type SaidValue } from '../core/cross-check/quoted.ts';
import { talkFigures, type TalkFigureId } from './figures.ts';

/** The name under which a figure is held against the others, if it is one of those. */
export function quotableOf(figure: TalkFigureId): QuotableName | undefined {
  return Object.hasOwn(quotableFigures, figure) ? (figure as QuotableName) : undefined;
}

export function labelOf(figure: TalkFigureId): string {
  const { inTable, label } = talkFigures[figure];
  return inTable ? headOf(inTable) : label!;
}

/** A number of a figure with its unit, with as many decimals as it needs. */
export function numberOf(figure: TalkFigureId, value: number): string {
  const name = quotableOf(figure);
  if (name) return plain(name, value);
  const digits = value % 1 === 0 || Math.abs(value) >= 1000 ? 0 : 1;
  return `${formatNumber(value, digits)} ${talkFigures[figure].unit}`.trim();
}

/** What was said of a figure: “about 150,000”, “5,500 L to 6,000 L”. */
export function saidOf(figure: TalkFigureId, said: SaidValue): string {
  if (said.as === 'range') return `${numberOf(figure, said.low)} to ${numberOf(figure, said.high)}`;
  return `${said.as === 'about' ? 'about ' : ''}${numberOf(figure, said.value)}`;
}
