// The week and the periods of a stillhouse, used in the browser: what fits, what does not, what is put down and kept.
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { open, watch } from './pages.ts';

const nobody = linkOf(encodeHouse({ name: 'Sallowby', house: builtInHouse, parts: {} }));

test.use({ viewport: { width: 390, height: 844 } });

test('a week says whether the mashes fit, what stands in the way of one more, and what runs when', async ({
  page,
}) => {
  const wrong = watch(page);
  await open(page, '/house/week/');
  const says = page.locator('.plant-says');
  await expect(says).toContainText('6 mashes a week fit.');
  await expect(says).toContainText('one more does not fit: the washbacks');
  await page.locator('#week-mashes').fill('20');
  await expect(says).toContainText('20 mashes a week do not fit: the washbacks are needed for');
  await expect(page.locator('.week')).toContainText('6 mashes fit; this is that week.');
  await expect(page.locator('.strips')).toHaveCount(1);
  await page.locator('#week-mashes').fill('5');
  await expect(says).toContainText('5 mashes a week fit.');
  await page.locator('#week-shown').selectOption('1');
  await page.getByText('Tuesday in words').click();
  await expect(page.locator('.week .series')).toContainText('Tue');
  await page.locator('#week-now-hour').selectOption('3');
  await expect(page.locator('.week .now')).toContainText('fermenting for');
  await page.locator('#week-warmer-what').selectOption('washback');
  await expect(page.locator('.week .remark').last()).toContainText('is not reckoned here');
  await page.locator('#week-warmer-what').selectOption('water');
  await expect(page.locator('.week .remark').last()).toContainText('L more water a week');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByText('Save the timetable').click(),
  ]);
  const csv = readFileSync(await file.path(), 'utf8');
  expect(csv.match(/Mash tun,/g)).toHaveLength(5);
  expect(wrong).toEqual([]);
});

test('days and hours of the house are kept, and nonsense is told of', async ({ page }) => {
  await open(page, '/house/week/');
  await page.getByText('Mashing: Monday to Friday').click();
  await page.locator('#week-mashDays').selectOption('7');
  for (const [id, text] of [
    ['week-mashHours', 'all day'],
    ['week-turnRound', '-3'],
    ['week-mashes', '2.5'],
    ['week-warmer-by', '400'],
  ] as const) {
    await page.locator(`#${id}`).fill(text);
    await expect(page.locator(`#${id}-problem`)).toBeVisible();
  }
  await page.waitForTimeout(400); // it is written once it has been quiet
  await open(page, '/house/week/');
  await expect(page.getByText('Mashing: all seven days')).toBeVisible();
});

test('a house without vessels is led to them, and one without periods begins one', async ({ page }) => {
  await open(page, `/house/week/${nobody}`);
  await expect(page.locator('.plant-says')).toContainText('Say which vessels you have');
  await expect(page.locator('.way-back a').last()).toHaveAttribute('href', /plant/);
  await open(page, `/house/period/${nobody}`);
  await expect(page.locator('.plant-says')).toHaveText('Sallowby has put down no period yet.');
  await page.getByRole('button', { name: 'Begin a period' }).click();
  await expect(page.locator('#period-name')).toBeFocused();
});

test('a period balances, says where it was lost, and tells of what cannot be', async ({ page }) => {
  const wrong = watch(page);
  await open(page, '/house/period/');
  const says = page.locator('.plant-says');
  await expect(says).toContainText('Most was lost beyond the usual here');
  await page.getByText('Stands there now:').click();
  // 10,000 L of 69.9 % are more than ever stood there.
  await page.locator('#period-closing-spirit-volume').fill('10,000');
  await expect(says).toContainText('Spirit sent on and spirit at the closing hold');
  await expect(says).toContainText('too much');
  await page.locator('#period-closing-spirit-volume').fill('-4');
  await expect(page.locator('#period-closing-spirit-volume-problem')).toBeVisible();
  await page.locator('#period-closing-spirit-volume').fill('500');
  await page.locator('#period-name').fill('');
  await expect(page.locator('#period-name-problem')).toBeVisible();
  await page.locator('#period-name').fill('Week 13');
  await page.getByRole('button', { name: 'Begin the next period' }).click();
  await page.getByText('Stood there:').click();
  await expect(page.locator('#period-opening-wash-volume')).toHaveValue('7400'); // what last closed
  await page.waitForTimeout(400); // it is written once it has been quiet
  await open(page, '/house/period/');
  await page.locator('#period-which').selectOption('p0');
  await expect(page.locator('caption').first()).toContainText('Week 13');
  expect(wrong).toEqual([]);
});
