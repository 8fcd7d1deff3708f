// How the house of the page knows what a talk is held against: its figures, and its vessels, which are read once a talk is held against it.
import { createEffect, createSignal } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { useKnown } from '../browser/known-store.ts';
import { liveName, liveParts } from '../browser/house-store.ts';
import type { HowKnown } from '../talk/own-house.ts';
import type { OwnVessels } from '../talk/own-vessels.ts';

const none: OwnVessels = {};

/** `isHeld`: whether anything is held against the house; until then its vessels are not fetched. */
export function useHowKnown(isHeld: () => boolean): HowKnown {
  const { standing, counted } = useKnown();
  const [vessels, setVessels] = createSignal(none);
  createEffect(() => {
    const [name, parts] = [liveName(), unwrap(liveParts())];
    if (!isHeld()) return void setVessels(none);
    import('./vessels-said.ts').then(
      ({ vesselsSaid }) => name === liveName() && setVessels(vesselsSaid(name, parts)),
      () => undefined, // without it nothing is said of the vessels
    );
  });
  return {
    standing,
    counted,
    get vessels() {
      return vessels();
    },
  };
}
