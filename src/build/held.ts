// client:held: an island that is right as it was built until a hand comes to it; its script comes with the first pointer or focus on it, or once the page's figures are no longer those it was built with.
import type { ClientDirective } from 'astro';
import { firstSeen, mayChange } from '../house/first-seen.ts';

const HANDS = ['pointerover', 'pointerdown', 'focusin'] as const;

const held: ClientDirective = (load, _options, element) => {
  let begun = false;
  const pressed: HTMLElement[] = []; // buttons, before the script had come
  const keep = ({ target }: Event) => {
    const button = target instanceof Element && target.closest('button');
    if (button) pressed.push(button);
  };
  const keys: { readonly on: EventTarget; readonly key: string }[] = []; // on handles, before the script had come
  const keepKey = (event: KeyboardEvent) => {
    if (!(event.target instanceof Element && event.target.closest('[role=slider]'))) return;
    if (event.key !== 'Tab') keys.push({ on: event.target, key: event.key });
  };
  const hydrate = async () => {
    if (begun) return;
    begun = true;
    await firstSeen;
    const start = await load();
    await start();
    element.removeEventListener('click', keep);
    element.removeEventListener('keydown', keepKey);
    for (const { on, key } of keys) on.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
    for (const button of pressed) button.click();
  };
  // Where a pointer was pressed, for what it has taken hold of before the script had come.
  element.addEventListener('pointerdown', ({ clientY }) => (element.dataset['pressed'] = String(clientY)), {
    passive: true,
  });
  element.addEventListener('click', keep);
  element.addEventListener('keydown', keepKey);
  for (const hand of HANDS) element.addEventListener(hand, () => void hydrate(), { passive: true });
  if (mayChange()) void hydrate();
  // Another tab changed the house, or the Back button brought this page out of the browser's memory.
  addEventListener('storage', () => void hydrate(), { once: true });
  addEventListener('pageshow', ({ persisted }) => void (persisted && hydrate()), { once: true });
};
export default held;
