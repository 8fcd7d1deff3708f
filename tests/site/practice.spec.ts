// Practice from the first question to a record to sign; sheets from a trainer's desk to the table of results.
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { keepTogether } from '../../src/core/keep-together.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { answerInKey } from '../../src/exercises/letters.ts';
import { isNumberQuestion, type Question } from '../../src/exercises/question.ts';
import { notesText, readNotes } from '../../src/exercises/notes.ts';
import { readSheetLink, sheetLink } from '../../src/exercises/sheet-link.ts';
import { fixedSheet, questionsAlone, type Worksheet } from '../../src/exercises/worksheet.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { formTitles } from '../../src/exercises/topics.ts';
import { open, watch, sumsOf } from './pages.ts';
import { handInBlank } from './hand-in-blank.ts';

const KEY = 'malt-spirit-handbook/practice';
const SEED = 'fixed'; // what these tests keep as the browser's own
const marks = (page: Page) => page.locator('.mark-of');

/** The question on the practice page, drawn again from the same kinds and the same seed. */
async function asked(page: Page, topic: string, answers: number): Promise<Question> {
  const prompt = await page.locator('.question .prompt').innerText();
  const day = await page.evaluate(() => {
    const now = new Date();
    return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
  });
  const drawn = questionKinds
    .filter((kind) => kind.topic === topic)
    .map((kind) => drawQuestion(kind, `practice/${SEED}/${day}/${answers}`, builtInHouse));
  const found = drawn.find((question) => question && keepTogether(question.prompt) === prompt);
  if (!found) throw new Error(`No kind draws: ${prompt}`);
  return found;
}

async function answer(page: Page, id: string, question: Question, text: string): Promise<void> {
  if (isNumberQuestion(question)) return page.locator(`#${id}`).fill(text);
  const box = page.locator('.question').filter({ has: page.locator(`#${id}`) });
  if (question.form === 'order') {
    for (const letter of text.replace(/\s/g, ''))
      await box
        .locator('.step')
        .nth(letter.charCodeAt(0) - 65)
        .click();
  } else
    await box
      .locator('.tick')
      .nth(text.charCodeAt(0) - 65)
      .click();
}

test.beforeEach(({ page }) =>
  page.addInitScript((seed) => localStorage.setItem('malt-spirit-handbook/practice-seed', seed), SEED),
);

test('another browser is asked with other numbers, and one browser goes on where it was', async ({
  browser,
}) => {
  const prompts: string[] = [];
  for (let i = 0; i < 3; i++) {
    const page = await (await browser.newContext({ serviceWorkers: 'block' })).newPage();
    await open(page, '/practice/');
    const prompt = page.locator('.question .prompt');
    const first = await prompt.innerText();
    await page.reload();
    await expect(prompt).toHaveText(first);
    prompts.push(first);
    await page.context().close();
  }
  expect(new Set(prompts).size).toBeGreaterThan(1); // three alike by chance: once in hundreds
});

/** How bright a colour is, by WCAG 2.2. */
function brightness(colour: string): number {
  const [r, g, b] = [...colour.matchAll(/[\d.]+/g)].map(([part]) => {
    const share = Number(part) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

test('a step that was chosen is read under the hand too', async ({ page }) => {
  await page.goto('/practice/');
  await page.locator('.question').waitFor();
  await page.evaluate(() => {
    const step = document.createElement('button');
    step.className = 'step';
    step.setAttribute('aria-pressed', 'true');
    step.textContent = 'Charge the wash still';
    document.querySelector('.question')!.append(step);
  });
  const step = page.locator('.step').last();
  for (const theme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: theme });
    await step.hover();
    const [ink, paper] = await step.evaluate((it) => [
      getComputedStyle(it).color,
      getComputedStyle(it).backgroundColor,
    ]);
    const [low, high] = [brightness(ink!), brightness(paper!)].sort((a, b) => a - b);
    expect((high! + 0.05) / (low! + 0.05), `${theme}: ${ink} on ${paper}`).toBeGreaterThanOrEqual(4.5);
  }
});

test('the steps of an order are numbered once', async ({ page }) => {
  await open(page, '/sheets/');
  for (const form of ['calculation', 'estimate', 'curve', 'impossible', 'judgement'] as const) {
    const tick = page.locator('fieldset .tick', { hasText: formTitles[form] }).locator('input');
    await tick.uncheck();
  }
  await page.getByLabel('Show the answers').check();
  const steps = page.locator('.preview .steps').first();
  await expect(steps.locator('li').first()).toHaveText(/^1\. \D/);
  expect(await steps.evaluate((list) => getComputedStyle(list).listStyleType)).toBe('none');
});

test('an answer is marked, a mistake is named, and the full working follows', async ({ page }) => {
  const wrong = watch(page);
  await open(page, sumsOf.fermenting);
  const question = await asked(page, 'fermenting', 0);
  await page.getByRole('button', { name: 'Mark my answer' }).click();
  await expect(marks(page)).toContainText('Not answered');
  await expect(marks(page)).not.toContainText('The answer');
  if (!isNumberQuestion(question)) throw new Error('this kind is answered by a number');
  await page.locator('#practice-answer').fill('a bucketful');
  await page.locator('#practice-answer').press('Enter');
  await expect(marks(page)).toContainText('“a bucketful” cannot be read');
  const slip = question.slips[0]!;
  await page.locator('#practice-answer').fill(String(slip.value));
  await page.locator('#practice-answer').press('Enter');
  await expect(marks(page)).toContainText(slip.say.slice(0, 40));
  await expect(marks(page)).not.toContainText('The answer'); // a second try comes first, with a hint
  await expect(page.locator('.hint')).toContainText('Try once more');
  await expect(page.getByRole('link', { name: 'Where the book explains it' })).toHaveAttribute(
    'href',
    /^\.\.\/fermenting\//,
  );
  await page.locator('#practice-answer').fill(answerInKey(question));
  await page.locator('#practice-answer').press('Enter');
  await expect(marks(page)).toContainText('Right');
  await expect(page.locator('.record-so-far tr', { hasText: 'Fermenting' })).toContainText('0 of 1'); // the first answer counts
  await expect(marks(page).locator('.steps li')).toHaveCount(question.working.length);
  await expect(page.getByRole('button', { name: 'Next question' })).toBeFocused();
  expect(wrong).toEqual([]);
});

test('a starter goes from the first question to a signed record, and nothing is lost on the way', async ({
  page,
}) => {
  await open(page, '/practice/');
  await page.locator('#practice-topic').selectOption('safety');
  for (let i = 0; i < 3; i++) {
    const question = await asked(page, 'safety', i);
    await answer(page, 'practice-answer', question, answerInKey(question));
    await page.getByRole('button', { name: 'Mark my answer' }).click();
    await expect(marks(page)).toContainText('Right');
    await page.getByRole('button', { name: 'Next question' }).click();
  }
  await page.locator('#record-name').fill('Una Thornwath');
  await page.reload();
  const row = page.locator('.record-so-far tr', { hasText: 'Safety' });
  await expect(row).toContainText('3 of 3');
  await page.evaluate(() => (window.print = () => undefined));
  await page.getByRole('button', { name: 'Print the record to sign' }).click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.paper.record')).toBeVisible();
  await expect(page.locator('.paper.record')).toContainText('Una Thornwath');
  await expect(page.locator('.paper.record tbody tr')).toHaveCount(3);
  await expect(page.locator('.paper.record')).toContainText('Trainer, name and date');
  await expect(page.locator('.practice')).toBeHidden();
});

test('practice goes to a file and comes back, and a damaged one is refused', async ({ page }) => {
  await open(page, '/practice/#topic=law');
  const question = await asked(page, 'law', 0);
  await answer(page, 'practice-answer', question, answerInKey(question));
  await page.getByRole('button', { name: 'Mark my answer' }).click();
  await expect(marks(page).first()).toBeVisible(); // its marker comes with the first answer
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save to a file' }).click(),
  ]);
  const text = readFileSync((await download.path())!, 'utf8');
  expect(JSON.parse(text)).toMatchObject({ version: 1, log: [{ kind: question.kind, verdict: 'right' }] });
  const give = (content: string) =>
    page
      .locator('#practice-file')
      .setInputFiles({ name: 'p.json', mimeType: 'application/json', buffer: Buffer.from(content) });
  await give('{"format":');
  await expect(page.locator('.keep [role=status]')).toContainText('damaged');
  expect(await page.evaluate((key) => localStorage.getItem(key), KEY)).toBe(text);
  await page.evaluate((key) => localStorage.removeItem(key), KEY);
  await give(text);
  await expect(page.locator('.record-so-far tr', { hasText: 'Law' })).toContainText('1 of 1');
});

test('damaged practice in the browser is told, and kept aside', async ({ page }) => {
  await page.goto('/practice/');
  await page.evaluate(
    (key) => localStorage.setItem(key, '{"format":"malt-spirit-handbook/practice","version":1,"log":[1]}'),
    KEY,
  );
  await open(page, '/practice/');
  await expect(page.getByRole('alert')).toContainText('1 entry of the saved practice could not be read');
  await expect(page.getByRole('button', { name: 'Save what was set aside' })).toBeVisible();
});

test('a sheet goes from the desk by link to a trainee, and its result into the table', async ({
  page,
  context,
}) => {
  const wrong = watch(page);
  await open(page, '/sheets/');
  await page.locator('#sheet-count').fill('6');
  await page.locator('#sheet-seed').fill('Spring 7');
  await page.locator('#sheet-seed').press('Tab');
  await expect(page.locator('#sheet-seed')).toHaveValue('spring-7');
  await expect(page.locator('.preview .questions > li')).toHaveCount(6);
  await expect.poll(() => page.url()).toContain('.6.spring-7.');
  const hash = new URL(page.url()).hash;

  const trainee = await context.newPage();
  await open(trainee, `/sheet/${hash}`);
  await trainee.locator('#take-version').fill('4');
  await trainee.getByRole('button', { name: 'Begin' }).click();
  const reading = readSheetLink(hash);
  if (!reading || 'problem' in reading) throw new Error('the link is unread');
  const questions = questionsAlone(reading.sheet, 4, questionKinds);
  await trainee.locator('#take-name').fill('Una Thornwath');
  for (const [i, question] of questions.entries()) {
    await expect(trainee.locator('.prompt').nth(i)).toHaveText(question.prompt);
    if (i < 5) await answer(trainee, `answer-${i + 1}`, question, answerInKey(question));
  }
  await trainee.reload();
  await expect(trainee.getByText('5 of 6 answered')).toBeVisible();
  await trainee.getByRole('button', { name: 'Hand in and mark' }).click();
  await expect(trainee.getByText('One of six is blank: 6. Press again')).toBeVisible();
  await expect(trainee.getByRole('button', { name: 'Hand in and mark' })).toBeFocused();
  await trainee.getByRole('button', { name: 'Hand in and mark' }).click();
  await expect(trainee.locator('.handed-in')).toContainText('5 of 6 points');
  const code = await trainee.locator('.code output').innerText();

  await page.locator('#result-codes').fill(`${code}\n<img src=x onerror=alert(1)>`);
  const row = page.locator('.results-in tbody tr');
  await expect(row).toHaveCount(1);
  await expect(row).toContainText('Una Thornwath');
  await expect(row).toContainText('5 of 6');
  await expect(page.locator('.results-in .problem').first()).toContainText('is not a whole result code');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the table as CSV' }).click(),
  ]);
  expect(readFileSync((await download.path())!, 'utf8')).toMatch(
    /^\ufeffName,Sheet,Version,Day,Attempt,Points,Questions,Not answered,Questions missed,Misses\r\nUna Thornwath,[0-9a-z]{7},4,\d{4}-\d{2}-\d{2},1,5,6,1,6,/,
  );
  expect(wrong).toEqual([]);
});

test('where an answer has moved since a sheet was made, whoever took it is told, and not before handing in', async ({
  page,
}) => {
  const made: Worksheet = fixedSheet(
    {
      generator: 2,
      topics: ['distilling'],
      forms: ['calculation'],
      levels: [1, 2],
      count: 3,
      house: 'built-in',
      seed: 'moved',
      versions: 1,
    },
    questionKinds,
  );
  const steps = readNotes(made.notes![0]!, 3)!;
  const moved = steps.map((step, i) =>
    i > 0 || step === 'passed over'
      ? step
      : { ...step, codes: [...step.codes.slice(0, -1), (step.codes.at(-1)! + 200) % 4096] },
  );
  await open(page, `/sheet/${sheetLink({ ...made, notes: [notesText(moved)] })}`);
  await expect(page.locator('.prompt')).toHaveCount(3);
  await expect(page.locator('.remark')).toHaveCount(0);
  await handInBlank(page, 'Hand in and mark');
  await expect(page.locator('.remark')).toHaveText(
    /^The answer to question \d has moved since this sheet was made: .+, was about .+\.$/,
  );
});

test('a link of an older edition opens, and says what it cannot promise', async ({ page }) => {
  await open(page, '/sheet/#sheet=1.4.012345.012.5.stills.10.built-in&version=2');
  await expect(page.locator('.prompt')).toHaveCount(5);
  await expect(page.locator('.remark')).toContainText('made by an older edition');
});

test('twelve papers print in one go: questions, answers, key', async ({ page }) => {
  await open(page, '/sheets/');
  await page.evaluate(() => (window.print = () => undefined));
  for (const [button, part] of [
    ['Print the questions', 'questions'],
    ['Print the answers with working', 'answers'],
    ['Print the marking key', 'key'],
  ] as const) {
    await page.getByRole('button', { name: button }).click();
    await expect(page.locator(`.paper.sheet .sheet-paper[data-part=${part}]`)).toHaveCount(12);
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.paper.sheet')).toBeVisible();
    await expect(page.locator('.sheet-desk')).toBeHidden();
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect(page.locator('.paper.sheet')).toHaveCount(0);
  }
});

test('all versions are saved for learning systems, a package each', async ({ page }) => {
  await open(page, '/sheets/');
  await page.getByText('For another system, or a table').click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /QTI 3.0/ }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^sheet-[0-9a-z]{7}-12-versions\.qti\.zip$/);
  const bytes = readFileSync((await download.path())!);
  expect(bytes.subarray(0, 2).toString()).toBe('PK');
  expect(
    bytes.includes('version-12.zip') &&
      bytes.includes('imsmanifest.xml') &&
      bytes.includes('items/question-10.xml'),
  ).toBe(true);
});

for (const hash of [
  '#sheet=9.0.0.0.5.x.1.built-in',
  '#sheet=1.0.0.0.5.%3Cscript%3E.1.built-in',
  '#sheet=nonsense',
]) {
  test(`the link ${hash} is refused in a sentence`, async ({ page }) => {
    await open(page, `/sheet/${hash}`);
    await expect(page.getByRole('alert')).toHaveText(/\.$/);
    await expect(page.locator('.question')).toHaveCount(0);
  });
}
