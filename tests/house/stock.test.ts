// The register as a part of the house and as a table: what is given comes back, and every row that cannot be is named.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { groupFieldNames, groupFields, type CaskGroup } from '../../src/core/stock/group.ts';
import { rowsOf, separatorOf } from '../../src/core/reading/separated.ts';
import { csvOf } from '../../src/exercises/csv.ts';
import { decodeHouse, encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInParts } from '../../src/house/parts/built-in.ts';
import { readPart } from '../../src/house/parts/part.ts';
import { stockPart, type Stock } from '../../src/house/parts/stock.ts';
import { readStockTable, stockTable } from '../../src/house/parts/stock-csv.ts';
import { injections } from '../hostile-texts.ts';

const plain: CaskGroup = {
  name: 'A1',
  casks: 40,
  size: 200,
  filled: '2016-03-14',
  filledVolume: 195,
  filledStrength: 63.5,
};
const read = (groups: readonly unknown[], beside = {}) => stockPart.read({ ...beside, groups });

/** Any group that the register takes. */
const choice = (name: 'wood' | 'held' | 'firing' | 'storeKind' | 'laid' | 'owner') => {
  const field = groupFields[name];
  return fc.constantFrom(...(field.is === 'choice' ? Object.keys(field.options) : []));
};
const word = fc.stringMatching(/^[A-Za-z=+@-][A-Za-z0-9 ,;"=-]{0,20}[a-z]$/);
const tenths = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((n) => n / 10);
const groups: fc.Arbitrary<CaskGroup> = fc.record(
  {
    name: word, casks: fc.integer({ min: 1, max: 100_000 }), size: tenths(10, 1000), year: fc.integer({ min: 1950, max: 2024 }), full: tenths(0.5, 1), filledStrength: tenths(50, 80),
    wood: choice('wood'), held: choice('held'), fill: fc.integer({ min: 1, max: 9 }), firing: choice('firing'), store: word, storeKind: choice('storeKind'), left: tenths(0.1, 1), laid: choice('laid'), owner: choice('owner'),
  },
  { requiredKeys: ['casks', 'size', 'year', 'full', 'filledStrength'] },
).map(({ year, full, left, ...group }) => {
  const filledVolume = Math.max(1, Math.floor(10 * group.size * full) / 10);
  const regauge = left === undefined ? {} : { regauged: `${year + 1}-06`, regaugedVolume: Math.floor(filledVolume * left), regaugedStrength: group.filledStrength };
  return { ...group, filled: `${year}-02-28`, filledVolume, ...regauge } as CaskGroup;
}); // prettier-ignore

describe('the part', () => {
  test('a register comes back from a house’s text as it was given', () => {
    fc.assert(
      fc.property(fc.array(groups, { maxLength: 8 }), (all) => {
        const given: Stock = {
          opened: 1950,
          laidElsewhere: 12,
          soldUnfilled: 3400.5,
          emptied: 7,
          groups: all,
        };
        expect(stockPart.read(given)).toEqual({ value: given, problems: [] });
        const { parts, problems } = decodeHouse(
          encodeHouse({ name: 'Sallowby', house: builtInHouse, parts: { stock: given } }),
        );
        expect(problems).toEqual([]);
        expect(readPart(stockPart, parts.stock).value).toEqual(given);
      }),
    );
  });

  test('300 groups with all that can be said of them go into a house’s text', () => {
    const long = 'W'.repeat(40);
    const full: CaskGroup = { ...plain, name: long, wood: 'american', held: 'nothing', fill: 2, firing: 'toasted', store: long, storeKind: 'palletised', regauged: '2021-03-14', regaugedVolume: 171.25, regaugedStrength: 61.25, laid: 'elsewhere', owner: 'house' };
    const text = encodeHouse({ name: 'Sallowby', house: builtInHouse, parts: { stock: { groups: Array.from({ length: 500 }, () => full) } } });
    expect(decodeHouse(text).problems).toEqual([]);
    expect(readPart(stockPart, decodeHouse(text).parts.stock)).toMatchObject({ problems: [], value: { groups: { length: 500 } } });
  }); // prettier-ignore

  for (const [what, wrong, says] of [
    ['negative contents', { filledVolume: -195 }, 'Row 2 (“A1”): Filled with (L): “-195” was given; it can be from 1 to'],
    ['a regauge below nothing', { regauged: '2020', regaugedVolume: -1, regaugedStrength: 60 }, 'Row 2 (“A1”): Regauged (L): “-1” was given'],
    ['a fill before the opening year', { filled: '1990-05-01' }, 'Row 2 (“A1”): Filled on: 1990-05-01 is before the house opened, in 1994.'],
    ['a cask of 9,000 L', { size: 9000 }, 'Row 2 (“A1”): Size (L): “9000” was given; it can be from 10 to 1,000 L.'],
    ['a strength above 94.8', { filledStrength: 95 }, 'Row 2 (“A1”): Filled at (% vol): “95” was given; it can be from 20 to 94.80 % vol.'],
    ['a regauge before the fill', { regauged: '2015-01-01', regaugedVolume: 190, regaugedStrength: 63 }, 'Row 2 (“A1”): Regauged on: 2015-01-01 is before the cask was filled, on 2016-03-14.'],
    ['more than was filled', { regauged: '2020-01-01', regaugedVolume: 196, regaugedStrength: 60 }, 'Row 2 (“A1”): Regauged (L): 196 L are more than the 195 L filled.'],
    ['more alcohol than was filled', { regauged: '2020-01-01', regaugedVolume: 195, regaugedStrength: 64 }, 'Row 2 (“A1”): Regauged at (% vol): there would be more alcohol'],
    ['half a regauge', { regaugedVolume: 180 }, 'Row 2 (“A1”): Regauged on: a regauge needs'],
    ['more than the cask holds', { filledVolume: 260 }, 'Row 2 (“A1”): Filled with (L): 260 L do not go into a cask of 200 L.'],
    ['half a cask', { casks: 2.5 }, 'Row 2 (“A1”): Casks: “2.5” was given; it must be a whole number.'],
    ['no cask', { casks: 0 }, 'Row 2 (“A1”): Casks: “0” was given'],
    ['a day that is none', { filled: '2015-02-29' }, 'Row 2 (“A1”): Filled on: “2015-02-29” was given'],
    ['a wood of no kind', { wood: 'pine' }, 'Row 2 (“A1”): Wood: “pine” was given; it can be American oak'],
    ['nothing filled', { filled: undefined }, 'Row 2 (“A1”): Filled on: nothing was given; it is needed.'],
    ['a field of its own', { rick: 7 }, 'Row 2 (“A1”): A field: “rick” was given'],
    ['a number as text', { size: '200' }, 'Row 2 (“A1”): Size (L): “200” was given'],
    ['a name too long', { name: 'W'.repeat(41) }, 'Row 2 (“WWW'],
  ] as const)
    test(`${what} is told by its row and field, and the rest is taken`, () => {
      const { value, problems } = read([plain, { ...plain, ...wrong }, plain], { opened: 1994 });
      expect(value.groups).toEqual([plain, plain]);
      expect(problems).toHaveLength(1);
      expect(problems[0]).toContain(says);
    }); // prettier-ignore

  test('figures beside the groups are told and left out one by one', () => {
    const { value, problems } = read([plain], { opened: 90, laidElsewhere: 1.5, soldUnfilled: -3, emptied: 8, portions: 1 });
    expect(value).toEqual({ emptied: 8, groups: [plain] });
    expect(problems.map((problem) => problem.split(':')[0])).toEqual(['Year of opening', 'Casks laid elsewhere, not in this register', 'Spirit sold unfilled since opening', 'Casks in store']);
  }); // prettier-ignore

  test('a register without end is cut and told of, and so are its faults', () => {
    expect(read(Array.from({ length: 501 }, () => plain))).toMatchObject({ value: { groups: { length: 500 } }, problems: [expect.stringContaining('501')] });
    expect(read(Array.from({ length: 400 }, () => ({}))).problems).toHaveLength(61);
  }); // prettier-ignore

  test('the built-in house has a register, and all of it can be read', () => {
    const { value, problems } = readPart(stockPart, builtInParts.stock);
    expect(problems).toEqual([]);
    expect(value.groups.length).toBeGreaterThan(4);
  });
});

describe('a register of single casks', () => {
  const head = 'Name,Casks,Size (L),Filled on,Filled with (L),Filled at (% vol),Which fill,Store,Regauged on,Regauged (L),Regauged at (% vol)';
  const row = (i: number) => {
    const [size, volume] = [200 + 50 * (i % 3), 190 + (i % 11) / 10];
    const regauge = i % 5 === 0 ? `2020-06-0${1 + (i % 9)},${volume - 20},60.${i % 10}` : ',,';
    return `Cask ${i},1,${size},${2006 + (i % 8)}-0${1 + (i % 9)}-11,${volume},63.${i % 10},${1 + (i % 3)},Store ${1 + (i % 4)},${regauge}`;
  };
  const rows = Array.from({ length: 10_000 }, (_, i) => row(i));

  test('ten thousand rows come in as groups: no cask, litre or alcohol is lost, and it is told', () => {
    const { groups, problems, how } = readStockTable([head, ...rows].join('\n'));
    expect(problems).toEqual([]);
    expect(how).toContain(`10,000 rows make ${groups.length} groups`);
    expect(groups.length).toBeLessThanOrEqual(500);
    // By hand, from the rows as they were written.
    const cells = rows.map((text) => text.split(',').map(Number));
    const sum = (of: (cell: readonly number[]) => number) => cells.reduce((all, cell) => all + of(cell), 0);
    const held = (of: (group: (typeof groups)[number]) => number) => groups.reduce((all, group) => all + group.casks * of(group), 0);
    expect(held(() => 1)).toBe(10_000);
    expect(held(({ filledVolume }) => filledVolume)).toBeCloseTo(sum((cell) => cell[4]!), 3);
    expect(held(({ filledVolume, filledStrength }) => filledVolume * filledStrength)).toBeCloseTo(sum((cell) => cell[4]! * cell[5]!), 1);
    expect(held(({ regaugedVolume = 0, regaugedStrength = 0 }) => regaugedVolume * regaugedStrength)).toBeCloseTo(sum((cell) => cell[9]! * cell[10]!), 1);
    const years = new Set(groups.map(({ filled }) => filled.slice(0, 4)));
    expect([...years].toSorted()).toEqual(['2006', '2007', '2008', '2009', '2010', '2011', '2012', '2013']);
    for (const year of years)
      expect(groups.reduce((all, { casks, filled }) => (filled.startsWith(year) ? all + casks : all), 0)).toBe(1250);
    expect(readPart(stockPart, { groups })).toMatchObject({ problems: [] });
  });

  test('up to five hundred rows stay as they are, and more groups that differ are refused', () => {
    expect(readStockTable([head, ...rows.slice(0, 500)].join('\n')).groups[1]).toMatchObject({ name: 'Cask 1', casks: 1 });
    const differing = Array.from({ length: 501 }, (_, i) => `Cask,1,${100 + i},2010-01-01,90,63,1,Here,,,`);
    const { groups, problems } = readStockTable([head, ...differing].join('\n'));
    expect(groups).toHaveLength(500);
    expect(problems).toEqual(['The register keeps 500 groups; the table has 501, casks that are alike put together.']);
  });
}); // prettier-ignore

describe('the table', () => {
  test('what goes out as a table comes in again, with each of the three separators', () => {
    fc.assert(
      fc.property(fc.array(groups, { minLength: 1, maxLength: 8 }), (all) => {
        const text = csvOf(stockTable(all));
        expect(readStockTable(text)).toMatchObject({ groups: all, problems: [] });
        const rows = rowsOf(text, ',');
        for (const sign of [';', '\t'])
          expect(readStockTable(rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(sign)).join('\n')).groups).toEqual(all);
      }),
    );
  }); // prettier-ignore

  test('a name that a spreadsheet would take for a formula goes out behind an apostrophe', () => {
    for (const formula of injections.filter((text) => /^[=+\-@]/.test(text)))
      expect(csvOf(stockTable([{ ...plain, name: formula }]))).not.toMatch(/(^|[,;\t\n"])[=+\-@]/);
    expect(csvOf(stockTable([{ ...plain, name: '=1+1' }]))).toContain("'=1+1");
  });

  const heading = 'Name;Casks;Size (L);Filled on;Filled with (L);Filled at (% vol)';
  test('semicolons, decimal commas and British days, headings without their units, and empty rows', () => {
    const text = `name;CASKS;Size;Filled on;Filled with;Filled at\n\nA1;40;200;14/03/2016;195,5;63,5\r\n;;;;;\nB2;1.200;250;2016-3;240;63`;
    const { groups: found, problems, how } = readStockTable(text);
    expect(found).toEqual([{ ...plain, filledVolume: 195.5 }]);
    expect(problems).toEqual(['Row 5 (“B2”): Casks: “1.2” was given; it must be a whole number. It has 1 more.'].map((each) => expect.stringContaining(each.slice(0, 20)) as string));
    expect(how).toContain('semicolons');
    expect(how).toContain('day, month, year');
  }); // prettier-ignore

  test('a month first is no day, and a day is never guessed', () => {
    const { groups: found, problems } = readStockTable(`${heading}\nA1;40;200;03/25/2016;195;63.5\nA2;40;200;March 2016;195;63.5`);
    expect(found).toEqual([]);
    expect(problems.map((each) => each.slice(0, 24))).toEqual(['Row 2 (“A1”): Filled on:', 'Row 3 (“A2”): Filled on:']);
    expect(readStockTable(`${heading}\nA1;40;200;04/03/2016;195;63.5`).groups[0]!.filled).toBe('2016-03-04');
  }); // prettier-ignore

  test('units in a cell are read, and choices by their words', () => {
    const { groups: found } = readStockTable('Casks,Size (L),Filled on,Filled with (L),Filled at (% vol),Wood,Held before\n3,0.25 m³,2016,240 litres,63.5 % vol,american oak,SHERRY');
    expect(found).toEqual([{ casks: 3, size: 250, filled: '2016', filledVolume: 240, filledStrength: 63.5, wood: 'american', held: 'sherry' }]);
  }); // prettier-ignore

  test('a size may be a name, and a number is never about so many', () => {
    const { groups: found, problems } = readStockTable(`${heading}\nA1;4;Quarter Casks;2016;120;63.5\nA2;about 40;hogshead;2016;240;63.5\nA3;4;constructor;2016;240;63.5`);
    expect(found.map(({ size }) => size)).toEqual([125]);
    expect(problems.map((each) => each.slice(0, 21))).toEqual(['Row 3 (“A2”): Casks: ', 'Row 4 (“A3”): Size (L']);
  }); // prettier-ignore

  test('columns that are missing, strange or twice are told, and a row with too many cells is not taken', () => {
    expect(readStockTable('Name;Casks\nA1;4').problems.join()).toContain('there is none for “Size (L)”, “Filled on”');
    const { groups: found, problems } = readStockTable(`${heading};Rick;Casks\nA1;40;200;2016-03-14;195;63.5;7;9\nA2;40;200;2016-03-14;195;63.5;7;9;9`);
    expect(found).toEqual([plain]);
    expect(problems).toEqual(['The column “Rick” is not one of the register’s and would not be kept.', 'The column “Casks” is there twice; the first is read.', 'Row 3 (“A2”): it has more cells than there are headings.']);
  }); // prettier-ignore

  test('every bad row is named, however many there are', () => {
    const rows = Array.from({ length: 400 }, (_, i) => `G${i};${i % 100 === 7 ? 4 : -1};200;2016-03-14;195;63.5`);
    const { groups: found, problems } = readStockTable([heading, ...rows].join('\n'));
    expect(found).toHaveLength(4);
    const named = problems.flatMap((problem) => [...problem.matchAll(/(?:Row |, |: )(\d+)(?: to (\d+))?(?=[,. ]|$)/g)].flatMap(([, from, to]) => Array.from({ length: Number(to ?? from) - Number(from) + 1 }, (_, i) => Number(from) + i)));
    expect(new Set(named).size).toBe(396);
  }); // prettier-ignore

  test('a table of fifty million characters is refused in one sentence, before it is read', () => {
    const start = performance.now();
    const { groups: found, problems } = readStockTable('x'.repeat(50_000_000));
    expect([found.length, problems.length]).toEqual([0, 1]);
    expect(performance.now() - start).toBeLessThan(200);
  });

  test('no text makes the reader of tables throw or go on without end', () => {
    const texts = [...injections, '', '\n', '"', '""', ';', `${heading}\n"`, `${heading}\n${'"'.repeat(1001)}`, `${heading}\n${';'.repeat(100_000)}`, '\ufeff', '\r\r\r', 'a\u0000b'];
    for (const text of texts) {
      const { groups: found, problems } = readStockTable(text);
      expect(found).toEqual([]);
      expect(problems.length).toBeLessThan(50);
    }
    expect(separatorOf('a\tb;c\td')).toBe('\t');
  }); // prettier-ignore

  test('every heading is a plain word or two, and none is another’s', () => {
    const labels = groupFieldNames.map((name) => groupFields[name].label);
    expect(new Set(labels).size).toBe(labels.length);
    for (const label of labels) expect(label).toMatch(/^[A-Z][a-z]+( [a-z]+){0,2}( \((L|% vol)\))?$/);
  });
});
