// How full each vessel of the line stands: its own volume against a round one that stands still while a figure is moved.
import type { Line } from '../core/line/line.ts';
import { roomFor } from './line-flows.ts';

export type LineVesselName =
  'malt' | 'mash-tun' | 'washback' | 'wash-still' | 'spirit-still' | 'cask' | 'bottle';

/** What a vessel holds of one mash; a cask and a bottle, what they hold of their own. */
function contents(line: Line): Readonly<Record<LineVesselName, number>> {
  return {
    malt: line.malt.mass,
    'mash-tun': line.wort.volume,
    washback: line.wash.volume,
    'wash-still': line.wash.volume,
    'spirit-still': line.charge.volume,
    cask: line.casks.record.at(-1)!.volume / line.casks.meanSize,
    bottle: line.bottling.volume,
  };
}

/** How full, 0–1, each vessel is. A cask was full when it was filled; the others have room for a round volume. */
export function levelsOf(line: Line, before: Line, after: Line): Readonly<Record<LineVesselName, number>> {
  const [held, was, is] = [contents(line), contents(before), contents(after)];
  const full = (name: LineVesselName) => (name === 'cask' ? 1 : roomFor(was[name], is[name]));
  return Object.fromEntries(
    Object.entries(held).map(([name, volume]) => [name, volume / full(name as LineVesselName)]),
  ) as Record<LineVesselName, number>;
}
