// Signatures against another implementation of the same standards (Node's crypto), and every change of a signed file.
import {
  createHash,
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  sign,
  verify,
} from 'node:crypto';
import { expect, test } from 'vitest';
import {
  canonicalText,
  fileText,
  readSigned,
  type Release,
  type Signed,
} from '../../src/handing/envelope.ts';
import { openFile } from '../../src/handing/open-file.ts';
import { keyText, readKey, withAllReleased, type OwnKey } from '../../src/handing/own-key.ts';
import {
  keyFingerprint,
  signatureFits,
  isKeySound,
  makeKey,
  publicOf,
  signedRelease,
  type SecretKey,
} from '../../src/handing/signing.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { brokenReleases, injections, nested, prototypeKeys, signedText } from '../hostile-texts.ts';

const text = encodeHouse({ name: 'Sallowby', house: builtInHouse });
const release: Omit<Release, 'key'> = { kind: 'house', name: 'Sallowby', release: 3, date: '2026-05-14', signer: 'Ann “of” Sallowby', text }; // prettier-ignore

test('what is signed here is verified by another implementation, and what that signs is verified here', async () => {
  const key = await makeKey();
  const ours = await signedRelease(release, key);
  const jwk = { kty: key.kty, crv: key.crv, x: key.x, y: key.y };
  const theirs = createPublicKey({ key: jwk, format: 'jwk' });
  const message = Buffer.from(canonicalText(ours));
  const options = { key: theirs, dsaEncoding: 'ieee-p1363' } as const; // r and s side by side, as Web Crypto has them
  expect(verify('sha256', message, options, Buffer.from(ours.signature, 'base64url'))).toBe(true);
  expect(verify('sha256', Buffer.from(`${canonicalText(ours)} `), options, Buffer.from(ours.signature, 'base64url'))).toBe(false); // prettier-ignore

  const pair = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const secret = pair.privateKey.export({ format: 'jwk' }) as unknown as SecretKey;
  const whole: Release = { ...release, key: publicOf(secret) };
  const signature = sign('sha256', Buffer.from(canonicalText(whole)), { key: createPrivateKey(pair.privateKey.export({ type: 'pkcs8', format: 'pem' })), dsaEncoding: 'ieee-p1363' }); // prettier-ignore
  expect(await signatureFits({ ...whole, signature: signature.toString('base64url') })).toBe(true);
  expect(await signatureFits({ ...ours, key: whole.key })).toBe(false);
});

test('the fingerprint is the hash of the key in groups of digits, reckoned another way', async () => {
  const key = publicOf(await makeKey());
  const hash = createHash('sha256').update(Buffer.from(key, 'base64url')).digest('hex').slice(0, 32);
  const digits = (BigInt(`0x${hash}`) % 10n ** 24n).toString().padStart(24, '0');
  expect(await keyFingerprint(key)).toBe(digits.replace(/\d{4}(?=\d)/g, '$& '));
  expect(await keyFingerprint(publicOf(await makeKey()))).not.toBe(await keyFingerprint(key));
});

test('a file changed by one character, anywhere, is refused', async () => {
  const file = fileText(await signedRelease(release, await makeKey()));
  expect(await openFile(file)).toMatchObject({ signed: release });
  for (let at = 0; at < file.length; at += 1) {
    if (/\s/.test(file[at]!) && !/[^\s"]/.test(file[at - 1]! + file[at + 1]!)) continue; // a space between two parts says nothing
    const changed = file.slice(0, at) + (file[at] === 'b' ? 'c' : 'b') + file.slice(at + 1);
    const what = await openFile(changed);
    expect('signed' in what, `${at}: ${changed.slice(at - 9, at + 9)}`).toBe(false);
  }
  const other = JSON.parse(file) as Signed;
  expect(await openFile(JSON.stringify({ ...other, release: 4 }))).toEqual({
    problem: 'The signature does not fit: this file was changed after it was signed.',
  });
}, 60_000);

test('spaces and the order of a file do not matter', async () => {
  const file = await signedRelease(release, await makeKey());
  const turned = Object.fromEntries(Object.entries(JSON.parse(fileText(file)) as object).reverse());
  expect(await openFile(JSON.stringify(turned, null, 1))).toMatchObject({ signed: file });
});

test.each(brokenReleases)('a signed file with %j is refused in a sentence', async (change, says) => {
  const what = await openFile(signedText(change));
  expect(what).toHaveProperty('problem');
  expect((what as { problem: string }).problem).toContain(says);
});

test('texts that mean harm are no signed file, and are shown as they are', () => {
  for (const text of [...injections, ...prototypeKeys, nested(5000), '', '[]', 'null', '{}'])
    expect(readSigned(text)).toHaveProperty('problem');
  for (const kind of injections)
    expect(readSigned(signedText({ kind }))).toMatchObject({
      problem: expect.stringContaining('of the kind “'),
    });
});

test('a signed file of a house that cannot be read, or of no sheet, is told of', async () => {
  const key = await makeKey();
  const newer = text.replace('"version":2', '"version":9');
  expect(await openFile(fileText(await signedRelease({ ...release, text: newer }, key)))).toMatchObject({
    problem: expect.stringContaining('version 9'),
  });
  expect(await openFile(fileText(await signedRelease({ ...release, kind: 'sheet', text: 'javascript:1' }, key)))).toMatchObject({ problem: expect.stringContaining('no sheet') }); // prettier-ignore
  expect(await openFile(fileText(await signedRelease({ ...release, kind: 'sheet', text: '#sheet=2.01.0.0.5.a.1.random' }, key)))).toHaveProperty('signed'); // prettier-ignore
});

test('a key goes to a file and comes back; one that is damaged does not sign', async () => {
  const own: OwnKey = { signer: 'Ann', key: await makeKey(), released: { 'house:Sallowby': 3 } };
  expect(readKey(keyText(own))).toEqual({ own });
  expect(await isKeySound(own.key)).toBe(true);
  expect(await isKeySound({ ...own.key, d: (await makeKey()).d })).toBe(false);
  expect(await isKeySound({ ...own.key, x: own.key.y })).toBe(false);
  for (const broken of [
    '',
    '{',
    '[]',
    'null',
    keyText(own).replace('P-256', 'P-384'),
    keyText(own).replace('"version": 1', '"version": 2'),
    keyText({ ...own, signer: '\u202e' }),
    keyText({ ...own, key: { ...own.key, d: 'short' } }),
  ])
    // prettier-ignore
    expect(readKey(broken)).toHaveProperty('problem');
  const odd = { ...own, released: { 'house:Sallowby': -1, __proto__: 2, 'beer:x': 1, 'house:Thornwath': 2 } };
  expect(readKey(keyText(odd as OwnKey))).toMatchObject({ own: { released: { 'house:Thornwath': 2 } } });
  expect(await openFile(keyText(own))).toMatchObject({ problem: expect.stringContaining('somebody’s key') });
  expect(withAllReleased(own, { 'house:Sallowby': 2, 'house:Thornwath': 5 }).released).toEqual({ 'house:Sallowby': 3, 'house:Thornwath': 5 }); // prettier-ignore
});
