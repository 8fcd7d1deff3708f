// The line of the house of the page with its stills, malts and bottles: fetched only for a house that keeps such.
import { createEffect, createRoot } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import { lineIn } from './line-of.ts';
import { wayWith } from './line-with.ts';
import { liveHouse, liveParts, setWay, tell } from './store.ts';

createRoot(() => {
  createEffect(() => {
    const { plant, malts, bottles } = liveParts();
    const way = wayWith({ plant, malts, bottles });
    setWay(() => way);
  });
  createEffect(() => {
    const found = lineIn(liveHouse());
    tell('line', isRefusal(found) ? [`${found.refused} Until that is mended, the book goes on without the stills that this house has named.`] : []);
  });
}); // prettier-ignore
