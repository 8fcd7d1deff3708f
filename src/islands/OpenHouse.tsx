// A way to the house that a walk was written for: from the reader's own shelf at once, or else by its file.
import { Show } from 'solid-js';
import { openHouse } from '../browser/shelf-store.ts';
import { liveShelf } from '../browser/house-store.ts';

export interface OpenHouseProps {
  readonly wanted: string;
  /** The way from the page to the root of the book. */
  readonly root: string;
}

export function OpenHouse(props: OpenHouseProps) {
  return (
    <Show
      when={Object.hasOwn(liveShelf(), props.wanted)}
      fallback={<a href={`${props.root}house/`}>Open the file of {props.wanted}</a>}
    >
      <button type="button" onClick={() => openHouse(props.wanted)}>
        Open {props.wanted} from your houses
      </button>
    </Show>
  );
}
