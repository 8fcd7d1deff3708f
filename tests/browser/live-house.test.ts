// The house of a page, and the sentences that follow it: what is kept, what is damaged, a visit, and figures a mash and a year.
import { beforeEach, expect, test, vi } from 'vitest';
import { builtInHouse } from '../../src/house/figures.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { linkOf } from '../../src/house/link.ts';
import { openPage, SmallElement } from './page.ts';

vi.mock('solid-js', () => vi.importActual('../../node_modules/solid-js/dist/solid.js'));
vi.mock('solid-js/web', () => ({ isServer: false }));

const KEY = 'malt-spirit-handbook/house';
const sallowby = (maltPerMash: number) =>
  encodeHouse({ name: 'Sallowby', house: { ...builtInHouse, maltPerMash: maltPerMash as never } });
const store = () => import('../../src/browser/house-store.ts');
beforeEach(() => vi.resetModules());

test('a house that is kept is taken, and a change of it is written when the page is left', async () => {
  const page = openPage();
  page.local.texts.set(KEY, sallowby(1600));
  const { liveHouse, liveName, putHouse } = await store();
  expect([liveName(), liveHouse().maltPerMash]).toEqual(['Sallowby', 1600]);
  putHouse({ ...liveHouse(), maltPerMash: 1700 as never });
  page.leave();
  expect(page.local.texts.get(KEY)).toBe(sallowby(1700));
});

test('a house that is damaged is set aside word for word, and where there is no room is not written over', async () => {
  for (const room of [Infinity, 3]) {
    vi.resetModules();
    const page = openPage();
    page.local.texts.set(KEY, '{ damaged');
    page.local.leave(room);
    const { putHouse, housesKeptAside } = await store();
    page.local.leave(Infinity);
    putHouse({ ...builtInHouse, maltPerMash: 1700 as never });
    page.leave();
    if (room > 3) expect(housesKeptAside()).toEqual(['{ damaged']);
    else expect(page.local.texts.get(KEY)).toBe('{ damaged');
  }
});

test('a house from a link is a visit: it shows, and the reader’s own stays as it is kept', async () => {
  const page = openPage();
  page.local.texts.set(KEY, sallowby(1600));
  location.hash = linkOf(
    encodeHouse({ name: 'Ashdown', house: { ...builtInHouse, maltPerMash: 900 as never } }),
  );
  const { isVisit, liveName, liveHouse, putHouse } = await store();
  expect([isVisit(), liveName(), liveHouse().maltPerMash]).toEqual([true, 'Ashdown', 900]);
  putHouse({ ...liveHouse(), maltPerMash: 950 as never });
  page.leave();
  expect(page.local.texts.get(KEY)).toBe(sallowby(1600));
});

test('sentences follow: a figure a mash, a year and without its unit, a condition, and the name', async () => {
  const mash = new SmallElement({ figure: 'malt.mass' });
  const year = new SmallElement({ figure: 'malt.mass', per: 'year' });
  const bare = new SmallElement({ figure: 'malt.mass', bare: '' });
  const own = new SmallElement({ ownHouse: '' });
  const name = new SmallElement({ houseName: '' });
  const young = new SmallElement({ when: 'young' }); // of whisky below three years
  young.hidden = true;
  openPage([mash, year, bare, own, name, young]);
  const { putHouse, setName } = await store();
  await import('../../src/browser/live-prose.ts');
  expect([mash.textContent, own.hidden]).toEqual(['', true]); // as it was built
  putHouse({ ...builtInHouse, maltPerMash: 1600 as never, mashesPerWeek: 5 as never, weeksPerYear: 40 as never, yearsInWood: 2 as never });
  setName('Sallowby');
  const plain = (text: string) => text.replace(/\s/g, ' ');
  await vi.waitFor(() => expect(plain(mash.textContent)).toMatch(/^1,600 kg/)); // once the hand rests
  expect(plain(year.textContent)).toMatch(/^320,000 kg/); // 1,600 × 5 × 40
  expect(bare.textContent).toBe('1,600');
  expect([own.hidden, young.hidden, name.textContent]).toEqual([false, false, 'Sallowby']);
}); // prettier-ignore
