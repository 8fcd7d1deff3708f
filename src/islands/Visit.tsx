// Above the text of every page: says that its figures are someone else's, from a link, and offers to keep them; and what went wrong in keeping the reader's own, where no field of the house stands to say it.
import { createEffect, Show } from 'solid-js';
import { keepVisit, leaveVisit, useHouse } from '../browser/house-store.ts';
import { announce } from './announce.ts';
import { focusAfter } from './focus-after.ts';
import { Troubles } from './Troubles.tsx';

export default function Visit() {
  const { mounted, visiting, name } = useHouse();
  const isToldBelow = () => !mounted() || document.querySelector('.house-desk, .house-figures') !== null;
  const text = () => document.getElementById('main');
  createEffect(
    () => visiting() && announce('visit', () => `You are looking at the figures of ${name()}, from a link.`),
  );
  return (
    <>
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
      <Show when={!isToldBelow()}>
        <Troubles />
      </Show>
    </>
  );
}
