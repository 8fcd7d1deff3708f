// Says that the figures on the page are someone else's, from a link, and offers to keep them.
import { createEffect, Show } from 'solid-js';
import { keepVisit, leaveVisit, useHouse } from '../house/store.ts';
import { announce } from './announce.ts';
import { focusAfter } from './focus-after.ts';

export default function Visit() {
  const { visiting, name } = useHouse();
  const text = () => document.getElementById('main');
  createEffect(
    () => visiting() && announce('visit', () => `You are looking at the figures of ${name()}, from a link.`),
  );
  return (
    <Show when={visiting()}>
      <div class="visit" role="region" aria-label="Shared figures">
        <p>
          You are looking at the figures of {name()}, from a link.{' '}
          <span class="on-screen">Your own are safe; these are not kept until you say so.</span>
        </p>
        <p class="actions">
          <button
            type="button"
            onClick={(event) => {
              keepVisit();
              announce('visit', () => `${name()} is kept as one of yours.`);
              focusAfter(event, text);
            }}
          >
            Keep {name()} as one of mine
          </button>{' '}
          <button
            type="button"
            onClick={(event) => {
              leaveVisit();
              announce('visit', () => `These are your own figures again: ${name()}.`);
              focusAfter(event, text);
            }}
          >
            Go back to my own figures
          </button>
        </p>
      </div>
    </Show>
  );
}
