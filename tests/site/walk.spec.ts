// A guide cuts a talk into rooms, puts it right, and prints the still house’s card: on a phone, by keyboard alone, and with what is bad.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse, builtInName } from '../../src/house/figures.ts';
import { encodeWalk } from '../../src/walk/text.ts';
import { firstWalk } from '../../src/walk/walk.ts';
import { talk } from '../walk/harrowmere-talk.ts';
import { open, ready, watch } from './pages.ts';
import { pageCount } from './paper.ts';

const rooms = (page: Page) => page.locator('.walk-list button');
const room = (page: Page, name: string) => rooms(page).filter({ hasText: name });
const pieces = (page: Page) => page.locator('.pieces .piece');
const title = (page: Page) => page.locator('#walk-room-title');
const said = (page: Page) => page.locator('.walk-rooms > .said');
const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });
const kept = (page: Page) =>
  page.evaluate(() => localStorage.getItem('malt-spirit-handbook/walk')) as Promise<string>;

async function paste(page: Page): Promise<void> {
  await page.locator('#walk-text').focus();
  await page.keyboard.insertText(talk);
  await expect(said(page)).toContainText('12 pieces, in 6 of 6 rooms');
}
/** What would be printed stands still for as long as it is looked at. */
const holdPrint = (page: Page) => page.addInitScript(() => (window.print = () => {}));
const printed = (page: Page) => page.evaluate(() => dispatchEvent(new Event('afterprint')));

test('on a phone: a talk is cut into six rooms of an hour, corrected, and the still house’s card printed', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await holdPrint(page);
  const wrong = watch(page);
  await open(page, '/walk/');
  await paste(page);
  await expect(page.locator('#walk-text')).toBeHidden();
  await expect(rooms(page)).toHaveCount(6);
  const minutes = (await rooms(page).locator('small').allTextContents()).map((text) => parseInt(text, 10));
  expect(minutes.reduce((sum, each) => sum + each, 0)).toBe(60);
  expect(Math.min(...minutes)).toBeGreaterThanOrEqual(2);
  await expect(rooms(page).first()).toContainText('10:30');

  // A piece goes on to the next room and comes back.
  await room(page, 'Tun room').click();
  await pieces(page).last().click();
  await button(page, 'Still house →').click();
  await expect(said(page)).toContainText('Moved to the Still house.');
  await room(page, 'Still house').click();
  await expect(pieces(page)).toHaveCount(4);
  await expect(pieces(page).last()).toContainText('After 72 hours');
  await pieces(page).last().click();
  await button(page, '← Tun room').click();
  await expect(pieces(page)).toHaveCount(3);
  // One is split behind its first sentence and joined again.
  await pieces(page).first().click();
  await page.locator('#walk-piece').evaluate((box: HTMLTextAreaElement) => {
    const at = box.value.indexOf('Two of them');
    box.setSelectionRange(at, at);
  });
  await button(page, 'Split at the cursor').click();
  await expect(pieces(page)).toHaveCount(4);
  await expect(pieces(page).nth(1)).toContainText(/^Two of them/);
  await button(page, 'Join to the next').click();
  await expect(pieces(page)).toHaveCount(3);
  // One stays out of a short walk.
  await page.locator('.piece-tools .tick').click();
  await button(page, '30 min').click();
  await expect(page.locator('.whole')).toContainText('One piece stays out of this short walk.');
  await button(page, '60 min').click();
  await expect(page.locator('.whole')).not.toContainText('short walk');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThan(8 * 844);

  // What the card carries beside its figures.
  await page.locator('#walk-line').fill('All of it is made between these two pots.');
  await page.locator('#walk-line').press('Tab');
  await page.locator('.walk-room details', { hasText: 'What visitors ask' }).locator('summary').click();
  await page.getByLabel('Why copper?').check();
  await expect(page.locator('.walk-card')).toContainText('just over 845 litres'); // as the pocket card says it
  await button(page, 'Print this card').click();
  expect(await page.evaluate(() => document.documentElement.dataset['print'])).toBe('walk-cards');
  await page.emulateMedia({ media: 'print' });
  const [front, back] = [page.locator('.leaf').first(), page.locator('.leaf').last()];
  for (const words of [
    'Still house',
    '5 of 6',
    '70 % vol',
    'between these two pots',
    'No flash',
    'Harrowmere',
  ])
    await expect(front).toContainText(words);
  for (const words of ['Why copper?', 'sulphury', 'flames, sparks', 'Harrowmere'])
    await expect(back).toContainText(words);
  const { width, height } = (await front.locator('.front').boundingBox())!;
  const MM = 96 / 25.4;
  expect(width / MM).toBeCloseTo(105, 0); // A6: ISO 216
  expect(height / MM).toBeCloseTo(148, 0);
  const spills = await page.evaluate(() =>
    [...document.querySelectorAll('.walk-side')].some((side) => side.scrollHeight > side.clientHeight + 1),
  );
  expect(spills).toBe(false);
  expect(await pageCount(page, 'A4')).toBe(2);
  await printed(page);
  await page.emulateMedia({ media: 'screen' });
  expect(wrong).toEqual([]);

  // Its file is a walk that another guide can open.
  const [file] = await Promise.all([page.waitForEvent('download'), button(page, 'Save to a file').click()]);
  expect(file.suggestedFilename()).toBe('my-walk.walk.json');
  expect(JSON.parse(readFileSync(await file.path(), 'utf8'))).toMatchObject({
    format: 'malt-spirit-walk',
    version: 1,
  });
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await ready(page);
  await page.locator('#walk-file').setInputFiles(await file.path());
  await room(page, 'Still house').click();
  await expect(page.locator('.walk-card')).toContainText('between these two pots');
});

test('by keyboard alone: pieces go to other rooms, are split, joined and kept for long walks, and the focus stays', async ({
  page,
}) => {
  await open(page, '/walk/');
  await paste(page);
  await expect(page.locator('.walk-talk summary')).toBeFocused();
  const { keyboard } = page;
  const to = async (wanted: ReturnType<Page['locator']>) => {
    for (let i = 0; i < 60 && !(await wanted.evaluate((element) => element === document.activeElement)); i++)
      await keyboard.press('Tab');
    await expect(wanted).toBeFocused();
  };
  await to(room(page, 'Malt barn'));
  await to(room(page, 'Mash house'));
  await keyboard.press('Enter');
  await expect(title(page)).toHaveText('Mash house');
  await to(pieces(page).first());
  await keyboard.press('ArrowDown');
  await expect(pieces(page).nth(1)).toBeFocused();
  await keyboard.press('ArrowRight');
  await expect(pieces(page)).toHaveCount(1);
  await expect(pieces(page).first()).toBeFocused();
  await keyboard.press('s');
  await expect(pieces(page)).toHaveCount(2);
  await keyboard.press('j');
  await expect(pieces(page)).toHaveCount(1);
  await keyboard.press('l');
  await expect(pieces(page).first()).toContainText('Only in long walks');
  await keyboard.press('ArrowLeft');
  await expect(pieces(page)).toHaveCount(0);
  await expect(title(page)).toBeFocused();
  await expect(page.locator('#announcer')).toContainText('Moved to the Mill.');
  await page.reload();
  await ready(page);
  await room(page, 'Mill').click();
  await expect(pieces(page)).toHaveCount(2);
});

test('what cannot be is refused in a sentence; a party that comes late is told; what is kept and cannot be read is set aside', async ({
  page,
}) => {
  await open(page, '/walk/');
  await button(page, 'Cut into rooms').click();
  await expect(page.locator('.walk-talk')).toContainText('Paste your talk first.');
  await page.locator('.walk-rooms summary', { hasText: 'Begins at' }).click();
  for (const [id, bad] of [
    ['walk-begins', 'noon'],
    ['walk-length', '1e3'],
    ['walk-least', '30'],
    ['walk-pace', '-5'],
    ['walk-minutes', '<b>'],
    ['walk-name', ''],
  ] as const) {
    await page.locator(`#${id}`).fill(bad);
    await page.locator(`#${id}`).press('Tab');
    await expect(page.locator(`#${id}-problem`)).toBeVisible();
  }
  await page.locator('#walk-due-room').selectOption('Filling store and warehouse');
  await page.locator('#walk-due-by').fill('11.05');
  await page.locator('#walk-due-by').press('Tab');
  // By hand: five rooms of ten minutes from 10:30.
  await expect(page.locator('.late')).toContainText('by 11:05: it comes at 11:20, 15 minutes late');

  const newer = (await kept(page)).replace('"version":1', '"version":2');
  for (const [text, says] of [
    [newer, 'version 2'],
    ['{"format":', 'no walk'],
    [(await kept(page)).replace('"least":2', '"least":"two"'), 'Least in a room'],
  ] as const) {
    await page.evaluate((text) => localStorage.setItem('malt-spirit-handbook/walk', text), text);
    await page.reload();
    await ready(page);
    await expect(page.locator('.walk > [role=status]')).toContainText(says);
    await expect(page.locator('.walk > [role=status]')).toContainText('set aside');
    const aside = await page.evaluate(() =>
      Object.entries(localStorage).flatMap(([key, text]) => (key.includes('walk-kept-aside') ? [text] : [])),
    );
    expect(aside).toContain(text);
  }
  await page.locator('#walk-file').setInputFiles({
    name: 'x.json',
    mimeType: 'application/json',
    buffer: Buffer.from(newer),
  });
  await expect(page.locator('#walk-kept-says')).toContainText('version 2; this handbook reads version 1');
  await expect(page.locator('#walk-kept-says')).toContainText('Nothing was changed.');
});

test('when the house changes, sentences that no longer hold are listed, and only what is taken is changed', async ({
  page,
}) => {
  await open(page, '/walk/');
  await paste(page);
  const text = encodeHouse({
    name: builtInName,
    house: { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse,
  });
  await page.evaluate((text) => localStorage.setItem('malt-spirit-handbook/house', text), text);
  await page.reload();
  await ready(page);
  const stale = page.locator('.walk-stale');
  const cut = stale.locator('li', { hasText: 'at 62 per cent he turns the handle' });
  await expect(cut.locator('ins')).toContainText('at 60 per cent he turns the handle');
  const count = async () => Number(/\d+/.exec(await stale.locator('h2').innerText())![0]);
  const [waiting, before] = [await count(), await kept(page)];
  await cut.getByRole('button', { name: 'Take the new sentence' }).click();
  await expect.poll(count).toBe(waiting - 1);
  await expect(stale.locator('h2')).toBeFocused();
  await expect.poll(() => kept(page)).toContain('at 60 per cent he turns the handle');
  const words = (walk: string) =>
    (JSON.parse(walk) as { rooms: { pieces: { text: string }[] }[] }).rooms.flatMap(({ pieces }) =>
      pieces.map(({ text }) => text),
    );
  expect(words(await kept(page))).toEqual(
    words(before).map((each) => each.replace('at 62 per cent', 'at 60 per cent')),
  );
  // What is left stays as it was, also when the page is opened again, until the house changes once more.
  const after = await kept(page);
  while (await stale.getByRole('button', { name: 'Leave it' }).first().isVisible())
    await stale.getByRole('button', { name: 'Leave it' }).first().click();
  await expect(stale.locator('h2')).toContainText('(0)');
  expect(words(await kept(page))).toEqual(words(after));
  const folded = stale.locator('summary', { hasText: `Left as they are (${waiting - 1})` });
  await page.reload();
  await ready(page);
  await expect(folded).toBeVisible();
  await expect(stale.locator('h2')).toContainText('(0)');
  const next = encodeHouse({
    name: builtInName,
    house: { ...builtInHouse, heartEnd: 58 } as typeof builtInHouse,
  });
  await page.evaluate((text) => localStorage.setItem('malt-spirit-handbook/house', text), next);
  await page.reload();
  await ready(page);
  await expect(stale.locator('ins', { hasText: 'at 58 per cent he turns the handle' })).toBeVisible();
});

test('on a phone: no sentence is held against an estimate, and the house can take what is said', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '/walk/');
  const text = encodeHouse({
    name: 'Sallowby',
    house: { ...builtInHouse, heartEnd: 58, fermentationHours: 96 } as typeof builtInHouse,
    parts: { known: { given: { maltPerMash: 'chosen' } } },
  });
  await page.evaluate((text) => localStorage.setItem('malt-spirit-handbook/house', text), text);
  await page.reload();
  await ready(page);
  await paste(page);
  const stale = page.locator('.walk-stale');
  await expect(stale.locator('h2')).toHaveText('Held against Sallowby: no sentence is wrong');
  await expect(stale.locator('del')).toHaveCount(0);
  await stale.getByText('Said here, and not given to Sallowby yet').click();
  const cut = stale.locator('.walk-offered li', { hasText: 'at 62 per cent he turns the handle' });
  await cut.getByRole('button', { name: /^Give Sallowby 62 % vol/ }).click();
  await expect(cut).toHaveCount(0);
  await expect(stale.getByText('Sallowby has 62 % vol now.')).toBeVisible();
  const house = () => page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house')!);
  await expect.poll(house).toMatch(/"heartEnd":62\b/);
  await expect.poll(house).toMatch(/"given":\{[^}]*"heartEnd"/);
  await stale.getByRole('button', { name: 'Put it back' }).click();
  await expect.poll(house).toContain('"heartEnd":58');
});

test('on a phone: cards that were printed are told of once the house changes, with what each says, until they are printed anew', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await holdPrint(page);
  const wrong = watch(page);
  await open(page, '/walk/');
  const show = page.locator('.walk-show');
  await expect(show).toContainText('No card of this walk has been printed yet.');
  await room(page, 'Still house').click();
  await button(page, 'Print this card').click();
  await printed(page);
  await expect(show).toContainText('Cards printed of 1 of 6 rooms');
  await room(page, 'Mill').click();
  await button(page, 'Print this card').click();
  await printed(page);
  await expect(show).toContainText('Cards printed of 2 of 6 rooms');
  const stale = page.locator('.walk-printed');
  await expect(stale).toHaveCount(0);
  const text = encodeHouse({
    name: builtInName,
    house: { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse,
  });
  await page.evaluate((text) => localStorage.setItem('malt-spirit-handbook/house', text), text);
  await page.reload();
  await ready(page);
  await expect(stale.locator('h2')).toHaveText('Printed cards that no longer hold (1)');
  await expect(stale).toContainText('Still house, printed ');
  await expect(stale.locator('li li', { hasText: 'was 62' })).toContainText('is 60');
  await stale.getByRole('button', { name: 'Print it anew' }).click();
  await expect(page.locator('.walk-cards .front h3')).toHaveText(['Still house']);
  await printed(page);
  await expect(stale).toHaveCount(0);
  // A print that was not made is taken back: the card of before is stale again.
  await button(page, 'It was not printed').click();
  await expect(stale).toBeVisible();
  expect(wrong).toEqual([]);
});

test('on a phone: for children it is proposed what to leave out, taken or refused piece by piece, and put back at once', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const own = JSON.stringify({
    ...(JSON.parse(encodeWalk(firstWalk('Saturday'))) as object),
    coming: 'children',
    rooms: [
      { name: 'Mill', pieces: ['The duty on it is heavy.', 'It costs £90.', 'Mind the step.'].map((text) => ({ text })) }, // prettier-ignore
    ],
  });
  await page.addInitScript((text) => {
    if (!localStorage.getItem('malt-spirit-handbook/walk')) localStorage.setItem('malt-spirit-handbook/walk', text); // prettier-ignore
  }, own);
  await open(page, '/walk/');
  const part = page.locator('.walk-leave-out');
  await expect(part.locator('h3')).toContainText('for children (2)');
  await part.getByRole('button', { name: 'Leave it out: The duty' }).click();
  await part.getByRole('button', { name: 'It stays: It costs' }).click();
  await expect(part.locator('h3')).toContainText('(0)');
  await expect(pieces(page).first()).toContainText('Not for children');
  await page.reload();
  await ready(page);
  await expect(part.locator('h3')).toContainText('(0)');
  await part.getByRole('button', { name: 'Put back the piece that was left out' }).click();
  await expect(pieces(page).first()).not.toContainText('Not for children');
  await expect(part.locator('h3')).toContainText('(1)');
});

test('in two tabs: both stay in step, what is being typed stands, and what cannot be read changes nothing', async ({
  page,
  context,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '/walk/');
  await paste(page);
  const other = await context.newPage();
  await open(other, '/walk/');
  await room(page, 'Still house').click();
  await pieces(page).first().click();
  await room(other, 'Still house').click();
  // While a piece is typed here, the other tab writes the line of the card.
  await page.locator('#walk-piece').pressSequentially(' And mind the step.', { delay: 5 });
  await other.locator('#walk-line').fill('Look, do not touch.');
  await other.locator('#walk-line').press('Tab');
  await expect(page.locator('#walk-line')).toHaveValue('Look, do not touch.');
  await expect(page.locator('#walk-piece')).toHaveValue(/mind the step\.$/);
  await expect(pieces(other).first()).toContainText('mind the step.');
  // A line half typed here stays in its field.
  await page.locator('#walk-shows').fill('The safe');
  await other.locator('#walk-minutes').fill('17');
  await other.locator('#walk-minutes').press('Tab');
  await expect(room(page, 'Still house')).toContainText('17 min');
  await expect(page.locator('#walk-shows')).toHaveValue('The safe');
  await page.locator('#walk-shows').press('Tab');
  await expect(other.locator('#walk-shows')).toHaveValue('The safe');
  for (const words of ['do not touch', 'mind the step', 'The safe', '"minutes":17'])
    expect(await kept(page)).toContain(words);
  await other.evaluate(() => localStorage.setItem('malt-spirit-handbook/walk', '{"format":'));
  await expect(page.locator('.walk > [role=status]')).toContainText('Another tab has written this walk');
  await expect(page.locator('#walk-line')).toHaveValue('Look, do not touch.');
});

test('on a phone: a walk that was written for another house is held against none until the guide says so', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '/walk/');
  await paste(page);
  const own = JSON.parse(await kept(page)) as Record<string, unknown>;
  expect(own['house']).toBe(builtInName);
  const text = JSON.stringify({ ...own, name: 'Saturday', house: 'Kestrel Burn' })
    .replaceAll('62 per cent', '66 per cent')
    .replace('"figure":"heartEnds","value":62', '"figure":"heartEnds","value":66');
  const buffer = Buffer.from(text);
  await page.locator('#walk-file').setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer });
  const notice = page.locator('.walk-other');
  await expect(notice).toContainText(
    `This walk was written for Kestrel Burn; the house here is ${builtInName}. Open its house too, or hold it against ${builtInName}.`,
  );
  const card = page.locator('.walk-card');
  await expect(card.locator('h3')).toHaveText('Malt barn');
  await expect(card.locator('dd')).toHaveCount(0);
  await expect(card).toContainText('Kestrel Burn');
  await page.waitForTimeout(1000); // it would have been judged by then
  await expect(page.locator('.walk-stale')).toHaveCount(0);
  await button(page, `Hold it against ${builtInName}`).click();
  await expect(notice).toHaveCount(0);
  await expect(card.locator('dd').first()).toBeVisible();
  await expect(page.locator('.walk-stale ins', { hasText: 'at 62 per cent he turns' })).toBeVisible();
  expect(await kept(page)).toContain(`"house":"${builtInName}"`);
});

test('on a phone: a piece moved, minutes set by hand and a walk removed can each be put back', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, '/walk/');
  await paste(page);
  const order = () => pieces(page).allTextContents();
  await room(page, 'Still house').click();
  const before = await order();
  await pieces(page).first().focus();
  await page.keyboard.press('d');
  await expect(pieces(page).nth(1)).toBeFocused();
  expect(await order()).toEqual([before[1], before[0], ...before.slice(2)]);
  await button(page, 'Put it back').click();
  expect(await order()).toEqual(before);
  await pieces(page).nth(1).click();
  await button(page, '↑ Up').click();
  expect((await order())[0]).toContain(before[1]);

  await page.locator('#walk-minutes').fill('33');
  await page.locator('#walk-minutes').press('Tab');
  await button(page, '30 min').click();
  await expect(room(page, 'Still house')).not.toContainText('33 min');
  await button(page, 'Put the minutes back').click();
  await expect(room(page, 'Still house')).toContainText('33 min');
  await expect(button(page, '60 min')).toHaveAttribute('aria-pressed', 'true');

  await button(page, 'Begin another').click();
  await button(page, 'Remove My walk').click();
  await expect(button(page, 'Open My walk')).toHaveCount(0);
  await button(page, 'Put it back').click();
  await button(page, 'Open My walk').click();
  await expect(room(page, 'Still house')).toContainText('33 min');
});
