// The line of the house of the page with its stills, malts and bottles: fetched only for a house that keeps such.
import { createEffect, createMemo, createRoot, on, untrack } from 'solid-js';
import { isRefusal } from '../core/refusal.ts';
import { reckonBy, lineIn } from '../house/line-of.ts';
import { wayWith } from '../house/line-with.ts';
import { laidElsewhere } from '../house/parts/laid-elsewhere.ts';
import { liveHouse, liveParts, putHouse, tellTrouble } from './house-store.ts';

createRoot(() => {
  createEffect((before: string) => {
    const { plant, malts, bottles, stock } = liveParts();
    const given = JSON.stringify([plant, malts, bottles, laidElsewhere(stock)]);
    if (given === before) return given;
    reckonBy(wayWith({ plant, malts, bottles, stock }));
    putHouse({ ...untrack(liveHouse) }); // the same figures, and all that follows from them anew
    return given;
  }, '');
  const refused = createMemo(() => {
    const found = lineIn(liveHouse());
    return isRefusal(found) ? found.refused : undefined;
  });
  createEffect(
    on(refused, (why) => {
      const until = `${why} Until that is mended, the book goes by this house’s figures alone.`;
      tellTrouble('line', why === undefined ? [] : [until]);
    }),
  );
});
