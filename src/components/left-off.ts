// Where a reader left off: the last page read or worked at, and how far, is kept in this browser, and the way back to it shown where there is room for it.
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';

const KEY = storageKey('left-off');
const LONGEST = 200; // characters of an address or a title

interface LeftOff {
  readonly path: string;
  readonly title: string;
  /** The heading that was read last. */
  readonly at?: string;
}
const isText = (value: unknown): value is string =>
  typeof value === 'string' && value !== '' && value.length <= LONGEST;

/** What is kept, if it is a page of this server. */
function kept(): LeftOff | undefined {
  try {
    const { path, title, at } = JSON.parse(keptText(KEY) ?? '{}') as Partial<Record<keyof LeftOff, unknown>>;
    const isPage = isText(path) && /^\/(?![/\\])/.test(path) && isText(title);
    return isPage ? { path, title, ...(isText(at) ? { at } : {}) } : undefined;
  } catch {
    return undefined;
  }
}

const last = kept();
const here = location.pathname;
if (last && last.path !== here)
  for (const place of document.querySelectorAll<HTMLElement>('[data-left-off]')) {
    const link = document.createElement('a');
    link.href = last.at === undefined ? last.path : `${last.path}#${encodeURIComponent(last.at)}`;
    link.textContent = last.title;
    place.replaceChildren('Carry on where you left off: ', link);
    place.hidden = false;
  }

/** The last heading that was read: the lowest in the upper third of the screen, or above it. */
const headingRead = () =>
  [...document.querySelectorAll('main :is(h2, h3)[id]')]
    .filter((heading) => heading.getBoundingClientRect().top < innerHeight / 3)
    .at(-1)?.id;

const title = document.querySelector('h1')?.textContent.trim();
if (document.querySelector('.chapter-ends, .practice') && title) {
  const keep = () => keepText(KEY, JSON.stringify({ path: here, title, at: headingRead() }));
  keep();
  document.addEventListener('visibilitychange', () => document.hidden && keep());
  addEventListener('pagehide', keep);
}
