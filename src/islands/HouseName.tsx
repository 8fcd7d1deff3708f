// The name of the house, which comes before its figures; and what went wrong with it.
import { createSignal, onMount, Show } from 'solid-js';
import { renameHouse } from '../browser/shelf-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { typedEarly } from './typed-early.ts';
import { Troubles } from './Troubles.tsx';

export default function HouseName() {
  const { name } = useHouse();
  const [problem, setProblem] = createSignal<string>();
  const early = typedEarly('house-name');
  onMount(() => early !== undefined && setProblem(renameHouse(early)));
  return (
    <section class="calculator house-name" aria-label="Name of the house">
      <Troubles />
      <form class="inputs" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <div class="field" data-state={problem() ? 'wrong' : 'ok'}>
          <label for="house-name">Name of this house</label>
          <input
            id="house-name"
            class="words"
            type="text"
            maxlength="80"
            autocomplete="off"
            aria-invalid={problem() ? 'true' : 'false'}
            aria-describedby={problem() ? 'house-name-problem' : undefined}
            value={name()}
            onChange={(event) => setProblem(renameHouse(event.currentTarget.value))}
          />
          <Show when={problem()}>
            <p class="problem" id="house-name-problem" role="alert">
              {problem()}
            </p>
          </Show>
        </div>
      </form>
    </section>
  );
}
