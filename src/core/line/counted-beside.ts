// What a house counted or read of a figure, beside what is computed of it: how far apart the two are, in words.
import { figureTable, type FigureId } from '../figures/index.ts';
import { format, formatNumber } from '../format.ts';
import { withinReading } from './within-reading.ts';

const MANY_TIMES = 1.5; // from so many times on, times are said and not a part in a hundred

/**
 * How the computed figure lies to the counted one: “3.1 times as many”, “4 % less”, “as counted”.
 * @example computedBeside('heartVolume', 100, 100) // 'as counted' (they are one)
 */
export function computedBeside(id: FigureId, counted: number, computed: number): string {
  if (withinReading(id, counted, computed)) return 'as counted';
  const { kind, things } = figureTable[id];
  const [more, less, much] = things ? ['more', 'fewer', 'many'] : ['more', 'less', 'much'];
  const which = computed > counted ? more : less;
  if (kind === 'strength' || kind === 'temperature' || kind === 'percent')
    return `${format(Math.abs(computed - counted), kind, 1)} ${computed > counted ? 'higher' : 'lower'}`;
  const times = computed / counted;
  if (times >= MANY_TIMES) return `${formatNumber(times, times < 10 ? 1 : 0)} times as ${much}`;
  const part = 100 * Math.abs(times - 1);
  return `${formatNumber(part, part < 10 ? 1 : 0)} % ${which}`;
}
