// A quantity in the unit of a figure.
import { talkFigures, type TalkFigureId } from './figures.ts';
import type { SpokenQuantity } from './quantities.ts';
import { inUnit } from './units.ts';

/** The ends of a quantity in a figure's unit; `said` is the unit that a bare number takes. */
export function valuesFor(
  { dimension, unit: own, value, range, degrees }: Pick<SpokenQuantity, 'dimension' | 'unit' | 'value' | 'range' | 'degrees'>,
  figure: TalkFigureId,
  said = own,
): readonly number[] {
  const { unit, kind } = talkFigures[figure];
  const ends = range ?? [value ?? 0];
  const isPart = unit === '%' && ends.every((end) => end > 0 && end <= 1);
  if (dimension === 'share' || (isPart && dimension === 'bare')) return ends.map((end) => 100 * end);
  if (degrees && (kind === 'gravity' || kind === 'strength')) return ends.map((end) => inUnit(end, '', unit));
  if (said === '' && unit !== 'gravity') return ends;
  return ends.map((end) => inUnit(end, said, unit));
} // prettier-ignore
