// Whether two values of a figure lie no further apart than a good reading can tell.
import { figureTable, type FigureId } from '../figures/index.ts';
import type { KindName } from '../kinds.ts';

const PART = 0.005; // of a figure: what a dip or a meter can tell; as spreads.volume in core/figures/define.ts
/** What a good reading can tell, in the kind's own unit, where that is no part of the figure; as the spreads there. */
const told: Partial<Readonly<Record<KindName, number>>> = {
  strength: 0.1, // % vol, a hydrometer
  gravity: 0.0003, // a saccharometer
  plato: 0.1, // g/100 g, the same
  percent: 0.3, // an analysis repeated
  temperature: 0.5, // °C, a thermometer in a pipe
};

/**
 * True when two values of a figure differ by no more than a good reading of it can tell.
 * @example withinReading('heartVolume', 100, 100) // true (they are one)
 */
export function withinReading(id: FigureId, one: number, other: number): boolean {
  const { kind } = figureTable[id];
  return Math.abs(other - one) <= (told[kind] ?? PART * Math.max(Math.abs(one), Math.abs(other)));
}
