// The site copied into folders of a server: every island is used there, links stay inside, it works without a network, and two copies keep their own houses.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { ownSheetFile } from '../exercises/own-examples.ts';
import { sealedSheetFile } from '../exercises/sealed-file.ts';
import { serve, type Served } from '../serve.ts';
import { open, pageWith, watch, sumsOf } from './pages.ts';
import { handInBlank } from './hand-in-blank.ts';

const FOLDER = '/still/house/';
const OTHER = '/store/';
const dist = join(import.meta.dirname, '..', '..', 'dist');
const thornwath = linkOf(
  encodeHouse({ name: 'Thornwath', house: { ...builtInHouse, heartEnd: 58 } as typeof builtInHouse }),
);

let site: Served;
test.beforeAll(async () => (site = await serve({ folders: [FOLDER, OTHER] })));
test.afterAll(() => site.stop());

const withIsland = (island: string) => pageWith(island).slice(1);
const at = (page: string) => `${site.address}${page}`;
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const change = async (page: Page, field: string, value: string, shows: string, says: RegExp) => {
  await page.locator(field).fill(value);
  await expect(page.locator(shows).first()).toContainText(says);
};
/** A calculator: its first number is raised, and a result follows. */
const calculate = (id: string) => async (page: Page) => {
  const part = page.locator(`section[aria-labelledby="${id}-title"]`);
  const results = part.locator('.results dd');
  const before = await results.allInnerTexts();
  await part.locator('input.number').first().press('ArrowUp');
  await expect.poll(async () => (await results.allInnerTexts()).join()).not.toBe(before.join());
};

/** Each island: a page that has it, and a use of it that ends with what it shows. */
const beginShift = async (page: Page) => {
  await page.locator('#shift-begin').click();
  await expect(page.locator('.shift-log')).toBeVisible();
};
const uses: Readonly<Record<string, readonly [page: string, use: (page: Page) => Promise<unknown>]>> = {
  MaltingCalculator: ['sums/predicted-spirit-yield/', calculate('predicted-spirit-yield')],
  MillingCalculator: ['sums/grist-split/', calculate('grist-split')],
  MashingCalculator: ['sums/conversion/', calculate('conversion')],
  FermentingCalculator: ['sums/strength-from-gravities/', calculate('strength-from-gravities')],
  DistillingCalculator: ['sums/what-if/', calculate('what-if')],
  MaturingCalculator: ['sums/reduce-to-strength/', calculate('reduce-to-strength')],
  HouseFigures: [
    'distilling/work/',
    (page) => change(page, '#house-heartEnd', '60', '[data-figure="house.heartEnd"]', /^60\D/),
  ],
  HouseDesk: [
    'house/',
    async (page) => {
      await button(page, 'Work on a copy').click();
      await expect(page.locator('.shelf li').first()).toBeVisible();
    },
  ],
  HouseProgress: [
    'house/',
    async (page) => {
      await page.locator('#house-name').fill('Sallowby');
      await page.locator('#house-name').press('Tab');
      await expect(page.locator('.progress')).toContainText('You have given 0 of');
    },
  ],
  HouseSheet: [
    'house/figures/',
    async (page) => {
      const there = page.url();
      await open(page, new URL('../', there).href);
      await page.locator('#house-heartEnd').fill('60.5');
      await expect.poll(() => page.evaluate(() => Object.values(localStorage).join())).toContain('60.5');
      await open(page, there);
      await expect(page.locator('.house-sheet')).toContainText('60.5');
    },
  ],
  HandOn: [
    'house/hand-on/',
    async (page) => {
      await page.locator('#hand-on-signer').fill('Ann');
      await button(page, 'Make my key').click();
      await expect(page.locator('.fingerprint').first()).toHaveText(/\d{4}/);
    },
  ],
  FactsDesk: [
    'house/facts/',
    (page) => change(page, '#fact-water', 'Our water is from the town main', '.fact-sheet', /town main/),
  ],
  Portrait: [
    'house/portrait/',
    async (page) => {
      await page.locator('#portrait-words').fill('Since 1890');
      await page.locator('#portrait-words').press('Tab');
      await expect(page.locator('.portrait-sheet')).toContainText('Since 1890');
    },
  ],
  ChangesDesk: [
    'house/changes/',
    async (page) => {
      await page.locator('#version-name').fill('Before the mill');
      await button(page, 'Put it down').click();
      await expect(page.locator('main')).toContainText('Before the mill');
    },
  ],
  PlantDesk: [
    'house/plant/',
    async (page) => {
      await page.locator('#plant-scheme').selectOption('thrice');
      await expect(page.locator('.plant-says')).toContainText('a third distillation needs one');
    },
  ],
  WeekDesk: ['house/week/', (page) => change(page, '#week-mashes', '20', '.week', /this is that week/)],
  PeriodDesk: [
    'house/period/',
    async (page) => {
      await page.getByText('Stands there now').click();
      await page.locator('#period-closing-wash-volume').fill('-5');
      await expect(page.locator('#period-closing-wash-volume-problem')).toContainText('“-5” was given');
    },
  ],
  StockDesk: [
    'house/stock/',
    async (page) => {
      await page.locator('#group-add').click();
      await page.locator('#group-casks').fill('many');
      await page.locator('#group-casks').press('Enter');
      await expect(page.locator('#group-casks-problem')).toContainText('“many” was given');
    },
  ],
  BottlesDesk: [
    'house/malts/',
    async (page) => {
      await button(page, 'Add another bottle').click();
      await expect(page.locator('#bottles-0-share')).toHaveValue('50');
    },
  ],
  HouseName: [
    'house/',
    async (page) => {
      await page.locator('#house-name').fill('');
      await page.locator('#house-name').press('Tab');
      await expect(page.locator('#house-name-problem')).toBeVisible();
    },
  ],
  MaltsDesk: ['house/malts/', (page) => change(page, '#grist-1-name', 'A trial of peat', 'main', /peat/)],
  Visit: [
    `house/${thornwath}`,
    async (page) => {
      await button(page, 'Keep Thornwath as one of mine').click();
      await expect(page.locator('#house-heartEnd')).toHaveValue('58');
      await expect(page.locator('.visit')).toHaveCount(0);
    },
  ],
  InAndOut: [
    'mashing/',
    async (page) => {
      const before = await page.locator('.in-and-out').first().innerText();
      await open(page, at('mashing/work/'));
      await page.locator('#house-originalGravity').fill('1.062');
      await open(page, at('mashing/'));
      await expect.poll(() => page.locator('.in-and-out').first().innerText()).not.toBe(before);
    },
  ],
  Ledger: [
    'mashing/',
    async (page) => {
      const cell = page.locator('.ledger td').first();
      const before = await cell.innerText();
      await page.locator('.pace label').last().click();
      await expect(cell).not.toHaveText(before);
    },
  ],
  SpiritRun: [
    withIsland('SpiritRun'),
    async (page) => {
      const charge = page.locator('.ledger [data-station="charge"]');
      const before = await charge.innerText();
      await page.locator('.heart-ends .cut-handle').press('PageDown');
      await expect(charge).not.toHaveText(before);
    },
  ],
  RoundSpread: [
    withIsland('RoundSpread'),
    async (page) => {
      await button(page, 'Draw 10,000 rounds').click();
      await expect(page.locator('section:has(> #round-spread-title) tbody tr').first()).toBeVisible({
        timeout: 60_000,
      });
    },
  ],
  LawCheck: [
    withIsland('LawCheck'),
    async (page) => {
      await page.locator('#law-still').selectOption('other still');
      await expect(page.locator('.definition[data-qualifies=no]').first()).toBeVisible();
    },
  ],
  ScriptReader: [
    'script/',
    async (page) => {
      await page.locator('#script-text').fill('Each mash is 1,500 kilos of malt.');
      await expect(page.locator('.marked .mark')).toHaveCount(1);
    },
  ],
  WalkDesk: [
    'walk/',
    async (page) => {
      await page
        .locator('#walk-text')
        .fill(
          'In the mash house each mash is 1,500 kilos of malt.\n\nIn the still house the heart ends at 62.',
        );
      await expect(page.locator('#walk-text')).toBeHidden();
    },
  ],
  Cards: [
    'cards/',
    async (page) => {
      const cards = await page.locator('.card').count();
      await page.locator('.choices summary', { hasText: 'Questions' }).click();
      await page.locator('.choices details').last().locator('input').first().check();
      await expect(page.locator('.card')).toHaveCount(cards + 1);
    },
  ],
  LiveLine: [
    '',
    async (page) => {
      const bottles = page.locator('.bottles-a-year b').first();
      const before = await bottles.innerText();
      await page.locator('[data-steps="malt"] button').last().click();
      await expect(bottles).not.toHaveText(before);
    },
  ],
  Search: ['search/', (page) => change(page, '#search-words', 'washback', '.found li', /washback/i)],
  Practice: [
    sumsOf.fermenting.slice(1),
    async (page) => {
      await page.locator('#practice-answer').fill('1');
      await page.locator('#practice-answer').press('Enter');
      await button(page, 'Show the answer').click();
      await expect(page.locator('.mark-of .steps li').first()).toBeVisible();
    },
  ],
  FirstWeeks: [
    'first-weeks/',
    async (page) => {
      await page.getByRole('link', { name: 'Begin', exact: true }).click();
      await page.locator('#guess-steep-water-number').fill('600');
      await button(page, 'That is my guess').click();
      await expect(page.locator('.predict-seen')).toContainText('Near enough');
      await page.locator('.lesson-way a').nth(1).click(); // on to the next step of the lesson
      await expect(page.locator('#guess-kiln-water')).toHaveAttribute('open');
      await page.locator('.lesson-way a').first().click();
      await expect(page.locator('#lessons')).toBeVisible();
    },
  ],
  FirstWeeksStage: [
    'first-weeks/malting/',
    async (page) => {
      await button(page, 'Begin the worked example').click();
      await expect(page.locator('.path-worked .steps li').first()).toBeVisible();
    },
  ],
  SheetDesk: ['sheets/', (page) => page.locator('.preview .questions > li').nth(9).innerText()],
  OwnSheetDesk: [
    'sheets/own/',
    async (page) => {
      await button(page, /^Add/).first().click();
      await expect(page.locator('.own-even tbody tr').first()).toBeVisible();
    },
  ],
  OwnQuestionDesk: [
    'sheets/questions/',
    async (page) => {
      await button(page, 'Try every draw').click();
      await expect(page.locator('.own-finding')).toContainText('title');
    },
  ],
  TakeOwnSheet: [
    'sheet/own/',
    async (page) => {
      await page.locator('#take-own-file').setInputFiles({ name: 'sheet.own.json', mimeType: 'application/json', buffer: Buffer.from(ownSheetFile()) }); // prettier-ignore
      await handInBlank(page, 'Hand in');
      await expect(page.locator('.code output')).toContainText('-1-');
    },
  ],
  TakeSealed: [
    'sheet/sealed/',
    async (page) => {
      await page.locator('#take-sealed-file').setInputFiles({ name: 'sheet.sealed.json', mimeType: 'application/json', buffer: Buffer.from(await sealedSheetFile()) }); // prettier-ignore
      await page.fill('#take-name', 'Una');
      await handInBlank(page, 'Seal and hand in');
      await expect(page.locator('.code output')).toContainText('hs1-');
    },
  ],
  SealedDesk: [
    'sheets/sealed/',
    async (page) => {
      await button(page, 'Make a key').click();
      await expect(page.locator('#sealed-make-title')).toBeVisible();
    },
  ],
  ClassDesk: [
    'class/',
    async (page) => {
      await page.fill('#class-names', 'Una');
      await button(page, 'Put them in').click();
      await expect(page.locator('.class-list')).toContainText('Una, trainee');
    },
  ],
  TaskRecord: [
    'tasks/malting/',
    async (page) => {
      await button(page, 'Alone').first().click();
      await expect(page.locator('.observed-record [role=status]').first()).toContainText('1 of 4 alone');
    },
  ],
  GuideFile: [
    'guide-file/',
    async (page) => {
      await page.emulateMedia({ media: 'print' });
      await expect(page.locator('.guide-paper')).toContainText('Harrowmere');
    },
  ],
  GuideFileFigures: [
    'guide-file/figures/',
    (page) => expect(page.locator('.guide-why').first()).toContainText('kg'),
  ],
  GuideFileAsked: [
    'guide-file/asked/',
    (page) => expect(page.locator('.guide-asked').first()).toContainText('?'),
  ],
  GuideFileTell: [
    'guide-file/tell/',
    async (page) => {
      await page.locator('#telling-said').fill('1809 kg');
      await page.locator('#telling-said').press('Enter');
      await expect(page.locator('.telling .mark-of')).toContainText('Right');
    },
  ],
  GuideFileSums: [
    'guide-file/sums/',
    async (page) => {
      await page.locator('#guide-sum').fill('1');
      await page.locator('#guide-sum').press('Enter');
      await expect(page.locator('.mark-of').first()).toBeVisible();
    },
  ],
  ShiftDesk: ['shift/', beginShift],
  ShiftTun: ['shift/mash-tun/', beginShift],
  ShiftWashback: ['shift/washback/', beginShift],
  ShiftCasks: ['shift/casks/', beginShift],
  FaultDesk: [
    'faults/',
    async (page) => {
      await page.locator('#fault-begin').click();
      await expect(page.locator('.fault-complaint')).toBeVisible();
    },
  ],
  WordsAbroad: [
    'words/',
    async (page) => {
      await page.locator('#words-language').selectOption('ja');
      await expect(page.locator('.words [lang=ja]').first()).toBeVisible();
    },
  ],
  TakeSheet: [
    'sheet/#sheet=1.3.0.0.2.a.1.built-in',
    async (page) => {
      await page.locator('#take-name').fill('Una Thornwath');
      await handInBlank(page, 'Hand in and mark');
      await expect(page.locator('.code output')).toContainText('Una_Thornwath');
    },
  ],
};

test('every island of the site is used under a folder', () => {
  const pages = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html'));
  const islands = pages.flatMap((file) =>
    [...readFileSync(join(dist, file), 'utf8').matchAll(/component-url="\.\/(\w+)\./g)].map(([, name]) => name!),
  );
  expect([...new Set(islands)].sort()).toEqual(Object.keys(uses).sort());
}); // prettier-ignore

for (const [island, [address, use]] of Object.entries(uses))
  test(`in use under a folder: ${island}`, async ({ page }) => {
    const wrong = watch(page);
    page.on('response', (response) => {
      if (response.status() >= 400) wrong.push(`${response.status()} for ${response.url()}`);
    });
    page.on('request', (request) => {
      const { pathname, protocol } = new URL(request.url());
      if (protocol === 'http:' && !pathname.startsWith(FOLDER)) wrong.push(`a request for ${pathname}`);
    });
    await open(page, at(address));
    await use(page);
    expect(wrong).toEqual([]);
  });

test.describe('with its worker', () => {
  test.use({ serviceWorkers: 'allow' });
  test('links stay inside the folder, and its pages work without a network', async ({ page, context }) => {
    const wrong = watch(page);
    await open(page, at('distilling/'));
    const links = await page
      .locator('a[href]')
      .evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
    expect(links.filter((link) => !link.startsWith(site.address))).toEqual([]);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await context.setOffline(true);
    await open(page, at('maturing/'));
    await expect(page.locator('h1')).toHaveText('Maturing');
    await context.setOffline(false);
    expect(wrong).toEqual([]);
  });
});

const houseOf = (name: string, heartEnd: number) =>
  encodeHouse({ name, house: { ...builtInHouse, heartEnd } as typeof builtInHouse });
const OLD: Readonly<Record<string, string>> = {
  house: houseOf('Thornwath', 60),
  shelf: JSON.stringify({ Thornwath: houseOf('Thornwath', 60), Sallowby: houseOf('Sallowby', 57) }),
  'kept-aside': 'a text that could not be read',
  quoted: '{"originalGravity":"1.060"}',
  units: '{"volume":"gal"}',
  'practice-name': 'Una Thornwath',
  practice:
    '{"format":"malt-spirit-handbook/practice","version":1,"standing":{},"log":[{"kind":"kiln","day":"2026-05-14","verdict":"right"}]}',
};

test('two copies on one server have houses of their own; what an older build kept for both is in both, and stays where it was', async ({
  context,
}) => {
  const other = new URL(OTHER, site.address).href;
  await context.addInitScript((texts) => {
    if (location.protocol !== 'http:' || localStorage.getItem('begun')) return;
    localStorage.setItem('begun', '1');
    for (const [name, text] of Object.entries(texts))
      localStorage.setItem(`malt-spirit-handbook/${name}`, text);
  }, OLD);
  const [one, two] = [await context.newPage(), await context.newPage()];
  await open(one!, at('house/'));
  await expect(one!.locator('#house-name')).toHaveValue('Thornwath');
  await expect(one!.locator('.shelf li')).toHaveText([/Sallowby/]);
  await one!.locator('#house-heartEnd').fill('58');
  await one!.waitForTimeout(300);
  await open(two!, `${other}house/`);
  await expect(two!.locator('#house-heartEnd')).toHaveValue('60');
  await expect(two!.locator('.shelf li')).toHaveText([/Sallowby/]);
  await two!.locator('#house-heartEnd').fill('61');
  await two!.getByRole('button', { name: 'Open Sallowby' }).click();
  await expect(two!.locator('#house-heartEnd')).toHaveValue('57');
  await two!.waitForTimeout(300);
  await expect(one!.locator('#house-heartEnd')).toHaveValue('58');
  for (const [page, address] of [
    [one, site.address],
    [two, other],
  ] as const) {
    await open(page!, `${address}cross-check/`);
    await expect(page!.locator('#quoted-text')).toHaveValue('Original gravity: 1.060');
    await open(page!, `${address}practice/`);
    await expect(page!.locator('#record-name')).toHaveValue('Una Thornwath');
    await expect(page!.locator('.record-so-far tr', { hasText: 'Malting' })).toContainText('of 1');
  }
  // Each copy goes on by itself, after a reload as well.
  await open(one!, at('cross-check/'));
  await one!.locator('#quoted-text').fill('Original gravity: 1.055');
  await open(two!, `${other}cross-check/`);
  await expect(two!.locator('#quoted-text')).toHaveValue('Original gravity: 1.060');
  await open(one!, at('house/'));
  await expect(one!.locator('#house-heartEnd')).toHaveValue('58');
  await one!.getByRole('button', { name: 'Open Sallowby' }).click();
  await expect(one!.locator('.shelf li')).toHaveText([/Thornwath/]);
  await open(two!, `${other}house/`);
  await two!.getByRole('button', { name: 'Open Thornwath' }).click();
  await expect(two!.locator('#house-heartEnd')).toHaveValue('61');
  const kept = await one!.evaluate(() => ({ ...localStorage }) as Record<string, string>);
  for (const [name, text] of Object.entries(OLD))
    expect(kept[`malt-spirit-handbook/${name}`], name).toBe(text);
  expect(kept[`malt-spirit-handbook${FOLDER}kept-aside`]).toBe(OLD['kept-aside']);
});

test('no room to take over what an older build kept: it is read where it is, and not written over', async ({
  page,
}) => {
  await page.addInitScript((texts) => {
    if (location.protocol !== 'http:') return;
    const { setItem } = Storage.prototype;
    for (const [name, text] of Object.entries(texts))
      setItem.call(localStorage, `malt-spirit-handbook/${name}`, text);
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  }, OLD);
  await open(page, at('house/'));
  await expect(page.locator('#house-name')).toHaveValue('Thornwath');
  await page.locator('#house-heartEnd').fill('58');
  await expect(page.locator('.troubles')).toContainText('does not let the handbook keep your figures');
  expect(await page.evaluate(() => localStorage.getItem('malt-spirit-handbook/house'))).toBe(OLD['house']);
});
