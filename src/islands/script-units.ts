// Whether what was said with a unit can be a figure at all: kilos are no wash.
import { measures } from '../core/measures.ts';
import { talkFigures, type FigureId } from '../talk/figures.ts';
import type { Dimension } from '../talk/units.ts';

const dimensions = new Map<string, Dimension>(measures.map(({ unit, dimension }) => [unit, dimension]));
/** What is said alike: a strength as a percentage, pure alcohol in litres. */
const alike: Partial<Record<Dimension, readonly Dimension[]>> = {
  strength: ['percent', 'share'],
  percent: ['strength', 'share'],
  volume: ['alcohol'],
  alcohol: ['volume'],
};

/** True when a quantity of a unit can be a figure; a number without a unit can be any. */
export function canBe(unit: string, figure: FigureId): boolean {
  const dimension = dimensions.get(unit);
  if (dimension === undefined) return true;
  const takes: readonly Dimension[] = talkFigures[figure].takes;
  return [dimension, ...(alike[dimension] ?? [])].some((each) => takes.includes(each));
}
