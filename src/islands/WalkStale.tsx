// Sentences of a walk that no longer hold since the house changed: what judges and lists them comes once a walk has figures.
import type { PiecePlace } from '../walk/change.ts';
import type { Piece, Walk } from '../walk/walk.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';

export interface StaleProps {
  readonly walk: Walk;
  /** Puts a piece as it has become in the place of one. */
  readonly put: (at: PiecePlace, piece: Partial<Piece>) => void;
  /** Takes the walk with a sentence left as it is, or to be asked again. */
  readonly leave: (walk: Walk, says: string) => void;
}

const Part = fetchedWhenWanted<StaleProps>(() =>
  import('./WalkStaleOpen.tsx').then((come) => come.WalkStaleOpen),
);

export const WalkStale = (props: StaleProps & { readonly isReady: boolean }) => (
  <Part
    walk={props.walk}
    put={props.put}
    leave={props.leave}
    isWanted={
      props.isReady && props.walk.rooms.some(({ pieces }) => pieces.some(({ figures }) => figures.length > 0))
    }
  />
);
