// Seals against another implementation of the same standards (Node's crypto), and every change of one.
import { createCipheriv, createDecipheriv, createECDH, hkdfSync, randomBytes } from 'node:crypto';
import { expect, test } from 'vitest';
import {
  isSealKeySound,
  makeSealKey,
  readSealKey,
  sealedTo,
  sealKeyText,
  unsealed,
} from '../../src/handing/sealing.ts';
import { publicOf, type SecretKey } from '../../src/handing/signing.ts';
import { injections, nested, prototypeKeys } from '../hostile-texts.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const words = (given: Uint8Array | undefined) => given && new TextDecoder().decode(given);
const PURPOSE = 'malt-spirit-handbook/seal 1';

/** The key of a seal by Node: ECDH, then HKDF with no salt over the purpose and both points. */
const keyByNode = (shared: Buffer, ephemeral: Buffer, to: Buffer) =>
  Buffer.from(
    hkdfSync('sha256', shared, Buffer.alloc(0), Buffer.concat([Buffer.from(PURPOSE), ephemeral, to]), 32),
  );

test('what is sealed here is opened by another implementation, and what that seals is opened here', async () => {
  const key = await makeSealKey();
  const to = Buffer.from(publicOf(key), 'base64url');
  const seal = Buffer.from(await sealedTo(publicOf(key), 'about this', bytes('Zoë: 12.5')));

  const trainer = createECDH('prime256v1');
  trainer.setPrivateKey(Buffer.from(key.d, 'base64url'));
  const [point, iv, cipher, tag] = [
    seal.subarray(0, 65),
    seal.subarray(65, 77),
    seal.subarray(77, -16),
    seal.subarray(-16),
  ];
  const opener = createDecipheriv('aes-256-gcm', keyByNode(trainer.computeSecret(point), point, to), iv);
  opener.setAAD(Buffer.from('about this')).setAuthTag(tag);
  expect(Buffer.concat([opener.update(cipher), opener.final()]).toString()).toBe('Zoë: 12.5');

  const fresh = createECDH('prime256v1');
  const theirPoint = fresh.generateKeys();
  const theirIv = randomBytes(12);
  const sealer = createCipheriv('aes-256-gcm', keyByNode(fresh.computeSecret(to), theirPoint, to), theirIv);
  sealer.setAAD(Buffer.from('about that'));
  const theirs = Buffer.concat([
    theirPoint,
    theirIv,
    sealer.update('from outside'),
    sealer.final(),
    sealer.getAuthTag(),
  ]);
  expect(words(await unsealed(key, 'about that', Uint8Array.from(theirs)))).toBe('from outside');
});

test('a seal opens with its own key only, about its own thing only, and unchanged only', async () => {
  const [key, other] = [await makeSealKey(), await makeSealKey()];
  const seal = await sealedTo(publicOf(key), 'source abc', bytes('the key of the sheet'));
  expect(words(await unsealed(key, 'source abc', seal))).toBe('the key of the sheet');
  expect(await unsealed(other, 'source abc', seal)).toBeUndefined();
  expect(await unsealed(key, 'source abd', seal)).toBeUndefined();
  for (let place = 0; place < seal.length; place += 7) {
    const changed = Uint8Array.from(seal, (byte, i) => (i === place ? byte ^ 1 : byte));
    expect(await unsealed(key, 'source abc', changed)).toBeUndefined();
  }
  for (const length of [0, 64, 92, seal.length - 1])
    expect(await unsealed(key, 'source abc', seal.slice(0, length))).toBeUndefined();
  expect(Buffer.from(seal).includes('the key')).toBe(false);
});

test('two seals of one text are not alike', async () => {
  const key = await makeSealKey();
  const seals = await Promise.all([1, 2].map(() => sealedTo(publicOf(key), '', bytes('12.5'))));
  expect(Buffer.from(seals[0]!).equals(Buffer.from(seals[1]!))).toBe(false);
});

test('nothing is sealed to what is no key', async () => {
  for (const to of ['', 'A'.repeat(87), '<b>']) await expect(sealedTo(to, '', bytes('x'))).rejects.toThrow();
});

test('a key goes into its file and back, and what is no key is refused in a sentence', async () => {
  const key = await makeSealKey();
  expect(readSealKey(sealKeyText(key))).toEqual(key);
  expect(await isSealKeySound(key)).toBe(true);
  const { y } = await makeSealKey();
  expect(await isSealKeySound({ ...key, y } as SecretKey)).toBe(false); // no point of the curve
  const whole = JSON.parse(sealKeyText(key));
  const texts = ['', 'null', '[]', '{}', JSON.stringify({ ...whole, version: 2 }), JSON.stringify({ ...whole, key: { ...key, d: 'short' } }), JSON.stringify({ ...whole, key: null }), ...injections, ...prototypeKeys, nested(5000)];
  for (const text of texts) expect(typeof readSealKey(String(text))).toBe('string');
}); // prettier-ignore
