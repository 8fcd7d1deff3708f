// A walk told to US visitors, by hand: NIST Handbook 44, Appendix C, and 27 CFR 5.1 (proof is twice the strength). A copy has the new sentences, and the guide's own walk none.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { TalkFigureId } from '../../src/talk/figures.ts';
import { toldSentences, toldWalk, withSentencesTold } from '../../src/walk/audience-talk.ts';
import type { KeptQuantity } from '../../src/walk/stale.ts';
import { firstWalk, type Walk } from '../../src/walk/walk.ts';

const units = JSON.parse(
  readFileSync(
    join(import.meta.dirname, '..', '..', 'src', 'published', 'reference', 'customary-units.json'),
    'utf8',
  ),
) as Record<'pound_kg' | 'us_gallon_L' | 'imperial_gallon_L', number>;
const kept = (text: string, words: string, figure: TalkFigureId, value: number): KeptQuantity => ({ at: text.indexOf(words), words, figure, value, chance: 1 }); // prettier-ignore

/** Ten sentences: what is said, its words and figure, and what US visitors are told; the exact number stands beside each. */
const ten: readonly (readonly [said: string, words: string, figure: TalkFigureId, value: number, told: string, exact: number])[] = [
  ['We mash 9,400 kg at a time.', '9,400 kg', 'maltPerMash', 9400, 'We mash 20,700 lb at a time.', 9400 / units.pound_kg],
  ['It runs off 42,500 litres.', '42,500 litres', 'wortVolume', 42_500, 'It runs off 11,230 US gallons.', 42_500 / units.us_gallon_L],
  ['The mash stands at 64 °C.', '64 °C', 'mashTemperature', 64, 'The mash stands at 147 °F.', 32 + 1.8 * 64],
  ['The first water is at 68.4 degrees.', '68.4 degrees.', 'firstWaterTemperature', 68.4, 'The first water is at 155.1 degrees Fahrenheit.', 32 + 1.8 * 68.4],
  ['It is set at 19 degrees, no more.', '19 degrees', 'setTemperature', 19, 'It is set at 66 degrees Fahrenheit, no more.', 32 + 1.8 * 19],
  ['It gets thirty kilos of yeast.', 'thirty kilos', 'yeastMass', 30, 'It gets sixty-six pounds of yeast.', 30 / units.pound_kg],
  ['We keep 846 litres of it.', '846 litres', 'heartVolume', 846, 'We keep 223.5 US gallons of it.', 846 / units.us_gallon_L],
  ['Each one holds ten thousand litres.', 'ten thousand litres', 'washbackCapacity', 10_000, 'Each one holds just over two thousand six hundred US gallons.', 10_000 / units.us_gallon_L],
  ['A cask takes 190 litres.', '190 litres', 'caskSize', 190, 'A cask takes 50 US gallons.', 190 / units.us_gallon_L],
  ['We bottle at 46 % vol.', '46 % vol', 'bottlingStrength', 46, 'We bottle at 92 US proof.', 2 * 46],
]; // prettier-ignore
const inWords: Readonly<Record<string, number>> = { 'sixty-six': 66, 'two thousand six hundred': 2600 };

test.each(ten)('US visitors: %s', (said, words, figure, value, told, exact) => {
  const [sentence, ...others] = toldSentences(said, [kept(said, words, figure, value)], 'American');
  expect(others).toEqual([]);
  expect(sentence).toMatchObject({ stood: said, anew: told });
  const spelled = Object.keys(inWords).find((each) => told.includes(each));
  const number = spelled ? inWords[spelled]! : Number(/\d[\d,.]*\d/.exec(told)![0].replace(',', ''));
  expect(Math.abs(number / exact - 1)).toBeLessThan(0.035); // as loose as a rounded figure may be: src/walk/rounding-steps.ts
});

test('a gravity keeps its noughts and its point, and what has no unit of theirs is left alone', () => {
  const text = 'It has 1058 of gravity. It stands for 72 hours. It has 1.058 by the glass.';
  const all = [kept(text, '1058', 'originalGravity', 1.058), kept(text, '72 hours', 'fermentationHours', 72), kept(text, '1.058', 'originalGravity', 1.058)]; // prettier-ignore
  expect(toldSentences(text, all, 'American')).toEqual([]);
  expect(toldSentences(text, all, 'European').map(({ anew }) => anew.trim())).toEqual(['It has 1,058 by the glass.']); // prettier-ignore
});

test('a sentence that tells a figure in both units stays', () => {
  const text = 'There are 7,570 litres, or 2,000 US gallons, of it.';
  const all = [kept(text, '7,570 litres', 'wortVolume', 7570), kept(text, '2,000 US gallons', 'wortVolume', 7570)]; // prettier-ignore
  expect(toldSentences(text, all, 'American')).toEqual([]);
});

test('metric visitors are told litres and kilograms of a talk in gallons and pounds', () => {
  const text = 'We mash 20,700 lb and fill a 50 US gal barrel.';
  const all = [kept(text, '20,700 lb', 'maltPerMash', 20_700 * units.pound_kg), kept(text, '50 US gal', 'barrelSize', 50 * units.us_gallon_L)]; // prettier-ignore
  expect(toldSentences(text, all, 'metric')[0]!.anew).toBe('We mash 9,390 kg and fill a 190 L barrel.'); // 9,389.4 kg; 189.27 L, and 50 is said to tens
});

test('what is accepted goes into a copy, each figure where it then stands', () => {
  const text = 'It runs off 42,500 litres at 64 °C. It gets 30 kg of yeast.';
  const figures = [kept(text, '42,500 litres', 'wortVolume', 42_500), kept(text, '64 °C', 'mashTemperature', 64), kept(text, '30 kg', 'yeastMass', 30)].map(({ chance: _, ...each }) => each); // prettier-ignore
  const first = firstWalk('Saturday');
  const walk: Walk = { ...first, rooms: first.rooms.map((room, i) => (i === 2 ? { ...room, pieces: [{ text, long: false, figures }] } : room)) }; // prettier-ignore
  const before = JSON.stringify(walk);
  const told = toldWalk(walk, 'American');
  expect(told.map(({ of }) => of)).toEqual([{ room: 2, piece: 0 }, { room: 2, piece: 0 }]); // prettier-ignore
  const copy = withSentencesTold(walk, told.slice(0, 1));
  const [piece] = copy.rooms[2]!.pieces;
  expect(piece!.text).toBe('It runs off 11,230 US gallons at 147 °F. It gets 30 kg of yeast.');
  for (const { at, words } of piece!.figures) expect(piece!.text.slice(at, at + words.length)).toBe(words);
  expect(piece!.figures.map(({ value }) => value)).toEqual([42_500, 64, 30]); // still the house's
  expect(JSON.stringify(walk)).toBe(before);
  expect(toldWalk(copy, 'American').map(({ stood }) => stood.trim())).toEqual(['It gets 30 kg of yeast.']);
});
