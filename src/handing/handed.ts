// What this reader was handed: of each thing, by whose key, which release, and the text as it then was.
import { isData, jsonIn } from '../core/reading/data.ts';
import { entriesIn, only, record, text, whole } from '../core/reading/given.ts';
import { nameProblem } from '../house/name.ts';
import { LAST_RELEASE, type Signed } from './envelope.ts';
import { thingOf } from './own-key.ts';

/** One thing as it was last taken. */
export interface TakenFile {
  readonly key: string;
  readonly signer: string;
  readonly release: number;
  readonly text: string;
  /** The name under which the reader has it; his own houses may have had its name already. */
  readonly as: string;
}
/** All that was taken, by `thingOf`. */
export type HandedThings = Readonly<Record<string, TakenFile>>;

const MOST = 200; // things that are remembered; the oldest give way
const name = only<string>((given) => nameProblem(given) === undefined, 'it can be a name.');
const anyText = text(Infinity);
const taken = record({
  key: anyText,
  signer: name,
  release: whole(1, LAST_RELEASE),
  text: anyText,
  as: name,
});

/** Reads what was kept; what cannot be read is left out, and the list is then not whole. */
export function readHanded(kept: string | null): {
  readonly handed: HandedThings;
  readonly isWhole: boolean;
} {
  const data = jsonIn(kept ?? '{}');
  const { sound, lost } = entriesIn(data, /^/, taken);
  return { handed: Object.fromEntries(sound), isWhole: isData(data) && lost === 0 };
}

/** What was taken of this thing before. */
export const takenOf = (handed: HandedThings, signed: Signed): TakenFile | undefined =>
  Object.hasOwn(handed, thingOf(signed)) ? handed[thingOf(signed)] : undefined;

/** The list with this release as the last that was taken. */
export function withTaken(handed: HandedThings, signed: Signed, as: string): HandedThings {
  const { key, signer, release, text } = signed;
  const { [thingOf(signed)]: _, ...others } = handed;
  return Object.fromEntries([
    ...Object.entries(others).slice(1 - MOST),
    [thingOf(signed), { key, signer, release, text, as }],
  ]);
}

/** The list with the signer and the key of this release in the place of the one before; what was taken stays as it is. */
export function withKey(handed: HandedThings, signed: Signed): HandedThings {
  const before = takenOf(handed, signed);
  const { key, signer } = signed;
  return before ? { ...handed, [thingOf(signed)]: { ...before, key, signer } } : handed;
}
