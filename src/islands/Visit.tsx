// Says that the figures on the page are someone else's, from a link, and offers to keep them.
import { Show } from 'solid-js';
import { keepVisit, leaveVisit, useHouse } from '../house/store.ts';

export default function Visit() {
  const { visiting, name } = useHouse();
  return (
    <Show when={visiting()}>
      <div class="visit" role="region" aria-label="Shared figures">
        <p>
          You are looking at the figures of {name()}, from a link.{' '}
          <span class="on-screen">Your own are untouched; nothing here is kept until you say so.</span>
        </p>
        <p class="actions">
          <button type="button" onClick={keepVisit}>
            Keep {name()} as one of mine
          </button>{' '}
          <button type="button" onClick={leaveVisit}>
            Go back to my own figures
          </button>
        </p>
      </div>
    </Show>
  );
}
