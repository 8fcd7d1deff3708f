// Hostile text at every door of the built site: it is shown as text or refused in a sentence, runs nothing, and nothing that was kept is lost.
import { readdirSync, readFileSync } from 'node:fs';
import { open as openFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { resultCode } from '../../src/exercises/result.ts';
import {
  brokenReleases,
  houseText,
  injections,
  nested,
  notNumbers,
  prototypeKeys,
  signedText,
} from '../hostile-texts.ts';
import { open, ready, watch } from './pages.ts';

const OWN = 'malt-spirit-handbook/';
const dist = join(import.meta.dirname, '..', '..', 'dist');
const houseOf = (name: string, heartEnd = 60) =>
  encodeHouse({ name, house: { ...builtInHouse, heartEnd } as typeof builtInHouse });
const practiceOf = (kind: string, day = '2026-05-14') =>
  JSON.stringify({
    format: 'malt-spirit-handbook/practice',
    version: 1,
    standing: { [kind]: { box: 1, due: 20_000 } },
    log: [{ kind, day, verdict: 'right' }],
  });

/** Puts texts under the handbook's keys, before the first page of a test and no later one. */
const keep = (page: Page, texts: Readonly<Record<string, string>>) =>
  page.addInitScript(
    ([own, given]) => {
      if (location.protocol === 'about:' || localStorage.getItem('begun')) return;
      localStorage.setItem('begun', '1');
      for (const [key, text] of Object.entries(given!)) localStorage.setItem(`${own as string}${key}`, text);
    },
    [OWN, texts] as const,
  );
/** What the reader has kept; what the book last told of a house is the book's own. */
const kept = (page: Page) =>
  page.evaluate(
    () =>
      Object.fromEntries(
        Object.entries(localStorage).filter(([key]) => !/\/told(-by)?$/.test(key)),
      ) as Record<string, string>,
  );
const keptUnder = async (page: Page, key: string) => (await kept(page))[`${OWN}${key}`];

/** What ran, was forbidden by the policy, or became markup; all empty when nothing did. */
async function watchHarm(page: Page): Promise<() => Promise<void>> {
  const wrong = watch(page);
  page.on('dialog', (dialog) => {
    wrong.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.addInitScript(() =>
    addEventListener('securitypolicyviolation', ({ violatedDirective }) =>
      console.error(`forbidden: ${violatedDirective}`),
    ),
  );
  return async () => {
    const made = await page.evaluate(() => [
      'hurt' in window,
      document.querySelectorAll(
        '[onerror], [onload], [onclick], [onmouseover], iframe, img, object, embed, [href^="javascript:" i], [src^="javascript:" i], script:not([src])',
      ).length,
      Object.keys(Object.prototype).length,
    ]);
    expect(made).toEqual([false, 0, 0]);
    expect(wrong).toEqual([]);
  };
}

test('names that are markup or keys of the prototype are text on every page that shows them', async ({
  page,
}) => {
  const names = [...injections, ...prototypeKeys];
  const shelf = JSON.stringify(Object.fromEntries(names.map((name) => [name, houseOf(name)])));
  await keep(page, { house: houseOf(injections[0]), shelf });
  const unharmed = await watchHarm(page);
  for (const [address, place] of [
    ['/cards/', '.card .foot'],
    ['/sheets/', '#sheet-house'],
    ['/distilling/', '[data-house-name]'],
    ['/house/', '.foot [data-house-name]'],
  ] as const) {
    await open(page, address);
    await expect(page.locator(place).first(), address).toContainText(injections[0]);
    await unharmed();
  }
  expect(await page.locator('.shelf li').count()).toBe(names.length - 1);
  for (const name of names.slice(1)) {
    await page.getByRole('button', { name: `Open ${name}`, exact: true }).click();
    await expect(page.locator('#house-name')).toHaveValue(name);
  }
  const saving = page.waitForEvent('download');
  await page.locator('#house-name').fill('../..\\a:b|"<img src=x onerror=hurt=1>');
  await page.locator('#house-name').blur();
  await expect.poll(() => keptUnder(page, 'house')).toContain('hurt=1');
  await open(page, '/house/hand-on/');
  await page.getByRole('button', { name: 'Save to a file' }).click();
  expect((await saving).suggestedFilename()).toMatch(/^[\p{L}\p{N}-]+\.house\.json$/u);
  await unharmed();
  await page.waitForTimeout(300);
  for (const [name, text] of Object.entries(JSON.parse((await keptUnder(page, 'shelf'))!) as object))
    expect(JSON.parse(text as string), name).toMatchObject({ name, figures: { heartEnd: 60 } });
});

test('a name as long as it may be, of letters or of marks, breaks no page', async ({ page }) => {
  for (const name of ['W'.repeat(80), `${'ᴡ\u0301\u0302\u0303'.repeat(20)}`]) {
    await page.goto(`/house/${linkOf(houseOf(name))}`);
    await page.reload();
    await expect(page.locator('.visit')).toBeVisible(); // it is kept for this tab
    for (const [width, address] of [[320, '/house/'], [390, '/cards/'], [1280, '/house/']] as const) {
      await page.setViewportSize({ width, height: 844 });
      await open(page, address);
      await expect(page.locator('.visit')).toContainText(name);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), `${address} ${width}`).toBeLessThanOrEqual(width);
    }
  }
}); // prettier-ignore

test('hostile links change nothing that is kept, and say so', async ({ page }) => {
  const own = { house: houseOf('Thornwath'), shelf: JSON.stringify({ Sallowby: houseOf('Sallowby', 58) }), 'kept-aside': 'an older text' };
  await keep(page, own);
  const unharmed = await watchHarm(page);
  for (const [link, says, heartEnd] of [
    ['#house=!!!', /damaged/, '60'],
    [`#house=${'A'.repeat(200_000)}`, /damaged/, '60'],
    [linkOf(nested(7000)), /not a house/, '60'],
    [linkOf(houseText(`{"heartEnd":${nested(5000)}}`)), /Heart ends at: “\[…\]” was given/, '62'],
    [linkOf(houseText('{"heartEnd":1e999,"__proto__":1}', '\u202eevil<b>')), /“Infinity” was given.*“�evil<b>” was given.*“__proto__” is not/s, '62'],
  ] as const) {
    await page.goto('about:blank');
    await page.goto(`/house/${link}`);
    await ready(page);
    await expect(page.locator('.troubles'), link.slice(0, 40)).toContainText(says);
    await expect(page.locator('#house-heartEnd'), link.slice(0, 40)).toHaveValue(heartEnd);
    await unharmed();
    expect(await kept(page)).toMatchObject(Object.fromEntries(Object.entries(own).map(([key, text]) => [OWN + key, text])));
    await page.evaluate(() => sessionStorage.clear());
  }
  for (const link of [`#sheet=${'.'.repeat(200_000)}`, '#sheet=1.0.0.0.1.<b>.1.built-in']) {
    await page.goto('about:blank');
    await page.goto(`/sheet/${link}`);
    await expect(page.locator('.taking .problem')).toContainText(/damaged|at most 60000/);
  }
  await page.goto(`/search/#for=${encodeURIComponent(`${injections[0]} `.repeat(5000))}`);
  await ready(page);
  await expect(page.locator('.search .answer, .search .count').first()).toContainText(/know|found/);
  expect((await page.locator('#search-words').inputValue()).length).toBe(300);
  await page.locator('#search-words').evaluate((field: HTMLInputElement) => {
    field.value = 'washback \ud800';
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
  await page.goto('/practice/#topic=__proto__');
  await expect(page.locator('.question')).toBeVisible();
  await unharmed();
}); // prettier-ignore

test('hostile files are refused in a sentence, fifty megabytes at once, and change nothing', async ({ page }, info) => {
  await keep(page, { house: houseOf('Thornwath'), practice: practiceOf('cask-fill') });
  const unharmed = await watchHarm(page);
  const big = info.outputPath('big.json');
  const file = await openFile(big, 'w');
  await file.truncate(50_000_000);
  await file.close();
  const bytes = (text: string, name = 'hostile.json') => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  for (const [address, field, said, cases] of [
    ['/house/hand-on/', '#house-file', '#hand-on-open-said', [
      [nested(49_000), /not a house/],
      [nested(450_000), /900000 characters long; a house has at most 400000/],
      [' '.repeat(900_000), /900000 characters long/],
      ['\u0000\u0001\ufffd', /damaged/],
      ...brokenReleases.map(([change, says]) => [signedText(change), new RegExp(says)] as const),
      [signedText({ kind: injections[0], name: injections[1] }), /of the kind “<img/],
    ]],
    ['/practice/', '#practice-file', '.keep > [role=status]', [
      [nested(450_000), /not practice/],
      ['{"format":"malt-spirit-handbook/practice","version":1,"standing":[],"log":1}', /not whole/],
      ['\u0000', /damaged/],
    ]],
    ['/script/', '#script-file', '.script-reader .problem', []],
  ] as const) {
    await open(page, address);
    const before = await kept(page);
    const started = Date.now();
    await page.locator(field).setInputFiles(big);
    await expect(page.locator(said).last()).toContainText(/^big\.json is 50000 kB; .* at most [12]000 kB\. Nothing was changed\.$/);
    expect(Date.now() - started, 'its size is asked before it is read').toBeLessThan(2000);
    for (const [text, says] of cases) {
      await page.locator(field).setInputFiles(bytes(text));
      await expect(page.locator(said).last()).toContainText(says);
    }
    expect(await kept(page)).toEqual(before);
    await unharmed();
  }
  await open(page, '/house/hand-on/');
  for (const [name, start, encoding] of [['Sallowby', '', 'utf8'], ['Harthope', '\ufeff', 'utf8'], ['Ashgill', '\ufeff', 'utf16le']] as const) {
    await page.locator('#house-file').setInputFiles({ ...bytes(''), buffer: Buffer.from(start + houseOf(name), encoding) });
    await expect(page.locator('#hand-on-open-said')).toContainText(`${name} is open, from hostile.json`);
  }
  await expect.poll(() => keptUnder(page, 'shelf')).toContain('Ashgill');
  expect(Object.keys(JSON.parse((await keptUnder(page, 'shelf'))!) as object).sort()).toEqual(expect.arrayContaining(['Ashgill', 'Thornwath']));
}); // prettier-ignore

test('whatever stands in the browser’s store, every page works and no text of it is lost', async ({ page }) => {
  const texts = {
    house: houseText(`{"heartEnd":${nested(40_000)}}`),
    shelf: '{"Sallowby":"a house","Harrowmere":{"newer":1}}',
    practice: `{"format":"malt-spirit-handbook/practice","version":1,"standing":{"constructor":${nested(10)}},"log":[]}`,
    units: '{"__proto__":"L","strength":"constructor","volume":{}}',
    quoted: `{"__proto__":"1","heartVolume":"${'9'.repeat(100_000)}"}`,
    'result-codes': 'x '.repeat(90_000),
    'practice-name': 'n'.repeat(100_000),
  };
  await keep(page, texts);
  const unharmed = await watchHarm(page);
  for (const address of ['/house/', '/distilling/', '/practice/', '/sheets/', '/cross-check/']) {
    await open(page, address);
    await unharmed();
    if (address === '/house/') {
      await expect(page.locator('.troubles')).toContainText('Your shelf of houses is damaged');
      await expect(page.locator('.troubles')).toContainText('“[…]” was given');
      await page.locator('#house-heartEnd').fill('61');
      await expect.poll(() => keptUnder(page, 'house')).toContain('"heartEnd":61');
    }
    if (address === '/practice/') {
      await expect(page.locator('.practice .problem')).toContainText('1 entry of the saved practice');
      await page.locator('#practice-file').setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from(practiceOf('kiln')) });
      await expect.poll(() => keptUnder(page, 'practice')).toContain('kiln');
    }
    if (address === '/sheets/') await expect(page.locator('.results-in .problem')).toHaveCount(11);
  }
  const now = Object.values(await kept(page));
  for (const key of ['house', 'shelf', 'practice'] as const) expect(now, key).toContain(texts[key]);
}); // prettier-ignore

test('what is read next puts nothing aside that was put aside before', async ({ page }) => {
  const newer = houseOf('Thornwath').replace('"version":2', '"version":7');
  const own = practiceOf('kiln');
  await keep(page, { house: newer, practice: own });
  await open(page, `/house/#house=!!!`);
  await expect(page.locator('.troubles')).toContainText('version 7');
  await page.evaluate(([key, text]) => localStorage.setItem(key!, text!), [`${OWN}house`, '{"another":"damage"}']);
  await page.reload();
  await ready(page);
  await expect(page.locator('.troubles a')).toHaveCount(2);
  expect(await kept(page)).toMatchObject({ [`${OWN}kept-aside`]: newer, [`${OWN}kept-aside-2`]: '{"another":"damage"}' });
  await open(page, '/practice/');
  for (const kind of ['cask', 'draff']) {
    await page.locator('#practice-file').setInputFiles({ name: `${kind}.json`, mimeType: 'application/json', buffer: Buffer.from(practiceOf(kind)) });
    await expect.poll(() => keptUnder(page, 'practice')).toContain(kind);
  }
  expect(await keptUnder(page, 'practice-kept-aside')).toBe(own);
  await expect(page.getByRole('button', { name: /^Save what was set aside/ })).toHaveCount(2);
}); // prettier-ignore

test('a house that cannot be read, or is only visited, takes no other’s place', async ({ page }) => {
  const shelf = { Harrowmere: houseOf('Harrowmere', 58), Sallowby: '{"format":', Thornwath: houseOf('Thornwath') };
  await keep(page, { house: houseOf('Thornwath'), shelf: JSON.stringify(shelf) });
  await open(page, '/house/');
  await page.getByRole('button', { name: 'Open Sallowby' }).click();
  await expect(page.locator('.troubles')).toContainText('Sallowby cannot be opened.');
  await expect(page.locator('#house-name')).toHaveValue('Thornwath');
  await page.waitForTimeout(300);
  expect(JSON.parse((await keptUnder(page, 'shelf'))!)).toEqual(shelf);
  // A visit under a name that the shelf has already is renamed and kept: the reader's own of that name stays.
  await page.goto('about:blank');
  await page.goto(`/house/${linkOf(houseOf('Harrowmere', 57))}`);
  await ready(page);
  await page.locator('#house-name').fill('Ashgill');
  await page.locator('#house-name').blur();
  await page.getByRole('button', { name: 'Keep Ashgill as one of mine' }).click();
  await expect.poll(() => keptUnder(page, 'house')).toContain('Ashgill');
  expect(JSON.parse((await keptUnder(page, 'shelf'))!)).toEqual({ ...shelf, Ashgill: houseOf('Ashgill', 57) });
}); // prettier-ignore

test('a house whose name reads as another’s takes no other’s place, from the browser’s store and from the shelf', async ({ page }) => {
  const shelf = { Harrowmere: houseOf('Harrowmere', 58), 'Harrow\u200bmere': houseOf('Harrow\u200bmere', 57), constructor: houseOf('constructor', 59) };
  await keep(page, { house: houseOf('Harrow\u00admere'), shelf: JSON.stringify(shelf) });
  await open(page, '/house/');
  await expect(page.locator('.troubles')).toContainText('“Harrow�mere” was given');
  await expect(page.locator('#house-name')).toHaveValue('Harrowmere 2');
  await page.locator('#house-heartEnd').fill('61');
  await expect.poll(() => keptUnder(page, 'house')).toContain('"heartEnd":61');
  await page.getByRole('button', { name: 'Open Harrow�mere', exact: true }).click();
  await expect(page.locator('#house-name')).toHaveValue('Harrowmere 3');
  await page.getByRole('button', { name: 'Open constructor', exact: true }).click();
  await expect(page.locator('#house-heartEnd')).toHaveValue('59');
  for (const name of ['\u200b\u2060', '\u2800', 'Harrow\u200bmere', 'Harrowmere\ufe0f']) {
    await page.locator('#house-name').fill(name);
    await page.locator('#house-name').blur();
    await expect(page.locator('#house-name-problem'), JSON.stringify(name)).toContainText('none that cannot be seen');
  }
  expect(JSON.parse((await keptUnder(page, 'shelf'))!)).toMatchObject(shelf);
}); // prettier-ignore

test('a newer handbook in another tab: what it wrote is not written over unseen, and this tab keeps its house', async ({ context }) => {
  const tabs = [await context.newPage(), await context.newPage()];
  await keep(tabs[0]!, { house: houseOf('Thornwath') });
  for (const tab of tabs) await open(tab, '/house/');
  const newer = houseOf('Sallowby').replace('"version":2', '"version":3');
  await tabs[1]!.evaluate(([key, text]) => localStorage.setItem(key!, text!), [`${OWN}house`, newer]);
  await expect(tabs[0]!.locator('.troubles')).toContainText('version 3');
  await expect(tabs[0]!.locator('#house-name')).toHaveValue('Thornwath');
  await tabs[0]!.waitForTimeout(300);
  expect(await keptUnder(tabs[0]!, 'house')).toBe(newer);
  await tabs[0]!.locator('#house-heartEnd').fill('61');
  await expect.poll(() => keptUnder(tabs[0]!, 'house')).toContain('"heartEnd":61');
  expect(Object.values(await kept(tabs[0]!))).toContain(newer);
}); // prettier-ignore

const DAY = 86_400_000; // ms
for (const [what, news] of [
  ['junk', () => '["junk","junk",1000000000]'],
  ['a change by a later build', () => JSON.stringify([houseOf('Thornwath'), houseOf('Sallowby'), 2.5]).replaceAll('version\\":2', 'version\\":3')],
  ['a change with a figure that cannot be', () => JSON.stringify([houseOf('Thornwath'), houseOf('Sallowby', 400), 2.5])],
  ['a number that no change has', () => JSON.stringify([houseOf('Thornwath'), houseOf('Sallowby'), 1e16])],
  ['a number of next week', () => JSON.stringify([houseOf('Thornwath'), houseOf('Sallowby'), Date.now() + 7 * DAY])],
  ['a number below nothing', () => JSON.stringify([houseOf('Thornwath'), houseOf('Sallowby'), -1])],
  ['no list', () => 'null'],
  ['no JSON', () => '{'],
] as const)
  test(`${what}, told between tabs, changes nothing, is told of, and tabs go on together`, async ({ context }) => {
    const tabs = [await context.newPage(), await context.newPage()] as const;
    const own = { house: houseOf('Thornwath'), shelf: JSON.stringify({ Harrowmere: houseOf('Harrowmere', 58), Sallowby: houseOf('Sallowby', 57), Thornwath: houseOf('Thornwath') }) };
    await keep(tabs[0], own);
    const unharmed = await watchHarm(tabs[0]);
    for (const tab of tabs) await open(tab, '/house/');
    await tabs[1].evaluate(([key, text]) => localStorage.setItem(key!, text!), [`${OWN}house-change`, news()]);
    await expect(tabs[0].locator('.troubles')).toContainText('cannot be read here; nothing was changed');
    await tabs[0].waitForTimeout(300);
    await expect(tabs[0].locator('#house-name')).toHaveValue('Thornwath');
    await expect(tabs[0].locator('#house-heartEnd')).toHaveValue('60');
    expect([await keptUnder(tabs[0], 'house'), await keptUnder(tabs[0], 'shelf')]).toEqual([own.house, own.shelf]);
    await unharmed();
    // One that was there already, one that was opened after it: both still hear of each other.
    await tabs[1].reload();
    await ready(tabs[1]);
    for (const [from, to, heartEnd] of [[0, 1, '61'], [1, 0, '62.5'], [0, 1, '61.5']] as const) {
      await tabs[from].locator('#house-heartEnd').fill(heartEnd);
      await expect(tabs[to].locator('#house-heartEnd')).toHaveValue(heartEnd);
    }
    await expect(tabs[0].locator('.troubles')).toHaveCount(0);
  }); // prettier-ignore

test('a house that another tab wrote and that cannot be read in full is kept aside before it is written over', async ({ context }) => {
  const tabs = [await context.newPage(), await context.newPage()] as const;
  await keep(tabs[0], { house: houseOf('Thornwath') });
  for (const tab of tabs) await open(tab, '/house/');
  const more = houseText('{"heartEnd":59,"smoke":3}', 'Thornwath'); // as a build with one more figure would write it
  await tabs[1].evaluate(([key, text]) => localStorage.setItem(key!, text!), [`${OWN}house`, more]);
  await expect(tabs[0].locator('.troubles')).toContainText(/“smoke” is not a figure of this handbook\.\s*It changed nothing here/);
  await expect(tabs[0].locator('#house-heartEnd')).toHaveValue('60');
  await tabs[0].locator('#house-heartEnd').fill('61');
  await expect.poll(() => keptUnder(tabs[0], 'house')).toContain('"heartEnd":61');
  expect(await keptUnder(tabs[0], 'kept-aside')).toBe(more);
}); // prettier-ignore

test('news of practice that cannot be read changes nothing, is told of, and throws nothing', async ({ context }) => {
  const tabs = [await context.newPage(), await context.newPage()] as const;
  const own = practiceOf('kiln');
  await keep(tabs[0], { practice: own });
  const unharmed = await watchHarm(tabs[0]);
  for (const tab of tabs) await open(tab, '/practice/#topic=safety');
  const tell = (key: string, text: string) => tabs[1].evaluate(([key, text]) => localStorage.setItem(key!, text!), [OWN + key, text]);
  for (const news of ['null', '5', '{', '{"answer":["kiln","toString","2026-05-14"]}', '{"answer":5}', '{"answer":["kiln","right","9999-99-99"]}']) {
    await tell('practice-news', news);
    await expect(tabs[0].locator('.practice .problem').first(), news).toContainText('cannot be read here; nothing was changed');
    await tabs[0].waitForTimeout(100);
    expect(await keptUnder(tabs[0], 'practice'), news).toBe(own);
  }
  // A later build opens a file there: what it kept is no practice that this one reads.
  const newer = own.replace('"version":1', '"version":7');
  await tell('practice', newer);
  await tell('practice-news', '{"file":true,"new":0.5}');
  await expect(tabs[0].locator('.practice .problem').first()).toContainText('another version');
  await expect(tabs[0].locator('.record-so-far tr', { hasText: 'Malting' })).toContainText('of 1');
  expect(await keptUnder(tabs[0], 'practice-kept-aside')).toBe(newer);
  await unharmed();
}); // prettier-ignore

test('no room to keep a text aside: it stays where it is, and the page says so', async ({ page }) => {
  const texts = { house: '{"format":', shelf: '{"Sallowby":', practice: '{"format":' };
  await keep(page, texts);
  await page.addInitScript(() => {
    const setItem = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, text) {
      if (key.includes('kept-aside')) throw new DOMException('full', 'QuotaExceededError');
      setItem.call(this, key, text);
    };
  });
  await open(page, '/house/');
  await expect(page.locator('.troubles')).toContainText('There is no room to set the text aside');
  await page.locator('#house-heartEnd').fill('61');
  await open(page, '/practice/#topic=safety');
  await expect(page.locator('.practice .problem')).toContainText('There is no room');
  await page.locator('#practice-file').setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from(practiceOf('kiln')) });
  await expect(page.locator('.keep > [role=status]')).toContainText('There is no room');
  for (const [key, text] of Object.entries(texts)) expect(await keptUnder(page, key), key).toBe(text);
}); // prettier-ignore

test('answers to a sheet: damaged ones are told of and kept, and two tabs share them', async ({
  context,
}) => {
  const [one, two] = [await context.newPage(), await context.newPage()];
  const link = '/sheet/#sheet=1.3.0.0.2.a.1.built-in';
  await open(one!, link);
  await one!.locator('#take-name').fill('Una Thornwath');
  await open(two!, link);
  await one!.locator('#take-name').fill('Una Sallowby');
  await expect(two!.locator('#take-name')).toHaveValue('Una Sallowby');
  const key = Object.keys(await kept(one!)).find((each) => each.includes('/sheet/'))!;
  await one!.evaluate((name) => localStorage.setItem(name, '{"answers":["42",7]}'), key);
  await expect(two!.locator('.taking [role=status]').last()).toContainText('Nothing was changed here');
  await expect(two!.locator('#take-name')).toHaveValue('Una Sallowby');
  await one!.reload();
  await expect(one!.locator('.taking [role=status]').last()).toContainText('cannot be read');
  await one!.locator('#take-name').fill('Una');
  expect((await kept(one!))[`${key}-kept-aside`]).toBe('{"answers":["42",7]}');
});

test('a result pasted twice is listed once and told of, and its table opens in a spreadsheet as it is', async ({ page }) => {
  const result = (name: string, verdict: 'right' | 'wrong' = 'right') => resultCode({ sheet: 'abcdefg', version: 1, name, marks: [{ verdict }] });
  await open(page, '/sheets/');
  await page.locator('#result-codes').fill([result('Sølvi'), result('Una'), result('Sølvi'), result('Una', 'wrong')].join('\n'));
  await expect(page.locator('.results-in tbody tr')).toHaveText([/Sølvi/, /Una.*0 of 1/]);
  await expect(page.locator('#result-problems')).toContainText('2 results are read.');
  await expect(page.locator('#result-problems')).toContainText('The result of Sølvi was pasted 2 times; each is listed once.');
  await expect(page.locator('#result-problems')).toContainText('Una handed in version 1 of one sheet 2 times, with answers that differ; the one pasted last counts.');
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save the table as CSV' }).click()]);
  const bytes = readFileSync((await download.path())!);
  expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]); // the mark of UTF-8: The Unicode Standard, table 23-4
  expect(bytes.toString().trim().split('\r\n')).toHaveLength(3);
}); // prettier-ignore

test('numbers that are none are refused by the field, and quoted short', async ({ page }) => {
  const unharmed = await watchHarm(page);
  await open(page, '/house/');
  await page.locator('#house-heartEnd').fill('abc'); // the reader of words comes with the first touch
  await expect(page.locator('#house-heartEnd-problem')).toContainText('“abc”');
  const said = await page.locator('#house-heartEnd').evaluate((input: HTMLInputElement, texts) => {
    return texts.map((text) => {
      input.value = text;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      return input.closest('.field')!.querySelector('.problem')?.textContent ?? '';
    });
  }, notNumbers);
  said.forEach((sentence, i) => expect(sentence, notNumbers[i]!.slice(0, 40)).toMatch(/^Heart ends at: “[^\u0000\u202e]{1,41}” was given; it can be from 20 to 85 % vol\.$/));
  await open(page, '/cross-check/');
  for (const text of ['<img src=x onerror=hurt=true>', 'NaN', 'x'.repeat(60)]) {
    await page.locator('#quoted-text').fill(`Wash strength: ${text}`);
    await expect(page.locator('.cross-check .together').first()).toContainText('No figure');
    await expect(page.locator('.cross-check .script-verdict')).toHaveCount(0);
  }
  await unharmed();
}); // prettier-ignore

test('a hostile script and hostile result codes are read in bounds, and told of', async ({ page }) => {
  const unharmed = await watchHarm(page);
  await open(page, '/script/');
  const paste = (field: string, text: string) =>
    page.locator(field).evaluate((box: HTMLTextAreaElement, given) => {
      box.value = given;
      box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    }, text);
  await paste('#script-text', `${injections.join(' 1 ')} ${'9 casks '.repeat(20_000)}`);
  await expect(page.locator('.script-reader .problem').first()).toContainText(/The talk has 160,\d{3} characters; the first 100,000 are read\. It has 12,\d{3} quantities; the first 500 are read/);
  await unharmed();
  await page.locator('#script-file').setInputFiles({ name: 'tour.txt', mimeType: 'text/plain', buffer: Buffer.from('\ufeffWe fill 9 casks a week.', 'utf16le') });
  await expect(page.locator('#script-text')).toHaveValue('We fill 9 casks a week.');
  await expect(page.locator('.marked .mark')).toHaveCount(1);
  await open(page, '/sheets/');
  const codes = [...injections, '=1+1'].map((name) => resultCode({ sheet: 'abcdefg', version: 1, name, marks: [{ verdict: 'right' }] }));
  await paste('#result-codes', `${codes.join('\n')}\n${'x\n'.repeat(120_000)}`);
  await expect(page.locator('.results-in tbody tr')).toHaveCount(codes.length, { timeout: 60_000 }); // a browser takes its time over so many lines
  expect(await page.locator('.results-in tbody th').allTextContents()).toEqual([...injections, '=1+1']);
  await expect(page.locator('.results-in .problem')).toHaveCount(12);
  await unharmed();
}); // prettier-ignore

test('built files: the policy stands first and allows nothing inline; no handler, no script address, no text made code', () => {
  for (const file of readdirSync(dist, { recursive: true, encoding: 'utf8' })) {
    const text = () => readFileSync(join(dist, file), 'utf8');
    if (file.endsWith('.html')) {
      const policy = /^<!DOCTYPE html><html[^>]*><head><meta charset="utf-8"><meta http-equiv="content-security-policy" content="([^"]*)">/.exec(text())?.[1];
      expect(policy?.split(/; ?/).sort(), file).toEqual(['', "base-uri 'none'", "default-src 'self'", "form-action 'none'", "img-src 'self' data:", "object-src 'none'", "script-src 'self'", "style-src 'self'"]);
      const tags = text().match(/<[a-z][^>]*>/gi)!.join('\n');
      expect(tags, file).not.toMatch(/\son[a-z]+\s*=|(?:href|src|action)\s*=\s*"?\s*(?:javascript|vbscript|data):|<script(?![^>]*\ssrc=)|<(?:base|object|embed|iframe|form[^>]*\saction)\b/i);
    } else if (file.endsWith('.js')) expect(text(), file).not.toMatch(/\beval\s*\(|\bnew Function\b|\bdocument\.write\b|\binsertAdjacentHTML\b|\bset(?:Timeout|Interval)\(\s*["'`]/);
  }
  const src = join(dist, '..', 'src');
  for (const file of readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((each) => /\.(ts|tsx|astro)$/.test(each)))
    expect(readFileSync(join(src, file), 'utf8'), file).not.toMatch(/\b(?:inner|outer)HTML\b|\binsertAdjacentHTML\b|\bset:html\b|createContextualFragment|\bdocument\.write\b/);
}); // prettier-ignore

test('the server gives nothing from outside the site, and no request stops it', async ({ request, baseURL }) => {
  const { port } = new URL(baseURL!);
  /** A request as it is written, which no browser would send. */
  const ask = (path: string) =>
    new Promise<string>((done) => {
      let answer = '';
      const socket = connect(Number(port), '127.0.0.1', () =>
        socket.write(`GET ${path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`),
      );
      socket.on('data', (part) => (answer += part.toString()));
      socket.on('close', () => done(answer));
      socket.on('error', () => done(answer));
    });
  for (const path of ['/%E0%A4%A', '//', '/%', '/%00', '/..%2f..%2fpackage.json', '/../package.json', '/%2e%2e/package.json', '/..%5c..%5cpackage.json', '/....//package.json', '/_astro', '/_astro/', 'http://[', '/\\..\\package.json'])
    expect(await ask(path), path).toMatch(/^HTTP\/1\.1 (?:404|400) /);
  expect((await request.get('/')).status()).toBe(200);
}); // prettier-ignore
