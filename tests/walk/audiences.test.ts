// A talk told to audiences in their own units. The numbers were worked by hand: 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L (NIST Handbook 44), 1 imperial gal = 4.54609 L (Weights and Measures Act 1985), US proof is twice % vol at 60 °F.
import { expect, test } from 'vitest';
import type { TalkFigureId } from '../../src/talk/figures.ts';
import { acceptStale } from '../../src/walk/accept.ts';
import { toldTo, type AudienceName } from '../../src/walk/audiences.ts';
import type { KeptQuantity } from '../../src/walk/stale.ts';

const talk =
  'We mash 5,480 kg at about 64 degrees, twelve tonnes a day. Just under 27,500 litres, 8.4 % strong; an 8-hour run. Cut at sixty-two per cent.';
const take = (words: string, figure: TalkFigureId, value: number): KeptQuantity => ({ at: talk.indexOf(words), words, figure, value, chance: 1 }); // prettier-ignore
const kept = [
  take('5,480 kg', 'maltPerMash', 5480), // 12,081.3 lb
  take('64 degrees', 'mashTemperature', 64.2), // 147.6 °F
  take('twelve tonnes', 'maltPerWeek', 12_000), // 26,455 lb
  take('27,500 litres', 'wortVolume', 27_412), // 7,241.5 US gal, 6,029.8 imperial
  take('8.4 %', 'washStrength', 8.4),
  take('8-hour', 'washRunHours', 8),
  take('sixty-two per cent', 'heartEnds', 62),
];

test.each<[AudienceName, string]>([
  ['American', 'We mash 12,080 lb at about 148 degrees Fahrenheit, just over twenty-six thousand pounds a day. 7,240 US gallons, 16.8 US proof strong; an 8-hour run. Cut at one hundred twenty-four US proof.'],
  ['imperial', 'We mash 12,080 lb at about 148 degrees Fahrenheit, just over twenty-six thousand pounds a day. 6,030 imperial gallons, 8.4 % strong; an 8-hour run. Cut at sixty-two per cent.'],
  ['European', 'We mash 5.480 kg at about 64 degrees, twelve tonnes a day. Just under 27.500 litres, 8,4 % strong; an 8-hour run. Cut at sixty-two per cent.'],
  ['Japanese', 'We mash 5480 kg at about 64 degrees, twelve tonnes a day. Just under 2万7500 litres, 8.4 % strong; an 8-hour run. Cut at sixty-two per cent.'],
])('%s', (name, told) => {
  const changes = toldTo(talk, kept, name);
  const { text, kept: after } = acceptStale(talk, kept, [{ changes }], () => undefined);
  expect(text).toBe(told);
  for (const { at, words } of after) expect(text.slice(at, at + words.length)).toBe(words);
}); // prettier-ignore
