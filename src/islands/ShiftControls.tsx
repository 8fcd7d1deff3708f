// What is turned and pressed in a shift, in rows; each has its key.
import { Index, Show } from 'solid-js';
import type { Control } from './shift-post.ts';

type Turn = Extract<Control, { turn: string }>;
type Press = Extract<Control, { key: string }>;

/** True where a figure that is turned is too long to stand beside its name on a phone. */
const isLong = (row: readonly Control[]) => row.some((each) => 'turn' in each && each.shows.length > 2);

export function ShiftControls(props: {
  readonly rows: readonly (readonly Control[])[];
  readonly press: (key: string) => void;
}) {
  const Mark = (own: { readonly of: Turn }) => (
    <div class="turned" classList={{ far: !!own.of.far }} role="group" aria-label={own.of.says}>
      <span>{own.of.turn}</span>
      <Show when={own.of.far}>
        {(far) => (
          <button type="button" aria-keyshortcuts={far().down} onClick={() => props.press(far().down)}>
            <span aria-hidden="true">−{far().by}</span>
            <span class="visually-hidden">
              {own.of.turn} down by {far().by}
            </span>{' '}
            <kbd aria-hidden="true">{far().down}</kbd>
          </button>
        )}
      </Show>
      <button type="button" aria-keyshortcuts={own.of.down} onClick={() => props.press(own.of.down)}>
        <span aria-hidden="true">−</span>
        <span class="visually-hidden">{own.of.turn} down</span> <kbd aria-hidden="true">{own.of.down}</kbd>
      </button>
      <output>{own.of.shows}</output>
      <button type="button" aria-keyshortcuts={own.of.up} onClick={() => props.press(own.of.up)}>
        <span aria-hidden="true">+</span>
        <span class="visually-hidden">{own.of.turn} up</span> <kbd aria-hidden="true">{own.of.up}</kbd>
      </button>
      <Show when={own.of.far}>
        {(far) => (
          <button type="button" aria-keyshortcuts={far().up} onClick={() => props.press(far().up)}>
            <span aria-hidden="true">+{far().by}</span>
            <span class="visually-hidden">
              {own.of.turn} up by {far().by}
            </span>{' '}
            <kbd aria-hidden="true">{far().up}</kbd>
          </button>
        )}
      </Show>
    </div>
  );
  const Key = (own: { readonly of: Press }) => (
    <button
      type="button"
      class={own.of.isMain ? 'turn' : ''}
      aria-keyshortcuts={own.of.key}
      aria-disabled={own.of.isOff ? 'true' : undefined}
      onClick={() => props.press(own.of.key)}
    >
      <span>
        {own.of.label[0]}
        <Show when={own.of.label[1]}>
          <br />
          {own.of.label[1]}
        </Show>
      </span>{' '}
      <kbd aria-hidden="true">{own.of.key}</kbd>
    </button>
  );
  return (
    <div class="shift-controls">
      <Index each={props.rows}>
        {(row) => (
          <div
            class={
              'turn' in row()[0]!
                ? `turns${isLong(row()) ? ' long' : ''}`
                : `keys ${row().length > 3 ? 'five' : 'three'}`
            }
            style={row().length === 4 ? { 'grid-template-columns': 'repeat(4, 1fr)' } : {}}
          >
            <Index each={row()}>
              {(control) => (
                <Show when={'turn' in control()} fallback={<Key of={control() as Press} />}>
                  <Mark of={control() as Turn} />
                </Show>
              )}
            </Index>
          </div>
        )}
      </Index>
    </div>
  );
}
