import { readFileSync } from 'node:fs';
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
    /** Two taps: one that opens the list, one on the choice. */
    choose: async (list: Locator, label: string) => {
      taps += 2;
      await list.selectOption({ label });
    },
    count: () => taps,
  };
}

/** The wall clock of the page stands at ten in the morning of this day, also after a reload. */
export async function onDay(page: Page, day: string): Promise<void> {
  await page.clock.setFixedTime(new Date(`${day}T10:00:00`));
  await page.reload();
}

/** Adds a colony that was there before, headed by a marked queen of the year before. */
export async function addColony(page: Page, label: string, queen: string, year: number): Promise<void> {
  await page.getByRole('button', { name: 'Add a colony' }).click();
  await page.getByLabel('Label on the box').fill(label);
  await page.getByLabel('How it began').selectOption('already-here');
  await page.getByRole('button', { name: 'Another day', exact: true }).click();
  await page.getByLabel('How exactly it is known').selectOption('year');
  await page.getByLabel('Since: year').fill(String(year));
  await page.getByRole('radio', { name: 'Laying', exact: true }).click();
  await page.getByLabel('Her name').fill(queen);
  await page.getByLabel('When she emerged').fill(String(year));
  await page.getByRole('radio', { name: /^blue/i }).click();
  await page.getByRole('button', { name: 'Add the colony' }).click();
  await page.getByRole('link', { name: label, exact: true }).waitFor();
}

/** The keeper's journal as a file, saved from Exchange. */
export async function savedJournal(page: Page): Promise<string> {
  await goTo(page, '#/exchange');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).first().click();
  return readFileSync(await (await saving).path(), 'utf8');
}
