// Seven authors from whom the reader was never learnt: told the job and the list of figures, not the code, and first read once the reader was done.
import { expect, test } from 'vitest';
import measured from '../../src/published/measured/talks.json' with { type: 'json' };
import { neverLearnt } from './left-out.ts';

test('talks of authors from whom nothing was learnt are found, matched and asked as the accuracy page tells', () => {
  const all = neverLearnt().map(({ judgement }) => judgement);
  const sum = (of: 'found' | 'quantities' | 'matched' | 'figures' | 'wrong' | 'proposed') =>
    all.reduce((total, judgement) => total + judgement[of], 0);
  expect(all.length).toBe(37);
  expect(sum('found') / sum('quantities')).toBeGreaterThan(0.975);
  expect(sum('matched') / sum('figures')).toBeGreaterThan(0.91);
  expect(sum('wrong') / sum('proposed')).toBeLessThan(0.02);
  for (const of of ['found', 'matched', 'wrong', 'figures'] as const)
    expect(measured.never[of], of).toBe(sum(of));
});
