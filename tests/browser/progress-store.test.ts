// Practice as it is kept in a browser: answers of two tabs, what is damaged, and no room.
import { beforeEach, expect, test, vi } from 'vitest';
import { openPage } from './page.ts';

vi.mock('solid-js', () => vi.importActual('../../node_modules/solid-js/dist/solid.js'));
vi.mock('solid-js/web', () => ({ isServer: false }));

const KEY = 'malt-spirit-handbook/practice';
const kinds = (text: string | undefined) =>
  (JSON.parse(text!) as { log: { kind: string }[] }).log.map(({ kind }) => kind);
let page: ReturnType<typeof openPage>;
beforeEach(() => {
  vi.resetModules();
  page = openPage();
});
const store = () => import('../../src/browser/progress-store.ts');
const kept = () => page.local.texts.get(KEY);

test('an answer is kept, and one of another tab is put beside it', async () => {
  const { keepAnswer } = await store();
  keepAnswer('kiln', 'right', '2026-05-14');
  expect(kinds(kept())).toEqual(['kiln']);
  page.fromOtherTab(`${KEY}-news`, JSON.stringify({ answer: ['draff', 'wrong', '2026-05-14'], new: 0.5 }));
  expect(kinds(kept())).toEqual(['kiln', 'draff']);
  keepAnswer('duty', 'right', '2026-05-15');
  expect(kinds(kept())).toEqual(['kiln', 'draff', 'duty']);
});

test('news that cannot be read changes nothing', async () => {
  const { keepAnswer } = await store();
  keepAnswer('kiln', 'right', '2026-05-14');
  for (const news of ['{', '{"answer":["kiln","right"]}', '{"answer":["<b>","right","2026-05-14"]}'])
    page.fromOtherTab(`${KEY}-news`, news);
  expect(kinds(kept())).toEqual(['kiln']);
});

test('practice that is damaged is set aside word for word before an answer is written', async () => {
  page.local.texts.set(KEY, '{"format":"malt-spirit-handbook/practice","version":1,"log":[{"ki');
  const { keepAnswer, practiceKeptAside } = await store();
  keepAnswer('kiln', 'right', '2026-05-14');
  expect(practiceKeptAside()).toEqual(['{"format":"malt-spirit-handbook/practice","version":1,"log":[{"ki']);
  expect(kinds(kept())).toEqual(['kiln']);
});

test('where there is no room to set it aside, nothing is written over it', async () => {
  page.local.texts.set(KEY, '{ damaged');
  page.local.leave(3);
  const { keepAnswer } = await store();
  page.local.leave(Infinity);
  keepAnswer('kiln', 'right', '2026-05-14');
  expect(kept()).toBe('{ damaged');
});
