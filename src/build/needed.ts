// client:needed: an island's fields and script come when the island is near the window, or once the page's figures are no longer those it was built with.
import type { ClientDirective } from 'astro';
import { firstSeen } from '../house/first-seen.ts';
import { whenIdle } from '../house/idle.ts';

const NEAR = '200px'; // before it comes into sight

/** Puts an island's fields where the built page keeps them for readers without JavaScript. */
function bringFields(island: Element): void {
  for (const kept of island.querySelectorAll('noscript'))
    kept.replaceWith(...new DOMParser().parseFromString(kept.textContent, 'text/html').body.childNodes);
}

const needed: ClientDirective = (load, _options, element) => {
  let begun = false;
  const hydrate = async (when: (start: () => void) => void) => {
    if (begun) return;
    begun = true;
    watcher.disconnect();
    bringFields(element);
    await firstSeen;
    const start = await load();
    when(() => void start());
  };
  const atOnce = (start: () => void) => setTimeout(start); // the script has run; what it does next may be seen between
  const watcher = new IntersectionObserver(
    (entries) => entries.some((entry) => entry.isIntersecting) && void hydrate(atOnce),
    { rootMargin: NEAR },
  );
  for (const child of element.children) watcher.observe(child);
  // What was built speaks of the built-in house; a page of another house must not be printed half and half.
  if (document.documentElement.dataset['figures'] === 'own') void hydrate(atOnce);
  addEventListener('figures-changed', () => void hydrate(whenIdle), { once: true });
  addEventListener('beforeprint', () => bringFields(element), { once: true });
  // Whoever comes by the tabulator key from above must not pass by the fields.
  element.addEventListener('focusin', ({ relatedTarget }) => {
    if (!element.querySelector('noscript')) return;
    bringFields(element);
    const isFromBelow =
      relatedTarget instanceof Node &&
      element.compareDocumentPosition(relatedTarget) & Node.DOCUMENT_POSITION_FOLLOWING;
    if (!isFromBelow) element.querySelector<HTMLElement>('form :is(input, select, button)')?.focus();
  });
};
export default needed;
