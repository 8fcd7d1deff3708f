// Fetches what tells of corrections only where there is something to compare or to remember: most pages do without it.
import { keepText, keptText } from '../browser/browser-store.ts';
import { whenIdle } from '../browser/defer.ts';
import { BUILT_IN, isAllTold, onChange, ownText, TOLD } from '../browser/told-store.ts';

const fetchIt = () => void import('./corrections.ts').catch(() => undefined); // without it, nothing is compared

if (keptText(TOLD) === null && ownText() === BUILT_IN)
  keepText(TOLD, '[]'); // someone's first page: there is nothing yet to compare with
else if (!isAllTold()) whenIdle(fetchIt);
onChange(() => whenIdle(fetchIt));
