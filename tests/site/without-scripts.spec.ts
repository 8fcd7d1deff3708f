// With JavaScript off, every page tells Harrowmere's figures, and they are those of the core.
import { expect, test } from '@playwright/test';
import { format } from '../../src/core/format.ts';
import { ledger } from '../../src/core/line/ledger.ts';
import { builtInLine } from '../../src/house/built-in.ts';
import { figureText } from '../../src/house/prose.ts';
import { addresses, chapters } from './pages.ts';

test.use({ javaScriptEnabled: false });

for (const address of addresses) {
  test(`${address} has its figures`, async ({ page }) => {
    await page.goto(address);
    const figures = await page.locator('[data-figure]').evaluateAll((all) =>
      all.map((element) => {
        const { figure, per, digits } = (element as HTMLElement).dataset;
        return { figure: figure!, per, digits, text: element.textContent!.trim() };
      }),
    );
    for (const { figure, per, digits, text } of figures) {
      const pace = per as 'year' | undefined;
      expect(text, figure).toBe(
        figureText(builtInLine, figure, pace, digits === undefined ? undefined : Number(digits)),
      );
    }
    if (chapters.some((chapter) => address === `/${chapter}/`)) {
      expect(figures.length).toBeGreaterThan(5);
      const heart = page.locator('.ledger [data-station="heart"]');
      await expect(heart).toHaveText(format(ledger(builtInLine, 'mash').heart, 'volume20', 0));
      await expect(page.locator('.calculator .results dd').first()).not.toBeEmpty();
    }
  });
}
