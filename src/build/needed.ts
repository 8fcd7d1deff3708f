// client:needed: an island's script comes when the island is near the window, or once the page's figures are no longer those it was built with.
import type { ClientDirective } from 'astro';
import { whenIdle } from '../house/idle.ts';

const NEAR = '200px'; // before it comes into sight

const needed: ClientDirective = (load, _options, element) => {
  let begun = false;
  const hydrate = async (when: (start: () => void) => void) => {
    if (begun) return;
    begun = true;
    watcher.disconnect();
    const start = await load();
    when(() => void start());
  };
  const atOnce = (start: () => void) => start();
  const watcher = new IntersectionObserver(
    (entries) => entries.some((entry) => entry.isIntersecting) && void hydrate(atOnce),
    { rootMargin: NEAR },
  );
  for (const child of element.children) watcher.observe(child);
  // What was built speaks of the built-in house; a page of another house must not be printed half and half.
  if (document.documentElement.dataset['figures'] === 'own') void hydrate(atOnce);
  addEventListener('figures-changed', () => void hydrate(whenIdle), { once: true });
};
export default needed;
