// Keeps what the text says of the facts of the house right, on the pages that say any.
import { createEffect, createRoot } from 'solid-js';
import { factSays, isFactId } from './facts.ts';
import { partGiven } from './parts/built-in.ts';
import { factsPart } from './parts/facts.ts';
import { readPart } from './parts/part.ts';
import { liveName, liveParts } from './store.ts';

const places = document.querySelectorAll<HTMLElement>('[data-fact]');

createRoot(() =>
  createEffect(() => {
    const given = readPart(factsPart, partGiven('facts', liveName(), liveParts())).value;
    for (const place of places) {
      const id = place.dataset['fact'];
      const [said, asked] = place.children as unknown as readonly [HTMLElement, HTMLElement];
      const says = isFactId(id) ? factSays(given, id) : undefined;
      said.textContent = says ?? '';
      said.hidden = says === undefined;
      asked.hidden = says !== undefined;
    }
  }),
);
