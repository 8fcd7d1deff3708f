// Sealing to a trainer's public key, which only the key file opens: ECDH on P-256 (SP 800-56A), HKDF with SHA-256 (RFC 5869), AES-GCM of 256 bits (SP 800-38D), all by the browser's own Web Crypto.
import { isData, jsonIn, ownValue } from '../core/reading/data.ts';
import { quietly } from '../core/reading/given.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import { fromBase64url, toBase64url } from '../house/base64url.ts';
import { publicOf, secretKey, type SecretKey } from './signing.ts';

const CURVE = { name: 'ECDH', namedCurve: 'P-256' } as const;
const POINT = 65; // bytes of a public key: a point of the curve, uncompressed
const IV = 12; // bytes that AES-GCM begins with
const TAG = 16; // bytes by which it knows that nothing was changed
const PURPOSE = 'malt-spirit-handbook/seal 1'; // so that a key made here serves nothing else
export const SEAL_KEY_FORMAT = 'malt-spirit-handbook/seal-key';
const KEY_VERSION = 1; // raised when the text changes its meaning; the old one is read ever after
export const PUBLIC_KEY = /^[\w-]{87}$/;

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** Makes a trainer's key. */
export async function makeSealKey(): Promise<SecretKey> {
  const { privateKey } = (await crypto.subtle.generateKey(CURVE, true, ['deriveBits'])) as CryptoKeyPair;
  const { x, y, d } = await crypto.subtle.exportKey('jwk', privateKey);
  return { kty: 'EC', crv: 'P-256', x: x!, y: y!, d: d! };
}

/** The one key of a seal, from the secret that two keys share; it hangs on both public keys, so none of them can be swapped. */
async function sealKeyOf(mine: CryptoKey, theirs: CryptoKey, ephemeral: Uint8Array, to: Uint8Array): Promise<CryptoKey> {
  const shared = await crypto.subtle.deriveBits({ name: 'ECDH', public: theirs }, mine, 256);
  const from = await crypto.subtle.importKey('raw', shared, 'HKDF', false, ['deriveKey']);
  const info = Uint8Array.from([...bytesOf(PURPOSE), ...ephemeral, ...to]);
  return crypto.subtle.deriveKey({ name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info }, from, { name: 'AES-GCM', length: 256 }, false, ['encrypt', 'decrypt']);
} // prettier-ignore

/**
 * Seals bytes to a public key: a fresh key's point, what the cipher begins with, the cipher. What the seal is `about` is not secret, but
 * a seal that is shown as about anything else does not open. Throws where the key is no point of the curve.
 */
export async function sealedTo(to: string, about: string, bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const point = fromBase64url(to) ?? new Uint8Array();
  const theirs = await crypto.subtle.importKey('raw', point, CURVE, false, []);
  const fresh = (await crypto.subtle.generateKey(CURVE, false, ['deriveBits'])) as CryptoKeyPair;
  const ephemeral = new Uint8Array(await crypto.subtle.exportKey('raw', fresh.publicKey));
  const iv = crypto.getRandomValues(new Uint8Array(IV));
  const key = await sealKeyOf(fresh.privateKey, theirs, ephemeral, point);
  const cipher = await crypto.subtle.encrypt({ name: 'AES-GCM', iv, additionalData: bytesOf(about) }, key, bytes);
  return Uint8Array.from([...ephemeral, ...iv, ...new Uint8Array(cipher)]);
} // prettier-ignore

/** What a seal holds; undefined where it was made for another key, is about something else, or was changed by a bit. */
export async function unsealed(key: SecretKey, about: string, seal: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer> | undefined> {
  if (seal.length < POINT + IV + TAG) return undefined;
  try {
    const [ephemeral, iv, cipher] = [seal.slice(0, POINT), seal.slice(POINT, POINT + IV), seal.slice(POINT + IV)];
    const mine = await crypto.subtle.importKey('jwk', { ...key }, CURVE, false, ['deriveBits']);
    const theirs = await crypto.subtle.importKey('raw', ephemeral, CURVE, false, []);
    const opener = await sealKeyOf(mine, theirs, ephemeral, fromBase64url(publicOf(key))!);
    return new Uint8Array(await crypto.subtle.decrypt({ name: 'AES-GCM', iv, additionalData: bytesOf(about) }, opener, cipher));
  } catch {
    return undefined;
  }
} // prettier-ignore

/** True when a key opens what is sealed to it. */
export async function isSealKeySound(key: SecretKey): Promise<boolean> {
  try {
    const trial = bytesOf('trial');
    const back = await unsealed(key, '', await sealedTo(publicOf(key), '', trial));
    return back !== undefined && String(back) === String(trial);
  } catch {
    return false;
  }
}

/** A short code of a text by which two can be held together: the first 12 bytes of its SHA-256 hash. */
export async function digestOf(text: string): Promise<string> {
  return toBase64url(new Uint8Array(await crypto.subtle.digest('SHA-256', bytesOf(text))).slice(0, 12));
}

/** The text of a key's file. */
export const sealKeyText = (key: SecretKey): string =>
  JSON.stringify({ format: SEAL_KEY_FORMAT, version: KEY_VERSION, key }, undefined, 1);

/** Reads a key's file; a sentence when it is none. */
export function readSealKey(text: string): SecretKey | string {
  const damaged = 'This is no key of sealed sheets, or it is damaged.';
  const given = jsonIn(text);
  if (!isData(given) || given['format'] !== SEAL_KEY_FORMAT) return damaged;
  if (given['version'] !== KEY_VERSION)
    return `The key is of version ${quotedGiven(given['version'])}; this handbook reads version ${KEY_VERSION}.`;
  return quietly<SecretKey>(secretKey, ownValue(given, 'key')) ?? damaged;
}
