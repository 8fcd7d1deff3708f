// Numbers in digits and words, their units, ranges and lists.
import { expect, test } from 'vitest';
import { numbersIn } from '../../src/core/reading/numbers.ts';
import { quantitiesIn } from '../../src/talk/quantities.ts';
import { inUnit } from '../../src/talk/units.ts';

test.each([
  ['six thousand', 6000],
  ['five and a half thousand', 5500],
  ['one and a half', 1.5],
  ['twenty-two', 22],
  ['twenty two', 22],
  ['a hundred and fifty', 150],
  ['63.5', 63.5],
  ['63·5', 63.5],
  ['1,058', 1058],
  ['12 000', 12_000],
  ['1.000.000', 1e6],
  ['ten fifty-eight', 1058],
  ['nineteen sixty-eight', 1968],
  ['ten oh four', 1004],
  ['nine nine eight', 998],
  ['one oh five eight', 1058],
  ['one point oh five eight', 1.058],
  ['sixty-four point five', 64.5],
  ['one thousand and fifty-seven', 1057],
  ['six thousand two hundred and fifty', 6250],
  ['eighteen hundred and fifty', 1850],
  ['eleven million', 11e6],
  ['a million and a quarter', 1.25e6],
  ['half a million', 5e5],
  ['three quarters of a million', 75e4],
  ['two thirds', 2 / 3],
  ['2½', 2.5],
  ['1/2', 0.5],
  ['three and three quarter', 3.75],
  ['a dozen', 12],
  ['40k', 40_000],
] as const)('%s is %d', (text, value) => {
  const { numbers } = numbersIn(text);
  expect(numbers).toHaveLength(1);
  expect(numbers[0]!.value).toBeCloseTo(value, 9);
});

test.each(['a', 'and a half', 'point', 'hundred', 'the second', 'oh no', '9'.repeat(400)])(
  '%s is no number',
  (text) => expect(numbersIn(text).numbers).toEqual([]),
);

const read = (text: string) => quantitiesIn(text).map(({ value, range, unit }) => [range ?? value, unit]);
test.each([
  ['seventy-two down to sixty per cent', [[72, '%'], [60, '%']]],
  ['5-6,000 litres', [[[5000, 6000], 'L']]],
  ['between 60 and 70 hours', [[[60, 70], 'h']]],
  ['sixty to seventy hours', [[[60, 70], 'h']]],
  ['four or five days', [[[4, 5], 'days']]],
  ['64, 75 and 85 degrees', [[64, '°C'], [75, '°C'], [85, '°C']]],
  ['20/70/10', [[20, ''], [70, ''], [10, '']]],
  ['2,4 tonnes and 12.000 litres of 1,059', [[2.4, 't'], [12_000, 'L'], [1.059, '']]],
  ['a tonne and a half', [[1.5, 't']]],
  ['half an hour', [[0.5, 'h']]],
  ['98 in a hundred', [[98, '%']]],
  ['eleven over proof', [[111, '° proof']]],
  ['148 °F and then 165 degrees', [[148, '°F'], [165, '°F']]],
  ['US gallons: 10 US gallons, later 20 gallons', [[10, 'US gal'], [20, 'US gal']]],
  ['410 litres of pure alcohol to the tonne', [[410, 'L pure alcohol/t']]],
  ['7.7% abv; 8 per cent alcohol by volume', [[7.7, '% vol'], [8, '% vol']]],
  ['8,1 % vol', [[8.1, '% vol']]],
  ['one of the best, the 1st, CO2, no one, one day', []],
  ['it goes from one-oh-six-oh to nine-nine-eight, in a seven-fifty', [[1060, ''], [998, ''], [750, '']]],
  ['saxty-three an a half per cent, and fower thoosand sax hunner an ninety litres', [[63.5, '%'], [4690, 'L']]],
  ['One wash still and one spirit still. How many? One.', [[1, ''], [1, ''], [1, '']]],
  ['Three pairs, and seventeen one in each', [[6, ''], [17_100, '']]],
  ['filled at sixty-three five', [[63.5, '']]],
  ['seven, eight hours; seventy-five, seventy-six thousand litres', [[[7, 8], 'h'], [[75_000, 76_000], 'L']]],
  ['a beer of a little over seven — 7.2 per cent', [[7, ''], [7.2, '%']]],
  ['9 of every 10, a third, and half of the casks', [[0.9, ''], [0.333, ''], [0.5, '']]],
  ['800 kilograms per hour, six hundred kilos in the hour', [[800, 'kg/h'], [600, 'kg/h']]],
  ['12.6 kt, four quintals, 4.000 litres and the hundred kilos', [[12_600, 't'], [400, 'kg'], [4000, 'L'], [100, 'kg']]],
  ['one thousand, two hundred and ninety-five litres', [[1295, 'L']]],
  ['Two brews daily, all seven days. We mash every day except Sunday.', [[14, ''], [6, '']]],
  ['We cook Monday through Friday. Fifty weeks.', [[5, ''], [50, 'weeks']]],
  ['Monday to Friday, so five.', [[5, '']]],
  ['Two daily from Tuesday to Friday', [[8, '']]],
  ['−', []],
] as const)('“%s” is read', (text, expected) => expect(read(text)).toEqual(expected)); // prettier-ignore

test('units come to the handbook’s own', () => {
  expect(inUnit(1, 't', 'kg')).toBe(1000);
  expect(inUnit(212, '°F', '°C')).toBeCloseTo(100, 9); // water boils
  expect(inUnit(750, 'mL', 'cL')).toBeCloseTo(75, 9);
  expect(inUnit(3, 'days', 'h')).toBe(72);
  expect(inUnit(1, 'US gal', 'L')).toBeCloseTo(3.785411784, 9); // NIST Handbook 44
  expect(inUnit(100, '° proof', '% vol')).toBeCloseTo(57.1, 0); // former British proof spirit, from memory
  expect(inUnit(1058, '', 'gravity')).toBeCloseTo(1.058, 9);
  expect(inUnit(126, '° US proof', '% vol')).toBeCloseTo(63, 0); // twice the strength, near enough: 60 °F is not 20 °C
});

test('times of day and marks beside a text are not figures', () => {
  expect(read('12:34 wort at 64 degrees')).toEqual([[64, '°C']]);
  expect(quantitiesIn('We open at 10 o’clock, at 5.30pm, at half past four.').map(({ value, dimension }) => [value, dimension])).toEqual([[10, 'clock'], [17.5, 'clock'], [4.5, 'clock']]); // prettier-ignore
});
