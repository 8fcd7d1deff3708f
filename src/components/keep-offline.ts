// Keeps the handbook on this machine, where the browser allows it; the worker is written by build/offline.ts.

if ('serviceWorker' in navigator && location.protocol.startsWith('http') && !import.meta.env.DEV) {
  // Where it is forbidden, the handbook works as before, with a network.
  navigator.serviceWorker.register(new URL('../offline.js', import.meta.url)).catch(() => undefined);
}
