// Where the reader of figures ends, and what size a bare gravity and a last digit have: by the rules as its files state them.
import { expect, test } from 'vitest';
import { gravityFrom } from '../../src/core/reading/gravity.ts';
import { lifted } from '../../src/core/reading/ends.ts';
import { lastDigitSize, valueOf } from '../../src/core/reading/figures.ts';
import { unitNamed } from '../../src/core/reading/unit-named.ts';
import { readWritten } from '../../src/core/reading/written.ts';

test('a text of two hundred characters is read, and not of one more', () => {
  expect(readWritten('5 L'.padStart(200), 'volume20')?.number).toBe(5);
  expect(readWritten('5 L'.padStart(201), 'volume20')).toBeUndefined();
});

test('a figure has at most sixteen digits before the decimal sign and forty behind it', () => {
  expect(valueOf('1'.repeat(16), false)).toBe(1_111_111_111_111_111);
  expect(valueOf('1'.repeat(17), false)).toBeUndefined();
  expect(valueOf(`0.${'5'.repeat(40)}`, false)).toBeCloseTo(5 / 9, 12);
  expect(valueOf(`0.${'5'.repeat(41)}`, false)).toBeUndefined();
});

test('signs that group and signs that part', () => {
  const both = (figure: string) => [valueOf(figure, false), valueOf(figure, true)];
  expect(both('1,500')).toEqual([1500, 1.5]);
  expect(both('1.500')).toEqual([1.5, 1500]);
  expect(both('0,998')).toEqual([0.998, 0.998]); // a nought before it
  for (const figure of ['1,250.5', '1.250,5', '1’250.5', '1 250.5', '1_250.5', '1250·5']) expect(both(figure)).toEqual([1250.5, 1250.5]);
  expect(both('1.000.000')).toEqual([1e6, 1e6]);
  expect(both('1,40,000')).toEqual([140_000, 140_000]);
}); // prettier-ignore

test('the last digit of a figure', () => {
  const place = (figure: string) => lastDigitSize(figure, false);
  expect(['9.0', '12', '1,200', '42,500', '100', '0', '0.050', '1 250·5'].map(place)).toEqual([0.1, 1, 100, 100, 100, 1, 0.001, 0.1]);
  expect(lastDigitSize('42.500', true)).toBe(100);
}); // prettier-ignore

test('a number as a gravity: thousandths above 500, degrees from 2 to 200 and from −1 to −20', () => {
  const as = [[1058, 1.058], [998, 0.998], [501, 0.501], [500, 500], [58, 1.058], [2, 1.002], [1.999, 1.999], [200, 1.2], [200.5, 200.5], [1.058, 1.058], [-1, 0.999], [-20, 0.98], [-0.5, -0.5], [-20.5, -20.5], [0, 0]] as const;
  for (const [said, is] of as) expect(gravityFrom(said), String(said)).toBe(is);
}); // prettier-ignore

test('the first end of “5-6,000” is five thousand, where it lies below the second then and far below it otherwise', () => {
  const ends = (first: number, second: number, scales: readonly [number, number] = [1, 1]) => lifted({ value: first, scale: scales[0] }, { value: second, scale: scales[1] });
  expect([ends(5, 6000), ends(5, 6_000_000, [1, 1e6])]).toEqual([5000, 5_000_000]);
  expect([ends(7, 6000), ends(6, 6000)]).toEqual([7, 6]); // it would not lie below it
  expect([ends(900, 6_000_000), ends(120, 6000), ends(119, 120_000, [1, 1000])]).toEqual([900_000, 120, 119_000]); // a fiftieth and more is a number of its own
  expect([ends(5, 600), ends(5000, 6_000_000, [1000, 1e6])]).toEqual([5, 5000]);
}); // prettier-ignore

test('the last digit of a number with a half said behind it is that of the half', () => {
  expect(readWritten('3 and a half tonnes', 'mass')).toMatchObject({ number: 3.5, place: 0.1 });
  expect(readWritten('42 thousand L', 'volume20')).toMatchObject({ number: 42_000, place: 1000 });
});

test('gravity has a name that is its own, and a count none', () => {
  expect(unitNamed('SG', 'gravity')).toMatchObject({ unit: { unit: '' } });
  expect([unitNamed('', 'gravity'), unitNamed('casks', 'count'), unitNamed('L', 'count')]).toMatchObject([{ unit: 'none' }, { unit: 'none' }, { unit: 'other' }]);
}); // prettier-ignore
