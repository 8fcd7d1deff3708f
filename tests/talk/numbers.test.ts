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
  ['.72', 0.72],
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
  ['1,40,000', 140_000],
  ['two hundred zero five', 205],
  ['thirteen thousand zero fifty', 13_050],
  ['one point oh seventy-two', 1.072],
  ['eight coma one', 8.1],
  ['vierzehn? fourteen komma seven', 14.7],
  ['point one three', 0.13],
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
  ['Each takes fifteen thousand litres; they would hold eighteen to the brim.', [[15_000, 'L'], [18_000, 'L']]],
  ['We make nine million litres a year. In 2009 it was 0.8. The wash is at 8.', [[9e6, 'L'], [2009, ''], [8e5, 'L'], [8, '']]],
  ['It holds two thousand litres and takes seven hours', [[2000, 'L'], [7, 'h']]],
  ['Husk two, grits seven, flour one.', [[0.2, ''], [0.7, ''], [0.1, '']]],
  ['60:30:10', [[60, ''], [30, ''], [10, '']]],
  ['18 – 72 – 10', [[18, ''], [72, ''], [10, '']]],
  ['Sixty per cent barrels, thirty-seven hogsheads', [[60, '%'], [37, '%']]],
  ['minus one; three degrees below water; it is nineteen below out there', [[-1, ''], [-3, '° gravity'], [-19, '']]],
  ['It burned in seventy-four and again in oh-eight. It goes in at seventy-four.', [[1974, ''], [2008, ''], [74, '']]],
  ['Wait an hour; for a week; an hour and thirty. Sixty a week, two per cent a year.', [[1, 'h'], [1, 'weeks'], [1.5, 'h'], [60, ''], [2, '%']]],
  ['It fills just one cask, and we had one barrel. One cask makes three hundred bottles.', [[1, ''], [1, ''], [300, '']]],
  ['The first gallon and a half; twelve casks and a half', [[1.5, 'UK gal'], [12.5, '']]],
  ['The gin is thirty-two pounds. Ten kilos of malt. Eighty pence; three pound eighty', [[32, '£'], [10, 'kg'], [0.8, '£'], [3.8, '£']]],
  ['five pounds of yeast, ten kilos of malt', [[5, 'lb'], [10, 'kg']]],
  ['half of one per cent', [[0.5, '%']]],
  ['the other tenth is butts, the remaining tenth flour', [[0.1, ''], [0.1, '']]],
  ['regular fifty-threes', [[53, '']]],
  ['sixty-three and half nine casks', [[63.5, ''], [9, '']]],
  ['1,900 times 0.56 is 1,064', [[1900, ''], [0.56, ''], [1064, '']]],
  ['four times a day', [[4, '']]],
  ['460: 1,058 minus 245 minus 353', [[460, ''], [1058, ''], [245, ''], [353, '']]],
  ['in 0.998; 3.900 litres and 5.200 litres', [[0.998, ''], [3900, 'L'], [5200, 'L']]],
  ['four gallons in a hundred ninety, two percent', [[4, 'UK gal'], [190, ''], [2, '%']]],
  ['one to two per cent', [[[1, 2], '%']]],
  ['2.5M a year, a tower of 12m', [[2_500_000, ''], [12, 'm']]],
  ['two tons by hour', [[2, 't/h']]],
  ['it runs till noon', [[12, '']]],
  ['We put it apart. We begin it in seventy-three.', [[73, '']]],
  ['We want 8.6 ten-thousand litres and nine ten-thousand bottles.', [[86_000, 'L'], [90_000, '']]],
  ['4.79 × 10⁶ L and 2 × 10 L', [[4_790_000, 'L'], [2, ''], [10, 'L']]],
  ['the pump gives 40 m3/h, the fan 2,000 cubic metres an hour', [[40, 'm³/h'], [2000, 'm³/h']]],
  ['the bell rings at half per cent', [[0.5, '%']]],
  ['throw off the first quarter of an hour', [[15, 'min']]],
  ['It does a ton an hour.', [[1, 't/h']]],
  ['How many weeks?\n\n38. Hay and Christmas.', [[38, '']]],
  ['1. How many weeks?\n2. Who works them? And 40 hours', [[40, 'h']]],
  ['Six ton, that is a hundred and twenty hundredweight', [[6, 'UK tons'], [120, 'cwt']]],
  ['Two tons, or 4,000 pounds of malt, at 130 proof; one metric ton', [[2, 'US tons'], [4000, 'lb'], [130, '° US proof'], [1, 't']]],
  ['−', []],
] as const)('“%s” is read', (text, expected) => expect(read(text)).toEqual(expected)); // prettier-ignore

const unstopped =
  'so this is the mash tun and we fill it four times in the week and you can all see the water running in there look at that lovely and that is';
test.each([
  ['sixty for degrees and it gives ate hundred and fifty litres', [[64, '°C'], [850, 'L']]],
  ['one point oh five ate and twenty to and a half per cent in forty ate weeks', [[1.058, ''], [22.5, '%'], [48, 'weeks']]],
  ['ate tea per cent of it from sixty to a hundred', [[80, '%'], [[60, 100], '%']]],
] as const)('in a text without stops “%s” is read as it sounds', (text, expected) => {
  expect(read(`${unstopped} ${text} ${unstopped} ${unstopped}`).slice(1, -2)).toEqual(expected);
}); // prettier-ignore
test('words that sound like numbers are words in a text with stops', () => {
  const stopped = `${'This is the mash tun. '.repeat(20)} We ate hundred-year-old bread at sixty, for degrees.`;
  expect(read(stopped)).toEqual([[100, 'years'], [60, '']]); // prettier-ignore
});

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
  const clock = (text: string) => quantitiesIn(text).map(({ value, dimension }) => [value, dimension]);
  expect(clock('The bus leaves at four thirty. The bar shuts at ten. Half five? It is seven in the morning.')).toEqual([[4.5, 'clock'], [10, 'clock'], [5.5, 'clock'], [7, 'clock']]); // prettier-ignore
  expect(clock('Come by 10:30, before 10.15, half past one; the wash is at 8.25 now.')).toEqual([[10.5, 'clock'], [10.25, 'clock'], [1.5, 'clock'], [8.25, 'bare']]); // prettier-ignore
  expect(quantitiesIn('We open at 10 o’clock, at 5.30pm, at half past four.').map(({ value, dimension }) => [value, dimension])).toEqual([[10, 'clock'], [17.5, 'clock'], [4.5, 'clock']]); // prettier-ignore
});
