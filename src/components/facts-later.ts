// Fetches what keeps facts of the house right only where the text says one, and the house may say it otherwise than it was built.
import { createEffect, createRoot } from 'solid-js';
import { builtInName } from '../house/figures.ts';
import { liveName, liveParts } from '../house/store.ts';

const isAsBuilt = () => liveName() === builtInName && liveParts().facts === undefined;

if (document.querySelector('[data-fact]'))
  createRoot(() =>
    createEffect(() => {
      if (!isAsBuilt()) void import('../house/facts-store.ts').catch(() => undefined); // without it, the text stays
    }),
  );
