// Keeps what the text says of the facts of the house right, on the pages that say any.
import { createEffect, createRoot } from 'solid-js';
import { withVessels } from '../house/facts-beside.ts';
import { factSays, isFactId } from '../house/facts.ts';
import { partGiven } from '../house/parts/built-in.ts';
import { factsPart } from '../house/parts/facts.ts';
import { readPart, type HousePart } from '../house/parts/part.ts';
import { plantPart } from '../house/parts/plant.ts';
import { liveName, liveParts } from './house-store.ts';

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
