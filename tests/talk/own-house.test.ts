// A script held against the guide's own house: what agrees, what does not, and in which words.
import { expect, test } from 'vitest';
import { quotableNames, type SaidValue } from '../../src/core/cross-check/quoted.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { talkFigures, type TalkFigureId } from '../../src/talk/figures.ts';
import { labelOf } from '../../src/talk/labels.ts';
import { disagreement, heldAgainst, ofHouse } from '../../src/talk/own-house.ts';
import { truthOf } from '../core/quoted-houses.ts';

const rounded = (value: number): SaidValue => ({ as: 'rounded', value });
const about = (value: number): SaidValue => ({ as: 'about', value });
const agrees = (figure: TalkFigureId, said: SaidValue) =>
  heldAgainst({ figure, said }, builtInLine())!.agrees;

test('every figure that can be quoted is the house’s own', () => {
  const truth = truthOf(builtInLine());
  for (const name of quotableNames) {
    // Where the heart begins is read off the drawn curve, whose points lie a tenth of a per cent apart.
    const apart = Math.abs(ofHouse(name, builtInLine())! / truth[name] - 1);
    expect(apart, name).toBeLessThan(name === 'heartBegins' ? 2e-3 : 1e-9);
  }
});

// Harrowmere: 1,500 kg a mash, six a week, 4 L/kg, mash at 64.5 °C from grist of 15 °C, 72 h, OG 1.058, ten years.
test.each<[TalkFigureId, SaidValue, boolean]>([
  ['maltPerMash', rounded(1500), true],
  ['maltPerMash', rounded(12_000), false],
  ['mashesPerWeek', rounded(6), true],
  ['mashesPerWeek', rounded(7), false],
  ['originalGravity', rounded(1.058), true],
  ['originalGravity', rounded(1.068), false],
  ['fermentationHours', rounded(72), true],
  ['fermentationHours', rounded(56), false],
  ['firstWaterTemperature', rounded(68), true],
  ['firstWaterTemperature', rounded(75), false],
  ['yearsInWood', rounded(10), true],
  ['yearsInWood', rounded(12), false],
  ['yearsInWood', { as: 'range', low: 8, high: 12 }, true],
  ['casksPerWeek', about(25), true],
  ['casksInStore', about(150_000), false],
  ['caskSize', rounded(200), true],
  ['caskSize', rounded(300), false],
])('%s said as %j', (figure, said, right) => expect(agrees(figure, said)).toBe(right));

test('a house says nothing of its stills and washbacks', () => {
  expect(heldAgainst({ figure: 'numberOfStills', said: rounded(4) }, builtInLine())).toBeUndefined();
});

test('a disagreement is a sentence with both figures', () => {
  const held = heldAgainst({ figure: 'maltPerMash', said: about(12_000) }, builtInLine())!;
  expect(disagreement(held, 'Harrowmere')).toBe('Malt a mash: you say about 12,000 kg; Harrowmere has 1,500 kg.');
}); // prettier-ignore

test('every figure has a name with a capital', () => {
  for (const figure of Object.keys(talkFigures) as TalkFigureId[])
    expect(labelOf(figure)).toMatch(/^[A-Z][a-z]/);
});

test('a figure that the house has not given is held against nothing, one that it counted against what was counted', () => {
  const standing = (id: string) => (id === 'bottlesPerYear' ? 'estimate' : id === 'heartEnd' ? 'unknown' : id === 'casksInStore' ? 'counted' : 'set'); // prettier-ignore
  const known = { standing, counted: (id: string) => (id === 'casksInStore' ? 55_000 : undefined) } as const;
  const held = (figure: TalkFigureId, said: SaidValue) => heldAgainst({ figure, said }, builtInLine(), known);
  expect(held('heartEnds', rounded(62))).toBeUndefined();
  expect(held('casksInStore', about(55_000))).toMatchObject({
    house: 55_000,
    agrees: true,
    isEstimate: false,
  });
  const bottles = held('bottlesPerYear', about(2_000_000))!;
  expect(bottles).toMatchObject({ agrees: false, isEstimate: true });
  expect(disagreement(bottles, 'Sallowby')).toMatch(/; Sallowby has [\d,]+, as far as is known\.$/);
});
