// A talk beside the reader's own house: whether it is held against it, by what stills it is checked, and how the two agree.
import { createMemo } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { liveParts, useHouse } from '../browser/house-store.ts';
import { asAtHouse } from './AgainstHouse.tsx';
import { useHowKnown } from './how-known.ts';
import { heldByKnown, isNotKnown } from './script-held.ts';
import type { TalkRead } from './script-reading.worker.ts';

/** What holds of the talk that was `read`, and of the house of the page; whether it is held against it is kept with the talk. */
export function useTalkBesideHouse(read: () => TalkRead, wantsHeld: () => boolean | undefined) {
  const { house, name, line } = useHouse();
  /** A talk is held against the reader's own house as soon as there is one. */
  const held = () => wantsHeld() ?? (house() !== builtInHouse || name() !== builtInName);
  /** The stills of the reader’s own house, while a talk is held against it and it distils three times. */
  const plant = createMemo(() => (held() && line().round.between ? unwrap(liveParts()).plant : undefined));
  const known = useHowKnown(held);
  const against = createMemo(() =>
    held() ? Object.values(read().taken).flatMap((each) => heldByKnown(each, line(), known) ?? []) : [],
  );
  const notKnown = createMemo(() => {
    const said = held() ? Object.values(read().taken).map(({ figure }) => figure) : [];
    return [...new Set(said)].filter((figure) => isNotKnown(figure, known));
  });
  return {
    name,
    line,
    held,
    plant,
    /** The figures of the talk, each held against that of the house. */
    against,
    /** Those of which the house has none that is known. */
    notKnown,
    /** How they agree, in a sentence; empty where there are none. */
    sentence: () => (against().length > 0 ? asAtHouse(against(), name()) : ''),
  };
}
