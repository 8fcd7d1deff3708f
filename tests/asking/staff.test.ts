// What share of questions by staff and visitors is answered with all that a right answer must hold; and how many wrongly, as if sure.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { answerer } from '../../src/asking/answer.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { fateOf, type HeldQuestion } from './holds.ts';
import { entries, list } from './list.ts';

const answer = answerer(list);
const unknown = new Set(entries.filter((entry) => entry.unknown).map(({ id }) => id));
const WRONG = 0.05; // told as if sure; some by a pattern that is too narrow

test.each([
  ['staff.yaml', 0.6, 0.85],
  ['afresh.yaml', 0.48, 0.7],
])('%s', (file, right, withMeant) => {
  const asked = parse(readFileSync(join(import.meta.dirname, file), 'utf8')) as readonly HeldQuestion[];
  const fates = asked.map((each) => ({ q: each.q, fate: fateOf(each, answer({ question: each.q, house: builtInHouse }), unknown) }));
  const share = (fate: string) => fates.filter((each) => each.fate === fate).length / fates.length;
  const told = fates.filter(({ fate }) => fate !== 'right').map(({ q, fate }) => `${fate}: ${q}`).join('\n');
  expect(share('right'), told).toBeGreaterThanOrEqual(right);
  expect(share('right') + share('meant'), told).toBeGreaterThanOrEqual(withMeant);
  expect(share('wrong'), told).toBeLessThanOrEqual(WRONG);
}); // prettier-ignore
