// Keeps what the text says of the facts of the house right, on the pages that say any.
import { createEffect, createRoot } from 'solid-js';
import { withVessels } from './facts-beside.ts';
import { factSays, isFactId } from './facts.ts';
import { partGiven } from './parts/built-in.ts';
import { factsPart } from './parts/facts.ts';
import { readPart, type HousePart } from './parts/part.ts';
import { plantPart } from './parts/plant.ts';
import { liveName, liveParts } from './store.ts';

const places = document.querySelectorAll<HTMLElement>('[data-fact]');

createRoot(() =>
  createEffect(() => {
    const own = <T>(part: HousePart<T>) => readPart(part, partGiven(part.id, liveName(), liveParts())).value;
    const given = withVessels(own(factsPart), own(plantPart));
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
