// The class book and sealed sheets: sealed, taken, handed in, opened, marked and read by the class; two tabs with one book.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { answersCode, resultCode, type SheetResult } from '../../src/exercises/result.ts';
import { ownSheetFile } from '../exercises/own-examples.ts';
import { storageKey } from '../../src/browser/browser-store.ts';
import { open, watch } from './pages.ts';
import { handInBlank } from './hand-in-blank.ts';

test.use({ viewport: { width: 390, height: 844 } });
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first();
const sheet = '/sheet/#sheet=1.3.0.0.2.a.1.built-in';

test('a sheet is sealed, taken, handed in and opened by its key alone, and stands in the class book', async ({ page, context }) => {
  const wrong = watch(page);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, '/sheets/sealed/');
  await button(page, 'Make a key').click();
  await page.fill('#sealed-address', `https://example.org${sheet}`);
  await page.fill('#sealed-minutes', '30');
  await page.fill('#sealed-pass', '60');
  await button(page, 'Draw it anew and seal it').click();
  await button(page, 'Copy the link to all versions').click();
  await expect(page.locator('#sealed-said')).toContainText('is copied');
  const link = new URL(await page.evaluate(() => navigator.clipboard.readText()));
  expect(link.pathname).toBe('/sheet/sealed/');

  await open(page, `${link.pathname}${link.hash}`);
  await expect(page.locator('.question .prompt')).toHaveCount(2);
  await page.fill('#take-name', 'Zoë Marsh');
  await page.locator('#answer-1').fill('1');
  await button(page, 'Seal and hand in').click();
  await expect(page.getByText('One of two is blank: 2. Press again')).toBeVisible();
  await button(page, 'Seal and hand in').click();
  await expect(page.locator('.code output')).toBeInViewport(); // what is to be sent, wherever the button stood
  const handIn = await page.locator('.code output').innerText();
  expect(handIn).toMatch(/^hs1-[0-9a-z]{12}-[\w-]+$/);
  await expect(page.locator('.mark-of')).toHaveCount(0);

  await open(page, '/sheets/sealed/');
  await page.getByText('Sealed before, in this browser').click();
  await button(page, 'its links').click();
  await button(page, 'Copy the link to all versions').click();
  await expect(page.locator('#sealed-said')).toContainText('is copied');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link.href);
  await page.fill('#sealed-in', `Mail from Zoë\n${handIn.slice(0, 150)}\n${handIn.slice(150)}\n${handIn}\n${handIn.slice(0, -9)}${handIn.at(-9) === 'A' ? 'B' : 'A'}${handIn.slice(-8)}\nnonsense`);
  await button(page, 'Open and mark them').click();
  await expect(page.locator('#sealed-notes')).toContainText('1 hand-in was opened and marked.');
  await expect(page.locator('#sealed-notes')).toContainText('2 lines without a hand-in were passed over.');
  await expect(page.locator('#sealed-notes')).toContainText('is taken once');
  await expect(page.locator('.table tbody tr')).toHaveCount(1);
  await expect(page.locator('.table tbody tr')).toContainText(/Zoë Marsh.*not yet/);
  await button(page, 'Put them into the class book').click();
  await expect(page.locator('#sealed-back-said')).toContainText('1 result is in the class book now.');

  await open(page, '/class/');
  await expect(page.getByRole('group', { name: 'Who has done what', exact: true })).toContainText('of 2, not yet, sealed');
  await button(page, 'Draw six questions').click();
  await expect(page.locator('.class-lesson .questions li')).toHaveCount(6);
  expect(wrong).toEqual([]);
}); // prettier-ignore

test('two tabs keep one class book, results come many at once, and the file has all of it', async ({ page, context }) => {
  const una: SheetResult = { sheet: '0abcdef', version: 1, name: 'Una Thornwath', marks: [{ verdict: 'right' }, { verdict: 'wrong' }], day: '2026-05-14', attempt: 1, answers: answersCode(['1']) };
  const codes = [una, { ...una, name: 'Zoë Marsh', version: 2 }].map(resultCode).join('\n');
  await open(page, '/class/');
  await page.fill('#class-names', 'Bo Hale');
  await button(page, 'Put them in').click();
  const other = await context.newPage();
  await open(other, '/class/');
  await other.fill('#class-pasted', `${codes}\nBo Hale: Shift 12, still 0AB12CD, charge 1: 85 of 100, 2026-05-15`);
  await button(other, 'Take them into the book').click();
  await expect(other.locator('#class-notes')).toContainText('3 results are in the class book now.');
  await expect(page.locator('.class-picture .got')).toHaveCount(3);
  await expect(page.locator('#class-results ~ .remark')).toContainText('Una Thornwath and Zoë Marsh handed in the same answers');
  await page.locator('#class-matrix ~ details summary').click();
  await page.selectOption('#matrix-person', { label: 'Bo Hale' });
  await page.fill('#matrix-outcome', 'distilling');
  await page.locator('#class-matrix ~ details').getByRole('button').click();
  await page.fill('#matrix-on', '2199-01-01');
  await expect(page.locator('[data-state=expired]')).toHaveCount(1);
  await expect(other.locator('.class-matrix')).toContainText('valid until');
  const saving = page.waitForEvent('download');
  await button(page, 'Save the book to a file').click();
  const file = JSON.parse(readFileSync(await (await saving).path(), 'utf8')) as { entries: object };
  expect(Object.keys(file.entries)).toHaveLength(3 + 2 + 3 + 1);
}); // prettier-ignore

test('a join is undone where it was made, a result is given to whose it is, and names almost alike are asked about at once', async ({ page }) => {
  const of = (name: string): string => resultCode({ sheet: '0abcdef', version: 1, name, marks: [{ verdict: 'right' }, { verdict: 'wrong' }], day: '2026-05-14', attempt: 1, answers: answersCode([name]) });
  const table = page.getByRole('group', { name: 'Who has done what', exact: true });
  await open(page, '/class/');
  await page.fill('#class-names', 'Ewan Brackley, Ewan Brackly, Bram Hollis');
  await button(page, 'Put them in').click();
  await expect(page.locator('section:has(#class-people) #class-alike')).toContainText('the same as Ewan Brack');
  await page.locator('#class-alike').getByRole('button', { name: 'No' }).click();
  await page.fill('#class-pasted', [of('Noor Vale'), of('Bram Hollis')].join('\n'));
  await button(page, 'Take them into the book').click();
  await page.getByText('Rename somebody').click();
  await page.selectOption('#names-person', { label: 'Noor Vale' });
  await page.selectOption('#names-other', { label: 'Bram Hollis' });
  await button(page, 'Join the two').click();
  await expect(table).not.toContainText('Noor Vale');
  await page.locator('.class-done:has(#names-said)').getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('#names-said')).toContainText('Noor Vale and Bram Hollis are two again');
  await expect(table.getByRole('row', { name: /Noor Vale/ })).toContainText('1 of 2');
  await page.getByText('Take a result out').click();
  await page.selectOption('#mend-whose', { label: 'Noor Vale' });
  await page.selectOption('#mend-to', { label: 'Ewan Brackley' });
  await button(page, 'Give to Ewan Brackley').click();
  await expect(table.getByRole('row', { name: /Noor Vale/ })).toContainText('none');
  await page.locator('.class-done:has(#mend-said)').getByRole('button', { name: 'Undo' }).click();
  await expect(table.getByRole('row', { name: /Noor Vale/ })).toContainText('1 of 2');
  await page.selectOption('#class-print-who', '');
  await expect(button(page, 'Choose whose record to print')).toBeDisabled();
}); // prettier-ignore

test('whose a result is, is asked where its version was given to another, and no name is put in twice unsaid', async ({ page }) => {
  await open(page, '/class/');
  await page.evaluate((key) => localStorage.setItem(key, 'Liv Dahlby\nLiv Dahlby (night shift)'), storageKey('handed-out/0abcdef'));
  await page.fill('#class-names', 'Liv Dahlby, Liv Dahlby (night shift), Liv Dahlby');
  await button(page, 'Put them in').click();
  await expect(page.locator('#class-people-said')).toContainText('Liv Dahlby stands twice: put in once');
  await page.fill('#class-pasted', resultCode({ sheet: '0abcdef', version: 2, name: 'Liv Dahlby', marks: [{ verdict: 'right' }], day: '2026-05-14', attempt: 1, answers: answersCode(['a']) }));
  await button(page, 'Take them into the book').click();
  await expect(page.getByRole('alert')).toContainText('was given to Liv Dahlby (night shift), and the name on it is Liv Dahlby. Whose is it?');
  await page.getByRole('button', { name: 'Liv Dahlby (night shift)', exact: true }).click();
  await expect(page.locator('#class-notes')).toContainText('1 result is in the class book now.');
  await expect(page.getByRole('row', { name: /^Liv Dahlby \(night shift\)/ })).toContainText('1 of 1');
}); // prettier-ignore

test('a sheet leads to its seal, a file waits for the press, the list has the links, and a phone that handed one version in asks who takes the next', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, '/sheets/');
  await page.getByRole('link', { name: 'Seal this sheet' }).click();
  await expect(page.getByText('waits here: make a key')).toBeVisible();
  await button(page, 'Make a key').click();
  await expect(page.locator('#sealed-address')).toHaveValue(/\/sheet\/#sheet=/);
  expect(new URL(page.url()).hash).toBe('');
  await page.locator('#sealed-own-file').setInputFiles({ name: 'sheet.own.json', mimeType: 'application/json', buffer: Buffer.from(ownSheetFile()) });
  await expect(page.locator('#sealed-said')).toContainText('is read from the file');
  await expect(page.locator('#sealed-address')).toHaveValue('');
  await page.fill('#sealed-address', `https://example.org${sheet.replace('a.1.', 'a.2.')}`);
  await button(page, 'Draw it anew and seal it').click();
  await expect(page.locator('#sealed-said')).toContainText('Sealed as');
  await page.reload();
  await page.getByText('Sealed before, in this browser').click();
  await button(page, 'its links').click();
  await expect(page.getByRole('link', { name: 'See it with its answers' })).toHaveAttribute('href', /sheets\/#sheet=/);
  await page.getByText('Who gets which version').click();
  await page.fill('#handed-names', 'Una Thornwath\nZoë Marsh');
  await button(page, 'Copy it with the links').click();
  await expect(page.getByText('The list is copied')).toBeVisible();
  const lines = (await page.evaluate(() => navigator.clipboard.readText())).split('\n');
  expect(lines.map((line) => line.split(': ')[0])).toEqual(['Una Thornwath', 'Zoë Marsh']);
  for (const [i, line] of lines.entries()) {
    const { pathname, hash } = new URL(line.split(': ')[1]!);
    await open(page, '/'); // a phone that goes from hand to hand
    await open(page, `${pathname}${hash}`);
    if (i === 1) {
      await expect(page.locator('#other-version')).toHaveText('Version 1 of this sheet was handed in here');
      await page.fill('#other-name', 'Zoë Marsh');
      await button(page, 'Begin version 2').click();
      await expect(page.locator('#take-name')).toHaveValue('Zoë Marsh');
    } else {
      await page.fill('#take-name', 'Una Thornwath');
      await handInBlank(page, 'Seal and hand in');
      await expect(page.locator('.code output')).toContainText('hs1-');
    }
  }
}); // prettier-ignore
