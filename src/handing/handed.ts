// What this reader was handed: of each thing, by whose key, which release, and the text as it then was.
import { nameProblem } from '../house/name.ts';
import { LAST_RELEASE, type Signed } from './envelope.ts';
import { thingOf } from './own-key.ts';

/** One thing as it was last taken. */
export interface Taken {
  readonly key: string;
  readonly signer: string;
  readonly release: number;
  readonly text: string;
  /** The name under which the reader has it; his own houses may have had its name already. */
  readonly as: string;
}
/** All that was taken, by `thingOf`. */
export type Handed = Readonly<Record<string, Taken>>;

const MOST = 200; // things that are remembered; the oldest give way
const isWhole = (taken: unknown): taken is Taken => {
  if (typeof taken !== 'object' || taken === null) return false;
  const { key, signer, release, text, as } = taken as Partial<Record<keyof Taken, unknown>>;
  const isNumbered = Number.isInteger(release) && (release as number) >= 1 && (release as number) <= LAST_RELEASE; // prettier-ignore
  const isNamed = nameProblem(signer) === undefined && nameProblem(as) === undefined;
  return isNumbered && isNamed && typeof key === 'string' && typeof text === 'string';
};

/** Reads what was kept; what cannot be read is left out, and the list is then not whole. */
export function readHanded(text: string | null): { readonly handed: Handed; readonly isWhole: boolean } {
  try {
    const data: unknown = JSON.parse(text ?? '{}');
    if (typeof data !== 'object' || data === null || Array.isArray(data))
      return { handed: {}, isWhole: false };
    const entries = Object.entries(data);
    const sound = entries.filter((entry): entry is [string, Taken] => isWhole(entry[1]));
    return { handed: Object.fromEntries(sound), isWhole: sound.length === entries.length };
  } catch {
    return { handed: {}, isWhole: false };
  }
}

/** What was taken of this thing before. */
export const takenOf = (handed: Handed, signed: Signed): Taken | undefined =>
  Object.hasOwn(handed, thingOf(signed)) ? handed[thingOf(signed)] : undefined;

/** The list with this release as the last that was taken. */
export function withTaken(handed: Handed, signed: Signed, as: string): Handed {
  const { key, signer, release, text } = signed;
  const { [thingOf(signed)]: _, ...others } = handed;
  return Object.fromEntries([
    ...Object.entries(others).slice(1 - MOST),
    [thingOf(signed), { key, signer, release, text, as }],
  ]);
}

/** The list with the signer and the key of this release in the place of the one before; what was taken stays as it is. */
export function withKey(handed: Handed, signed: Signed): Handed {
  const before = takenOf(handed, signed);
  const { key, signer } = signed;
  return before ? { ...handed, [thingOf(signed)]: { ...before, key, signer } } : handed;
}
