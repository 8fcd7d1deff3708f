// Where a reader left off: the last chapter page read is kept in this browser, and the way back to it shown where there is room for it.
import { keepText, keptText, keyOf } from '../house/browser-store.ts';

const KEY = keyOf('left-off');
const LONGEST = 200; // characters of an address or a title

interface LeftOff {
  readonly path: string;
  readonly title: string;
}
const isText = (value: unknown): value is string =>
  typeof value === 'string' && value !== '' && value.length <= LONGEST;

/** What is kept, if it is a page of this server. */
function kept(): LeftOff | undefined {
  try {
    const { path, title } = JSON.parse(keptText(KEY) ?? '{}') as Partial<Record<keyof LeftOff, unknown>>;
    return isText(path) && /^\/(?![/\\])/.test(path) && isText(title) ? { path, title } : undefined;
  } catch {
    return undefined;
  }
}

const last = kept();
const here = location.pathname;
if (last && last.path !== here)
  for (const place of document.querySelectorAll<HTMLElement>('[data-left-off]')) {
    const link = document.createElement('a');
    link.href = last.path;
    link.textContent = last.title;
    place.replaceChildren('Carry on where you left off: ', link);
    place.hidden = false;
  }

const title = document.querySelector('h1')?.textContent.trim();
if (document.querySelector('.chapter-ends') && title) keepText(KEY, JSON.stringify({ path: here, title }));
