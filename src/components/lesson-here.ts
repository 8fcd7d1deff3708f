// Fetches the way back to a lesson of the first weeks, where the reader is in one.
import { keptText, keyOf } from '../house/browser-store.ts';

if (keptText(keyOf('lesson')))
  import('./lesson-way.ts').catch(() => (document.documentElement.dataset['script'] = 'lost'));
