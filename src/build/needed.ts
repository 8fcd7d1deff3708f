// client:needed: an island's script comes when the island is near the window, or once the page's figures are no longer those it was built with.
import type { ClientDirective } from 'astro';

const NEAR = '200px'; // before it comes into sight

const needed: ClientDirective = (load, _options, element) => {
  let begun = false;
  const hydrate = async () => {
    if (begun) return;
    begun = true;
    watcher.disconnect();
    const start = await load();
    await start();
  };
  const watcher = new IntersectionObserver(
    (entries) => entries.some((entry) => entry.isIntersecting) && void hydrate(),
    { rootMargin: NEAR },
  );
  for (const child of element.children) watcher.observe(child);
  // What was built speaks of the built-in house; a page of another house must not be printed half and half.
  if (document.documentElement.dataset['figures'] === 'own') void hydrate();
  addEventListener('figures-changed', () => void hydrate(), { once: true });
};
export default needed;
