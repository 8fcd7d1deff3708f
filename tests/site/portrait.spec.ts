// The house's portrait in use: one page of paper, a drawing that is a file of its own, and nothing on it that is not the house's.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { HOUSE_KEY } from '../../src/browser/browser-store.ts';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { figuresOfRoom, portraitRoomNames, type HowKnown } from '../../src/house/portrait.ts';
import { open, watch } from './pages.ts';

const sheet = (page: Page) => page.locator('.portrait-sheet');
const house = { ...builtInHouse, maltPerMash: 6500 } as typeof builtInHouse;
const known = { given: { maltPerMash: 'set' }, counted: { casksInStore: 41_000 } };
const sallowby = encodeHouse({ name: 'Sallowby', house, parts: { known } });

/** Opens the portrait of a house of the reader's own of which little is known. */
async function openOwn(page: Page): Promise<void> {
  await page.goto('/');
  await page.evaluate(([key, text]) => localStorage.setItem(key!, text!), [HOUSE_KEY, sallowby] as const);
  await open(page, '/house/portrait/');
  await expect(sheet(page).locator('circle')).toHaveCount(4); // three estimates, one counted: it has been looked at what hangs on what
}

test('it prints on one page, A4 or A3 on its side, and the choice is kept', async ({ page }) => {
  await open(page, '/house/portrait/');
  for (const [paper, points] of [['a4', [842, 595]], ['a3', [1191, 842]]] as const) {
    await page.locator('#portrait-paper').selectOption(paper);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g), paper).toHaveLength(1);
    const [, wide, high] = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf)!.map(Number);
    expect([Math.round(wide!), Math.round(high!)], paper).toEqual(points);
  }
  await page.emulateMedia({ media: 'print' });
  await expect(sheet(page)).toBeVisible();
  for (const other of ['h1', '.choices', '.portrait-says', '.masthead', 'footer'])
    await expect(page.locator(other).first()).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.reload();
  await expect(page.locator('#portrait-paper')).toHaveValue('a3');
}); // prettier-ignore

test('the file of a house with few figures is whole, asks for nothing, and holds no figure of the built-in house', async ({ page }) => {
  const wrong = watch(page);
  await openOwn(page);
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: /SVG/ }).click()]);
  expect(download.suggestedFilename()).toBe('sallowby.portrait.svg');
  const text = readFileSync(await download.path(), 'utf8');
  const found = await page.evaluate((text) => {
    const file = new DOMParser().parseFromString(text, 'image/svg+xml');
    const all = [...file.querySelectorAll('*')];
    return {
      root: file.documentElement.tagName,
      width: file.documentElement.getAttribute('width'),
      title: file.querySelector('title')?.textContent,
      texts: [...file.querySelectorAll('text')].map((each) => each.textContent),
      strange: all.filter(({ tagName }) => /script|style|image|foreignObject|parsererror/i.test(tagName)).length,
      handlers: all.flatMap(({ attributes }) => [...attributes].filter(({ name }) => /^on|^class$|^data-/.test(name))).length,
      links: all.flatMap((each) => each.getAttribute('href') ?? []).filter((href) => !href.startsWith('#portrait-')).length,
    };
  }, text);
  expect(found).toMatchObject({ root: 'svg', width: '297mm', title: 'The house’s portrait: Sallowby', strange: 0, handlers: 0, links: 0 });
  expect(text).not.toMatch(/Harrowmere/i);
  const known: HowKnown = { isBuiltIn: true, standing: () => 'set', counted: () => undefined };
  const theirs = portraitRoomNames.flatMap((room) => figuresOfRoom(room, builtInLine(), known, new Set()));
  expect(theirs).toHaveLength(22);
  for (const { id, text } of theirs) expect(found.texts, id).not.toContain(text);
  // 6.5 t in each of 6 mashes of 46 weeks, which are not Sallowby’s own yet, are 1,794 t.
  for (const own of ['SALLOWBY', '6,500 kg', '1,794,000 kg', '41,000'])
    expect(found.texts.map((each) => each!.replace(/[\u00a0\u202f]/g, ' '))).toContain(own);
  expect(found.texts.join(' ')).toContain('3 (○) our estimate');
  expect(wrong).toEqual([]);
}); // prettier-ignore

test('words of one’s own are text, belong to their house, and stay; a figure left out stays out', async ({ page }) => {
  await openOwn(page);
  const words = page.locator('#portrait-words');
  await words.fill(`<script>x</script> & \u202e ${'y'.repeat(200)}`);
  await words.press('Tab');
  await expect(words).toHaveValue(/^<script>x<\/script> & y+$/);
  expect((await words.inputValue()).length).toBeLessThanOrEqual(100);
  await expect(sheet(page)).toContainText('<script>x</script> & y');
  await expect(sheet(page).locator('script')).toHaveCount(0);
  await page.locator('.portrait summary').click();
  await page.getByLabel('Casks in store').focus();
  await page.keyboard.press('Space');
  await expect(sheet(page)).not.toContainText('41,000');
  await page.reload();
  await expect(sheet(page)).toContainText('<script>x</script> & y');
  await expect(sheet(page)).not.toContainText('41,000');
  await page.evaluate((key) => localStorage.removeItem(key), HOUSE_KEY);
  await page.goto('about:blank');
  await open(page, '/house/portrait/');
  await expect(sheet(page)).toContainText('HARROWMERE');
  await expect(words).toHaveValue('');
}); // prettier-ignore

test('what was kept and cannot be read counts for nothing', async ({ page }) => {
  const wrong = watch(page);
  for (const text of ['{', '[]', 'null', '{"paper":"a0","left":{"a":1},"words":7}']) {
    await page.addInitScript((text) => localStorage.setItem('malt-spirit-handbook/portrait', text), text);
    await open(page, '/house/portrait/');
    await expect(page.locator('#portrait-paper')).toHaveValue('a4');
    await expect(page.locator('.portrait summary')).toHaveText('Figures on it (22)');
  }
  expect(wrong).toEqual([]);
});
