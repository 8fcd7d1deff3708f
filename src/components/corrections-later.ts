// Fetches what tells of corrections only where there is something to compare or to remember: most pages do without it.
import { keepText, keptText } from '../browser/browser-store.ts';
import { whenIdle } from '../browser/defer.ts';
import {
  BUILT_IN_HOUSE,
  areCorrectionsTold,
  onHouseChange,
  textOfPageHouse,
  REMEMBERED_KEY,
} from '../browser/corrections-store.ts';

const fetchIt = () => void import('./corrections.ts').catch(() => undefined); // without it, nothing is compared

if (keptText(REMEMBERED_KEY) === null && textOfPageHouse() === BUILT_IN_HOUSE)
  keepText(REMEMBERED_KEY, '[]'); // someone's first page: there is nothing yet to compare with
else if (!areCorrectionsTold()) whenIdle(fetchIt);
onHouseChange(() => whenIdle(fetchIt));
