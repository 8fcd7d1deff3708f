// A first reading learnt without a seventh of the authors, one author of them judged: learnt anew each time, so that no stored number is believed.
import { expect, test } from 'vitest';
import measured from '../../src/published/measured/talks.json' with { type: 'json' };
import { learnt } from '../../src/talk/learnt-model.ts';
import { readScript } from '../../src/talk/script.ts';
import { judge, scripts } from './judge.ts';
import { firstWithout, groupsOf, togetherWithout } from './learn/stacked.ts';
import { toLearn } from './learn/talks.ts';
import { recombinedTalks } from './recombine.ts';

const LEFT_OUT = 'cinderford';

// The further readings are those that are shipped, which have seen this author’s talks as well: to learn them too takes six more first readings, which `npm run talk` does.
test('talks of an author that it has not learnt from are found and matched, as often as is told', () => {
  const talks = [...scripts(), ...recombinedTalks()].map(toLearn);
  const group = groupsOf(talks).find((each) => each.includes(LEFT_OUT))!;
  const model = {
    ...learnt(),
    first: firstWithout(talks)(...group),
    together: togetherWithout(talks)(...group),
  };
  const all = scripts()
    .filter(({ author }) => author === LEFT_OUT)
    .map((script) => judge(script, (text) => readScript(text, model)));
  const sum = (of: 'found' | 'quantities' | 'matched' | 'figures' | 'wrong' | 'proposed') =>
    all.reduce((total, judgement) => total + judgement[of], 0);
  expect(sum('found') / sum('quantities')).toBeGreaterThan(0.96);
  expect(sum('matched') / sum('figures')).toBeGreaterThan(0.85);
  expect(sum('wrong') / sum('proposed')).toBeLessThan(0.06);
  // The accuracy page tells the same of this author: the meter was run since the reader last changed.
  const row = measured.rows.find(({ author }) => author === LEFT_OUT)!;
  for (const of of ['found', 'matched', 'proposed'] as const)
    expect(Math.abs(sum(of) / row[of] - 1), of).toBeLessThan(0.04);
}, 600_000);

test('what is told of all authors left out has not fallen', () => {
  const { found, quantities, matched, figures, wrong, proposed } = measured.whole;
  expect(found / quantities).toBeGreaterThan(0.96);
  expect(matched / figures).toBeGreaterThan(0.848);
  expect(wrong / proposed).toBeLessThan(0.035);
});
