import type { Locator, Page } from 'playwright-core';

/** Steps that several tests take. */

/** Opens the demo yard from the first page. */
export async function openDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Walk through a demo yard' }).click();
  await page.getByRole('heading', { level: 1, name: 'Yards' }).waitFor();
}

/** Starts a keeper's own records with one yard. */
export async function startOwn(page: Page, keeper: string, yard: string): Promise<void> {
  await page.getByRole('button', { name: 'Start my own records' }).click();
  await page.getByLabel('Your name').fill(keeper);
  await page.getByLabel('Your first yard').fill(yard);
  await page.getByRole('button', { name: 'Open the yard' }).click();
  await page.getByRole('heading', { level: 1, name: yard }).waitFor();
}

/** Opens the page of the colony with this label from Yards. */
export async function openColony(page: Page, label: string): Promise<void> {
  await goTo(page, '#/yards');
  await page.getByRole('link', { name: label, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: label }).waitFor();
}

export async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    window.location.hash = to;
  }, hash);
}

/** Counts the taps it makes. */
export function tapper() {
  let taps = 0;
  return {
    tap: async (what: Locator) => {
      taps += 1;
      await what.click();
    },
    count: () => taps,
  };
}
