// The formulas of questions of one's own: read by their grammar, reckoned as by hand, held together by their units, and safe against mischief.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { kinds } from '../../src/core/kinds.ts';
import { isRefusal } from '../../src/core/refusal.ts';
import { dimensionOfSigns } from '../../src/exercises/own/dimension.ts';
import { formulaText, LONGEST_FORMULA, readFormula, type Formula } from '../../src/exercises/own/formula.ts';
import { measuredBy, reckoner, type NamedValue } from '../../src/exercises/own/reckon.ts';
import { hostileTexts } from './own-hostile.ts';

const read = (text: string): Formula => {
  const formula = readFormula(text);
  if (isRefusal(formula)) throw new Error(`${text}: ${formula.refused}`);
  return formula;
};
const named: readonly NamedValue[] = [
  { name: 'malt', kind: 'mass', unit: 'kg' },
  { name: 'wort', kind: 'volume', unit: 'L' },
  { name: 'yield', kind: 'yield', unit: 'L pure alcohol/t' },
  { name: 'strength', kind: 'strength', unit: '% vol' },
];
const numbers = new Map([['malt', 4000], ['wort', 20000], ['yield', 410], ['strength', 8]]); // prettier-ignore
const reckoned = (text: string) => reckoner(read(text), named)(numbers);
const refusal = (text: string) => {
  const formula = readFormula(text);
  const found = isRefusal(formula) ? formula : measuredBy(formula, named);
  return isRefusal(found) ? found.refused : undefined;
};

test('sums done by hand', () => {
  const sums: readonly (readonly [string, number])[] = [
    ['2 + 3 × 4', 14], // × before +
    ['(2 + 3) × 4', 20],
    ['20 / 2 / 5', 2], // from the left
    ['10 − 4 − 3', 3],
    ['−2^2', -4], // the power first
    ['2^3^2', 512], // powers from the right: 2^9
    ['2^−1', 0.5],
    ['-3 + 5', 2],
    ['up(7.2) * down(2.9)', 16],
    ['least(4; 2; 9) + most(1; 8)', 10],
    ['sqrt(16) ÷ abs(2 − 4)', 2],
    ['log(1000) + ln(1) + exp(0)', 4],
    ['malt / 1000 × yield', 1640], // 4 t × 410
    ['malt[t] × yield', 1640],
    ['wort × strength / 100', 1600],
    ['wort[hL] × 0.5', 100],
  ];
  for (const [text, sum] of sums) expect(reckoned(text), text).toBeCloseTo(sum, 9);
});

test('with their units, no thousand is lost between tonnes and kilograms', () => {
  const large: readonly NamedValue[] = [
    { name: 'malt', kind: 'mass', unit: 't' },
    { name: 'ratio', kind: 'liquorRatio', unit: 'L/kg' },
    { name: 'steam', kind: 'power', unit: 'kW' },
  ];
  const of = new Map([['malt', 7], ['ratio', 4.3], ['steam', 200]]); // prettier-ignore
  const inBase = (text: string) => reckoner(read(text), large, true)(of); // kg, L, h, MJ
  expect(inBase('malt × ratio')).toBeCloseTo(30_100, 6); // 7,000 kg × 4.3 L/kg
  expect(inBase('malt[kg] × ratio')).toBeCloseTo(30_100, 6);
  expect(inBase('steam × 3[h]')).toBeCloseTo(2160, 6); // 600 kWh of 3.6 MJ
  expect(inBase('steam × 90[min]')).toBeCloseTo(1080, 6);
  expect(inBase('malt × 0.5[hL/t]')).toBeCloseTo(350, 6);
});

test('what is no formula is refused in a sentence', () => {
  const texts = ['', '  ', '2 +', '* 3', '2 malt', '(2)(3)', 'malt(2)', '2 3', '1,5', '50 %', '.5', '5.', '1e5', '2 ++ 3', '3 × −2', '(1', '1)', 'least(1)', 'sqrt(1; 2)', 'a[', 'a]', '2 = 2', 'malt; 3', 'x'.repeat(LONGEST_FORMULA + 1), '9'.repeat(20), '('.repeat(100), 'constructor(1)', '__proto__', '1_000', '2 ** 3']; // prettier-ignore
  for (const text of texts) {
    const formula = readFormula(text);
    expect(isRefusal(formula) ? formula.refused : "read", text).toMatch(/^[“A-Z].+[.)]$/);
  }
}); // prettier-ignore

test('units hold a formula together', () => {
  expect(refusal('malt + wort')).toContain('a mass and a volume');
  expect(refusal('malt[L]')).toContain('cannot be told in');
  expect(refusal('ghost')).toContain('No value is called');
  expect(refusal('toString')).toContain('No value is called');
  expect(refusal('ln(malt)')).toContain('plain number');
  expect(refusal('2[ell]')).toContain('no unit');
  expect(refusal('malt^strength')).toContain('written number');
  expect(refusal('wort × 0.789[kg/L] + malt')).toBeUndefined();
  expect(refusal('sqrt(malt^2) + malt')).toBeUndefined();
  for (const { unit } of Object.values(kinds)) expect(isRefusal(dimensionOfSigns(unit)), unit).toBe(false);
});

/** Any tree of the grammar, with the number that plain JavaScript makes of it by another way. */
const tree: fc.Arbitrary<{ readonly formula: Formula; readonly value: number }> = fc.letrec<{ node: { readonly formula: Formula; readonly value: number } }>((tie) => ({
  node: fc.oneof(
    { maxDepth: 5 },
    fc.integer({ min: 0, max: 1000 }).map((whole) => ({ formula: { is: 'number' as const, value: whole / 8 }, value: whole / 8 })),
    fc.constantFrom(...numbers).map(([name, value]) => ({ formula: { is: 'name' as const, name }, value })),
    tie('node').map(({ formula, value }) => ({ formula: { is: 'negative' as const, of: formula }, value: 0 - value })),
    fc.tuple(fc.constantFrom('+' as const, '−' as const, '×' as const, '/' as const, '^' as const), tie('node'), tie('node')).map(([is, left, right]) => ({
      formula: { is, left: left.formula, right: right.formula },
      value: { '+': left.value + right.value, '−': left.value - right.value, '×': left.value * right.value, '/': left.value / right.value, '^': Math.pow(left.value, right.value) }[is],
    })),
  ),
})).node; // prettier-ignore

test('a tree that is written and read again comes to the same number', () => {
  fc.assert(
    fc.property(tree, ({ formula, value }) => {
      const text = formulaText(formula);
      fc.pre(text.length <= LONGEST_FORMULA);
      const again = readFormula(text);
      fc.pre(!isRefusal(again) || !/more than/.test(again.refused));
      if (isRefusal(again)) throw new Error(`${text}: ${again.refused}`);
      expect(formulaText(again)).toBe(text);
      expect(reckoner(again, named)(numbers) + 0).toBe(value + 0); // −0 is 0
    }),
    { numRuns: 300 },
  );
});

test('no text does harm, takes long or escapes the reader', () => {
  const begun = performance.now();
  for (const text of hostileTexts) expect(() => refusal(text)).not.toThrow();
  fc.assert(
    fc.property(fc.string({ maxLength: 60, unit: fc.constantFrom(...'0123456789.+-−×/^();[]abmalt %,=\u202e'.split('')) }), (text) => void refusal(text)),
    { numRuns: 500 },
  );
  expect((globalThis as { hurt?: unknown }).hurt).toBeUndefined();
  expect(performance.now() - begun).toBeLessThan(5000);
}); // prettier-ignore
