// Every page, card, sheet and record on A4 and Letter, by a reader whose screen is dark and whose figures are their own.
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { addresses, open, ready, sumsOf } from './pages.ts';
import { faultsOf, layOut, pageCount, paperNames, papers } from './paper.ts';

const houseOf = (name: string, heartEnd: number) =>
  encodeHouse({ name, house: { ...builtInHouse, heartEnd } as typeof builtInHouse });

test.use({ colorScheme: 'dark' });
test.beforeEach(({ page }) =>
  page.addInitScript(
    (text) => {
      localStorage.setItem('malt-spirit-handbook/house', text);
      window.print = () => undefined;
    },
    houseOf('Sallowby', 60),
  ),
);

for (const address of addresses)
  test(`${address} is whole on paper, black on white, and has no controls`, async ({ page }) => {
    await open(page, address);
    for (const paper of paperNames) {
      await layOut(page, paper);
      expect(await faultsOf(page, paper), paper).toEqual([]);
    }
  });

/** What is printed, outside of one part of the page. */
const printedBeside = (page: Page, part: string) =>
  page.evaluate((inside) => {
    const words: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text; text = walker.nextNode()) {
      const around = text.parentElement!;
      const isSkip = around.closest('.skip') !== null; // clipped away
      if (text.nodeValue!.trim() && !isSkip && around.checkVisibility() && !around.closest(inside))
        words.push(text.nodeValue!.trim());
    }
    return words;
  }, part);

test('a printed chapter shows one set of figures, the reader’s', async ({ page }) => {
  await open(page, '/distilling/work/');
  await layOut(page, 'A4');
  await expect(page.locator('#house-heartEnd')).toHaveValue('60');
  await expect(page.locator('[data-figure="house.heartEnd"]').first()).toHaveText(/^60\D/);
  await expect(page.locator('.foot')).toContainText('Sallowby');
  await open(page, '/distilling/');
  await layOut(page, 'A4');
  await expect(page.locator('.term-says').first()).toBeVisible();
  await expect(page.locator('.foot')).toContainText('Sallowby');
  expect(await pageCount(page, 'A4')).toBeGreaterThan(1);
});

test('a chapter takes few pages, and no more than its text needs', async ({ page }) => {
  // Counted once, with drawings half a page high and seven cautions that do not break: more than these and something stands in the way of a break.
  const most = { '/distilling/': 6, '/distilling/work/': 5, '/distilling/safe/': 4, '/distilling/check/': 4 };
  for (const [address, pages] of Object.entries(most)) {
    await open(page, address);
    expect(await pageCount(page, 'A4'), address).toBeLessThanOrEqual(pages);
  }
});

test('a printed calculator shows the reader’s figures with their units, the result, the working and the curve’s table', async ({
  page,
}) => {
  await open(page, '/sums/what-if/');
  await layOut(page, 'A4');
  const field = page.locator('.calculator .field:has(#what-if-heartEnd)');
  await expect(field.locator('input.number')).toHaveValue('60');
  await expect(field.locator('input.number')).toBeVisible();
  await expect(field.locator('.unit')).toBeVisible();
  await expect(page.locator('.calculator .results dd').first()).toBeVisible();
  await expect(page.locator('.calculator .working li').first()).toBeVisible();
  await open(page, '/sums/cask-through-years/');
  await layOut(page, 'A4');
  await expect(page.locator('.chart .series').first()).toBeVisible();
});

test('a house visited by link is named on the print', async ({ page }) => {
  await page.goto(`/house/${linkOf(houseOf('Thornwath', 58))}`);
  await ready(page);
  await layOut(page, 'A4');
  await expect(page.locator('.visit')).toHaveText(/figures of Thornwath, from a link/);
  await expect(page.locator('#house-heartEnd')).toHaveValue('58');
  expect(await faultsOf(page, 'A4')).toEqual([]);
});

test('pocket cards keep their size, and as many stand on a page as fit', async ({ page }) => {
  await open(page, '/cards/');
  await page.locator('summary', { hasText: 'Questions' }).click();
  for (const tick of (await page.locator('.choices details').last().locator('input').all()).slice(0, 7))
    await tick.check();
  for (const paper of paperNames) {
    await layOut(page, paper);
    expect(await faultsOf(page, paper)).toEqual([]);
    const cards = await page.locator('.cards .card').evaluateAll((all) =>
      all.map((card) => {
        const { width, height } = card.getBoundingClientRect();
        return { width: (width * 25.4) / 96, height, cut: getComputedStyle(card).borderTopStyle };
      }),
    );
    expect(cards).toHaveLength(11); // seven questions, and four of figures: what is not Sallowby’s own is left out
    for (const { width, cut } of cards) {
      expect(Math.abs(width - 2 * 85)).toBeLessThan(1.5); // two sides of 85 mm, and the cut lines
      expect(cut).toBe('dashed');
    }
    const gap = (2 * 96) / 25.4; // between cards, as cards.css has it
    let pages = 1;
    let room = papers[paper].height;
    for (const { height } of cards) {
      if (height > room) [pages, room] = [pages + 1, papers[paper].height];
      room -= height + gap;
    }
    expect(await pageCount(page, paper), paper).toBe(pages); // and nothing else: the whole house is on the sheet of its own page
  }
});

test('sheets: each version begins a page, no question leaves its answer line, and nothing else prints', async ({
  page,
}) => {
  await open(page, '/sheets/');
  await page.locator('#sheet-count').fill('3');
  await page.locator('#sheet-versions').fill('4');
  await page.locator('#sheet-versions').press('Tab');
  const expected = { questions: 4, answers: 4, key: 1 }; // three questions fill no page, and four keys share one
  for (const [button, part] of [
    ['Print the questions', 'questions'],
    ['Print the answers with working', 'answers'],
    ['Print the marking key', 'key'],
  ] as const)
    for (const paper of paperNames) {
      await page.emulateMedia({ media: 'screen' });
      await page.getByRole('button', { name: button }).click();
      await layOut(page, paper);
      await expect(page.locator('.paper.sheet .sheet-paper')).toHaveCount(4);
      expect(await printedBeside(page, '.paper.sheet')).toEqual([]);
      expect(await faultsOf(page, paper)).toEqual([]);
      if (part === 'questions') {
        await expect(page.locator('.paper.sheet .who:visible')).toHaveCount(4);
        await expect(page.locator('.paper.sheet .questions > li > .answer-line .rule:visible')).toHaveCount(
          12,
        );
      }
      expect(await pageCount(page, paper), `${part} on ${paper}`).toBe(expected[part]);
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    }
});

test('a question with a curve prints the curve, and its table only with the answers', async ({ page }) => {
  await open(page, '/sheets/');
  for (const tick of await page.locator('fieldset', { hasText: 'Kinds of question' }).locator('.tick').all())
    if (!/curve/i.test(await tick.innerText())) await tick.locator('input').uncheck();
  await page.locator('#sheet-versions').fill('1');
  await page.locator('#sheet-versions').press('Tab');
  await page.getByRole('button', { name: 'Print the questions' }).click();
  for (const paper of paperNames) {
    await layOut(page, paper);
    const questions = page.locator('.paper.sheet .questions > li');
    await expect(questions).toHaveCount(10);
    await expect(questions.locator('svg .curve:visible')).toHaveCount(10);
    await expect(questions.locator('.series:visible')).toHaveCount(0); // which would give the reading away
    expect(await faultsOf(page, paper)).toEqual([]);
  }
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await page.getByRole('button', { name: 'Print the answers' }).click();
  await layOut(page, 'A4');
  await expect(page.locator('.paper.sheet .series:visible')).toHaveCount(10);
});

test('a sheet taken and marked prints the answers given, steps to order among them', async ({ page }) => {
  await open(page, '/sheets/');
  for (const tick of await page.locator('fieldset', { hasText: 'Kinds of question' }).locator('.tick').all())
    if (!/order/i.test(await tick.innerText())) await tick.locator('input').uncheck();
  const link = () => new URL(page.url()).hash;
  await expect.poll(link).not.toBe('');
  await page.waitForTimeout(300); // the address follows once the hand rests
  const before = link();
  await page.locator('#sheet-versions').fill('1');
  await page.locator('#sheet-versions').press('Tab');
  await expect.poll(link).not.toBe(before);
  await open(page, `/sheet/${new URL(page.url()).hash}`);
  const steps = await page.locator('.step').count();
  expect(steps).toBeGreaterThan(0);
  await page.locator('.step').first().click();
  for (const paper of paperNames) {
    await layOut(page, paper);
    await expect(page.locator('.step:visible')).toHaveCount(steps);
    await expect(page.locator('.step .place').first()).toHaveText('1');
    expect(await faultsOf(page, paper)).toEqual([]);
  }
});

test('the record of practice fits a page, with lines to sign on, and nothing else prints', async ({
  page,
}) => {
  await open(page, sumsOf.fermenting);
  await page.locator('#practice-answer').fill('12');
  await page.locator('#practice-answer').press('Enter');
  await expect(page.locator('.mark-of').first()).toBeVisible(); // the focus goes back to the answer once it is marked
  await page.locator('#record-name').fill('Una Thornwath');
  for (const paper of paperNames) {
    await page.emulateMedia({ media: 'screen' });
    await page.getByRole('button', { name: 'Print the record to sign' }).click();
    await layOut(page, paper);
    await expect(page.locator('.paper.record')).toContainText('Una Thornwath');
    await expect(page.locator('.signatures p:visible')).toHaveCount(2);
    expect(await printedBeside(page, '.paper.record')).toEqual([]);
    expect(await faultsOf(page, paper)).toEqual([]);
    expect(await pageCount(page, paper)).toBe(1);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  }
});

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });
  for (const address of ['/fermenting/', '/practice/'])
    test(`${address} prints as black and as whole`, async ({ page }) => {
      await page.goto(address);
      for (const paper of paperNames) {
        await layOut(page, paper);
        await expect(page.locator('h1')).toBeVisible();
        expect(await faultsOf(page, paper), paper).toEqual([]);
      }
    });
});
