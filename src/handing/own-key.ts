// The owner's key as a text that is kept: with the name that signs, and the number of the last release of each thing.
import { isData, jsonIn } from '../core/reading/data.ts';
import { entriesIn, quietly, whole } from '../core/reading/given.ts';
import { nameProblem } from '../house/name.ts';
import { signedKinds, LAST_RELEASE, type Envelope } from './envelope.ts';
import { secretKey, type SecretKey } from './signing.ts';

export const SIGNING_KEY_FORMAT = 'malt-spirit-handbook/signing-key';
const VERSION = 1;
const MOST = 500; // things whose release is remembered

export interface OwnKey {
  readonly signer: string;
  readonly key: SecretKey;
  /** The last release of each thing, by `thingOf`. */
  readonly released: Readonly<Record<string, number>>;
}

/** What tells one thing from another: its kind and its name. */
export const thingOf = ({ kind, name }: Pick<Envelope, 'kind' | 'name'>): string => `${kind}:${name}`;

/** The number of the last release of a thing; 0 when there was none. */
export const lastRelease = (released: OwnKey['released'], thing: string): number =>
  Object.hasOwn(released, thing) ? released[thing]! : 0;

/** The key as a text for this browser or for a file of the owner's. */
export const keyText = (own: OwnKey): string =>
  JSON.stringify({ format: SIGNING_KEY_FORMAT, version: VERSION, ...own }, null, 2);

const THING = new RegExp(`^(?:${Object.keys(signedKinds).join('|')}):`);

/** Reads a key, strictly; whether its halves belong together only the browser can tell. */
export function readKey(text: string): { readonly own: OwnKey } | { readonly problem: string } {
  const data = jsonIn(text);
  if (data === undefined) return { problem: 'The file of the key is damaged and cannot be read.' };
  if (!isData(data) || data['format'] !== SIGNING_KEY_FORMAT)
    return { problem: 'This is not a key of this handbook.' };
  if (data['version'] !== VERSION)
    return { problem: 'This key was saved by a newer handbook, and this one cannot read it.' };
  const { signer, key, released } = data;
  const read = quietly(secretKey, key);
  if (!read) return { problem: 'The key in the file is damaged.' };
  if (nameProblem(signer) !== undefined) return { problem: 'The file of the key does not say whose it is.' };
  const { sound } = entriesIn(released, THING, whole(1, LAST_RELEASE));
  return { own: { signer: signer as string, key: read, released: Object.fromEntries(sound.slice(0, MOST)) } };
}

/** The key, with one more release remembered. */
export const withReleased = (own: OwnKey, thing: string, release: number): OwnKey => ({
  ...own,
  released: { ...own.released, [thing]: release },
});

/** The key, with the later of two numbers for each thing. */
export const withAllReleased = (own: OwnKey, more: OwnKey['released']): OwnKey =>
  Object.entries(more).reduce(
    (all, [thing, release]) =>
      release > lastRelease(all.released, thing) ? withReleased(all, thing, release) : all,
    own,
  );
