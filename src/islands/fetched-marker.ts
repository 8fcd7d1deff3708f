// What marks answers, with its reader of numbers and units: it comes with the first touch of a place for one.
import { createSignal } from 'solid-js';
import type { mark } from '../exercises/mark.ts';

const [marker, setMarker] = createSignal<{ readonly mark: typeof mark }>();
let coming: Promise<typeof mark | undefined> | undefined;

/** What marks, once it is here. */
export const markerHere = (): typeof mark | undefined => marker()?.mark;

/** Fetches what marks, once; nothing when it does not come, and the page says that a part of it is missing. */
export function fetchMarker(): Promise<typeof mark | undefined> {
  coming ??= import('../exercises/mark.ts').then(
    ({ mark }) => {
      setMarker({ mark });
      return mark;
    },
    () => {
      document.documentElement.dataset['script'] = 'lost';
      return undefined;
    },
  );
  return coming;
}
