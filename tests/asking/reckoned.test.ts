// Questions with numbers of their own, against sums done by hand and figures printed elsewhere.
import { expect, test } from 'vitest';
import { answerer, isAnswer } from '../../src/asking/answer.ts';
import { countryIn, quantitiesIn, wantedUnit } from '../../src/asking/quantities.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { list } from './list.ts';

const answer = answerer(list);
function told(question: string, before?: string): string {
  const found = answer({ question, house: builtInHouse, before });
  return isAnswer(found) ? found.says.replace(/[\u00a0\u202f]/g, ' ') : '?';
}

test.each([
  ['how much alcohol is in 3 litres at 63 %?', '1.89 L pure alcohol'], // 3 × 0.63
  ['what is 5,000 litres in US gallons?', '1,321 US gal'], // 5000 ÷ 3.785411784, NIST Handbook 44
  ['what is 5,000 litres in imperial gallons?', '1,100 UK gal'], // 5000 ÷ 4.54609, Weights and Measures Act 1985
  ['what is 20 C in fahrenheit', '68 °F'], // by definition of the scale
  ['how many litres of pure alcohol are 500 US proof gallons', '950.9'], // 500 × 1.9018, 27 CFR 19.1 at 20 °C; the chapter on proof prints it
  ['46 percent, what is that in US proof', '91.9'], // 2 × 46 at 60 °F, which is 45.94 there
  ['what is 80 proof in abv', '40'], // 27 CFR 5: 80 proof is 40 % at 60 °F; 40.03 at 20 °C
  ['what’s 1.060 in Plato?', '14.7'], // NBS Circular 440: 14.74 °P
  ['how much water brings 1,000 litres from 70 to 63.5 %', '108 L of water'], // 107.8 by OIML R 22, worked in the chapter on strength
  ['mix 50 litres of 100 % with 50 litres of 0.001 %', '96.4'], // OIML R 22: 50 and 50 make 96.46
  ['how many units in 25 ml of 40 %', '1.0 British units'], // UK Chief Medical Officers’ guidelines 2016: 25 mL at 40 % is a unit
  ['what if the angels took 4 percent instead of 2, after ten years', '66 %'], // 0.96^10 = 0.665
  ['20 t of malt makes how many mashes', '13'], // 20 ÷ 1.5 = 13.3
])('%s', (question, says) => {
  const text = told(question);
  const [number] = /[\d,.]+/.exec(says)!;
  if (number === says) {
    const value = Number(says);
    const numbers = [...text.matchAll(/\d[\d,]*(?:\.\d+)?/g)].map(([each]) =>
      Number(each.replaceAll(',', '')),
    );
    expect(
      numbers.some((each) => Math.abs(each - value) <= 0.005 * value),
      text,
    ).toBe(true);
  } else expect(text).toContain(says);
});

test('a part of the line goes in proportion, and back', () => {
  const there = Number(/about ([\d,]+) bottles/i.exec(told('how many bottles from 30 tonnes of malt'))![1]!.replaceAll(',', '')); // prettier-ignore
  const back = Number(
    /About ([\d,.]+) t of malt/.exec(told(`how many tonnes of malt for ${there} bottles`))![1],
  );
  expect(Math.abs(back - 30)).toBeLessThan(0.05);
});

test('what was told is told again in another unit', () => {
  const before = 'how much spirit from one run';
  expect(told('and what’s that in US gallons?', before)).toMatch(/223\.\d US gal|223 US gal/); // 846 L ÷ 3.7854
  expect(told('in US proof gallons?', 'how much do you make a year')).toMatch(/85,9\d\d US proof gal/); // 163,500 L ÷ 1.9018
});

test('a question why is never taken for a sum', () => {
  expect(told('why 3 years?')).toMatch(/law/);
  expect(told('why is your wash 8 and my beer 5?')).toMatch(/sweeter/);
});

test('a change that cannot be says why, and a house with another figure answers otherwise', () => {
  expect(told('what if you bottled at 120 %')).not.toMatch(/NaN/);
  expect(told('what if I filled it at 80 %')).toMatch(/^Water cannot make it stronger/);
  const weaker = answer({ question: 'how strong is it in the bottle', house: { ...builtInHouse, bottlingStrength: 40 as never } }); // prettier-ignore
  expect(isAnswer(weaker) && weaker.says).toContain('40.0');
});

test('numbers, units and countries are read', () => {
  expect(quantitiesIn('twenty tonnes and 3.5 litres at 63 %').map(({ number, unit }) => [number, unit])).toEqual([
    [20, 't'], [3.5, 'L'], [63, '%'],
  ]); // prettier-ignore
  expect(wantedUnit('how much is that in US proof gallons', 'US')?.unit).toBe('US proof gal');
  expect(wantedUnit('why is it so')).toBeUndefined();
  expect(countryIn('in imperial gallons')).toBe('UK');
});

test('nonsense is answered without a fault', () => {
  for (const question of ['%%%', '1e999 litres in gallons', '-5 litres at 500 %', '٣ litres', 'how much is 0 t of malt in casks', '𝟙𝟚 casks', 'what if you bottled at -3 %', 'how much is left of a 200 litre cask after 9999 years', '(((', '\u202e 5 L', 'in in in in gallons to to'])
    expect(told(question), question).not.toMatch(/NaN|undefined|Infinity/);
}); // prettier-ignore
