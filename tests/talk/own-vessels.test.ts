// What a guide says of vessels, held against those of the house: ten washbacks where there are eight are accused, and nobody else's are asked.
import { expect, test } from 'vitest';
import type { Plant } from '../../src/core/plant/plant.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { emptyPlant } from '../../src/house/parts/plant.ts';
import { vesselsSaid } from '../../src/islands/vessels-said.ts';
import type { TalkFigureId } from '../../src/talk/figures.ts';
import { isLikened } from '../../src/talk/likened.ts';
import { disagreement, heldAgainst, type HowKnown } from '../../src/talk/own-house.ts';
import { vesselFigures } from '../../src/talk/own-vessels.ts';
import { readScript } from '../../src/talk/script.ts';
import { houseNow } from '../../src/walk/house-now.ts';
import { staleIn } from '../../src/walk/stale.ts';

const still = { hours: 8, reflux: 0.1, condenser: 'shell-and-tube', heating: 'steam' } as const;
const plant: Plant = {
  ...emptyPlant,
  washbacks: [
    { number: 6, full: 30_000, working: 25_000, material: 'wood' },
    { number: 2, full: 30_000, working: 25_000, material: 'steel', usual: ['working'] },
  ],
  washStills: [{ ...still, number: 2, charge: 12_000 }],
  spiritStills: [{ ...still, number: 2, charge: 8000, usual: ['charge'] }],
};
const vessels = vesselFigures(plant);
const known: HowKnown = { standing: () => 'computed', counted: () => undefined, vessels };
const line = builtInLine();
const agrees = (figure: TalkFigureId, value: number) =>
  heldAgainst({ figure, said: { as: 'rounded', value } }, line, known)?.agrees;

test('counts and sizes of vessels: what is there agrees, and what is not is told with what the house has', () => {
  // 6 + 2 washbacks, 2 + 2 stills, filled to 25,000 of 30,000 L, 12,000 L to a wash still: from the plant above by hand.
  expect([8, 6, 2, 10, 7].map((value) => agrees('numberOfWashbacks', value))).toEqual([true, true, true, false, false]); // prettier-ignore
  expect([4, 5].map((value) => agrees('numberOfStills', value))).toEqual([true, false]);
  expect([2, 3].map((value) => agrees('numberOfWashStills', value))).toEqual([true, false]);
  expect([2, 1].map((value) => agrees('numberOfSpiritStills', value))).toEqual([true, false]);
  expect([30_000, 25_000, 20_000].map((value) => agrees('washbackCapacity', value))).toEqual([true, true, false]); // prettier-ignore
  expect([12_000, 15_000].map((value) => agrees('washStillCharge', value))).toEqual([true, false]);
  const ten = heldAgainst({ figure: 'numberOfWashbacks', said: { as: 'rounded', value: 10 } }, line, known)!;
  expect(disagreement(ten, 'Kestrel Burn')).toBe('Number of washbacks: you say 10; Kestrel Burn has 8.');
});

test('a usual value that nobody gave, and vessels that a house has not named, judge nothing', () => {
  expect(agrees('spiritStillCharge', 8000)).toBeUndefined();
  expect(vesselFigures(emptyPlant)).toEqual({});
  expect(vesselFigures({ ...plant, washStills: [] }).numberOfStills).toBeUndefined();
  expect(vesselsSaid('Kestrel Burn', {})).toEqual({}); // not Harrowmere's
  expect(vesselsSaid('Kestrel Burn', { plant }).numberOfWashbacks).toEqual([8, 6, 2]);
  expect(vesselsSaid('Harrowmere', {}).numberOfWashbacks).toEqual([4]);
});

test('in a walk, the sentence with ten washbacks is listed with eight in its place', () => {
  const text = 'Here are ten washbacks of Oregon pine.';
  const said = [{ at: 9, words: 'ten washbacks', figure: 'numberOfWashbacks', value: 10 }] as const;
  const stale = (many: number) =>
    staleIn(text, said.map((each) => ({ ...each, chance: 1 })), houseNow(line, { ...known, vessels: { numberOfWashbacks: [many] } }, said)); // prettier-ignore
  expect(stale(8).sentences.map(({ anew }) => anew)).toEqual(['Here are eight washbacks of Oregon pine.']);
  expect(stale(10).sentences).toEqual([]);
  const none = houseNow(line, { ...known, vessels: {} }, said);
  expect(none('numberOfWashbacks')).toBeUndefined();
});

test('what only likens something to casks is asked, never taken by itself', () => {
  const first = (text: string) => readScript(text).quantities[0]!;
  for (const text of [
    'We lose 1,100 casks’ worth of angels’ share each year.',
    "That is 200 casks' worth a week.",
    'The store loses the equivalent of 300 casks a year.',
    'The angels drink as much as 1,100 casks a year.',
    'It is enough malt for 40 casks a week.',
  ]) {
    expect(first(text).figure, text).toBeUndefined();
    expect(first(text).confidence, text).toBeLessThanOrEqual(0.5);
  }
  for (const text of ['We fill 1,100 casks each year.', 'We fill 40 casks a week, worth a fortune.'])
    expect(first(text).figure, text).toMatch(/^casksPer/);
});

test('casks that are filled or stored beside a loss are not likened to it', () => {
  const is = (text: string) => {
    const at = /[\d,]+ casks/.exec(text)!;
    return isLikened(text, at.index, at.index + at[0].length, 'casks');
  };
  expect(is('We lose two per cent of our 6,000 casks.')).toBe(false);
  expect(is('The angels drink from 6,000 casks.')).toBe(false);
  expect(is('The angels take their part, and we fill 900 casks a year.')).toBe(false);
  expect(is('The angels take about 90 casks a year.')).toBe(true);
  expect(isLikened('two tonnes’ worth', 0, 10, 'mass')).toBe(false);
});
