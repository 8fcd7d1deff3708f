// Whether another version of a sheet was handed in in this browser, as on a phone that goes from hand to hand.
import { keptText } from '../browser/browser-store.ts';

export interface HandedIn {
  readonly version: number;
  readonly name: string;
}
const MOST = 99; // versions of any sheet

/** The other version that was handed in here, where this one was not begun: nothing is asked of whoever goes on with their own. */
export function handedInHere(keyAt: (version: number) => string, version: number): HandedIn | undefined {
  if (keptText(keyAt(version)) !== null) return undefined;
  for (let other = 1; other <= MOST; other++) {
    const text = other === version ? null : keptText(keyAt(other));
    if (text === null) continue;
    try {
      const { name, handedIn } = Object(JSON.parse(text)) as Readonly<Record<string, unknown>>;
      if (handedIn === true || Number(handedIn) > 0) return { version: other, name: typeof name === 'string' ? name.trim() : '' }; // prettier-ignore
    } catch {
      // What cannot be read is told of when that version is opened.
    }
  }
  return undefined;
}
