// What the tabs of one browser tell each other of the reader's own house, through a key of storage.
import { keepText, keptText, storageKey } from './browser-store.ts';
import { decodeHouse, encodeHouse, type WholeHouse } from '../house/codec.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import {
  announceChange,
  hearChange,
  ALL_FIGURES,
  latestStamp,
  type TabChange,
  type HeardChange,
  type HeldHouse,
} from '../house/join-tabs.ts';

const CHANGE = storageKey('house-change'); // [from, to, number] of the last change in this browser
const AHEAD = 86_400_000; // ms: a number further ahead of the clock, and of all numbers known here, is none of the handbook’s

let told: WholeHouse = { name: builtInName, house: builtInHouse, parts: {} }; // the reader's own house, as all tabs know it
let stamps: HeldHouse['stamps'] = {};

/** A change as a tab wrote it, strictly: nothing when a part of it cannot be read in full. */
function readChange(text: string): (TabChange & { readonly text: string }) | undefined {
  let parts: unknown;
  try {
    parts = JSON.parse(text);
  } catch {
    return undefined; // another program's text
  }
  if (!Array.isArray(parts) || parts.length !== 3) return undefined;
  const [before, after, stamp] = parts as readonly unknown[];
  const isSound =
    typeof stamp === 'number' && stamp > 0 && stamp <= Math.max(Date.now(), latestStamp(stamps)) + AHEAD;
  if (typeof before !== 'string' || typeof after !== 'string' || !isSound) return undefined;
  const [from, to] = [decodeHouse(before), decodeHouse(after)];
  const isWhole = [from, to].every(({ isHouse, problems }) => isHouse && problems.length === 0);
  return isWhole ? { from, to, stamp, text: after } : undefined;
}
const lastStamp = () => readChange(keptText(CHANGE) ?? '')?.stamp ?? 0;

/** Begins with the house that was read from storage: all that it keeps is as old as the last change. */
export function beginWith(own: WholeHouse): void {
  told = own;
  stamps = { [ALL_FIGURES]: lastStamp() };
}

/** Tells the other tabs from what to what this one has changed the house. */
export function tellOtherTabs(here: WholeHouse): void {
  if (encodeHouse(here) === encodeHouse(told)) return;
  const { held, change } = announceChange({ here, told, stamps }, Math.random(), Date.now());
  ({ told, stamps } = held);
  keepText(CHANGE, JSON.stringify([encodeHouse(change.from), encodeHouse(change.to), change.stamp]));
}

/** The house of this tab after a change in another, and the one that had to give way; `here` is nothing while another house is visited. */
function joined(change: TabChange, here: WholeHouse | undefined): HeardChange {
  const heard = hearChange({ here: here ?? told, told, stamps }, change);
  ({ told, stamps } = heard);
  return heard;
}

/** Calls back with the text that another tab wrote, and with how it is put together with the house that this tab shows; or with nothing when what it told cannot be read. */
export function onOtherTabs(call: (text?: string, join?: (here?: WholeHouse) => HeardChange) => void): void {
  addEventListener('storage', ({ key, newValue }) => {
    if (key !== CHANGE || newValue === null) return;
    const change = readChange(newValue);
    if (change) call(change.text, (here) => joined(change, here));
    else call();
  });
}

/** How a house that other tabs wrote while this page was away is put together with the one that it shows. */
export const joinMissed = (to: WholeHouse, here: WholeHouse | undefined): HeardChange =>
  joined({ from: told, to, stamp: lastStamp() }, here);
