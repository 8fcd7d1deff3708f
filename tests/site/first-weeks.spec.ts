// The way of a new starter on a phone: from the front page to a guess, on to practice, and to a stage that is signed.
import { expect, test } from '@playwright/test';
import { encodeProgress, type Practised } from '../../src/exercises/progress.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { pathStages } from '../../src/path/stages.ts';
import { idOfStep, kindsOfStage } from '../../src/path/steps.ts';
import { encodeTicks } from '../../src/path/text.ts';
import { encodeGuesses } from '../../src/predict/guesses.ts';
import { open, ready, watch } from './pages.ts';

test.use({ viewport: { width: 390, height: 844 } });
const malting = pathStages[0]!;
const steps = malting.lessons.flatMap((lesson) => lesson.steps);

/** Malting with every step done and every kind right on these days. */
function seeded(...days: readonly string[]): Readonly<Record<string, string>> {
  const log: Practised[] = days.flatMap((day) =>
    kindsOfStage(malting).map((kind) => ({ kind, day, verdict: 'right' as const })),
  );
  const guesses = steps.flatMap((step) =>
    step.do === 'guess' ? [[step.id, { guess: 'same', right: false, day: '2026-05-01' }] as const] : [],
  );
  return {
    'malt-spirit-handbook/practice': encodeProgress({ standing: {}, log, answers: log.length }),
    'malt-spirit-handbook/first-weeks': encodeTicks(
      Object.fromEntries(steps.filter(({ do: what }) => ['read', 'work', 'task'].includes(what)).map((step) => [idOfStep(step), '2026-05-01'])),
    ),
    'malt-spirit-handbook/guesses': encodeGuesses(Object.fromEntries(guesses)),
  };
} // prettier-ignore

test('from the front page to a guess, its answer, and the next step', async ({ page }) => {
  const wrong = watch(page);
  await open(page, '/');
  await page.getByRole('link', { name: 'Begin your first weeks' }).click();
  await ready(page);
  await page.getByRole('link', { name: 'Begin', exact: true }).click();
  const guess = page.locator('#guess-steep-water');
  await guess.getByLabel('Your guess, in kg').fill('330');
  await guess.getByRole('button', { name: 'That is my guess' }).click();
  await expect(guess.locator('dd').first()).toHaveText('330 kg');
  // By hand: the dry matter stays, so at 45 % the tonne weighs 10 × (100 − its moisture) ÷ 0.55.
  const taken = (10 * (100 - builtInHouse.barleyMoisture)) / 0.55 - 1000;
  await expect(guess.locator('dd').last()).toHaveText(`${Math.round(taken)} kg`);
  await expect(guess).toContainText('Not as you guessed.');
  await guess.getByLabel(/^Move it yourself/).press('Home');
  await expect(guess.locator('output')).toContainText(/12\.0\s%: water taken up by a tonne 0/);
  // The lesson goes on from where it has sent the reader, and is what the front page carries on with.
  const way = page.locator('.lesson-way').first();
  await expect(way).toContainText('back to “Water wakes the grain, heat stops it”');
  await way.getByRole('link', { name: 'Next: Guess: Water up the chimney' }).click();
  await expect(page.locator('#guess-kiln-water')).toHaveAttribute('open');
  await way.getByRole('link', { name: /^Next: Read: What malting is for/ }).click();
  await way.getByRole('link', { name: /^Done. Next: Read: What happens inside/ }).click(); // which counts the passage as read
  await way.getByRole('link', { name: /^Done. Next: Guess/ }).click();
  await page.waitForURL('**/malting/work/#guess-kiln-on-a-damp-day');
  await open(page, '/');
  const carry = page.locator('main [data-left-off]');
  await expect(carry).toContainText(
    'Next: Malting, Water wakes the grain, heat stops it. Guess: Water up the chimney.',
  );
  await expect(page.getByText('New to the work?')).toBeHidden();
  const said = await carry.innerText();
  await open(page, '/first-weeks/malting/');
  await expect(page.getByRole('checkbox', { name: 'Read: What happens inside' })).toBeChecked();
  await open(page, '/first-weeks/');
  await expect(page.locator('.path-stages li').first()).toContainText('begun: 3 of');
  expect((await page.locator('.path-next').innerText()).replace(/\s+/g, ' ')).toBe(said.replace(/\s+/g, ' '));
  expect(wrong).toEqual([]);
});

test('a stage that has reached its standard is printed, signed, and the next one begins', async ({ page }) => {
  await page.addInitScript((kept) => {
    for (const [key, text] of Object.entries(kept)) if (!localStorage.getItem(key)) localStorage.setItem(key, text);
  }, seeded('2026-05-01', '2026-05-02'));
  await open(page, '/first-weeks/');
  await page.getByRole('link', { name: 'To the sheet' }).click();
  await ready(page);
  await page.locator('#path-name').fill('Una Thornwath');
  await page.evaluate(() => (window.print = () => undefined));
  await page.getByRole('button', { name: 'Print the sheet to sign' }).click();
  await page.emulateMedia({ media: 'print' });
  const sheet = page.locator('.paper.sign-off');
  await expect(sheet).toBeVisible();
  await expect(sheet).toContainText('Una Thornwath');
  await expect(sheet.locator('tbody tr', { hasText: '2 May 2026' })).toHaveCount(kindsOfStage(malting).length);
  await expect(sheet).toContainText('no permit, licence or authorisation');
  await expect(page.locator('.path > .screen-only')).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await page.getByLabel('My trainer has signed it').check();
  await open(page, '/first-weeks/');
  await expect(page.locator('.path-stages li').first()).toContainText('signed');
  await expect(page.locator('.path-next')).toContainText('Milling');
}); // prettier-ignore

test('a lesson asks in practice for its own kinds, and leads back', async ({ page }) => {
  await open(page, '/first-weeks/malting/');
  await page.getByRole('link', { name: 'Water that the kiln drives off' }).last().click();
  await expect(page.locator('.question .prompt')).toContainText('kiln');
  await expect(page.locator('#practice-title')).toHaveText('Practice for your first weeks');
  await expect(page.locator('#practice-answer')).toBeInViewport(); // the question before the choices
  await expect(page.locator('#practice-topic')).toBeHidden();
  await page.getByRole('link', { name: 'Back to your first weeks: malting' }).click();
  await expect(page.locator('h1')).toHaveText('First weeks: malting');
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });
  test('a guess shows its question and, folded, the answer of the built-in house', async ({ page }) => {
    await page.goto('/malting/');
    const guess = page.locator('#guess-steep-water');
    await guess.locator('summary').first().click();
    const [asks, answer] = [guess.locator('noscript > p'), guess.locator('noscript details > p')];
    expect(await asks.innerText()).toContain('A tonne of your barley is steeped to 45 %');
    await expect(answer).toBeHidden();
    await guess.locator('details > summary').click();
    await expect(answer).toBeVisible();
    expect(await answer.innerText()).toMatch(/^600\skg\. /); // 880 ÷ 0.55 − 1000
  });
});
