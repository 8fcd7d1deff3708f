// Figures of a card in the units of those who come, worked by hand: 1 US gal = 3.785411784 L, 1 lb = 0.45359237 kg (NIST Handbook 44), 1 imperial gal = 4.54609 L (Weights and Measures Act 1985).
import { expect, test } from 'vitest';
import { builtInLine } from '../../src/house/line-of.ts';
import { textOfFigure } from '../../src/house/prose.ts';
import { answerFor, inTheirs, unitForAudience, writtenFor } from '../../src/walk/audience-cards.ts';

test.each([
  ['American', 'volume', 7500, '1,981\u00a0US\u00a0gal'], // 1,981.3
  ['imperial', 'volume20', 7500, '1,650\u00a0imperial\u00a0gal'], // 1,649.8
  ['American', 'mass', 30, '66.1\u00a0lb'], // 66.139
  ['imperial', 'temperature', 64.5, '148\u00a0°F'], // 148.1
  ['American', 'temperature', 19, '66.2\u00a0°F'],
  ['American', 'mass', 7837.6, '17,280\u00a0lb'], // 17,278.9: four figures, as 7,838 kg has
  ['American', 'mass', 78_000, '172,000\u00a0lb'], // 171,960.6
  ['American', 'strength', 46, '92\u00a0US\u00a0proof'], // twice: 27 CFR 5.1
  ['American', 'strength', 26.39, '52.8\u00a0US\u00a0proof'],
  ['American', 'yield', 408.6, '195\u00a0US\u00a0proof\u00a0gal/US\u00a0ton'], // 408.6 L × 0.907185 t ÷ 1.9016 L: half a gallon at 60 °F is 1.8927 L, and 0.47 % more at 20 °C
] as const)('%s, %s of %s', (saidIn, kind, value, says) => {
  expect(inTheirs(value, unitForAudience(kind, saidIn))).toBe(says);
});

test('an estimate has three figures', () => {
  expect(inTheirs(7837.6, unitForAudience('mass', 'American'), true)).toBe('17,300\u00a0lb'); // 17,278.9
});

test('a mean of casks keeps its decimals, other counts are whole', () => {
  expect(textOfFigure('casksPerMash', 4118.2 / 225)).toBe('18.3'); // 18.30
  expect(textOfFigure('casksPerMash', 4.147)).toBe('4.1');
  expect(textOfFigure('casksPerWeek', 24.88)).toBe('25'); // a cask begun is a cask
  expect(textOfFigure('bottlesPerCask', 350.25)).toBe('350'); // a bottle begun is none
});

test('what they have no unit for, and what metric visitors read, stays in the book’s own', () => {
  expect(unitForAudience('hours', 'American').unit).toBe('h');
  for (const saidIn of ['metric', 'European', 'Japanese'] as const) expect(unitForAudience('volume', saidIn).unit).toBe('L'); // prettier-ignore
  expect(unitForAudience('strength', 'imperial').unit).toBe('% vol');
});

test('numbers are written as they write them', () => {
  expect(writtenFor('12,345.6 L, 1.058 and 900', 'European')).toBe('12.345,6 L, 1,058 and 900');
  expect(writtenFor('12,345 L of 29,000; 5,480 kg, 1.058', 'Japanese')).toBe('1万2345 L of 2万9000; 5480 kg, 1.058'); // prettier-ignore
  expect(writtenFor('12,345 L', 'American')).toBe('12,345 L');
});

test('the figures of an answer are told in their units, its other words as they stand', () => {
  const answer = ['Each mash gives ', { figure: 'wort.volume' }, ' (27 CFR 5.143).'];
  const text = (saidIn: 'American' | 'European') =>
    answerFor(answer, builtInLine(), saidIn, () => '').join('');
  expect(text('American')).toBe('Each mash gives 1,981\u00a0US\u00a0gal (27 CFR 5.143).'); // Harrowmere: 7,500 L
  expect(text('European')).toBe('Each mash gives 7.500\u00a0L (27 CFR 5.143).');
});
