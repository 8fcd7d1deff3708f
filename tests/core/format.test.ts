// Figures as text and text as figures, and the table of kinds.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asShown, format, formatCount, formatNumber, formatWorking } from '../../src/core/format.ts';
import { parseNumber } from '../../src/core/reading/plain.ts';
import { kindMeanings } from '../../src/core/kind-meanings.ts';
import { kinds, type KindName } from '../../src/core/kinds.ts';
import { numberFigures } from '../../src/house/figures.ts';
import { typedValue } from '../../src/house/codec.ts';
import { always, between } from './draw.ts';

test.each<[number, string]>([
  [0.817_072_8, '0.817073'],
  [12.796_4, '12.7964'],
  [1500, '1,500'],
  [163_199.4, '163,199'],
  [-0.523_7, '−0.5237'],
  [0, '0'],
])('a working prints %s as %s: six figures, and no zeros to pad it', (value, text) =>
  expect(formatWorking(value)).toBe(text),
);

test('a working loses no more than a part in a hundred thousand', () => {
  always(between(1e-3, 1e9), (value) => {
    expect(Math.abs(parseNumber(formatWorking(value))! / value - 1)).toBeLessThanOrEqual(5.1e-6);
  });
});

test('one year is no “years”, and a figure of the line stands in its field as it is reckoned with', () => {
  expect(
    [format(1, 'years'), format(2, 'years'), format(1, 'years', 1)].map((text) => text.slice(-4)),
  ).toEqual(['year', 'ears', 'ears']);
  expect([formatCount(1, 'year'), formatCount(12, 'year'), formatCount(1.5, 'year')]).toEqual([
    '1 year',
    '12 years',
    '1.5 years',
  ]);
  expect([69.04894, 0.085_12, 856.347, 51_567.4, 0].map(asShown)).toEqual([
    69.049, 0.0851, 856.35, 51_567, 0,
  ]);
});

const digits = fc.integer({ min: 0, max: 6 });

test('a printed number reads back as itself, to the last place printed', () => {
  always(fc.tuple(between(-1e6, 1e6), digits), ([n, places]) => {
    expect(Math.abs(parseNumber(formatNumber(n, places))! - n)).toBeLessThanOrEqual(
      0.5 * 10 ** -places + 1e-9,
    );
  });
});

test('printing what was read prints the same', () => {
  always(fc.tuple(between(-1e4, 1e4), digits), ([n, places]) => {
    const text = formatNumber(n, places);
    expect(formatNumber(parseNumber(text)!, places)).toBe(text);
  });
});

test.each<[string, number | undefined]>([
  ['1,500', 1500],
  ['1,234,567.5', 1234567.5],
  ['1 500', 1500],
  ['1\u202f500', 1500],
  ['62,5', 62.5],
  ['.5', 0.5],
  ['5.', 5],
  [' 12 ', 12],
  ['−3', -3],
  ['-3', -3],
  ['0', 0],
  ['-0', 0],
  ['', undefined],
  ['-', undefined],
  ['.', undefined],
  ['1.2.3', undefined],
  ['1,2,3', undefined],
  ['12 kg', undefined],
  ['1e5', undefined],
  ['Infinity', undefined],
  ['0x10', undefined],
])('“%s” reads as %s', (text, number) => {
  expect(parseNumber(text)).toBe(number);
});

test('a small negative number prints no minus before nothing', () => {
  expect(formatNumber(-0.004, 2)).toBe('0.00');
  expect(formatNumber(-0.006, 2)).toBe('−0.01');
});

test('a printed quantity is its number, then a space that does not break, then its unit', () => {
  for (const kind of Object.keys(kinds) as KindName[]) {
    const { unit, digits: own } = kinds[kind];
    const text = format(1234.5, kind, own);
    const [number, rest] = [formatNumber(1234.5, own), text.slice(formatNumber(1234.5, own).length)];
    expect(text.startsWith(number)).toBe(true);
    expect(text).not.toContain(' ');
    expect(rest.replace(/\u00a0|\u202f/g, ' ').trim()).toBe(unit);
  }
});

test('no two kinds mean the same', () => {
  const meanings = Object.values(kindMeanings);
  expect(new Set(meanings).size).toBe(meanings.length);
});

test('a house figure as typed reads back as itself over its whole range', () => {
  for (const name of Object.keys(numberFigures) as (keyof typeof numberFigures)[]) {
    const [low, high] = numberFigures[name].range;
    for (let i = 0; i <= 20; i++) {
      const value = Number((low + ((high - low) * i) / 20).toFixed(4));
      expect(parseNumber(typedValue(name, value))).toBe(value);
    }
  }
});

test('numbers print as the platform’s own British numbers do (Unicode CLDR, en-GB)', () => {
  const wide = fc.oneof(
    fc.double({ min: -1e15, max: 1e15, noNaN: true }),
    fc.double({ min: -2, max: 2, noNaN: true }),
    fc
      .tuple(fc.integer({ min: -10_000_000, max: 10_000_000 }), fc.integer({ min: 0, max: 7 }))
      .map(([n, places]) => n / 10 ** places),
  );
  fc.assert(
    fc.property(wide, fc.integer({ min: 0, max: 6 }), (value, digits) => {
      fc.pre(Math.abs(value) * 10 ** digits < 1e15 && (value === 0 || Math.abs(value) >= 1e-6)); // a double carries no more figures, and below a millionth it is written with a power
      const published = new Intl.NumberFormat('en-GB', {
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
        signDisplay: 'negative',
      });
      expect(formatNumber(value, digits)).toBe(published.format(value).replace('-', '−'));
    }),
    { numRuns: 20_000 },
  );
});
