// Fetches what tells of corrections only where there is something to compare or to remember: most pages do without it.
import { createEffect, createRoot, on } from 'solid-js';
import { keepText, keptText } from '../house/browser-store.ts';
import { whenIdle } from '../house/idle.ts';
import { liveHouse } from '../house/store.ts';
import { BUILT_IN, isAllTold, ownText, TOLD } from '../house/told-store.ts';

const fetchIt = () => void import('./corrections.ts').catch(() => undefined); // without it, nothing is compared

if (keptText(TOLD) === null && ownText() === BUILT_IN)
  keepText(TOLD, '[]'); // someone's first page: there is nothing yet to compare with
else if (!isAllTold()) whenIdle(fetchIt);
createRoot(() => createEffect(on(liveHouse, () => whenIdle(fetchIt), { defer: true })));
