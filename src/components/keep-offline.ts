// Keeps the handbook on this machine, where the browser allows it; the worker is written by build/offline.ts.

const READY =
  'A corrected book is ready. You will have it, at the latest, once every tab of the handbook has been closed; what you saved stays. ';
const OTHERS =
  'Another tab of the handbook is open. Close it first, so that no page changes under your hands.';

const TRIES = [0, 100, 300, 600, 1000]; // ms after which a waiting build is asked to begin

let isTouched = false; // the browser's own record of it may be that of the page before
for (const touch of ['keydown', 'pointerdown', 'input', 'wheel'])
  addEventListener(touch, () => (isTouched = true), { once: true, capture: true });

let hasAsked = false; // whether this page asked for the new build, and is opened anew with it
navigator.serviceWorker?.addEventListener('controllerchange', () => hasAsked && location.reload());

/** Says that a new build waits, or lets it begin: on a page that has just been opened and not been touched, nothing is lost. */
function tellOf(waiting: ServiceWorker, isFresh: boolean): void {
  if (isFresh) {
    hasAsked = true;
    // It begins only if no other page of the handbook is open; the one that was left may take a moment to go.
    for (const wait of TRIES) setTimeout(() => !isTouched && waiting.postMessage('begin'), wait);
  }
  if (document.getElementById('corrected')) return;
  const says = Object.assign(document.createElement('p'), {
    id: 'corrected',
    className: 'note',
    role: 'status',
  });
  const take = Object.assign(document.createElement('button'), {
    type: 'button',
    textContent: 'Open it now',
  });
  take.addEventListener('click', () => {
    hasAsked = true;
    waiting.postMessage('begin');
  });
  navigator.serviceWorker.addEventListener('message', ({ data }) => {
    if (data === 'others' && isTouched) says.firstChild!.nodeValue = `${OTHERS} `;
  });
  says.append(READY, take);
  document.querySelector('.foot')?.append(says);
}

/** Keeps the book, and looks out for a corrected one. */
async function keep(): Promise<void> {
  const { serviceWorker } = navigator;
  const registration = await serviceWorker.register(new URL('../offline.js', import.meta.url));
  if (registration.waiting && serviceWorker.controller) tellOf(registration.waiting, true);
  const watch = () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && serviceWorker.controller) tellOf(coming, false);
    });
  };
  watch();
  registration.addEventListener('updatefound', watch);
}

if ('serviceWorker' in navigator && location.protocol.startsWith('http') && !import.meta.env.DEV)
  keep().catch(() => undefined); // where it is forbidden, the handbook works as before, with a network
