// Keeps the parts of drawings that follow a figure of the house where it stands.
import { createEffect, createRoot } from 'solid-js';
import type { Line } from '../core/line/line.ts';
import { builtInHouse } from '../house/figures.ts';
import { whenIdle } from './defer.ts';
import { figureValue } from '../house/prose.ts';
import { isLineReady, liveHouse, liveLine } from './house-store.ts';
import { moveOnTrack, type Track } from '../house/track.ts';

const parts = [...document.querySelectorAll<SVGElement>('[data-track]')].map((part) => ({
  part,
  of: part.dataset['moves']!,
  over: part.dataset['over'],
  track: JSON.parse(part.dataset['track']!) as Track,
}));

function setAll(line: Line): void {
  for (const { part, of, over, track } of parts)
    part.setAttribute(
      'transform',
      moveOnTrack(track, figureValue(line, of) / (over ? figureValue(line, over) : 1)),
    );
}

createRoot(() => {
  let isUntouched = true;
  const set = () => setAll(liveLine());
  createEffect(() => {
    if (!isLineReady()) return; // what is built stands until this house’s line is there
    isUntouched &&= liveHouse() === builtInHouse;
    if (!isUntouched) whenIdle(set);
  });
});
