// How a figure is said, and the sum that a sentence of the cross-check gives, by hand.
import { expect, test } from 'vitest';
import type { Quoted } from '../../src/core/cross-check/quoted.ts';
import { reconcile } from '../../src/core/cross-check/reconcile.ts';
import { spokenFigure } from '../../src/core/line/spoken.ts';
import { findingSentences } from '../../src/core/cross-check/verdict.ts';
import { answer } from './draw.ts';

test('malt is said in kilos below a tonne, and in halves from one tonne to twelve and a half', () => {
  const said = (kilograms: number, ends?: readonly [number, number]) => spokenFigure('maltPerMash', kilograms, ends);
  expect([999, 1000, 1500, 6500, 12_500, 13_000, 12_400].map((each) => said(each))).toEqual(['999 kilos', 'one tonne', 'one and a half tonnes', 'six and a half tonnes', 'twelve and a half tonnes', '13 tonnes', '12.4 tonnes']);
  expect(said(6500, [6300, 6700])).toBe('six and a half tonnes'); // in the middle of what it may be
  expect(said(6450, [6440, 6460])).toBe('just under 6.5 tonnes');
  expect([said(0), spokenFigure('heartVolume', 0.04), spokenFigure('heartVolume', 0.05)]).toEqual(['hardly any kilos', 'hardly any litres', 'about 0.1 litres']);
  expect([5400, 42_500, 1e6].map((each) => spokenFigure('heartVolume', each))).toEqual(['5,400 litres', '42,500 litres', 'one million litres']);
  for (const none of [-1, NaN, 1e12]) expect(() => said(none)).toThrow(/cannot be said/);
}); // prettier-ignore

const said = (quoted: Record<string, number>) =>
  findingSentences(answer(reconcile(Object.fromEntries(Object.entries(quoted).map(([figure, value]) => [figure, { as: 'exact', value }])) as Quoted))).join('\n'); // prettier-ignore

test('too little wort for its malt: 5,000 L of 1.058 at 14.29 °Plato hold 755 kg, of the 1,170 kg in 1,500 kg of malt at 78 %', () => {
  const text = said({ maltPerMash: 1500, wortVolume: 5000, originalGravity: 1.058, solubleExtract: 78 });
  // 755 ÷ 1,170 are 64.5 %.
  expect(text).toMatch(/Wort from a mash: at 5,000 L, the wort would hold 64\.5 % of the extract in the malt; a mash brings about 97 %/);
}); // prettier-ignore

test('too much malt for its weeks: six mashes of 2,000 kg take 12,000', () => {
  const text = said({ maltPerMash: 2000, mashesPerWeek: 6, maltPerWeek: 15_000 });
  expect(text).toMatch(/^One of these is likely wrong, and nothing else quoted tells which: /);
  expect(text).toMatch(/the week’s malt is 15,000 kg, but the week’s mashes take 12,000 \(2,000 kg × 6 is 12,000\)/);
  expect(text).toMatch(/Mashes a week: .*; check the mashes a week\./); // the house sets it
}); // prettier-ignore

test('things have no unit behind their number: 25 casks a week in 46 weeks are 1,150, and 1,000 a year in ten years 10,000', () => {
  expect(said({ casksPerWeek: 25, weeksPerYear: 46, casksPerYear: 2000 })).toContain('the year’s casks are 2,000, but its weeks make 1,150 (25 × 46 is 1,150)'); // prettier-ignore
  expect(said({ casksPerYear: 1000, yearsInWood: 10, casksInStore: 20_000 })).toContain('the store holds 20,000 casks, but the years of filling make 10,000 (1,000 × 10 years is 10,000)'); // prettier-ignore
});
