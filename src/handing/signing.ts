// Keys, signatures and fingerprints by the browser's own Web Crypto: ECDSA on P-256 with SHA-256 (FIPS 186-5), which every browser of today has.
import { oneOf, record, written } from '../core/reading/given.ts';
import { fromBase64url, toBase64url } from '../house/base64url.ts';
import { canonicalText, type Release, type Signed } from './envelope.ts';

const CURVE = { name: 'ECDSA', namedCurve: 'P-256' } as const;
const SIGNING = { name: 'ECDSA', hash: 'SHA-256' } as const;
const GROUPS = 6; // of four digits each: 80 bits, more than anyone can search for a key that reads the same

/** A key pair as JSON Web Key (RFC 7517): x and y are public, d is the secret. */
export type SecretKey = Readonly<Record<'kty' | 'crv' | 'x' | 'y' | 'd', string>>;

const half = written(/^[\w-]{43}$/); // 32 bytes in base64url
/** A secret key as a file has it. */
export const secretKey = record({ kty: oneOf(['EC']), crv: oneOf(['P-256']), x: half, y: half, d: half });

/** False where the page came by an address that browsers do not trust with keys, such as plain http from another machine. */
export const canSign = (): boolean => globalThis.crypto?.subtle !== undefined;

const bytesOf = (release: Release) => new TextEncoder().encode(canonicalText(release));

/** Makes a key pair. */
export async function makeKey(): Promise<SecretKey> {
  const { privateKey } = await crypto.subtle.generateKey(CURVE, true, ['sign', 'verify']);
  const { x, y, d } = await crypto.subtle.exportKey('jwk', privateKey);
  return { kty: 'EC', crv: 'P-256', x: x!, y: y!, d: d! };
}

/** The public part of a key as a signed file carries it. */
export const publicOf = ({ x, y }: SecretKey): string =>
  toBase64url(Uint8Array.from([4, ...fromBase64url(x)!, ...fromBase64url(y)!]));

/** True when a key signs, and what it signs is by the public key beside it. */
export async function isKeySound(key: SecretKey): Promise<boolean> {
  try {
    const trial = { kind: 'house', name: 'trial', release: 1, date: '', signer: '', text: '' } as const;
    return await signatureFits(await signedRelease(trial, key));
  } catch {
    return false;
  }
}

/** Signs a release. */
export async function signedRelease(release: Omit<Release, 'key'>, key: SecretKey): Promise<Signed> {
  const secret = await crypto.subtle.importKey('jwk', { ...key }, CURVE, false, ['sign']);
  const whole: Release = { ...release, key: publicOf(key) };
  const signature = await crypto.subtle.sign(SIGNING, secret, bytesOf(whole));
  return { ...whole, signature: toBase64url(new Uint8Array(signature)) };
}

/** The bytes of a text that is written as it is here and in no other way; none otherwise. */
function exactly(text: string): Uint8Array<ArrayBuffer> {
  const bytes = fromBase64url(text);
  return bytes && toBase64url(bytes) === text ? bytes : new Uint8Array();
}

/** True when the release is as the holder of the key in it left it. */
export async function signatureFits(release: Signed): Promise<boolean> {
  try {
    const key = await crypto.subtle.importKey('raw', exactly(release.key), CURVE, false, ['verify']);
    return await crypto.subtle.verify(SIGNING, key, exactly(release.signature), bytesOf(release));
  } catch {
    return false; // no point of the curve
  }
}

/** A public key in groups of digits, to be compared aloud: the first 16 bytes of its SHA-256 hash, in tens. */
export async function keyFingerprint(key: string): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', fromBase64url(key)!));
  const number = hash.slice(0, 16).reduce((sum, byte) => sum * 256n + BigInt(byte), 0n);
  const digits = String(number % 10n ** BigInt(4 * GROUPS)).padStart(4 * GROUPS, '0');
  return digits.match(/\d{4}/g)!.join(' ');
}
