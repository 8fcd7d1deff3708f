// Each page and each part of it in use: the accessibility rules, what is said aloud, tables, targets, motion, zoom, spacing and forced colours.
import { expect, test, type Page } from '@playwright/test';
import { encodeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { fileText } from '../../src/handing/envelope.ts';
import { makeKey, signedRelease } from '../../src/handing/signing.ts';
import { linkOf } from '../../src/house/link.ts';
import { ownSheetFile } from '../exercises/own-examples.ts';
import { sealedSheetFile } from '../exercises/sealed-file.ts';
import { scriptOf } from '../talk/scripts.ts';
import { talk as walkTalk } from '../walk/harrowmere-talk.ts';
import { addresses, broken, contradiction, open, pageWith, quote, ready, sumsOf } from './pages.ts';
import { handInBlank } from './hand-in-blank.ts';

const script = scriptOf('disagreeing').text;
const thornwath = linkOf(
  encodeHouse({ name: 'Thornwath', house: { ...builtInHouse, heartEnd: 58 } as typeof builtInHouse }),
);
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const announcer = (page: Page) => page.locator('#announcer');
const titled = (page: Page, id: string) => page.locator(`section[aria-labelledby="${id}-title"]`);

/** A sheet handed in without an answer; its result code. */
async function handIn(page: Page): Promise<string> {
  await open(page, '/sheets/');
  await expect.poll(() => page.url()).toContain('#sheet=');
  await open(page, `/sheet/${new URL(page.url()).hash}`);
  await button(page, 'Begin').click();
  await page.locator('#take-name').fill('Una Thornwath');
  await handInBlank(page, 'Hand in and mark');
  return page.locator('.code output').innerText();
}

/** Every island in use: the page, the part of it that is looked at, what the reader does, and what must then be there. */
/** Begins a shift, lets its clock go on, does what its first free button does, and opens the log. */
const beginShift = async (page: Page) => {
  await page.locator('#shift-begin').click();
  await page.locator('.shift-log').waitFor();
  for (const key of 'eyg') await page.keyboard.press(key);
  for (let i = 0; i < 3; i++) await page.keyboard.press('g');
  await page.locator('.shift-log summary').click();
};
const uses: readonly {
  readonly what: string;
  readonly address: string;
  readonly part: string;
  readonly use: (page: Page) => Promise<void>;
  readonly shows: string;
}[] = [
  {
    what: 'a calculator with rows, a curve and a wrong entry',
    address: '/sums/size-curve/',
    part: 'section[aria-labelledby="size-curve-title"]',
    use: async (page) => {
      await button(page, 'Add a row').first().click();
      await page.locator('#size-curve-pan').fill('a lot');
      await titled(page, 'size-curve').locator('.how-sure > summary').click();
      await titled(page, 'size-curve').locator('summary').first().click();
    },
    shows: '#size-curve-pan-problem',
  },
  {
    what: 'a calculator with a choice, a figure of the house put in and how sure it is',
    address: '/sums/what-if/',
    part: 'section[aria-labelledby="what-if-title"]',
    use: async (page) => {
      const part = titled(page, 'what-if');
      await part.locator('select:not(.unit)').first().selectOption({ index: 1 });
      await part.locator('.how-sure > summary').click();
      await part.locator('[id$=plus-minus]').first().fill('0.5');
      await part.locator('.of-house input[type=text]').first().press('ArrowUp');
      await part.locator('summary').last().click();
    },
    shows: '.spread, .reset',
  },
  {
    what: 'the spirit run with a cut moved',
    address: pageWith('SpiritRun'),
    part: '.run',
    use: async (page) => {
      await page.locator('.heart-ends .cut-handle').press('PageDown');
      await page.locator('.run .working > summary').click();
    },
    shows: '.run .series td',
  },
  {
    what: 'the spread of the round, drawn',
    address: pageWith('RoundSpread'),
    part: 'section:has(> #round-spread-title)',
    use: (page) => button(page, 'Draw 10,000 rounds').click(),
    shows: 'section:has(> #round-spread-title) tbody tr',
  },
  {
    what: 'the figures of the house, one changed, one refused, one unusual',
    address: '/house/',
    part: '.house-figures:has(#house-heartEnd)',
    use: async (page) => {
      await page.locator('#house-originalGravity').fill('1.09');
      await page.locator('#house-heartEnd').fill('900');
      await page.locator('.house-figures:has(#house-heartEnd) .about summary').first().click();
    },
    shows: '#house-heartEnd-problem',
  },
  {
    what: 'a house of which a part is known: its ten figures, and a count that cannot be',
    address: '/house/',
    part: 'main',
    use: async (page) => {
      await page.locator('#house-name').fill('Sallowby');
      await page.locator('#house-name').press('Tab');
      await page.locator('#house-maltPerMash').fill('6500');
      await page.locator('#counted-heartStrength').fill('lots');
      await page.locator('#counted-casksInStore').fill('55,000');
    },
    shows: '.take-over',
  },
  {
    what: 'every figure of a house, of which some are not known',
    address: '/house/figures/',
    part: 'main',
    use: async (page) => {
      await page.evaluate(
        ([key, text]) => localStorage.setItem(key!, text!),
        ['malt-spirit-handbook/house', encodeHouse({ name: 'Thornwath', house: { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse })],
      ); // prettier-ignore
      await page.reload();
      await ready(page);
    },
    shows: '.house-sheet .beside',
  },
  {
    what: 'the counted figures of a stage, of a house of which little is known',
    address: '/house/distilling/',
    part: 'main',
    use: async (page) => {
      const house = { ...builtInHouse, heartEnd: 60 } as typeof builtInHouse;
      await page.evaluate(
        ([key, text]) => localStorage.setItem(key!, text!),
        ['malt-spirit-handbook/house', encodeHouse({ name: 'Thornwath', house })],
      );
      await page.reload();
      await ready(page);
      await page.locator('#counted-lowWinesStrength').fill('22');
    },
    shows: '.mark.not-known',
  },
  {
    what: 'the week, a day of it, with figures that are wrong and its table open',
    address: '/house/week/',
    part: '.week',
    use: async (page) => {
      await page.locator('#week-shown').selectOption('2');
      await page.getByText('Wednesday in words').click();
      await page.getByText('Heat and water:').click();
      await page.locator('#week-wash').fill('hot');
    },
    shows: '#week-wash-problem',
  },
  {
    what: 'a period of the stillhouse, with a reading that is wrong and no name',
    address: '/house/period/',
    part: '.period',
    use: async (page) => {
      await page.getByText('Stands there now').click();
      await page.locator('#period-closing-wash-volume').fill('-5');
      await page.locator('#period-name').fill('');
    },
    shows: '#period-name-problem',
  },
  {
    what: 'a walk cut into rooms, with a time that cannot be, a party that is late, and a piece open',
    address: '/walk/',
    part: '.walk',
    use: async (page) => {
      await page.locator('#walk-text').fill(walkTalk);
      await page.locator('.pieces .piece').first().click();
      for (const name of ['Begins at', 'Forbidden here', 'What visitors ask', 'Name, work', 'seven cautions'])
        await page.locator('.walk summary', { hasText: name }).first().click();
      await page.locator('#walk-begins').fill('noon');
      await page.locator('#walk-begins').press('Tab');
      await page.locator('#walk-due-room').selectOption('Still house');
      await page.locator('#walk-due-by').fill('10:31');
      await page.locator('#walk-due-by').press('Tab');
    },
    shows: '.walk .late',
  },
  {
    what: 'a walk told to US visitors, with its sentences, a piece for some, and pieces to add',
    address: '/walk/',
    part: '.walk',
    use: async (page) => {
      await page.locator('#walk-text').fill(walkTalk);
      await page.locator('.pieces .piece').first().click();
      await page.locator('#walk-whom').selectOption('chemist');
      await page.getByRole('button', { name: /^Children, a chemist/ }).click();
      await page.locator('#walk-coming').selectOption('us');
      await page.locator('.audience .stale .tick').first().click();
      await page.locator('.audience summary').click();
    },
    shows: '.audience .sentences button',
  },
  {
    what: 'the trade’s words in Japanese, with gaps and one left off',
    address: '/words/',
    part: '.words-desk',
    use: async (page) => {
      await page.locator('#words-language').selectOption('ja');
      await page.locator('.words .tick').first().click();
    },
    shows: '.words [lang=ja]',
  },
  {
    what: 'a shift at the still that has begun, with a number that cannot be before it, steam refused and the log open',
    address: '/shift/',
    part: '.shift',
    use: async (page) => {
      await page.locator('#shift-seed').fill('none');
      await page.locator('#shift-begin').click();
      await page.locator('#shift-seed-problem').waitFor();
      await page.locator('#shift-seed').fill('11');
      await page.locator('#shift-begin').click();
      await page.locator('[aria-keyshortcuts="e"]').click();
      await page.locator('.shift-log summary').click();
    },
    shows: '.shift-log li:nth-child(2)',
  },
  {
    what: 'a washback that is filling, with the log open',
    address: '/shift/washback/',
    part: '.shift',
    use: beginShift,
    shows: '.shift-log li',
  },
  {
    what: 'a mash that has begun, with the log open',
    address: '/shift/mash-tun/',
    part: '.shift',
    use: beginShift,
    shows: '.shift-log li',
  },
  {
    what: 'two casks after some months, with the log open',
    address: '/shift/casks/',
    part: '.shift',
    use: beginShift,
    shows: '.shift-log li',
  },
  {
    what: 'a case of the fault desk, with a reading asked for, answered and explained',
    address: '/faults/',
    part: '.fault',
    use: async (page) => {
      await page.locator('#fault-seed').fill('17');
      await page.locator('#fault-begin').click();
      await page.locator('.fault-ask button').first().click();
      await page.locator('#fault-cause').selectOption('warm-glass');
      await page.locator('.fault .options input').first().check();
      await button(page, 'Answer, and be marked').click();
    },
    shows: '#fault-end',
  },
  {
    what: 'a house without a name',
    address: '/house/',
    part: '.house-name',
    use: async (page) => {
      await page.locator('#house-name').fill('');
      await page.locator('#house-name').press('Tab');
    },
    shows: '#house-name-problem',
  },
  {
    what: 'the desk of houses, with a shelf',
    address: '/house/',
    part: '.house-desk',
    use: (page) => button(page, 'Work on a copy').click(),
    shows: '.shelf button',
  },
  {
    what: 'a house handed on, with a bad name of a signer, a key, a picture, and a release by another key',
    address: '/house/hand-on/',
    part: '.hand-on',
    use: async (page) => {
      await button(page, 'Make my key').click();
      await expect(page.locator('#hand-on-signer-problem')).toBeVisible();
      await page.locator('#hand-on-signer').fill('Ann');
      await button(page, 'Make my key').click();
      await page.locator('.hand-on .keys > summary').click();
      await page.locator('#hand-on-release').fill('0');
      const text = encodeHouse({ name: 'Thornwath', house: builtInHouse });
      const release = { kind: 'house', name: 'Thornwath', date: '2026-05-14', signer: 'Ben', text } as const;
      for (const number of [1, 2]) {
        const file = fileText(await signedRelease({ ...release, release: number }, await makeKey()));
        await page
          .locator('#house-file')
          .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(file) });
        if (number === 1) await button(page, 'Open Thornwath').click();
      }
    },
    shows: '.handed-on .problem',
  },
  {
    what: 'a figure told to what cannot be read, then wrong, in the practice of telling',
    address: '/guide-file/tell/',
    part: '.telling',
    use: async (page) => {
      await page.locator('#telling-said').fill('plenty');
      await button(page, 'Check').click();
      await expect(page.locator('#telling-problem')).toBeVisible();
      await page.locator('#telling-said').fill('90 tonnes');
      await button(page, 'Check').click();
    },
    shows: '.telling .mark-of',
  },
  {
    what: 'one of the ten sums, answered wrong, with its working',
    address: '/guide-file/sums/',
    part: '.redoing',
    use: async (page) => {
      await page.locator('#guide-sum').fill('12');
      await button(page, 'Check').click();
    },
    shows: '.redoing .mark-of .steps',
  },
  {
    what: 'stills and vessels, distilled three times, with a still too many and a wrong charge',
    address: '/house/plant/',
    part: '.plant',
    use: async (page) => {
      await page.locator('#plant-scheme').selectOption('thrice');
      await page.locator('#plant-add-intermediateStills').click();
      await page.locator('#plant-add-washStills').click();
      await page.locator('#plant-washStills-1-charge').fill('90000');
      await page.locator('#plant-spiritReceiver').fill('500');
    },
    shows: '.plant-says li',
  },
  {
    what: 'the register of casks: a group with a fault, a bottling, a year that cannot be and a table with a bad row',
    address: '/house/stock/',
    part: '.stock-desk',
    use: async (page) => {
      await page.locator('.stock .working > summary').first().click();
      await button(page, 'Change Butts 2017').click();
      await page.locator('.group-form summary').click();
      await page.locator('#group-size').fill('9000');
      await page.locator('#dump-add').selectOption({ label: 'Barrels 2025' });
      await page.locator('#stock-opened').fill('2020');
      await page
        .locator('#stock-text')
        .fill(
          'Casks;Size (L);Filled on;Filled with (L);Filled at (% vol)\n4;200;2016;195;63.5\n-4;200;2016;195;63.5',
        );
    },
    shows: '.table-read .problem',
  },
  {
    what: 'the malts of a year: a grist added, a malt added, a name and a moisture that cannot be',
    address: '/house/malts/',
    part: '.malts-desk',
    use: async (page) => {
      await button(page, 'Add a grist').click();
      await button(page, 'Add a row').first().click();
      await page.locator('#grist-0-name').fill('');
      await page.locator('#grist-1-malts-0-moisture').fill('60');
    },
    shows: '#grist-1-malts-0-moisture-problem',
  },
  {
    what: 'bottles: one added, and a share that cannot be',
    address: '/house/malts/',
    part: '.bottles-desk',
    use: async (page) => {
      await button(page, 'Add another bottle').click();
      await page.locator('#bottles-0-share').fill('110');
    },
    shows: '#bottles-0-share-problem',
  },
  {
    what: 'the fact sheet: a choice taken back, and phenols that cannot be',
    address: '/house/facts/',
    part: '.facts-desk',
    use: async (page) => {
      await page.locator('#fact-colouring').selectOption('');
      await page.locator('#fact-phenols').fill('smoky');
      await page.locator('#fact-water').fill('x'.repeat(301));
    },
    shows: '#fact-water-problem',
  },
  {
    what: 'the house’s portrait: words of one’s own, a figure left out, and saved',
    address: '/house/portrait/',
    part: '.portrait',
    use: async (page) => {
      await page.locator('#portrait-words').fill('Since 1890');
      await page.locator('.portrait summary').click();
      await page.locator('.portrait').getByLabel('Milled in').uncheck();
      await button(page, 'Save as a drawing (SVG)').click();
    },
    shows: '.portrait [role=status] p',
  },
  {
    what: 'what changed: put down without a name, all rows open, and a link that is none',
    address: '/house/changes/',
    part: '.changes-desk',
    use: async (page) => {
      await button(page, 'Put it down').click();
      await page.locator('.changed summary').first().click();
      await page.locator('#changes-sheet').fill('a sheet');
      await expect(page.locator('.touched .remark')).toBeVisible();
    },
    shows: '#version-name-problem',
  },
  {
    what: 'a visit by link',
    address: `/house/${thornwath}`,
    part: '.visit',
    use: () => Promise.resolve(),
    shows: '.visit button',
  },
  {
    what: 'what goes in and out, and the ledger of a year, open, of a house that does not agree',
    address: '/fermenting/',
    part: '.in-and-out, .ledger',
    use: async (page) => {
      // Less than no extract would be left in its wash.
      const house = { ...builtInHouse, originalGravity: 1.03, finalGravity: 0.985 } as typeof builtInHouse;
      await page.evaluate(
        ([key, text]) => localStorage.setItem(key!, text!),
        ['malt-spirit-handbook/house', encodeHouse({ name: 'Thornwath', house })],
      );
      await page.reload();
      await ready(page);
      await page.locator('.ledger details').evaluate((sheet: HTMLDetailsElement) => (sheet.open = true));
      await page.locator('.pace label').last().click();
    },
    shows: '.ledger .impossible',
  },
  {
    what: 'the law check, missed',
    address: pageWith('LawCheck'),
    part: '.law-check',
    use: async (page) => {
      await page.locator('#law-still').selectOption('other still');
      await page.locator('.definition summary').first().click();
    },
    shows: '.definition .missed',
  },
  {
    what: 'the cross-check with an answer, a contradiction and no number',
    address: '/cross-check/',
    part: '.cross-check',
    use: async (page) => {
      await quote(page, { ...contradiction, originalGravity: 'high' });
      await page.locator('#quoted-against-house').check();
      await page.locator('.cross-check .mark.disagrees').first().click();
      await page.locator('.script-verdict summary').click();
    },
    shows: '.cross-check .taken',
  },
  {
    what: 'the script reader with a script',
    address: '/script/',
    part: '.script-reader',
    use: async (page) => {
      await page.locator('#script-text').fill(script);
      await page.locator('#script-against-house').check();
      await page.locator('.script-twice summary').click();
      await page.locator('.marked .mark').first().click();
    },
    shows: '.script-card dd',
  },
  {
    what: 'the cross-check asking what is not sure',
    address: '/cross-check/',
    part: '.script-reader',
    use: (page) => page.locator('#quoted-text').fill('wash 8 %, about 7,200 litres'),
    shows: '.script-ask',
  },
  {
    what: 'the talks of the script reader, with a name that is none and another on the shelf',
    address: '/script/',
    part: '.script-reader',
    use: async (page) => {
      await page.locator('#script-text').fill('We fill 9 casks a week.');
      await page.getByText('Name, save, and other talks').click();
      await button(page, 'Begin another').click();
      await page.locator('#script-name').fill(' ');
      await page.locator('#script-name').press('Tab');
    },
    shows: '#script-name-problem',
  },
  {
    what: 'pocket cards with questions',
    address: '/cards/',
    part: 'main',
    use: async (page) => {
      await page.locator('.choices summary').nth(1).click();
      await page.locator('.choices details').nth(1).locator('.tick').first().click();
    },
    shows: '.card h3',
  },
  {
    what: 'search with results',
    address: '/search/',
    part: 'main',
    use: (page) => page.locator('#search-words').fill('strength'),
    shows: '.found a',
  },
  {
    what: 'search with an answer',
    address: '/search/',
    part: 'main',
    use: (page) => page.locator('#search-words').fill('how many bottles from one field?'),
    shows: '.answer .breath',
  },
  {
    what: 'a question between two passages, answered wrongly and then worked',
    address: '/milling/#ask-grist-split',
    part: '#ask-grist-split',
    use: async (page) => {
      await page.locator('#ask-grist-split-answer').fill('1');
      await page.locator('#ask-grist-split-answer').press('Enter');
      await button(page, 'Show the answer').click();
    },
    shows: '#ask-grist-split .mark-of .steps li',
  },
  {
    what: 'a place on a curve, guessed and seen',
    address: '/milling/#guess-half-passes',
    part: '#guess-half-passes',
    use: async (page) => {
      await page.locator('#guess-half-passes-place').press('PageUp');
      await button(page, 'That is my guess').click();
    },
    shows: '.predict-seen polyline',
  },
  {
    what: 'a stage of the first weeks, with its worked example begun and a lesson read',
    address: '/first-weeks/mashing/',
    part: 'main',
    use: async (page) => {
      await page.locator('.path-steps .tick input').first().check();
      await button(page, 'Begin the worked example').click();
    },
    shows: '.path-worked .steps li',
  },
  {
    what: 'practice, with an answer that cannot be read',
    address: sumsOf.fermenting,
    part: 'main',
    use: async (page) => {
      await page.locator('#practice-answer').fill('a bucketful');
      await page.locator('#practice-answer').press('Enter');
    },
    shows: '.mark-of[data-verdict=unreadable]',
  },
  {
    what: 'practice, marked wrong, with its working',
    address: sumsOf.fermenting,
    part: 'main',
    use: async (page) => {
      await page.locator('#practice-answer').fill('1');
      await page.locator('#practice-answer').press('Enter');
      await button(page, 'Show the answer').click();
    },
    shows: '.mark-of .steps li',
  },
  {
    what: 'a sheet with its answers, and results that came back',
    address: '/sheet/',
    part: 'main',
    use: async (page) => {
      const code = await handIn(page);
      await open(page, '/sheets/');
      await page.getByLabel('Show the answers').check();
      await page.locator('#result-codes').fill(`${code}\nnonsense`);
    },
    shows: '.results-in tbody tr',
  },
  {
    what: 'a sheet of one’s own, with a question found, added and kept',
    address: '/sheets/own/',
    part: 'main',
    use: async (page) => {
      for (const name of [/^Show one/, /^Add/, /^Keep this draw/])
        await page.getByRole('button', { name }).first().click();
      await page.locator('#own-codes').fill('nonsense');
    },
    shows: '.own-even tbody tr',
  },
  {
    what: 'a sheet of a trainer’s own, taken and marked',
    address: '/sheet/own/',
    part: 'main',
    use: async (page) => {
      await page.locator('#take-own-file').setInputFiles({ name: 'sheet.own.json', mimeType: 'application/json', buffer: Buffer.from(ownSheetFile()) }); // prettier-ignore
      await handInBlank(page, 'Hand in');
    },
    shows: '.mark-of',
  },
  {
    what: 'a sealed sheet, taken and handed in',
    address: '/sheet/sealed/',
    part: 'main',
    use: async (page) => {
      await page.locator('#take-sealed-file').setInputFiles({ name: 'sheet.sealed.json', mimeType: 'application/json', buffer: Buffer.from(await sealedSheetFile()) }); // prettier-ignore
      await page.fill('#take-name', 'Una');
      await handInBlank(page, 'Seal and hand in');
    },
    shows: '.code output',
  },
  {
    what: 'the desk of sealed sheets, with a key and a hand-in that is none',
    address: '/sheets/sealed/',
    part: 'main',
    use: async (page) => {
      await button(page, 'Make a key').click();
      await page.locator('#sealed-in').fill('nonsense');
      await button(page, 'Open and mark them').click();
    },
    shows: '#sealed-notes p',
  },
  {
    what: 'a class book, with results and somebody competent',
    address: '/class/',
    part: 'main',
    use: async (page) => {
      await page.fill('#class-pasted', 'Bo Hale: Shift 12, still 0AB12CD, charge 1: 85 of 100, 2026-05-15');
      await button(page, 'Take them into the book').click();
      await page.locator('#class-matrix ~ details summary').click();
      await page.selectOption('#matrix-person', { label: 'Bo Hale' });
      await page.fill('#matrix-outcome', 'distilling');
      await page.locator('#class-matrix ~ details').getByRole('button').click();
    },
    shows: '.class-matrix tbody tr',
  },
  {
    what: 'a question of one’s own that is not sound',
    address: '/sheets/questions/',
    part: 'main',
    use: (page) => button(page, 'Try every draw').click(),
    shows: '.own-finding .problem',
  },
  {
    what: 'a record of tasks, with evidence',
    address: '/tasks/distilling/',
    part: 'main',
    use: (page) => button(page, 'Alone').first().click(),
    shows: '.observed-list input',
  },
  {
    what: 'a sheet taken and marked',
    address: '/sheet/',
    part: 'main',
    use: async (page) => void (await handIn(page)),
    shows: '.mark-of',
  },
];

/** Controls that a thumb would miss, each with its size. A link or a marked figure within a sentence is let be, as WCAG 2.5.8 does; so is a word with its meaning. A link that stands in a line by itself has 24 px at least. */
const tooSmall = (page: Page) =>
  page.evaluate(() => {
    const isInline = (each: Element) => getComputedStyle(each).display.startsWith('inline');
    /** Whether words of the same sentence stand right before a link, or right behind it. */
    const isInSentence = (link: Element): boolean => {
      const [before = '', after = ''] = [link.previousSibling?.textContent, link.nextSibling?.textContent];
      if (!before?.trim() && !after?.trim() && isInline(link.parentElement!)) return isInSentence(link.parentElement!); // prettier-ignore
      return /[\p{L}\d%),;’”–]\s*$/u.test(before!) || /^\s*[\p{Ll}\d,;.:)(“–?]/u.test(after!);
    };
    return [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [role=slider]',
      ),
    ]
      .filter((control) => control.checkVisibility() && !control.closest('.visually-hidden'))
      .flatMap((control) => {
        const box = (
          control.matches('label input') ? control.closest('label')! : control
        ).getBoundingClientRect();
        const isLine = control.matches('a, .marked .mark') && isInline(control);
        const height = Math.max(...[...control.getClientRects()].map((line) => line.height));
        const inText =
          isLine && (height >= 24 || control.matches('.mark, .source a, a.source') || isInSentence(control));
        const low = Math.min(box.width, box.height);
        return low > 0 && low < 43.9 && !inText
          ? `${control.tagName} ${control.className.toString()} “${control.textContent!.slice(0, 30)}” ${Math.round(box.width)} × ${Math.round(box.height)}`
          : [];
      });
  });

for (const { what, address, part, use, shows } of uses)
  test(`in use: ${what}`, async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
    await open(page, address);
    await use(page);
    await expect(page.locator(shows).first()).toBeVisible({ timeout: 60_000 }); // ten thousand rounds take their time
    expect(await broken(page, part)).toEqual([]);
    // A field that is wrong says why where it stands.
    const wrong = await page.locator('[aria-invalid=true]').evaluateAll((all) =>
      all.map((field) =>
        (field.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent ?? '')
          .join(' ')
          .trim(),
      ),
    );
    for (const why of wrong) expect(why).toMatch(/\w{3}/);
    expect(await tooSmall(page), 'targets').toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });

/** Puts down every text that a live region comes to hold, in order, with how loudly it is said. */
async function listen(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    const heard: string[] = ((window as unknown as { heard: string[] }).heard = []);
    new MutationObserver((changes) => {
      for (const region of new Set(
        changes.map(({ target }) =>
          (target instanceof Element ? target : target.parentElement)?.closest(
            '[role=status], [role=alert], [aria-live=polite], output',
          ),
        ),
      ))
        if (region?.textContent) heard.push(`${region.id || region.className}: ${region.textContent.trim()}`);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
}

test('a result is said once, politely, by the part in use alone; a drag is silent until it rests', async ({
  page,
}) => {
  await open(page, pageWith('SpiritRun'));
  const heard = await listen(page);
  const knob = page.locator('.heart-ends .cut-knob');
  await knob.hover(); // waits until it stands still
  const { x, y } = (await knob.boundingBox())!;
  await page.mouse.move(x + 5, y + 5);
  await page.mouse.down();
  for (let i = 1; i <= 20; i++) await page.mouse.move(x + 5 + 3 * i, y + 5 + i);
  expect(await heard()).toEqual([]);
  await page.mouse.up();
  await expect(announcer(page)).toHaveText(
    /^(?=.*Heart [\d,]+ L at [\d.]+ % vol\.)(?=.*Pure alcohol a mash: heart \d+ L, bottles \d+ L\.)/,
  );
  expect(await heard()).toHaveLength(1);
  // A calculator takes the same figure; the ledger beside it follows and says nothing.
  await open(page, '/sums/what-if/');
  const said = await listen(page);
  await page.locator('#what-if-heartEnd').press('ArrowUp');
  await expect.poll(async () => (await said()).length).toBe(1);
  expect((await said())[0]).toContain(`${await page.locator('h1').innerText()}: `);
  // A number half typed is not called wrong aloud.
  await page.locator('#what-if-heartEnd').fill('');
  await page.locator('#what-if-heartEnd').pressSequentially('63');
  await expect.poll(async () => (await said()).length).toBe(2);
  expect((await said())[1]).not.toContain('was given');
  await page.locator('#what-if-heartEnd').fill('9000');
  await expect(announcer(page)).toContainText('“9000” was given');
});

for (const [what, address, use, says] of [
  [
    'the spread of the round',
    pageWith('RoundSpread'),
    (page) => button(page, 'Draw 10,000 rounds').click(),
    /95 % between/,
  ],
  [
    'the law check',
    pageWith('LawCheck'),
    (page) => page.locator('#law-still').selectOption('other still'),
    /: 1 point is not met\./,
  ],
  ['the cross-check', '/cross-check/', (page) => quote(page, { washStrength: '9.0' }), /\.$/],
  ['the script reader', '/script/', (page) => page.locator('#script-text').fill(script), /\.$/],
  [
    'the cards',
    '/cards/',
    (page) => page.locator('.choices .tick').first().click(),
    /^\d+ cards: \d+ figures and 0 questions\.$/,
  ],
  [
    'the ledger',
    '/mashing/',
    async (page) => {
      await page.locator('.ledger details').evaluate((sheet: HTMLDetailsElement) => (sheet.open = true));
      await page.locator('.pace input').last().check();
    },
    /^Pure alcohol a year: heart/,
  ],
  [
    'another stage to practise',
    '/practice/',
    (page) => page.locator('#practice-topic').selectOption('safety'),
    /[?:.]/,
  ],
  [
    'another sheet',
    '/sheets/',
    (page) => button(page, 'Another sheet').click(),
    /^Sheet \w+, version 1: 10 questions\.$/,
  ],
  ['a visit', `/house/${thornwath}`, () => Promise.resolve(), /figures of Thornwath, from a link/],
] as readonly (readonly [string, string, (page: Page) => Promise<unknown>, RegExp])[])
  test(`said aloud: ${what}`, async ({ page }) => {
    await open(page, address);
    await expect(announcer(page)).toHaveRole('status');
    await page.locator('select, input, textarea, summary').last().focus();
    await use(page);
    await expect(announcer(page)).toHaveText(says, { timeout: 60_000 });
  });

for (const address of addresses)
  test.describe(`${address}, in the hand`, () => {
    test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });
    test('targets, tables, stillness, four-fold zoom, wide spacing', async ({ page }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await open(page, address);
      await page
        .locator('details:not(.ledger details)')
        .evaluateAll((all: HTMLDetailsElement[]) => all.forEach((each) => (each.open = true)));
      expect(await tooSmall(page), 'controls under 44 px').toEqual([]);

      const drawings = await page.locator('svg').evaluateAll((all) =>
        all.flatMap((svg) => {
          const figure = svg.closest('figure');
          const by = (svg.getAttribute('aria-labelledby') ?? '')
            .split(' ')
            .map((id) => document.getElementById(id)?.textContent ?? '')
            .join(' ')
            .trim();
          const named = by || (svg.getAttribute('aria-label') ?? figure?.getAttribute('aria-label'));
          const hidden = svg.closest('[aria-hidden=true], [role=img][aria-label]') !== null; // or a part of a drawing that has its words
          const curve = figure?.matches('.chart, .run') ?? false;
          const cells = [...(figure?.querySelectorAll('table td') ?? [])];
          if (curve && cells.filter((cell) => /\d/.test(cell.textContent!)).length < 4)
            return ['a curve without its table'];
          // A drawing with handles on it is a named group of sliders: as an image it would hide them.
          const role = svg.querySelector('[role=slider]') ? 'group' : 'img';
          if (hidden || (curve && named) || (named && svg.getAttribute('role') === role)) return [];
          return [`a drawing without words: ${svg.outerHTML.slice(0, 90)}`];
        }),
      );
      expect(drawings).toEqual([]);

      const moving = await page.evaluate(() => {
        const long = (times: string) => times.split(',').some((time) => parseFloat(time) > 0.01);
        const styled = [...document.querySelectorAll('*')].flatMap((element) =>
          [undefined, '::before', '::after'].flatMap((part) => {
            const style = getComputedStyle(element, part);
            return long(style.transitionDuration) ||
              (style.animationName !== 'none' && long(style.animationDuration)) ||
              style.scrollBehavior === 'smooth'
              ? [`${element.tagName} ${element.className.toString()} ${part ?? ''}`]
              : [];
          }),
        );
        return [...styled, ...document.getAnimations().map(({ playState }) => playState)];
      });
      expect(moving, 'motion').toEqual([]);

      // 1280 × 1024 at 400 %.
      await page.setViewportSize({ width: 320, height: 256 });
      const zoomed = await page.evaluate(() => {
        const all = [...document.querySelectorAll<HTMLElement>('body *')];
        const visible = all.filter((element) => element.checkVisibility());
        return {
          wide: document.documentElement.scrollWidth,
          stuck: visible
            .filter((element) => ['fixed', 'sticky'].includes(getComputedStyle(element).position))
            .map((element) => element.className),
          unreachable: visible
            .filter(
              (element) =>
                element.scrollWidth > element.clientWidth + 1 &&
                ['auto', 'scroll'].includes(getComputedStyle(element).overflowX) &&
                !element.matches('input, textarea, select') &&
                element.tabIndex < 0 &&
                !element.querySelector('a, button, input, select, summary, [tabindex="0"]'),
            )
            .map((element) => element.className),
        };
      });
      expect(zoomed).toEqual({ wide: 320, stuck: [], unreachable: [] });

      // WCAG 1.4.12; a formula is no running text.
      const cut = await page.evaluate(() => {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(
          'body *:not(math, math *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }',
        );
        document.adoptedStyleSheets.push(sheet);
        const hidden = [...document.querySelectorAll<HTMLElement>('body *')].filter(
          (element) =>
            element.checkVisibility() &&
            !element.closest('.visually-hidden, svg, math, .skip, input, select') &&
            ['hidden', 'clip'].includes(getComputedStyle(element).overflowY) &&
            element.scrollHeight > element.clientHeight + 2,
        );
        return [...hidden.map(({ className }) => className), document.documentElement.scrollWidth];
      });
      expect(cut, 'cut off when set wide').toEqual([320]);
    });
  });

test('forced colours: curves, cuts, marks, the place in the book and what is chosen stay to be seen', async ({
  page,
}) => {
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  const of = (selector: string, property: string, part?: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((element, [name, pseudo]) => getComputedStyle(element, pseudo).getPropertyValue(name!), [
        property,
        part,
      ] as const);
  const isSeen = async (selectors: readonly (readonly [selector: string, property: string])[]) => {
    const canvas = await of('body', 'background-color');
    for (const [selector, property] of selectors)
      expect(await of(selector, property), `${selector} ${property}`).not.toBe(canvas);
  };
  await open(page, pageWith('SpiritRun'));
  await isSeen([
    ['.run .curve', 'stroke'],
    ['.run .area.heart', 'stroke'],
    ['.run .hatch', 'stroke'],
    ['.run .cut-knob', 'stroke'],
    ['.run .cut-line', 'stroke'],
    ['.run text', 'fill'],
    ['.ledger .amount', 'fill'],
  ]);
  await page.locator('.heart-ends .cut-handle').press('ArrowRight');
  await isSeen([['.heart-ends .cut-reach', 'stroke']]);
  await open(page, '/mashing/');
  await isSeen([
    ['.in-and-out .box', 'stroke'],
    ['.drawing .thread', 'stroke'],
  ]);
  expect(await of('.pace label:has(:checked)', 'background-color')).not.toBe(
    await of('.pace label:not(:has(:checked))', 'background-color'),
  );
  await open(page, '/sums/size-curve/');
  await isSeen([
    ['.chart .curve', 'stroke'],
    ['.chart .reading', 'fill'],
    ['.calculator', 'border-top-color'],
    ['.calculator input[type=text]', 'border-top-color'],
    ['.calculator button', 'border-top-color'],
  ]);
  await page.locator('#size-curve-pan').fill('a lot');
  expect(await of('.problem', 'border-bottom-color', '::before')).not.toBe(
    await of('body', 'background-color'),
  );
  expect(await of('#size-curve-pan', 'outline-style')).toBe('solid');
});

test('where the reader is, is told by more than colour: the door, the page behind it, the page of the chapter', async ({
  page,
}) => {
  await open(page, '/distilling/safe/');
  await expect(page.locator('.wayfinder [aria-current=page]')).toHaveAttribute('href', /safe\/$/);
  for (const forcedColors of ['none', 'active'] as const) {
    await page.emulateMedia({ forcedColors });
    const looks = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((element) => {
          const { borderBottomWidth, boxShadow, fontWeight, outlineWidth, textDecorationLine } =
            getComputedStyle(element);
          const after = getComputedStyle(element, '::after');
          return JSON.stringify([
            borderBottomWidth,
            boxShadow,
            fontWeight,
            outlineWidth,
            textDecorationLine,
            after.content,
            after.height,
          ]);
        });
    expect(await looks('.door[data-here] summary'), forcedColors).not.toBe(
      await looks('.door:not([data-here]) summary'),
    );
    expect(await looks('.wayfinder [aria-current]'), forcedColors).not.toBe(
      await looks('.wayfinder .tabs a:not([aria-current])'),
    );
  }
  await open(page, '/safety/');
  await page.locator('.door summary').first().click();
  await expect(page.locator('.door[open] [aria-current=page]')).toHaveText('Safety');
  await expect(page.locator('.door[open] [aria-current=page]')).toHaveCSS('font-weight', /[6-9]00/);
});
