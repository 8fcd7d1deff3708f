// Whether what was said with a unit can be a figure at all: kilos are no wash.
import { measures } from '../core/measures.ts';
import { talkFigures, type TalkFigureId } from '../talk/figures.ts';
import type { SaidDimension } from '../talk/units.ts';

const dimensions = new Map<string, SaidDimension>(measures.map(({ unit, dimension }) => [unit, dimension]));
/** What is said alike: a strength as a percentage, pure alcohol in litres. */
const alike: Partial<Record<SaidDimension, readonly SaidDimension[]>> = {
  strength: ['percent', 'share'],
  percent: ['strength', 'share'],
  volume: ['alcohol'],
  alcohol: ['volume'],
};

/** True when a quantity of a unit can be a figure; a number without a unit can be any. */
export function canBeFigure(unit: string, figure: TalkFigureId): boolean {
  const dimension = dimensions.get(unit);
  if (dimension === undefined) return true;
  const takes: readonly SaidDimension[] = talkFigures[figure].takes;
  return [dimension, ...(alike[dimension] ?? [])].some((each) => takes.includes(each));
}
