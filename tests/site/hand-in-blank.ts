// Hands in a sheet on which something is blank or not read: it asks first, and the second press hands in.
import type { Page } from '@playwright/test';

export async function handInBlank(page: Page, name: string): Promise<void> {
  const press = page.getByRole('button', { name, exact: true });
  await press.click();
  await page.getByText('Press again to hand in all the same.').waitFor();
  await press.click();
}
