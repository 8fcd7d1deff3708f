// The trainer's key of sealed sheets, and the seals of the sheets that were sealed with it, as this browser keeps them.
import { jsonIn } from '../core/reading/data.ts';
import { quietly, record, text, written } from '../core/reading/given.ts';
import { readSealKey, sealKeyText } from '../handing/sealing.ts';
import type { SecretKey } from '../handing/signing.ts';
import { keepAside, keepText, keptText, storageKey } from '../browser/browser-store.ts';

const KEY = storageKey('seal-key');
const SEALS = storageKey('seals');
const LONGEST = 2_000_000; // characters of all seals together; the oldest go first

/** The key that is kept here; a sentence where it cannot be read. */
export function keptSealKey(): SecretKey | string | undefined {
  const text = keptText(KEY);
  return text === null ? undefined : readSealKey(text);
}
/** Whether it is the key that is kept here. */
export const isKeptKey = (key: SecretKey): boolean => {
  const kept = keptSealKey();
  return typeof kept === 'object' && sealKeyText(kept) === sealKeyText(key);
};
/** Keeps a key; another that was kept before it is set aside, as answers may still come that only it opens. */
export function keepSealKey(key: SecretKey): boolean {
  const [before, text] = [keptText(KEY), sealKeyText(key)];
  if (before !== null && before !== text && !keepAside(`${KEY}-kept-aside`, before)) return false;
  return keepText(KEY, text);
}

export interface Seal {
  readonly id: string;
  readonly title: string;
  readonly day: string;
  readonly seal: string;
  /** The whole sealed sheet, by which its links are made again; those kept by older books have none. */
  readonly text?: string;
}
const seal = record(
  {
    id: written(/^[0-9a-z]{12}$/),
    title: text(80),
    day: text(Infinity),
    seal: written(/^[\w-]{100,400000}$/),
  },
  { text: text(Infinity) },
);

/** The seals kept here, the latest first. */
export function keptSeals(): readonly Seal[] {
  const given = jsonIn(keptText(SEALS) ?? '[]');
  const all = Array.isArray(given) ? given.map((each) => quietly<Seal>(seal, each)) : [];
  return all.filter((each) => each !== undefined);
}
/** Keeps one more; false when the browser does not let it. */
export function keepSeal(one: Seal): boolean {
  const all = [one, ...keptSeals().filter(({ id }) => id !== one.id)];
  while (all.length > 1 && JSON.stringify(all).length > LONGEST) all.pop();
  return keepText(SEALS, JSON.stringify(all));
}
