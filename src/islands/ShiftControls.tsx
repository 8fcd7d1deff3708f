// What a stillman turns: steam, water, spout and valves; and what he asks of the safe. Each has a key.
import { For, type JSX } from 'solid-js';
import { isMark, valves, type Action, type Valve } from '../core/shift/act.ts';
import type { ShiftState } from '../core/shift/state.ts';

const keyOfValve: Readonly<Record<Valve, string>> = { charging: 'c', air: 'a', manhole: 'm' };
const nameOfValve: Readonly<Record<Valve, string>> = { charging: 'charging', air: 'air', manhole: 'manhole' };
const isOpen = (state: ShiftState, valve: Valve) =>
  ({ charging: state.isChargingOpen, air: state.isAirOpen, manhole: state.isManholeOpen })[valve];

/** What a key asks of the still as it stands, or nothing. */
export function actionOfKey(key: string, state: ShiftState): Action | undefined {
  const mark = (what: 'steam' | 'water', by: number): Action | undefined => isMark(state[what] + by) ? { do: what, to: state[what] + by } : undefined; // prettier-ignore
  const valve = valves.find((each) => keyOfValve[each] === key);
  if (valve) return { do: valve, open: !isOpen(state, valve) };
  switch (key) {
    case 'e':
      return mark('steam', 1);
    case 'd':
      return mark('steam', -1);
    case 'r':
      return mark('water', 1);
    case 'f':
      return mark('water', -1);
    case 't':
      return { do: 'spout', to: state.spout === 'spirit' ? 'feints' : 'spirit' };
    case 'z':
      return { do: 'haze' };
    case 'n':
      return state.isAsked ? { do: 'refuse' } : undefined;
    case 'o':
      return { do: 'discharge' };
    default:
      return undefined;
  }
}

export function ShiftControls(props: {
  readonly state: ShiftState;
  readonly does: (action: Action) => void;
  readonly read: () => void;
}) {
  const Key = (own: { readonly of: string; readonly children: JSX.Element; readonly label?: string; readonly class?: string; readonly disabled?: boolean }) => (
    <button type="button" class={own.class ?? ''} aria-keyshortcuts={own.of} aria-disabled={own.disabled ? 'true' : undefined} onClick={() => { const action = actionOfKey(own.of, props.state); if (action) props.does(action); }}>
      <span aria-hidden={own.label ? 'true' : undefined}>{own.children}</span> {own.label && <span class="visually-hidden">{own.label}</span>} <kbd aria-hidden="true">{own.of}</kbd>
    </button>
  ); // prettier-ignore
  const Mark = (own: { readonly name: string; readonly of: 'steam' | 'water'; readonly up: string; readonly down: string }) => (
    <div class="turned" role="group" aria-label={`${own.name}, ${props.state[own.of]} of 10`}>
      <span>{own.name}</span>
      <Key of={own.down} label={`${own.name} down`}>−</Key>
      <output>{props.state[own.of]}</output>
      <Key of={own.up} label={`${own.name} up`}>+</Key>
    </div>
  ); // prettier-ignore
  return (
    <div class="shift-controls">
      <div class="turns">
        <Mark name="Steam" of="steam" up="e" down="d" />
        <Mark name="Water" of="water" up="r" down="f" />
      </div>
      <div class="keys three">
        <Key of="t" class="turn">
          {props.state.spout === 'spirit' ? 'Spout to feints' : 'Spout to spirit'}
        </Key>
        <button type="button" aria-keyshortcuts="h" onClick={() => props.read()}>
          Hydrometer <kbd aria-hidden="true">h</kbd>
        </button>
        <Key of="z">Haze test</Key>
      </div>
      <div class="keys five">
        <For each={valves}>
          {(valve) => (
            <Key of={keyOfValve[valve]}>
              <span>
                {isOpen(props.state, valve) ? 'Shut' : 'Open'}
                <br />
                {nameOfValve[valve]}
              </span>
            </Key>
          )}
        </For>
        <Key of="o">
          <span>
            Run off
            <br />
            lees
          </span>
        </Key>
        <Key of="n" disabled={!props.state.isAsked}>
          <span>
            Say no
            <br />
            to it
          </span>
        </Key>
      </div>
    </div>
  );
}
