// Legal definitions against what the texts say: each case names the rule it turns on.
import { expect, test } from 'vitest';
import { judge, qualifies, type Claim } from '../../src/core/law/claim.ts';
import { definitions } from '../../src/core/law/definitions.ts';
import { sources } from '../../src/core/sources.ts';

const scottish: Claim = {
  madeIn: 'Scotland',
  maturedIn: 'Scotland',
  bottledIn: 'Scotland',
  grain: 'malted barley only',
  still: 'pot still',
  oneDistillery: true,
  distilledAt: 74,
  wood: 'used or uncharred oak',
  largestCask: 500,
  filledAt: 63.5,
  years: 10,
  bottledAt: 46,
  added: 'water only',
};
const american: Claim = { ...scottish, madeIn: 'the United States', maturedIn: 'the United States' };
const named = (id: string) => definitions.find((definition) => definition.id === id)!;
const missed = (claim: Claim, id: string) =>
  judge(claim, named(id))
    .filter(({ met }) => !met)
    .map(({ asks }) => asks);

test('every definition has points, and a source that is told of', () => {
  for (const { points, source } of definitions) {
    expect(points.length).toBeGreaterThan(2);
    expect(sources[source].title.length).toBeGreaterThan(5);
  }
});

test.each([
  [{}, []],
  [{ years: 2 }, ['for at least three years']],
  [{ years: 3 }, []],
  [{ bottledAt: 39.9 }, ['bottled at 40 % vol or more']],
  [{ bottledAt: 40 }, []],
  [{ largestCask: 701 }, ['of 700 litres or less']],
  [{ distilledAt: 94.8 }, ['distilled below 94.8 % vol']],
  [{ wood: 'other wood' }, ['in oak casks']],
  [{ added: 'water and plain caramel' }, []],
  [{ added: 'sweetening or flavouring' }, ['with nothing added but water and plain caramel']],
  [{ still: 'other still' }, ['batch distilled in pot stills']],
  [{ bottledIn: 'elsewhere' }, ['bottled in Scotland']],
] as const)('SI 2009/2890, single malt: %j misses %j', (change, points) => {
  expect(missed({ ...scottish, ...change }, 'scotland-single-malt')).toEqual(points);
});

test('Regulation (EU) 2019/787 asks for wood, not oak, and says nothing of the still', () => {
  expect(qualifies({ ...scottish, wood: 'other wood', still: 'other still' }, named('eu-whisky'))).toBe(true);
});

test('27 CFR 5.143, malt whisky: used oak and a filling above 62.5 % vol do not pass, new charred oak at 62.5 does', () => {
  expect(missed(american, 'us-malt')).toEqual(['into charred new oak', 'at 62.5 % vol (125 proof) or less']);
  expect(qualifies({ ...american, wood: 'new charred oak', filledAt: 62.5 }, named('us-malt'))).toBe(true);
});

test('27 CFR 5.143, American single malt: used oak passes, and there is no shortest time', () => {
  expect(qualifies({ ...american, years: 1 }, named('us-single-malt'))).toBe(true);
  expect(missed({ ...american, distilledAt: 80.1 }, 'us-single-malt')).toEqual([
    'at 80 % vol (160 proof) or less',
  ]);
});

test('SI 2009/2890, Scotch whisky without more may be bottled elsewhere, from any still and other grain besides', () => {
  const claim = { ...scottish, bottledIn: 'elsewhere', still: 'other still', grain: 'less than 51 % malted barley' } as const; // prettier-ignore
  expect(missed(claim, 'scotland')).toEqual([]);
  expect(missed(claim, 'scotland-single-malt')).toHaveLength(3);
});

test('the Japanese standard, recalled, asks for bottling there; the American class for less than 95 % vol and oak', () => {
  const japanese: Claim = { ...scottish, madeIn: 'Japan', maturedIn: 'Japan', bottledIn: 'Japan' };
  expect(qualifies(japanese, named('japan'))).toBe(true);
  expect(missed({ ...japanese, bottledIn: 'Scotland' }, 'japan')).toEqual(['bottled in Japan']);
  expect(missed({ ...american, distilledAt: 95, wood: 'other wood' }, 'us-whisky')).toEqual([
    'distilled below 95 % vol (190 proof)',
    'in oak barrels',
  ]);
});
