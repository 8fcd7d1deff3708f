// The sheets of safety: one side of paper each, and a link to a caution leads to it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { parse } from 'yaml';
import { open } from './pages.ts';
import { faultsOf, layOut, pageCount, paperNames } from './paper.ts';

const cautions = parse(
  readFileSync(join(import.meta.dirname, '..', '..', 'content', 'cautions.yaml'), 'utf8'),
) as Record<string, { readonly does: readonly string[]; readonly defers: string }>;

const sheets = [
  'grain-and-kiln',
  'mill',
  'mash-house',
  'tun-room',
  'still-house',
  'warehouse',
  'bottling',
  'visitors',
];

for (const sheet of sheets)
  test(`the sheet for ${sheet} prints on one side of paper, with every caution whole`, async ({ page }) => {
    await open(page, `/safety/${sheet}/`);
    for (const paper of paperNames) expect(await pageCount(page, paper), paper).toBe(1);
    await layOut(page, 'A4');
    expect(await faultsOf(page, 'A4')).toEqual([]);
    for (const caution of await page.locator('.caution').all()) {
      const id = (await caution.getAttribute('id'))!.replace('caution-', '');
      const { does, defers } = cautions[id]!;
      const said = (await caution.innerText()).replace(/\s+/g, ' ');
      for (const sentence of [...does, defers]) expect(said).toContain(sentence.trim());
    }
  });

test('a link to a caution, as calculators carry it, opens the sheet with it in sight', async ({ page }) => {
  await open(page, '/sums/carbon-dioxide/');
  await page.locator('.cautions a', { hasText: 'carbon dioxide' }).click();
  await expect(page).toHaveURL(/\/safety\/tun-room\/#caution-carbon-dioxide$/);
  await expect(page.locator('#caution-carbon-dioxide h2')).toBeInViewport();
});
