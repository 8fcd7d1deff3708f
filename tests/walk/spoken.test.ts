// Numbers in words: by hand, and read back by the reader of numbers, which shares no code with them.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { numbersIn } from '../../src/core/reading/numbers.ts';
import {
  britishStyle,
  numberInWords,
  styleOfNumber,
  wholeInWords,
  type Spoken,
} from '../../src/walk/spoken.ts';

const read = (words: string) => {
  const { tokens, numbers } = numbersIn(words);
  return numbers.length === 1 && numbers[0]!.next === tokens.length ? numbers[0]!.value : undefined;
};

// Source: common British and American usage, as grammars of English set it out; from memory.
test.each([
  [0, 'nought'],
  [7, 'seven'],
  [13, 'thirteen'],
  [40, 'forty'],
  [64, 'sixty-four'],
  [100, 'a hundred'],
  [101, 'a hundred and one'],
  [250, 'two hundred and fifty'],
  [1000, 'a thousand'],
  [1001, 'one thousand and one'],
  [5480, 'five thousand four hundred and eighty'],
  [27_412, 'twenty-seven thousand four hundred and twelve'],
  [510_000, 'five hundred and ten thousand'],
  [1_000_050, 'one million and fifty'],
  [2_310_000, 'two million three hundred and ten thousand'],
])('%d is “%s”', (value, words) => {
  expect(numberInWords(value)).toBe(words);
});

test.each<[number, Partial<Spoken>, string]>([
  [250, { and: false }, 'two hundred fifty'],
  [1001, { and: false }, 'one thousand one'],
  [150, { article: true }, 'a hundred and fifty'],
  [63.5, { style: 'halves' }, 'sixty-three and a half'],
  [63.25, { style: 'halves' }, 'sixty-three and a quarter'],
  [63.2, { style: 'halves' }, 'sixty-three point two'],
  [0.25, { nought: false }, 'point two five'],
  [0.25, {}, 'nought point two five'],
  [1.058, {}, 'one point oh five eight'],
  [5500, { style: 'scaled', scale: 1000 }, 'five and a half thousand'],
  [5400, { style: 'scaled', scale: 1000 }, 'five thousand four hundred'],
  [2_300_000, { style: 'scaled', scale: 1e6 }, 'two point three million'],
  [1_500_000, { style: 'after', scale: 1e6, article: true }, 'a million and a half'],
  [1200, { style: 'hundreds' }, 'twelve hundred'],
  [1350, { style: 'hundreds' }, 'thirteen hundred and fifty'],
  [2000, { style: 'hundreds' }, 'two thousand'],
  [1058, { style: 'pairs' }, 'ten fifty-eight'],
  [1005, { style: 'pairs' }, 'ten oh five'],
  [998, { style: 'pairs' }, 'nine nine eight'],
  [154, { style: 'unsaid' }, 'one fifty-four'],
  [-2, {}, 'minus two'],
])('%d in the style of %o is “%s”', (value, style, words) => {
  expect(numberInWords(value, { ...britishStyle, ...style })).toBe(words);
});

test('the reader of numbers hears the number that was said', () => {
  const styles = ['plain', 'halves', 'scaled', 'hundreds'] as const;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9_999_999 }), fc.constantFrom(...styles), fc.boolean(), (value, style, and) => {
      const scale = value >= 1e6 ? 1e6 : 1000;
      expect(read(numberInWords(value, { ...britishStyle, style, scale, and }))).toBe(value);
    }),
  );
}); // prettier-ignore

test('so it does of decimals', () => {
  fc.assert(
    fc.property(fc.integer({ min: 101, max: 99_999 }), (thousandths) => {
      expect(read(numberInWords(thousandths / 100))).toBeCloseTo(thousandths / 100, 9);
    }),
  );
});

test('a style is known again by its words', () => {
  const all = ['plain', 'halves', 'scaled', 'hundreds', 'pairs', 'unsaid'] as const;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 400_000 }), fc.constantFrom(...all), (quarters, style) => {
      const value = style === 'halves' ? quarters / 4 : quarters;
      const words = numberInWords(value, { ...britishStyle, style, scale: 1000 });
      expect(numberInWords(value, styleOfNumber(words, value))).toBe(words);
    }),
  );
});

test('whole numbers never end in “and”, nor say a nought among other words', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999_999_999 }), (n) => {
      expect(wholeInWords(n)).not.toMatch(/and$|nought|\s\s/);
    }),
  );
});
