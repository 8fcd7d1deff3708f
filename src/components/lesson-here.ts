// Fetches the way back to a lesson of the first weeks, where the reader is in one, and what comes next, where they have set out.
import { keptText, storageKey } from '../browser/browser-store.ts';
import type { ShiftOver } from '../path/shift-step.ts';

const lost = () => (document.documentElement.dataset['script'] = 'lost');
const isIn = keptText(storageKey('lesson'));
if (isIn) import('./lesson-way.ts').catch(lost);
if (isIn !== null || keptText(storageKey('first-weeks'))) import('./carry-on.ts').catch(lost);
addEventListener('shift-over', (event) => {
  const over = (event as CustomEvent<ShiftOver>).detail;
  import('./lesson-way.ts').then(({ shiftOver }) => shiftOver(over)).catch(lost);
});
