// client:held: an island that is right as it was built until a hand comes to it; its script comes with the first pointer or focus on it, or once the page's figures are no longer those it was built with.
import type { ClientDirective } from 'astro';
import { firstSeen } from '../house/first-seen.ts';

const held: ClientDirective = (load, _options, element) => {
  let begun = false;
  const hydrate = async () => {
    if (begun) return;
    begun = true;
    await firstSeen;
    const start = await load();
    await start();
  };
  for (const hand of ['pointerover', 'pointerdown', 'focusin'])
    element.addEventListener(hand, hydrate, { passive: true });
  if (document.documentElement.dataset['figures'] === 'own') void hydrate();
  addEventListener('figures-changed', () => void hydrate(), { once: true });
};
export default held;
