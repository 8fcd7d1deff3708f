// Pictures of code, read by a decoder that is no part of the book; and the short links that they carry.
import fc from 'fast-check';
import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { builtInHouse, figureNames, numberFigures } from '../../src/house/figures.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { linkOf, textOfLink, textOfShortLink } from '../../src/house/link.ts';
import { shortLinkOf } from '../../src/house/pack.ts';
import { shortList } from '../../src/house/short-list.ts';
import { qrCodeOf, MOST_QR_BYTES, type Code } from '../../src/islands/qr.ts';
import { injections, nested, prototypeKeys } from '../hostile-texts.ts';
import promised from './promised-links.json' with { type: 'json' };

/** The drawing as a phone’s camera would have it, so many pixels a module; read by the decoder. */
function readBack({ path, size }: Code, pixels = 4): string | undefined {
  const side = size * pixels;
  const image = new Uint8ClampedArray(4 * side * side).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let row = 0; row < pixels; row++)
      for (let column = 0; column < Number(run) * pixels; column++) {
        const at = 4 * ((Number(y) * pixels + row) * side + Number(x) * pixels + column);
        image.fill(0, at, at + 3);
      }
  return jsQR(image, side, side)?.data;
}

const HERE = 'https://handbook.example.org/house/';
/** Every figure moved by a part of a hundred, as no house would be: the longest link there is without parts. */
const everyFigure = {
  ...builtInHouse,
  ...Object.fromEntries(Object.keys(numberFigures).map((name) => [name, Number((builtInHouse[name as 'yeast'] * 0.9931).toFixed(4))])),
} as typeof builtInHouse; // prettier-ignore
const houses = { 'of Harrowmere': builtInHouse, 'with one figure changed': { ...builtInHouse, heartEnd: 60 }, 'with every figure changed': everyFigure } as unknown as Readonly<Record<string, typeof builtInHouse>>; // prettier-ignore

test.each(Object.entries(houses))('the picture of a house %s is read by another decoder, and opens that house', async (_, house) => {
  const text = encodeHouse({ name: 'Sallowby, by the burn', house });
  const code = qrCodeOf(HERE + shortLinkOf(text))!;
  expect(code.version).toBeLessThanOrEqual(16);
  const read = readBack(code)!;
  expect(read).toBe(HERE + shortLinkOf(text));
  expect(decodeHouse(await textOfShortLink(new URL(read).hash))).toMatchObject({ name: 'Sallowby, by the burn', house, problems: [] });
}); // prettier-ignore

test('any address up to the limit is read back, and one byte more has no picture', async () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom(...'abcXYZ019-_~=.'), minLength: 1, maxLength: 900 }),
      (end) => {
        expect(readBack(qrCodeOf(HERE + end)!)).toBe(HERE + end);
      },
    ),
    { numRuns: 12 },
  );
  const longest = HERE.padEnd(MOST_QR_BYTES, 'x');
  expect(qrCodeOf(longest)).toMatchObject({ version: 25, size: 117 + 8 });
  expect(readBack(qrCodeOf(longest)!)).toBe(longest);
  expect(qrCodeOf(`${longest}x`)).toBeUndefined();
}, 60_000);

test('there is white all round a code, four modules wide, and its first corner stands within', async () => {
  const { path, size } = qrCodeOf(HERE)!;
  const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map(([, ...numbers]) => numbers.map(Number));
  for (const [x, y, run] of runs as [number, number, number][]) {
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(4);
    expect(Math.max(x + run - 1, y)).toBeLessThan(size - 4);
  }
  expect(runs[0]).toEqual([4, 4, 7]);
});

test('the list of short links has every figure of a house, each once', async () => {
  expect(new Set(shortList.map(([figure]) => figure)).size).toBe(shortList.length);
  const missing = figureNames.filter((name) => !shortList.some(([figure]) => figure === name));
  expect(missing, 'src/house/short-list.ts has no row of these: add it last').toEqual([]);
});

test('short links that were sent open the houses that they were made of', async () => {
  for (const { link, name, figures } of promised)
    expect(decodeHouse(await textOfShortLink(link))).toMatchObject({ name, house: figures });
  expect(promised.length).toBeGreaterThan(2);
});

test('a short link and a long one open the same house, parts and all', async () => {
  const parts = { plant: { stills: [{ name: 'Wash still', litres: 12_000 }] } };
  for (const house of Object.values(houses)) {
    const text = encodeHouse({ name: 'Sallowby', house, parts });
    expect(await textOfShortLink(shortLinkOf(text))).toBe(text);
    expect(textOfLink(linkOf(text))).toBe(text);
    expect(shortLinkOf(text).length).toBeLessThan(linkOf(text).length / 2);
  }
});

test('a short link that is damaged is no house, and one of nonsense is read as strictly as any', async () => {
  const link = shortLinkOf(encodeHouse({ name: 'Sallowby', house: everyFigure }));
  for (let at = 9; at < link.length; at += 7) {
    const reading = decodeHouse(await textOfShortLink(link.slice(0, at)));
    expect(reading.isHouse, String(at)).toBe(false);
  }
  for (const name of [...injections, ...prototypeKeys]) {
    const reading = decodeHouse(
      await textOfShortLink(shortLinkOf(JSON.stringify({ version: 2, name, figures: { heartEnd: name } }))),
    );
    expect(reading.isHouse).toBe(true);
    expect(reading.house.heartEnd).toBe(62);
    expect(reading.problems.join(' ')).toContain('Heart ends at');
  }
  expect(decodeHouse(await textOfShortLink(shortLinkOf(JSON.stringify({ version: 9, name: 'x', figures: {} })))).problems[0]).toContain('version 9'); // prettier-ignore
  expect(decodeHouse(await textOfShortLink(shortLinkOf(`{"version":2,"name":"x","figures":{"heartEnd":${nested(3000)}}}`))).house.heartEnd).toBe(62); // prettier-ignore
});

test('a small link that unpacks to a flood is refused', async () => {
  const flood = shortLinkOf(JSON.stringify({ version: 2, name: 'x'.repeat(5_000_000), figures: {} }));
  expect(flood.length).toBeLessThan(10_000);
  expect(decodeHouse(await textOfShortLink(flood))).toMatchObject({ isHouse: false });
});
