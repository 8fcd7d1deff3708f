// Legal definitions against what the texts say: each case names the rule it turns on.
import { expect, test } from 'vitest';
import { judgeClaim, meetsDefinition, type Claim } from '../../src/core/law/claim.ts';
import { definitions } from '../../src/core/law/definitions.ts';
import { dayInWords, readLongAgo } from '../../src/core/law/reading.ts';
import { sources } from '../../src/core/sources.ts';
import rows from '../../src/published/reference/law.json' with { type: 'json' };

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
  judgeClaim(claim, named(id))
    .filter(({ met }) => !met)
    .map(({ asks }) => asks);

test('every definition has points, and a source that is told of', () => {
  for (const { points, sources: rests } of definitions) {
    expect(points.length).toBeGreaterThan(2);
    expect(rests.length).toBeGreaterThan(0);
    for (const source of rests) expect(sources[source].title.length).toBeGreaterThan(5);
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
  expect(meetsDefinition({ ...scottish, wood: 'other wood', still: 'other still' }, named('eu-whisky'))).toBe(
    true,
  );
});

test('27 CFR 5.143, malt whisky: used oak and a filling above 62.5 % vol do not pass, new charred oak at 62.5 does', () => {
  expect(missed(american, 'us-malt')).toEqual(['into charred new oak', 'at 62.5 % vol (125 proof) or less']);
  expect(meetsDefinition({ ...american, wood: 'new charred oak', filledAt: 62.5 }, named('us-malt'))).toBe(
    true,
  );
});

test('27 CFR 5.143, American single malt: used oak passes, and there is no shortest time', () => {
  expect(meetsDefinition({ ...american, years: 1 }, named('us-single-malt'))).toBe(true);
  expect(missed({ ...american, distilledAt: 80.1 }, 'us-single-malt')).toEqual([
    'at 80 % vol (160 proof) or less',
  ]);
});

test('SI 2009/2890, Scotch whisky without more may be bottled elsewhere, from any still and other grain besides', () => {
  const claim = { ...scottish, bottledIn: 'elsewhere', still: 'other still', grain: 'less than 51 % malted barley' } as const; // prettier-ignore
  expect(missed(claim, 'scotland')).toEqual([]);
  expect(missed(claim, 'scotland-single-malt')).toHaveLength(3);
});

test('27 CFR 19.1, proof of distillation: the composite proof of the spirits, so 80 % vol is asked of the heart as a whole', () => {
  const claim = { ...american, wood: 'new charred oak', filledAt: 62.5 } as const;
  expect(meetsDefinition({ ...claim, distilledAt: 80 }, named('us-malt'))).toBe(true);
  expect(missed({ ...claim, distilledAt: 80.1 }, 'us-malt')).toEqual(['distilled at 80 % vol (160 proof) or less']); // prettier-ignore
});

test('Irish Whiskey Act 1980, s. 1(3), and the technical file: island, wood, three years, 700 L, no flavouring, 40 % vol', () => {
  const irish: Claim = { ...scottish, madeIn: 'Ireland', maturedIn: 'Ireland', bottledIn: 'elsewhere', wood: 'other wood' }; // prettier-ignore
  expect(missed(irish, 'ireland')).toEqual([]);
  expect(missed({ ...irish, bottledAt: 37.5, added: 'sweetening or flavouring' }, 'ireland')).toEqual([
    'with nothing added but water and plain caramel',
    'bottled at 40 % vol or more',
  ]);
  expect(missed({ ...irish, maturedIn: 'elsewhere', largestCask: 701, years: 2.9 }, 'ireland')).toEqual([
    'matured only on the island of Ireland',
    'for at least three years',
    'in wooden casks of 700 litres or less',
  ]);
});

test('T.D. TTB-199 and the Japanese standard of 2021 let caramel in and no flavouring; the American label must tell of it', () => {
  const japanese: Claim = { ...scottish, madeIn: 'Japan', maturedIn: 'Japan', bottledIn: 'Japan' };
  for (const [claim, id, asks] of [
    [american, 'us-single-malt', 'with nothing added but water and caramel'],
    [japanese, 'japan', 'with nothing added but water and plain caramel'],
  ] as const) {
    expect(meetsDefinition({ ...claim, added: 'water and plain caramel' }, named(id))).toBe(true);
    expect(missed({ ...claim, added: 'sweetening or flavouring' }, id)).toEqual([asks]);
  }
  expect(named('us-single-malt').minds!({ ...american, added: 'water and plain caramel' })).toHaveLength(1);
  expect(named('us-single-malt').minds!(american)).toEqual([]);
});

/* 27 CFR 5.23(a)(2) as it stood before 2022: harmless colouring, flavouring and blending materials usual in the trade, not
   above 2½ % by volume, and none in straight whisky, leave class and type as they are. */
test('27 CFR 5.155, formerly 5.23: whisky in the United States may hold up to 2.5 % of what is added, and is told so', () => {
  for (const id of ['us-whisky', 'us-malt']) {
    expect(named(id).minds!({ ...american, added: 'sweetening or flavouring' }).join(), id).toContain(
      '2.5 %',
    );
    expect(named(id).minds!({ ...american, added: 'water and plain caramel' }), id).toEqual([]);
  }
});

test('27 CFR 5.74, formerly 5.40: a whisky under four years old must state its age in the United States', () => {
  for (const id of ['us-whisky', 'us-malt', 'us-single-malt']) {
    expect(named(id).minds!({ ...american, years: 3.9 }), id).toHaveLength(1);
    expect(named(id).minds!({ ...american, years: 4 }), id).toEqual([]);
  }
});

test('Regulation (EC) 110/2008, kept in Great Britain: an English house has a row, and no Scotch', () => {
  const english: Claim = { ...scottish, madeIn: 'England or Wales', maturedIn: 'England or Wales', bottledIn: 'England or Wales', wood: 'other wood' }; // prettier-ignore
  expect(missed(english, 'great-britain')).toEqual([]);
  expect(missed({ ...english, added: 'sweetening or flavouring', years: 2 }, 'great-britain')).toEqual([
    'for at least three years',
    'with nothing added but water and plain caramel',
  ]);
  expect(meetsDefinition(english, named('scotland'))).toBe(false);
});

test('Food and Drug Regulations B.02.020: Canadian whisky is made and aged in Canada, in small wood', () => {
  const canadian: Claim = { ...scottish, madeIn: 'Canada', maturedIn: 'Canada', distilledAt: 94.9 };
  expect(missed(canadian, 'canada')).toEqual([]);
  expect(missed({ ...canadian, maturedIn: 'Scotland', bottledAt: 39 }, 'canada')).toEqual([
    'matured in Canada',
    'bottled at 40 % vol or more',
  ]);
});

test('the Japanese standard asks for bottling there; the American class for less than 95 % vol and oak', () => {
  const japanese: Claim = { ...scottish, madeIn: 'Japan', maturedIn: 'Japan', bottledIn: 'Japan' };
  expect(meetsDefinition(japanese, named('japan'))).toBe(true);
  expect(missed({ ...japanese, bottledIn: 'Scotland' }, 'japan')).toEqual(['bottled in Japan']);
  expect(missed({ ...american, distilledAt: 95, wood: 'other wood' }, 'us-whisky')).toEqual([
    'distilled below 95 % vol (190 proof)',
    'in oak barrels',
  ]);
});

test('every definition is in the table of what was read', () => {
  expect(rows.map(({ id }) => id).sort()).toEqual(definitions.map(({ id }) => id).sort());
});

test.each(rows)('$id turns where its text says: $source', (row) => {
  const made = row.in as Claim['madeIn'];
  const just: Claim = {
    ...scottish,
    madeIn: made,
    maturedIn: made,
    bottledIn: made,
    wood: 'new charred oak',
    filledAt: 62.5,
    distilledAt: row.strongest,
    largestCask: row.cask ?? 1000,
    years: row.years,
    bottledAt: 40,
  };
  const holds = (change: Partial<Claim>) => meetsDefinition({ ...just, ...change }, named(row.id));
  expect(holds({})).toBe(true);
  expect(holds({ bottledAt: 39.9 })).toBe(false);
  if (row.tooStrong !== null) expect(holds({ distilledAt: row.tooStrong })).toBe(false);
  if (row.cask !== null) expect(holds({ largestCask: row.cask + 1 })).toBe(false);
  if (row.years > 0) expect(holds({ years: row.years - 0.1 })).toBe(false);
  if (row.flavouring !== null) expect(holds({ added: 'sweetening or flavouring' })).toBe(row.flavouring);
});

test.each(definitions.map((row) => [row.name, row] as const))(
  '%s says since when, and when it was read',
  (_, row) => {
    expect(row.since).toMatch(/^\d{4}(-\d\d(-\d\d)?)?$/);
    expect(row.readOn).toMatch(/^\d{4}-\d\d-\d\d$/);
    expect(new Date(row.readOn).toISOString().slice(0, 10)).toBe(row.readOn);
    expect(row.since <= row.readOn).toBe(true);
    expect(row.readIn.length).toBeGreaterThan(5);
    expect(row.textAt).toMatch(/^[a-z-]+(\.[a-z-]+)+/);
  },
);

test('a row read more than a year ago is named', () => {
  const rows = [
    { name: 'read a year ago', readOn: '2025-03-01' },
    { name: 'read a day before that', readOn: '2025-02-28' },
  ];
  expect(readLongAgo(rows, '2026-03-01')).toEqual(['read a day before that, read on 28 February 2025']);
  expect(readLongAgo(rows, '2026-03-02')).toHaveLength(2);
});

/* By a day that is given: a suite must not begin to fail while it lies. The build tells of old rows by its own day. */
test.each(definitions.map((row) => [row.name, row] as const))(
  '%s is named from a year and a day after it was read',
  (_, { name, readOn }) => {
    const nextYear = `${Number(readOn.slice(0, 4)) + 1}${readOn.slice(4)}`;
    const dayAfter = new Date(Date.parse(nextYear) + 86_400_000).toISOString().slice(0, 10);
    const isNamed = (today: string) =>
      readLongAgo(definitions, today).some((row) => row.startsWith(`${name}, `));
    expect([readOn, nextYear, dayAfter].map(isNamed)).toEqual([false, false, true]);
  },
);

test('a year, a month or a day stands in words', () => {
  expect(['2000', '2014-10', '2025-01-09'].map(dayInWords)).toEqual([
    '2000',
    'October 2014',
    '9 January 2025',
  ]);
});
