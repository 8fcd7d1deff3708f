// A house goes from one browser to another: by a picture that a camera reads, by a link, and as signed releases that are put together with what a guide changed.
import { readFileSync } from 'node:fs';
import { expect, test, type Browser, type Locator, type Page } from '@playwright/test';
import jsQR from 'jsqr';
import { numberFigures, type NumberName } from '../../src/house/figures.ts';
import { open, watch } from './pages.ts';

const said = (page: Page) => page.locator('#hand-on-open-said');
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const figure = (page: Page, name: string) => page.locator(`#house-${name}`);
const keptHouse = (page: Page) =>
  page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house') ?? '');

/** Puts figures of the house in, each on the page of its stage, and waits until they are kept. */
async function put(page: Page, figures: Readonly<Partial<Record<NumberName, string>>>): Promise<void> {
  for (const [name, value] of Object.entries(figures)) {
    const address = `/house/${numberFigures[name as NumberName].stage}/`;
    if (new URL(page.url(), 'http://none').pathname !== address) await open(page, address);
    await figure(page, name).fill(value);
    await expect.poll(() => keptHouse(page)).toContain(`"${name}":${value}`);
  }
}
/** Gives a text to the page as a file. */
async function give(page: Page, text: string): Promise<void> {
  await open(page, '/house/hand-on/');
  await page.locator('#house-file').setInputFiles({ name: 'given.json', mimeType: 'application/json', buffer: Buffer.from(text) }); // prettier-ignore
}
async function download(page: Page, press: string | RegExp): Promise<string> {
  const [file] = await Promise.all([page.waitForEvent('download'), button(page, press).click()]);
  return readFileSync((await file.path())!, 'utf8');
}
/** Signs the next release. */
async function release(page: Page): Promise<string> {
  await open(page, '/house/hand-on/');
  return download(page, /Sign and save release/);
}
/** An owner with a house of her own and a key. */
async function owner(browser: Browser, signer = 'Ann'): Promise<Page> {
  const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await put(page, { yearsInWood: '12' });
  await open(page, '/house/');
  await page.locator('#house-name').fill('Sallowby');
  await page.locator('#house-name').press('Tab');
  await expect.poll(() => keptHouse(page)).toContain('Sallowby');
  await open(page, '/house/hand-on/');
  await page.locator('#hand-on-signer').fill(signer);
  await button(page, 'Make my key').click();
  await expect(page.locator('#hand-on-release')).toHaveValue('1');
  return page;
}

test('releases go from an owner to a guide, who is two behind, keeps what he changed and chooses where both did', async ({
  browser,
  page: guide,
}) => {
  const wrong = watch(guide);
  const ann = await owner(browser);
  const digits = await ann.locator('.fingerprint').textContent();
  const first = await release(ann);

  await give(guide, first);
  await expect(guide.locator('.handed-on')).toContainText(
    /Sallowby, release 1 of .*, signed by Ann\. The signature fits/,
  );
  await expect(guide.locator('.handed-on')).toContainText('by a key that this browser has not seen');
  await expect(guide.locator('.handed-on .fingerprint')).toHaveText(digits!);
  expect(digits).toMatch(/^\d{4}( \d{4}){5}$/);
  await button(guide, 'Open Sallowby').click();
  await expect(said(guide)).toHaveText('Sallowby is open: release 1, signed by Ann.');
  await put(guide, { heartEnd: '61', bottlingStrength: '48' });

  await put(ann, { barrels: '60' });
  await release(ann);
  await put(ann, { heartEnd: '60', yearsInWood: '14' });
  const third = await release(ann);
  expect(JSON.parse(third)).toMatchObject({
    format: 'malt-spirit-handbook/signed',
    kind: 'house',
    release: 3,
  });

  await give(guide, third);
  const panel = guide.locator('.handed-on');
  await expect(panel).toContainText('Signed with the same key as the Sallowby that you opened before.');
  await expect(panel).toContainText('You have release 1: you are two releases behind.');
  await expect(panel).toContainText(
    /What you alone changed stays as you have it: Bottling strength, 48\.0\s%\svol\./,
  );
  for (const each of [
    /Heart ends at: 62.* → 60/,
    /Years in wood: 12.* → 14/,
    /Share of barrels.*: 75.* → 60/,
  ])
    await expect(panel.locator('li').filter({ hasText: each })).toHaveCount(1);
  await expect(panel.locator('fieldset')).toHaveCount(1);
  await expect(panel.locator('legend')).toContainText(/Heart ends at, was 62/);
  await expect(panel.locator('input:checked')).toHaveCount(0);
  const stood = await keptHouse(guide);
  await button(guide, 'Take release 3').click();
  await expect(panel.locator('.problem')).toHaveText('Choose first which holds: “Heart ends at”.');
  expect(await keptHouse(guide)).toBe(stood);
  await panel.getByLabel(/^Release 3: 60/).check();
  await button(guide, 'Take release 3').click();
  await button(guide, 'Undo').click();
  await expect(said(guide)).toHaveText('Sallowby is again as it stood before release 3.');
  await expect(said(guide)).toBeFocused();
  expect(JSON.parse(await keptHouse(guide))).toEqual(JSON.parse(stood));
  await give(guide, third);
  await panel.getByLabel(/^Yours: 61/).check();
  await button(guide, 'Take release 3').click();
  await expect(said(guide)).toHaveText('Sallowby is open at release 3.');
  await expect(said(guide)).toBeFocused();
  for (const each of ['"heartEnd":61', '"yearsInWood":14', '"barrels":60', '"bottlingStrength":48'])
    expect(await keptHouse(guide)).toContain(each);
  await open(guide, '/house/distilling/');
  await expect(figure(guide, 'heartEnd')).toHaveValue('61');

  const before = await keptHouse(guide);
  await give(guide, first);
  await expect(panel).toContainText('You have release 3; this file is release 1, two releases behind yours. Nothing was changed.'); // prettier-ignore
  await give(guide, third);
  await expect(panel).toContainText('You have release 3 already.');
  await button(guide, 'Close it, change nothing').click();
  expect(await keptHouse(guide)).toBe(before);
  await give(guide, first);
  await button(guide, 'Open it as another house').click();
  await expect(said(guide)).toContainText('Sallowby 2 is open: release 1');
  await expect.poll(() => keptHouse(guide)).toContain('"heartEnd":62');
  expect(wrong).toEqual([]);
});

test('a release by another key is warned of, and opens only when the reader says so', async ({
  browser,
  page,
}) => {
  const [ann, stranger] = [await owner(browser), await owner(browser)];
  await give(page, await release(ann));
  await button(page, 'Open Sallowby').click();
  await put(stranger, { yearsInWood: '5' });
  await release(stranger);
  const second = await release(stranger);
  await give(page, second);
  const panel = page.locator('.handed-on');
  await expect(panel.locator('.problem')).toContainText('was signed with another key');
  await expect(button(page, /^(Take|Open Sallowby)/)).toHaveCount(0);
  await button(page, 'Trust this key from now on').click();
  await expect(panel).toContainText('You have release 1: you are one release behind.');
  await button(page, 'Take release 2').click();
  expect(await keptHouse(page)).toContain('"yearsInWood":5');
});

test('a file changed by one character, a key and a plain house each get a sentence, and nothing is lost', async ({ browser, page }) => {
  const ann = await owner(browser);
  const file = await release(ann);
  await put(page, { heartEnd: '61' });
  const before = await keptHouse(page);
  for (const [text, says] of [
    [file.replace('"Ann"', '"Ann "'), /does not say who signed it\. Nothing was changed here/],
    [file.replace('"Ann"', '"Anne"'), /The signature does not fit: this file was changed after it was signed\. Nothing was changed here\./],
    [file.replace(/\\"heartEnd\\":62/, '\\"heartEnd\\":63'), /The signature does not fit/],
    [file.replace('"release": 1', '"release": 2'), /The signature does not fit/],
    [file.replace('"version": 1', '"version": 2'), /version 2; this handbook reads version 1/],
    [file.slice(0, -20), /damaged/],
  ] as const) {
    expect(text).not.toBe(file);
    await give(page, text);
    await expect(said(page)).toContainText(says);
    expect(await keptHouse(page)).toBe(before);
  }
  await open(ann, '/house/hand-on/');
  await ann.locator('.keys > summary').click();
  const key = await download(ann, 'Save my key to a file');
  await give(page, key);
  await expect(said(page)).toContainText('This is somebody’s key, not a house.');
  expect(await keptHouse(page)).toBe(before);
}); // prettier-ignore

test('a key goes on another machine and signs there as before; numbers of releases never go back', async ({ browser, page }) => {
  const ann = await owner(browser);
  await release(ann);
  const digits = await ann.locator('.fingerprint').textContent();
  await ann.locator('.keys > summary').click();
  const key = await download(ann, 'Save it and take it out of this browser');
  await expect(ann.locator('#hand-on-sign-said')).toContainText('Your key is out of this browser');
  await ann.reload();
  await expect(button(ann, 'Make my key')).toBeEnabled();
  expect(await ann.evaluate(() => JSON.stringify({ ...localStorage }))).not.toContain('signing-key"');

  await put(page, { yearsInWood: '9' });
  await open(page, '/house/');
  await page.locator('#house-name').fill('Sallowby');
  await page.locator('#house-name').press('Tab');
  await open(page, '/house/hand-on/');
  await page.locator('.keys > summary').click();
  const giveKey = (text: string) => page.locator('#hand-on-key').setInputFiles({ name: 'key.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await giveKey(key.replace(/"d": "./, '"d": "A'));
  await expect(page.locator('#hand-on-sign-said')).toContainText(/damaged\. Nothing was changed/);
  await giveKey(key);
  await expect(page.locator('#hand-on-sign-said')).toContainText('You sign as Ann.');
  await expect(page.locator('.fingerprint')).toHaveText(digits!);
  await expect(page.locator('#hand-on-release')).toHaveValue('2');
  for (const nonsense of ['1', '-3', 'lots', '99999', '<b>', ''])  {
    await page.locator('#hand-on-release').fill(nonsense);
    await expect(page.locator('#hand-on-release-problem')).toBeVisible();
  }
  await page.locator('#hand-on-release').fill('7');
  expect(JSON.parse(await download(page, 'Sign and save release 7'))).toMatchObject({ release: 7, signer: 'Ann' });
  await expect(page.locator('#hand-on-release')).toHaveValue('8');
}); // prettier-ignore

/** What a camera reads off a picture on the screen. */
async function scanned(picture: Locator, browser: Browser): Promise<string | undefined> {
  const shot = (await picture.screenshot()).toString('base64');
  const camera = await browser.newPage();
  const { pixels, width } = await camera.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const canvas = Object.assign(document.createElement('canvas'), {
      width: image.width,
      height: image.height,
    });
    const pen = canvas.getContext('2d')!;
    pen.drawImage(image, 0, 0);
    return { pixels: [...pen.getImageData(0, 0, image.width, image.height).data], width: image.width };
  }, shot);
  await camera.close();
  return jsQR(new Uint8ClampedArray(pixels), width, pixels.length / width / 4)?.data;
}

for (const colorScheme of ['light', 'dark'] as const)
  test(`another phone reads the picture off a ${colorScheme} screen and shows the house as a visit`, async ({ browser, page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.emulateMedia({ colorScheme });
    await put(page, { heartEnd: '61', yearsInWood: '14', barrels: '60' });
    await open(page, '/house/hand-on/');
    const picture = page.locator('.qr svg');
    await expect(picture).toHaveAttribute('aria-label', /opens the figures of Harrowmere/);
    const address = (await scanned(picture, browser))!;
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/house\/#house=1~[\w-]+$/);
    const phone = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
    await open(phone, address);
    await expect(phone.locator('.visit')).toContainText('You are looking at the figures of Harrowmere');
    await button(phone, /^Keep/).click();
    await expect.poll(() => keptHouse(phone)).toContain('"yearsInWood":14');
  }); // prettier-ignore

test('a sheet goes to a phone by its picture, and in a file that its trainer has signed', async ({ browser, page }) => {
  await open(page, '/house/hand-on/');
  await page.locator('#hand-on-signer').fill('Ann');
  await button(page, 'Make my key').click();
  await expect(page.locator('#hand-on-release')).toBeVisible();
  await open(page, '/sheets/');
  await page.locator('#sheet-versions').fill('60');
  await button(page, 'Show the link as a picture').click();
  await expect(page.locator('.sheet-desk [role=status]').last()).toContainText(/The link has \d+ characters, too many .* \d+ versions of these questions fit/);
  const said = await page.locator('.sheet-desk [role=status]').last().innerText();
  const most = Number(/(\d+) versions of these/.exec(said)![1]);
  await page.locator('#sheet-versions').fill(String(most + 1));
  await button(page, 'Show the link as a picture').click();
  await expect(page.locator('.sheet-desk [role=status]').last()).toContainText(`${most} versions of these questions fit`);
  await page.locator('#sheet-versions').fill(String(most));
  await button(page, 'Show the link as a picture').click();
  const address = (await scanned(page.locator('.qr svg'), browser))!;
  expect(new URL(address).pathname).toBe('/sheet/');
  const file = await download(page, 'Save the link in a signed file');
  expect(JSON.parse(file)).toMatchObject({ kind: 'sheet', text: new URL(address).hash, release: 1 });
  await page.locator('#sheet-count').fill('5');
  await expect(page.locator('.qr')).toHaveCount(0); // another sheet by now

  const trainee = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
  await give(trainee, file);
  await expect(trainee.locator('.handed-on')).toContainText('signed by Ann');
  await trainee.getByRole('link', { name: 'Open the sheet' }).click();
  await expect(trainee.locator('#take-version')).toBeVisible();
}); // prettier-ignore

test('where a page may not sign, it says so, and a plain house opens all the same', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(crypto, 'subtle', { value: undefined }));
  await open(page, '/house/hand-on/');
  await expect(button(page, 'Make my key')).toBeDisabled();
  await expect(page.locator('.hand-on').nth(1)).toContainText(
    'only on a page from an address that begins with https',
  );
  await expect(page.locator('.qr svg')).toBeVisible();
  const file = await download(page, 'Save to a file');
  await give(page, file);
  await expect(said(page)).toContainText('is open, from given.json. Nobody has signed it.');
});
