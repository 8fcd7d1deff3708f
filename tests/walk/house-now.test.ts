// What a house has of what is said: its figures, what it counted, and what is not its own yet.
import { expect, test } from 'vitest';
import { builtInLine } from '../../src/house/line-of.ts';
import type { HowKnown } from '../../src/talk/own-house.ts';
import { houseNow } from '../../src/walk/house-now.ts';

const line = builtInLine();
const all: HowKnown = { standing: () => 'set', counted: () => undefined };

test('a figure is the house’s own, the counted one where it was counted', () => {
  expect(houseNow(line, all, [])('wortVolume')).toEqual({ value: 7500, isKnown: true }); // content/houses/harrowmere.json
  const counted: HowKnown = { ...all, counted: () => 830 };
  const said = [{ at: 0, words: '846 litres', figure: 'heartVolume', value: 846 }] as const;
  expect(houseNow(line, counted, said)('heartVolume')).toEqual({ value: 830, isKnown: true });
});

test('a computed figure that hangs on what is not known is an estimate, and one that is set is none', () => {
  const rough: HowKnown = { ...all, standing: (id) => (id === 'washStrength' ? 'estimate' : 'set') };
  expect(houseNow(line, rough, [])('washStrength')).toMatchObject({ isKnown: true, isEstimate: true });
  expect(houseNow(line, rough, [])('wortVolume')).toEqual({ value: 7500, isKnown: true });
});

test('what is not known is told so, and what no house gives is nothing', () => {
  const unknown: HowKnown = { ...all, standing: () => 'unknown' };
  expect(houseNow(line, unknown, [])('wortVolume')).toMatchObject({ isKnown: false });
  expect(houseNow(line, all, [])('peat')).toBeUndefined();
});
