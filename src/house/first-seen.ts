// The moment a page has been seen as it was built. Its scripts come only then, unless the page must speak of another house: those it waits for.
import { HOUSE_KEY, keptText, VISIT_KEY } from './browser-store.ts';

const LATEST = 1000; // ms after which a page counts as seen, where the browser does not tell of it

/** True when the page may have to show other figures than it was built with. */
export const mayChange = () =>
  location.hash !== '' || keptText(HOUSE_KEY) !== null || keptText(VISIT_KEY, () => sessionStorage) !== null;

export const firstSeen = new Promise<void>((resolve) => {
  if (mayChange() || document.hidden || !('PerformanceObserver' in globalThis)) return resolve();
  new PerformanceObserver((_list, observer) => {
    observer.disconnect();
    resolve();
  }).observe({ type: 'paint', buffered: true });
  setTimeout(resolve, LATEST);
});
