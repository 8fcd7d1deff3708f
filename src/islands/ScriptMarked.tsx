// The script with its figures marked; a mark that is touched opens what it was taken for, how surely, and what else it might be.
import { createSignal, For, Show } from 'solid-js';
import type { Finding } from '../core/line/reconcile.ts';
import { figureIds, talkFigures, type FigureId } from '../talk/figures.ts';
import { labelOf } from '../talk/labels.ts';
import type { ReadQuantity } from '../talk/script.ts';
import { NOT_OURS } from '../talk/settled.ts';

const NEAR = 3; // other figures that are offered at once

export interface ScriptMarkedProps {
  readonly text: string;
  readonly quantities: readonly ReadQuantity[];
  readonly figureOf: (quantity: ReadQuantity) => FigureId | undefined;
  readonly findingOf: (quantity: ReadQuantity) => Finding;
  readonly tellOf: (quantity: ReadQuantity) => string;
  readonly settle: (quantity: ReadQuantity, figure: FigureId | typeof NOT_OURS) => void;
}

const sureness = (confidence: number) => (confidence >= 0.8 ? 'fairly sure' : confidence >= 0.5 ? 'not sure' : 'a guess'); // prettier-ignore

export function ScriptMarked(props: ScriptMarkedProps) {
  const [open, setOpen] = createSignal<number>();
  const parts = () =>
    props.quantities.map((quantity, i) => ({
      before: props.text.slice(props.quantities[i - 1]?.end ?? 0, quantity.start),
      quantity,
    }));
  const chosen = () => props.quantities.find(({ start }) => start === open());
  return (
    <>
      <div class="marked">
        <For each={parts()}>
          {({ before, quantity }) => (
            <>
              {before}
              <button
                type="button"
                class={`mark ${props.findingOf(quantity).replace(' ', '-')}`}
                aria-expanded={open() === quantity.start}
                onClick={() => setOpen(open() === quantity.start ? undefined : quantity.start)}
              >
                {props.text.slice(quantity.start, quantity.end)}
              </button>
              <Show when={open() === quantity.start && chosen()}>
                {(of) => <Panel {...props} quantity={of()} close={() => setOpen(undefined)} />}
              </Show>
            </>
          )}
        </For>
        {props.text.slice(props.quantities.at(-1)?.end ?? 0)}
      </div>
    </>
  );
}

function Panel(props: ScriptMarkedProps & { readonly quantity: ReadQuantity; readonly close: () => void }) {
  const figure = () => props.figureOf(props.quantity);
  const others = () => props.quantity.runnersUp.filter((other) => other !== figure()).slice(0, NEAR);
  const isProposed = () => figure() !== undefined && figure() === props.quantity.figure;
  const settle = (to: FigureId | typeof NOT_OURS) => {
    props.settle(props.quantity, to);
    props.close();
  };
  return (
    <span class="taken" role="group" aria-label={`What ${props.quantity.text} is taken for`}>
      <span class="taken-for">
        <b>{figure() ? labelOf(figure()!) : 'No figure of the house'}</b>
        <Show when={isProposed()}> ({sureness(props.quantity.confidence)})</Show>:{' '}
        {props.tellOf(props.quantity)}.
      </span>
      <For each={others()}>
        {(other) => (
          <button type="button" onClick={() => settle(other)}>
            {labelOf(other)}
          </button>
        )}
      </For>
      <Show when={figure()}>
        <button type="button" onClick={() => settle(NOT_OURS)}>
          Not ours
        </button>
      </Show>
      <label>
        Something else{' '}
        <select autocomplete="off" onChange={(event) => settle(event.currentTarget.value as FigureId)}>
          <option value="">Choose …</option>
          <For each={figureIds.filter((id) => id !== figure() && Object.hasOwn(talkFigures, id))}>
            {(id) => <option value={id}>{labelOf(id)}</option>}
          </For>
        </select>
      </label>
    </span>
  );
}
