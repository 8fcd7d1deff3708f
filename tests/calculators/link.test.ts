// Links with a calculator's figures: what is written is read again, for every calculator; what cannot be is left out with a sentence.
import { expect, test } from 'vitest';
import { isNumber, type AnyCalculator, type AnyGiven } from '../../src/calculators/define.ts';
import { calculators } from '../../src/calculators/index.ts';
import { readSumLink, sumLink } from '../../src/calculators/link.ts';

const all = calculators as readonly AnyCalculator[];
const given = (of: AnyCalculator) => of.examples[0].given as AnyGiven;

test.each(all.map((of) => [of.id, of] as const))(
  '%s: its first example comes back from its link',
  (_id, of) => {
    const link = sumLink(of, given(of));
    const own = Object.entries(of.inputs).filter(([, input]) => !('house' in input) && !('columns' in input));
    if (own.length === 0) return expect(link).toBe('');
    expect(readSumLink(of, link, given(of))).toEqual({
      own: Object.fromEntries(own.map(([name]) => [name, given(of)[name]])),
      problems: [],
    });
  },
);

test('what cannot be used is left out, each with a sentence; the rest is taken', () => {
  const of = all.find(({ id }) => id === 'blend-two-spirits')!;
  const [[first, input], [second]] = Object.entries(of.inputs) as [[string, never], [string, never]];
  if (!isNumber(input)) throw new Error('its first input is a number');
  const read = (hash: string) => readSumLink(of, hash, given(of))!;
  const { own, problems } = read(`#with=${first}:1e9,${second}:abc,__proto__:1,nobody:2,%E0:3`);
  expect(own).toEqual({});
  expect(problems).toHaveLength(5);
  expect(problems[0]).toContain((input as { label: string }).label);
  const { own: taken, problems: left } = read(`#with=${first}:1500,nobody:2`);
  expect(taken).toEqual({ [first]: 1500 });
  expect(left).toHaveLength(1);
  expect(read(`#with=${'x:1,'.repeat(2000)}`)).toEqual({
    own: {},
    problems: ['The link is too long to be read.'],
  });
  expect(readSumLink(of, '#house=abc', given(of))).toBeUndefined();
});
