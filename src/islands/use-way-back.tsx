// What came of something that was done, with the way back beside it for as long as there is one.
import { createSignal, Show } from 'solid-js';
import { liveName } from '../browser/house-store.ts';
import { focusAfter } from './focus-after.ts';

interface Done {
  readonly says: string;
  /** Takes it back, and says so. */
  readonly back?: (() => string) | undefined;
  /** The house that was open. */
  readonly house: string;
}

/** `isOfHouse`: what was done is of the open house, and cannot be taken back in another. */
export function useWayBack(isOfHouse = false) {
  const [done, setDone] = createSignal<Done>();
  let saying: HTMLParagraphElement | undefined;
  const say = (says: string, back?: () => string) => void setDone({ says, back, house: liveName() });
  const back = () => (isOfHouse && done()?.house !== liveName() ? undefined : done()?.back);
  return {
    say,
    said: () => done()?.says ?? '',
    /** Where it is said. */
    saying: () => saying,
    Said: (props: { readonly id?: string }) => (
      <div class="done-and-back">
        <p role="status" id={props.id} tabindex="-1" ref={saying}>
          {done()?.says}
        </p>
        <Show when={back()}>
          {(back) => (
            <button
              type="button"
              onClick={(event) => {
                say(back()());
                focusAfter(event, () => saying);
              }}
            >
              Put it back
            </button>
          )}
        </Show>
      </div>
    ),
  };
}
