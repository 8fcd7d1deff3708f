// The walk that is open on the desk: read by a worker, changed and put back, kept, and taken over from another tab.
import { batch, createMemo, createSignal, onCleanup, onMount } from 'solid-js';
import { useHouse } from '../browser/house-store.ts';
import { forHouse, otherHouse, withHouseOf } from '../walk/house-of-walk.ts';
import { FIRST_WALK_NAME } from '../walk/text.ts';
import { roomOpen, withTyping } from '../walk/two-tabs.ts';
import { firstWalk, type Walk } from '../walk/walk.ts';
import { keepWalk, keptWalk, onWalkChanged, shelveWalk } from './walk-kept.ts';
import { useWalkReading } from './walk-reading.ts';
import type { PieceDoes } from './WalkPieces.tsx';

/** The way back from what cannot easily be done again. */
export const PUT_IT_BACK = 'Put it back as it was';

export function useOpenWalk() {
  const [walk, setWalk] = createSignal<Walk>(firstWalk(FIRST_WALK_NAME));
  const [open, setOpen] = createSignal(0);
  const [before, setBefore] = createSignal<{ readonly walk: Walk; readonly label: string }>();
  const [said, setSaid] = createSignal('');
  const [problems, setProblems] = createSignal<readonly string[]>([]);
  const [isKept, setKept] = createSignal(true);
  const [isReady, setReady] = createSignal(false);
  const house = useHouse();
  const typing: PieceDoes['typing'] = {};

  onMount(() => {
    const { walk, problems } = keptWalk();
    setWalk(walk);
    setProblems(problems);
    setReady(true);
  });

  /** Keeps the walk as it has become; false when the browser does not let it. */
  const put = (next: Walk) => {
    batch(() => {
      setWalk(next);
      if (open() >= next.rooms.length) setOpen(next.rooms.length - 1);
    });
    const kept = keepWalk(next);
    setKept(kept);
    return kept;
  };
  /** Takes the walk as it has become and keeps it, as one of the house that stands here where it has none. What cannot easily be done again has a way back, by this button. */
  const take = (next: Walk, says = '', wayBack?: string) => {
    setBefore(wayBack === undefined ? undefined : { walk: walk(), label: wayBack });
    setSaid(says);
    return put(house.mounted() ? withHouseOf(next, house.name()) : next);
  };
  const other = createMemo(() => (isReady() && house.mounted() ? otherHouse(walk(), house.name()) : undefined)); // prettier-ignore
  onMount(() =>
    onCleanup(
      onWalkChanged(
        (theirs) => {
          const [mine, now] = [walk(), typing.now];
          delete typing.now;
          const at = now && { room: open(), ...now };
          const isSame = theirs.name === mine.name;
          if (at && !isSame) shelveWalk(withTyping(mine, mine, at)); // another walk is open there
          const next = at && isSame ? withTyping(theirs, mine, at) : theirs;
          batch(() => {
            setOpen(roomOpen(theirs, mine, open()));
            setWalk(next);
            setBefore(undefined);
            setSaid('This walk was changed in another tab, and stands here as it does there.');
            setProblems([]);
          });
          if (next === theirs) return;
          put(next);
          talk.lookAgain();
        },
        (problems) => setProblems(problems),
      ),
    ),
  );
  const talk = useWalkReading(
    walk,
    (next, says) => {
      setOpen(0);
      take(forHouse(next, house.name()), says, PUT_IT_BACK);
    },
    (next) => {
      setBefore(undefined);
      put(next);
    },
  );
  return {
    walk,
    /** The number of the room that is open. */
    open,
    setOpen,
    /** The walk before what was done last, and the button that puts it back. */
    before,
    said,
    problems,
    isKept,
    isReady,
    house,
    /** The house that the walk was written for, where another stands here: nothing is held against that one. */
    other,
    /** The words of a piece that are being typed and not yet taken. */
    typing,
    take,
    /** Opens another walk. */
    openOther(next: Walk) {
      talk.drop();
      setOpen(0);
      setBefore(undefined);
      setSaid('');
      return put(next);
    },
    /** Its talk, as it is read. */
    talk,
  };
}
export type OpenWalk = ReturnType<typeof useOpenWalk>;
