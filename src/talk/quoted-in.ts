// What a script quotes: the figure of each quantity as it was settled or proposed, and the first telling of each that can be checked.
import type { Quoted, QuotableName, SaidValue } from '../core/cross-check/quoted.ts';
import type { TalkFigureId } from './figures.ts';
import { quotableOf } from './labels.ts';
import type { ReadQuantity } from './script.ts';
import { NOT_OURS, type SettledMarks } from './settled.ts';

/** One vessel of its kind, or all of a hundred. */
const isOnly = (said: SaidValue) => said.as !== 'range' && (said.value === 1 || said.value === 100);

/** The figure that a quantity is taken for: as the reader settled it, or else as it is proposed. */
export function figureIn({ start, figure }: ReadQuantity, settled: SettledMarks): TalkFigureId | undefined {
  const own = settled[start];
  return own === NOT_OURS ? undefined : (own ?? figure);
}

/** A quantity as it is quoted: its value in the figure's own unit. */
export function saidIn({ inFigure, value, range, approximate }: ReadQuantity): SaidValue | undefined {
  const [low, high] = inFigure ?? range ?? (value === undefined ? [] : [value]);
  if (low === undefined) return undefined;
  if (high !== undefined && high !== low)
    return { as: 'range', low: Math.min(low, high), high: Math.max(low, high) };
  return approximate ? { as: 'about', value: low } : { as: 'rounded', value: low };
}

/** What is told of one vessel and is the figure of a mash as well, unless the talk says that there are more of them. */
const standIns: readonly (readonly [
  told: TalkFigureId,
  means: QuotableName,
  unless: readonly TalkFigureId[],
])[] = [
  ['washStillCharge', 'washVolume', ['numberOfWashStills']],
  ['spiritStillCharge', 'chargeVolume', ['numberOfSpiritStills']],
  ['barrelSize', 'caskSize', ['barrelsShare', 'hogsheadSize', 'buttSize']],
  ['hogsheadSize', 'caskSize', ['hogsheadsShare', 'barrelSize', 'buttSize']],
];

/** The figures of a script that can be checked, each as it is told first. */
export function quotedIn(quantities: readonly ReadQuantity[], settled: SettledMarks): Quoted {
  const found: Partial<Record<QuotableName, SaidValue>> = {};
  const first = new Map<TalkFigureId, SaidValue>();
  for (const quantity of quantities) {
    const figure = figureIn(quantity, settled);
    const name = figure && quotableOf(figure);
    const said = saidIn(quantity);
    if (figure && said && !first.has(figure)) first.set(figure, said);
    if (name && said && !(name in found)) found[name] = said;
  }
  for (const [told, means, unless] of standIns) {
    const said = first.get(told);
    const isOne = unless.every((other) => !first.has(other) || isOnly(first.get(other)!));
    const pairs = first.get('numberOfStills');
    const isPair = means === 'caskSize' || !pairs || (pairs.as !== 'range' && pairs.value <= 2);
    if (said && isOne && isPair && !(means in found)) found[means] = said;
  }
  return found;
}
