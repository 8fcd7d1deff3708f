// The houses of the reader: copies, those on the shelf, and those that were removed and can be had back.
import { createEffect, createSignal, Show } from 'solid-js';
import { builtInName } from '../house/figures.ts';
import { visibleName } from '../house/name.ts';
import { keepFigures, resetHouse } from '../browser/change-figure.ts';
import { keepHouseBefore, putHouseBack, removedHouses, removeHouse } from '../browser/removed-houses.ts';
import { copyHouse, openHouse } from '../browser/shelf-store.ts';
import { liveHouse, useHouse } from '../browser/house-store.ts';
import { RemovedFold } from './RemovedFold.tsx';
import { Shelf } from './Shelf.tsx';
import { useWayBack } from './use-way-back.tsx';

export default function HouseDesk() {
  const { mounted, name, shelf, text } = useHouse();
  const { say, Said, saying } = useWayBack();
  const [removed, setRemoved] = createSignal<readonly string[]>([]);
  createEffect(() => {
    shelf(); // another tab may have changed it
    setRemoved(mounted() ? removedHouses() : []);
  });
  const others = () => Object.keys(shelf()).filter((other) => other !== name());

  const putBack = (aside: string): string => {
    const back = putHouseBack(aside);
    setRemoved(removedHouses());
    return back === undefined
      ? `${visibleName(aside)} is not among the removed houses any more.`
      : `${visibleName(back)} is back among your other houses.`;
  };
  const remove = (other: string) => {
    const aside = removeHouse(other);
    setRemoved(removedHouses());
    if (aside === undefined)
      return say(
        `This browser has no room to keep ${visibleName(other)} so that it could be had back, so it stays. Save it to a file first.`,
      );
    say(
      `${visibleName(other)} is removed, with all that it keeps. It can be had back, here or under “Removed houses”.`,
      () => putBack(aside),
    );
  };
  const reset = () => {
    const [before, stood, putFiguresBack] = [name(), text(), keepFigures()];
    resetHouse();
    const after = liveHouse();
    if (text() === stood) return say(`Every figure is ${builtInName}’s already.`);
    const aside = keepHouseBefore(stood);
    setRemoved(removedHouses());
    const where = aside === undefined ? '' : ` As it was, it stands under “Removed houses” as ${visibleName(aside)}.`; // prettier-ignore
    say(`Every figure is ${builtInName}’s again.${where}`, () => {
      if (name() !== before || liveHouse() !== after)
        return `The house has changed since, so nothing was put back.${where}`;
      putFiguresBack();
      return `The figures of ${visibleName(before)} are as they were.`;
    });
  };

  return (
    <section class="calculator house-desk" aria-labelledby="house-desk-title">
      <h2 id="house-desk-title">Copies and other houses</h2>
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            copyHouse();
            say(`${name()} is open: work on this copy; the first stays as it is.`);
          }}
        >
          Work on a copy
        </button>{' '}
        <button type="button" onClick={reset}>
          Put all figures back to {builtInName}’s
        </button>
      </p>
      <p>
        To send it, save it to a file or open one: <a href="hand-on/">Hand your house on</a>.
      </p>
      <Said />
      <Show when={others().length > 0}>
        <h3>Your other houses</h3>
      </Show>
      <Shelf
        names={others()}
        open={(other) => {
          openHouse(other);
          say(`${name()} is open.`);
        }}
        remove={remove}
        saying={saying}
      />
      <RemovedFold what="houses" names={removed()} putBack={(aside) => say(putBack(aside))} saying={saying} />
    </section>
  );
}
