// Where the parts of drawings stand that follow a figure.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { moveOnTrack } from '../../src/house/track.ts';

const bent = [
  [0, 10, 100],
  [5, 20, 80],
  [10, 60, 0],
] as const;

test.each([
  [0, 'translate(10 100)'],
  [2.5, 'translate(15 90)'], // half-way between the first two points
  [5, 'translate(20 80)'],
  [9, 'translate(52 16)'], // four fifths of the way from 20 to 60 and from 80 to 0
  [-3, 'translate(10 100)'],
  [12, 'translate(60 0)'],
])('a figure of %s stands at %s', (value, place) => {
  expect(moveOnTrack(bent, value)).toBe(place);
});

test('a part grows wide and high with its figure', () => {
  const band = [
    [0, 0, 0, 0],
    [1, 4, 0, 1],
  ] as const;
  expect(moveOnTrack(band, 0.25)).toBe('translate(1 0) scale(0.25 1)');
  expect(moveOnTrack(band, 3)).toBe('translate(4 0) scale(1 1)');
  const fall = [
    [20, 0, 9, 1, 0.5],
    [40, 0, 9, 1, 1.5],
  ] as const;
  expect(moveOnTrack(fall, 30)).toBe('translate(0 9) scale(1 1)');
});

test('every drawing has words, and those with moving parts the frame that moves them', () => {
  const folder = join(import.meta.dirname, '..', '..', 'src', 'components', 'drawings');
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.astro'))) {
    const text = readFileSync(join(folder, file), 'utf8');
    if (text.includes('<Moved')) expect(text, file).toMatch(/<Drawing\s/);
    if (text.includes('<Drawing')) expect(text, file).toMatch(/says="[^"]{120,}"/);
  }
});
