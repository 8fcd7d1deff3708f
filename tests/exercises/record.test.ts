// What a progress table says of practice, counted by hand from seven answers.
import { expect, test } from 'vitest';
import type { Listed } from '../../src/exercises/kinds/list.ts';
import { recordOf } from '../../src/exercises/record.ts';
import { topics } from '../../src/exercises/topics.ts';

const kind = (id: string, topic: Listed['topic'], until?: number): Listed => ({ id, title: `Title of ${id}`, topic, form: 'calculation', level: 1, since: 1, ...(until === undefined ? {} : { until }) }); // prettier-ignore
const kinds = [kind('draff', 'mashing'), kind('worts', 'mashing'), kind('old', 'mashing', 3), kind('heart', 'distilling'), kind('casks', 'maturing')]; // prettier-ignore
const said = [
  ['draff', 'right', '2026-05-01'],
  ['heart', 'wrong', '2026-05-01'],
  ['draff', 'wrong', '2026-05-02'],
  ['worts', 'right', '2026-05-03'],
  ['draff', 'right', '2026-05-04'],
  ['heart', 'rounded', '2026-05-06'],
  ['old', 'right', '2026-05-07'],
] as const;
const progress = {
  log: said.map(([of, verdict, day]) => ({ kind: of, verdict, day })),
  standing: { draff: { box: 4, due: 1 }, worts: { box: 3, due: 1 }, old: { box: 5, due: 1 }, heart: { box: 1, due: 1 } },
  answers: said.length,
}; // prettier-ignore
const records = recordOf(progress, kinds);
const of = (topic: Listed['topic']) => records.find((each) => each.topic === topic)!;

test('each kind has its own answers, those that were right, and its last with its day', () => {
  expect(of('mashing').practised).toEqual([
    { title: 'Title of draff', answers: 3, right: 2, last: 'right', day: '2026-05-04' },
    { title: 'Title of worts', answers: 1, right: 1, last: 'right', day: '2026-05-03' },
    { title: 'Title of old', answers: 1, right: 1, last: 'right', day: '2026-05-07' },
  ]);
  expect(of('distilling').practised).toEqual([
    { title: 'Title of heart', answers: 2, right: 0, last: 'rounded', day: '2026-05-06' },
  ]);
});

test('a topic adds its kinds up; one that is no longer asked is neither counted nor known', () => {
  expect(of('mashing')).toMatchObject({ kinds: 2, answers: 5, right: 4, known: 1 }); // known from the fourth compartment: draff
  expect(of('distilling')).toMatchObject({ kinds: 1, answers: 2, right: 0, known: 0 });
  expect(of('maturing')).toMatchObject({ kinds: 1, practised: [], answers: 0, right: 0, known: 0 });
  expect(records.map(({ topic }) => topic)).toEqual(topics);
});
