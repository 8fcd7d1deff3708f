// A trainer's own questions, sheet and record: from the form to the table of results, on a phone.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { injections } from '../hostile-texts.ts';
import { open, watch } from './pages.ts';
import { handInBlank } from './hand-in-blank.ts';

test.use({ viewport: { width: 390, height: 844 } });
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();

/** Writes a question on the alcohol of a mash into its form. */
async function write(page: Page, formula: string, title = 'Alcohol of a mash'): Promise<void> {
  const fields = {
    title,
    wording: 'A mash of {malt} of malt yields {yield}. How much pure alcohol is that?',
    formula,
  };
  for (const [name, text] of Object.entries(fields)) await page.fill(`#own-q-${name}`, text);
  if ((await page.locator('#own-v-name-1').count()) === 0) await button(page, 'One value more').click();
  await page.fill('#own-v-name-0', 'malt');
  await page.fill('#own-v-takes-0', '4000 to 6000 step 500');
  await page.fill('#own-v-name-1', 'yield');
  await page.selectOption('#own-v-unit-1', 'yield|L pure alcohol/t');
  await page.fill('#own-v-takes-1', '390; 402; 411');
  await page.fill('#own-s-formula-0', 'malt × yield');
  await page.fill('#own-s-say-0', 'The kilograms were not made tonnes.');
}

test('a question is tried, kept, asked in a sheet, taken and counted by its marks', async ({
  page,
  context,
}) => {
  const wrong = watch(page);
  await open(page, '/sheets/questions/');
  await write(page, 'malt + yield');
  await button(page, 'Keep it in my bank').click();
  await expect(page.locator('.own-finding')).toContainText('not alike');
  await write(page, 'malt[t] × yield');
  await button(page, 'Keep it in my bank').click();
  await expect(page.locator('.own-found')).toContainText('Alcohol of a mash');

  await open(page, '/sheets/own/');
  await button(page, /^Add/).click();
  await page.selectOption('#own-topic', 'own');
  await button(page, /^Add: Alcohol/).click();
  await page.getByLabel('Marks for question 2').selectOption('3');
  await button(page, /^Up: question 2/).click();
  await page.selectOption('#own-shows', 'at once');
  await page.fill('#own-pass', '75');
  await page.fill('#own-title', 'Week two');
  await page.locator('#own-title').blur();
  await expect(page.locator('.own-even tbody tr')).toHaveCount(6);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await button(page, 'Copy the link for trainees').click();
  await expect(page.locator('#own-said')).toContainText('is copied');
  const link = new URL(await page.evaluate(() => navigator.clipboard.readText()));

  await open(page, `${link.pathname}${link.hash}&version=4`);
  const prompt = await page.locator('.question .prompt').first().innerText();
  const [malt, yields] = [...prompt.matchAll(/([\d,]+)\u00a0/g)].map(([, n]) => Number(n!.replace(',', '')));
  await page.fill('#answer-1', String((malt! * yields!) / 1000)); // by hand: tonnes times litres a tonne
  await button(page, 'Mark question 1').click();
  await expect(page.locator('.mark-of')).toHaveAttribute('data-verdict', 'right');
  await page.fill('#take-name', 'Una Thornwath');
  await handInBlank(page, 'Hand in');
  await expect(page.locator('.handed-in')).toContainText('3 of 4 marks: a pass');
  const code = await page.locator('.code output').innerText();

  await open(page, '/sheets/own/');
  await page.fill('#own-codes', `${code}\n`);
  await expect(page.locator('.results-in tbody tr')).toContainText('3.0 of 4');
  await expect(page.locator('.results-in tbody tr')).toContainText('pass');
  expect(wrong).toEqual([]);
});

test('a bank goes out as a file and comes back, and nothing in it runs', async ({ page }) => {
  await open(page, '/sheets/questions/');
  await write(page, 'malt[t] × yield', injections[0]);
  await button(page, 'Keep it in my bank').click();
  await expect(page.locator('.own-found')).toContainText(injections[0]);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save the bank to a file').click(),
  ]);
  const text = readFileSync(await file.path(), 'utf8');
  await button(page, /^Remove/).click();
  await expect(page.locator('.own-found')).toHaveCount(0);
  const take = (name: string, content: string) =>
    page
      .locator('#own-bank-file')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
  await take('spoilt.json', text.replace('malt[t]', 'malt[ell]'));
  await expect(page.getByText('they are not sound')).toBeVisible();
  await take('bank.json', text);
  await expect(page.locator('.own-found')).toContainText(injections[0]);
  expect(await page.evaluate(() => (window as unknown as { hurt?: unknown }).hurt)).toBeUndefined();
});

test('a record of tasks is filled in, saved, begun anew and opened again', async ({ page }) => {
  await open(page, '/tasks/distilling/');
  const haze = page.getByRole('group', { name: 'Make the first cut by the haze test' });
  await haze.getByRole('button', { name: 'Prompted' }).click();
  await page.fill('#note-haze-cut', 'Batch 12: told to look again');
  await page.fill('#observed-trainee', 'Una Thornwath');
  await page.locator('#observed-trainee').blur();
  await page.reload();
  await expect(haze.getByRole('button', { name: 'Prompted' })).toHaveAttribute('aria-pressed', 'true');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save it to a file').click(),
  ]);
  await button(page, 'Begin a new record').click();
  await expect(haze.getByRole('button', { name: 'Prompted' })).toHaveAttribute('aria-pressed', 'false');
  await page.setInputFiles('#observed-file', await file.path());
  await expect(page.locator('#note-haze-cut')).toHaveValue('Batch 12: told to look again');
  await page.evaluate(() => (window.print = () => undefined));
  await button(page, 'Print the record to sign').click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.observed-paper')).toContainText('prompted');
  await expect(page.locator('.observed-paper')).toContainText('no licence');
});

test('two tabs on one sheet: what is changed in one stands in the other, and nothing is lost', async ({
  page,
  context,
}) => {
  await open(page, '/sheets/own/');
  const other = await context.newPage();
  await open(other, '/sheets/own/');
  await page.fill('#own-title', 'Week nine');
  await page.locator('#own-title').blur();
  await expect(other.locator('#own-title')).toHaveValue('Week nine');
  await other.fill('#own-minutes', '35');
  await other.locator('#own-minutes').blur();
  await expect(page.locator('#own-minutes')).toHaveValue('35');
  await page.reload();
  await expect(page.locator('#own-title')).toHaveValue('Week nine');
  await expect(page.locator('#own-minutes')).toHaveValue('35');
});
