import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, onDay, openColony } from './support/steps.ts';

const SHEET = resolve(import.meta.dirname, '../../samples/spreadsheets/queen-list.csv');

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const region = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function takeInTheSheet(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Bring in a table or a file' }).click();
  await page.locator('input[type=file]').setInputFiles(SHEET);
  await page.getByRole('heading', { name: /What each row would write/ }).waitFor();
  await page.getByLabel('Your name').fill('Ada');
  await button(page, /^Take in/).click();
  await page.getByText('Undo takes all of it back').waitFor();
}

/** The old queen into a new box, a frame of eggs into another; what stays raises its own. */
async function splitThreeWays(page: Page): Promise<void> {
  await openColony(page, '4');
  await page.getByRole('link', { name: 'Split', exact: true }).click();
  await button(page, 'Lift the old queen, Hazel').click();
  await region(page, 'New box 11').getByRole('button', { name: 'Set down here' }).click();
  await button(page, 'Add a part').click();
  await button(page, 'Take a frame of eggs and young brood').click();
  await region(page, 'New box 12').getByRole('button', { name: 'Set down here' }).click();
  await button(page, 'Done with it').click();
  await region(page, 'New box 12').getByText('Raises a daughter of Hazel').waitFor();
  await button(page, 'Write the split down').click();
  await page.getByRole('heading', { level: 1, name: '4', exact: true }).waitFor();
}

/** A frame of cells from the queenless parent into the other part, a week later. */
async function carryCells(page: Page): Promise<void> {
  await openColony(page, '4');
  await page.getByRole('link', { name: 'Carry frames' }).click();
  await button(page, 'Take a frame of queen cells').click();
  await region(page, '12').getByRole('button', { name: 'Set down here' }).click();
  await region(page, '12').getByText('comes a daughter of Hazel').waitFor();
  await button(page, 'Write it down').click();
  await page.getByRole('heading', { level: 1, name: '4', exact: true }).waitFor();
}

/** Eggs found in box 12: the keeper says which of the two queens expected there it is. */
async function confirmDaughter(page: Page): Promise<void> {
  await goTo(page, '#/rounds');
  const stop = page
    .getByRole('listitem')
    .filter({ has: page.getByRole('link', { name: '12', exact: true }) });
  await stop.getByText('Look for eggs').first().click();
  await stop.getByRole('button', { name: 'Eggs', exact: true }).click();
  await stop.getByRole('button', { name: 'A daughter of Hazel, raised in a split, 10 May' }).click();
  await stop.getByText('Look for eggs', { exact: true }).waitFor({ state: 'detached' });
}

async function saveJournal(page: Page): Promise<string> {
  await goTo(page, '#/exchange');
  const saving = page.waitForEvent('download');
  await button(page, 'Save the file').first().click();
  return (await saving).path();
}

const entriesIn = (path: string) =>
  (JSON.parse(readFileSync(path, 'utf8')) as { entries: unknown[] }).entries;

async function yardsAsWritten(page: Page): Promise<string> {
  await goTo(page, '#/yards');
  await page.getByRole('heading', { level: 1, name: 'Yards' }).waitFor();
  await page.getByRole('link', { name: '12', exact: true }).waitFor();
  return (await page.getByRole('main').textContent()) ?? '';
}

async function wipe(page: Page): Promise<void> {
  await goTo(page, '#/exchange');
  await button(page, 'Delete all records here').click();
  await page.getByLabel('Write delete to go on').fill('delete');
  await button(page, /^Delete \d+ entries/).click();
  await page.getByText('Bring in what you have').waitFor();
}

describe('the main job, from a table kept until now to the same records on a clean device', () => {
  it('is done whole', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await onDay(page, '2026-05-10');
    await takeInTheSheet(page);
    await splitThreeWays(page);
    await openColony(page, '11');
    await page.getByRole('main').getByText('Hazel').first().waitFor();

    await onDay(page, '2026-05-17');
    await carryCells(page);
    await onDay(page, '2026-06-12');
    await confirmDaughter(page);

    await goTo(page, '#/choose');
    await page
      .getByRole('main')
      .getByText('Hazel')
      .filter({ visible: true })
      .first()
      .waitFor({ timeout: 60_000 });

    await openColony(page, '12');
    await page
      .getByRole('main')
      .getByRole('link', { name: /unnamed queen of 2026/ })
      .first()
      .click();
    await page.getByRole('heading', { level: 1 }).waitFor();
    const traced = page.getByRole('main');
    await traced
      .getByRole('link', { name: /^Hazel/ })
      .first()
      .waitFor();
    await traced
      .getByRole('link', { name: /^Rowan/ })
      .first()
      .waitFor();

    const before = await yardsAsWritten(page);
    const saved = await saveJournal(page);
    await wipe(page);
    await page.locator('input[type=file]').setInputFiles(saved);
    await page.getByRole('radio', { name: /^Mine/ }).check();
    await button(page, /^Take in \d+ entries/).click();
    await page.getByText('Undo takes all of it back').waitFor();
    expect(await yardsAsWritten(page)).toBe(before);
    expect(entriesIn(await saveJournal(page))).toEqual(entriesIn(saved));
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });
});
