// A reader learnt without one author reads that author's talks: learnt anew each time, so that no stored number is believed.
import { expect, test } from 'vitest';
import measured from './measured.json' with { type: 'json' };
import { judgedWithout } from './left-out.ts';

const LEFT_OUT = 'cinderford';

test('talks of an author that it has not learnt from are found and matched, as often as is told', () => {
  const all = judgedWithout(LEFT_OUT);
  const sum = (of: keyof (typeof measured)['whole'] & ('found' | 'quantities' | 'matched' | 'figures' | 'wrong' | 'proposed')) =>
    all.reduce((total, { judgement }) => total + judgement[of], 0);
  expect(sum('found') / sum('quantities')).toBeGreaterThan(0.94);
  expect(sum('matched') / sum('figures')).toBeGreaterThan(0.72);
  expect(sum('wrong') / sum('proposed')).toBeLessThan(0.07);
  // The accuracy page tells the same of this author: the meter was run since the reader last changed.
  const row = measured.rows.find(({ author }) => author === LEFT_OUT)!;
  for (const of of ['found', 'matched', 'proposed'] as const)
    expect(Math.abs(sum(of) / row[of] - 1), of).toBeLessThan(0.03);
}, 600_000); // prettier-ignore
