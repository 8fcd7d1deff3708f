// What the tabs of one browser tell each other of the reader's own house, through a key of storage.
import { keepText, keptText } from './browser-store.ts';
import { decode, encode, type NamedHouse } from './codec.ts';
import { builtInHouse, builtInName, figureNames } from './figures.ts';
import { announce, hear, type Heard, type Held } from './join.ts';

const CHANGE = 'malt-spirit-handbook/house-change'; // [from, to, number] of the last change in this browser

let told: NamedHouse = { name: builtInName, house: builtInHouse }; // the reader's own house, as all tabs know it
let stamps: Held['stamps'] = {};

/** A change as a tab wrote it; nothing when there is none or it cannot be read. */
function readChange(text: string | null): readonly [from: string, to: string, stamp: number] | undefined {
  try {
    const [from, to, stamp] = JSON.parse(text ?? '') as readonly unknown[];
    if (typeof from === 'string' && typeof to === 'string' && Number.isFinite(stamp))
      return [from, to, stamp as number];
  } catch {
    // Another program's text.
  }
  return undefined;
}
const lastStamp = () => readChange(keptText(CHANGE))?.[2] ?? 0;

/** Begins with the house that was read from storage: all its figures are as old as the last change. */
export function beginWith(own: NamedHouse): void {
  told = own;
  stamps = Object.fromEntries([...figureNames, 'name'].map((each) => [each, lastStamp()]));
}

/** Tells the other tabs from what to what this one has changed the house. */
export function tellOtherTabs(here: NamedHouse): void {
  if (encode(here) === encode(told)) return;
  const { held, change } = announce({ here, told, stamps }, Math.random());
  ({ told, stamps } = held);
  keepText(CHANGE, JSON.stringify([encode(change.from), encode(change.to), change.stamp]));
}

/** The house of this tab after a change in another, and the one that had to give way; `here` is nothing while another house is visited. */
function joined(from: NamedHouse, to: NamedHouse, stamp: number, here: NamedHouse | undefined): Heard {
  const heard = hear({ here: here ?? told, told, stamps }, { from, to, stamp });
  ({ told, stamps } = heard);
  return heard;
}

/** Calls back with the text that another tab wrote, and with how it is put together with the house that this tab shows. */
export function onOtherTabs(call: (text: string, join: (here?: NamedHouse) => Heard) => void): void {
  addEventListener('storage', ({ key, newValue }) => {
    const change = key === CHANGE ? readChange(newValue) : undefined;
    if (!change) return;
    const [from, text, stamp] = change;
    call(text, (here) => joined(decode(from), decode(text), stamp, here));
  });
}

/** How a text that other tabs wrote while this page was away is put together with the house that it shows. */
export const joinMissed = (text: string, here: NamedHouse | undefined): Heard =>
  joined(told, decode(text), lastStamp(), here);
