// What is handed on under a signature: a text of some kind with its name, release and signer, as the text of a file.
// A signature says that a file is as the holder of the key left it, and no page may say more. Of a newer release only what a person gave counts as changed.
// Links that were sent are read for ever: tests/handing/promised-links.json.
import { isData, jsonIn } from '../core/reading/data.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { nameProblem } from '../house/name.ts';

export const SIGNED_FORMAT = 'malt-spirit-handbook/signed';
export const SIGNED_VERSION = 1;
export const BIGGEST_FILE = 2_000_000; // bytes of a signed file that is still read; a house with its cask register needs about 800,000
export const LAST_RELEASE = 9999;

/** Kinds of text that are handed on, and what a reader calls each. Another is a row more. */
export const signedKinds = { house: 'house', sheet: 'sheet of exercises' } as const;
export type Kind = keyof typeof signedKinds;

export interface Envelope {
  readonly kind: Kind;
  readonly name: string;
  /** The house as `encodeHouse` writes it, or a sheet's link. */
  readonly text: string;
}

/** What a signature covers: all that the file says. */
export interface Release extends Envelope {
  /** 1, 2, 3 …, each greater than the one before of the same kind and name. */
  readonly release: number;
  /** The day as the signer's machine had it: 2026-05-14. */
  readonly date: string;
  readonly signer: string;
  /** The signer's public key: a point of the curve P-256, uncompressed, in base64url. */
  readonly key: string;
}
export interface Signed extends Release {
  /** Over `canonicalText`, ECDSA with SHA-256, in base64url. */
  readonly signature: string;
}

/** The one text of a release that is signed: the same whatever a file's spaces and order. */
export const canonicalText = ({ kind, name, release, date, signer, key, text }: Release): string =>
  JSON.stringify([SIGNED_FORMAT, SIGNED_VERSION, kind, name, release, date, signer, key, text]);

/** A signed release as the text of a file. */
export const fileText = (signed: Signed): string =>
  JSON.stringify({ format: SIGNED_FORMAT, version: SIGNED_VERSION, ...signed }, null, 2);

export type FileReading = { readonly signed: Signed } | { readonly problem: string };

const KEY = /^[\w-]{87}$/; // 65 bytes in base64url
const SIGNATURE = /^[\w-]{86}$/; // 64 bytes
const DAY = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/;
const isRelease = (value: unknown): value is number =>
  Number.isInteger(value) && (value as number) >= 1 && (value as number) <= LAST_RELEASE;

/** True when a text says that it is of a format, whatever else is wrong with it. */
export const saysFormat = (text: string, format: string): boolean =>
  new RegExp(`"format"\\s*:\\s*"${format}"`).test(text);

/** Reads a signed file, strictly: all of it or a sentence. Whether the signature fits is another question. */
export function readSigned(text: string): FileReading {
  const data = jsonIn(text);
  if (data === undefined) return { problem: 'The signed file is damaged and cannot be read.' };
  if (!isData(data)) return { problem: 'This is not a signed file of this handbook.' };
  const { format, version, kind, name, release, date, signer, key, signature, text: carried } = data; // prettier-ignore
  if (format !== SIGNED_FORMAT) return { problem: 'This is not a signed file of this handbook.' };
  if (version !== SIGNED_VERSION)
    return {
      problem: `The signed file is of version ${quotedGiven(version)}; this handbook reads version ${SIGNED_VERSION}.`,
    };
  if (typeof kind !== 'string' || !Object.hasOwn(signedKinds, kind))
    return {
      problem: `The signed file holds a thing of the kind “${quotedGiven(kind)}”, which this handbook does not know.`,
    };
  const unnamed = nameProblem(name);
  if (unnamed !== undefined) return { problem: `The signed file has no name that can be used. ${unnamed}` };
  if (nameProblem(signer) !== undefined) return { problem: 'The signed file does not say who signed it.' };
  if (!isRelease(release))
    return {
      problem: `The signed file gives “${quotedGiven(release)}” as its release; a release is a whole number from 1 to ${LAST_RELEASE}.`,
    };
  if (typeof date !== 'string' || !DAY.test(date))
    return { problem: `The signed file gives “${quotedGiven(date)}” as its day; a day reads 2026-05-14.` };
  if (typeof key !== 'string' || !KEY.test(key))
    return { problem: 'The key in the signed file is damaged, so the signature cannot be checked.' };
  if (typeof signature !== 'string' || !SIGNATURE.test(signature))
    return { problem: 'The signature in the file is damaged, so it cannot be checked.' };
  if (typeof carried !== 'string') return { problem: 'The signed file is empty: there is no text in it.' };
  return {
    signed: { kind: kind as Kind, name: name as string, release, date, signer: signer as string, key, text: carried, signature }, // prettier-ignore
  };
}
