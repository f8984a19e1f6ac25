import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, openColony, startOwn } from './support/steps.ts';

/** The records of one keeper, taken in as that keeper's own. */
const RECORDS = join(resolve(import.meta.dirname, '../..'), 'samples/demo-yard.json');

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function lookAt(page: Page, path: string): Promise<void> {
  await goTo(page, '#/exchange');
  await page.locator('input[type=file]').setInputFiles(path);
  await page.getByText('Nothing is written yet').waitFor();
}

async function takeIn(page: Page): Promise<void> {
  await button(page, /^Take in [\d,]+ entr/).click();
  await page.getByText('Undo takes all of it back').waitFor();
}

async function save(page: Page): Promise<string> {
  const saving = page.waitForEvent('download');
  await button(page, 'Save the file').click();
  return (await saving).path();
}

async function handOut(page: Page, queen: string): Promise<string> {
  await goTo(page, '#/exchange');
  await page.getByRole('radio', { name: 'One queen' }).check();
  await page.getByLabel('Which queen').fill(queen);
  await button(page, new RegExp(queen)).first().click();
  await page.getByRole('radio', { name: 'File of records' }).check();
  await page.getByText('Read each entry before it leaves').click();
  await page.getByText('Crossed the winter 2025/26.').waitFor();
  return save(page);
}

/** A nucleus of hers, with a daughter of the queen told of. */
async function addDaughter(page: Page, yard: string, dam: string): Promise<void> {
  await goTo(page, '#/yards');
  await page.getByRole('link', { name: yard, exact: true }).first().click();
  await button(page, 'Add a colony').first().click();
  const sheet = page.getByRole('dialog');
  await sheet.getByLabel('Label on the box').fill('B2');
  await sheet.getByLabel('How it began').selectOption({ label: 'A nucleus got' });
  await sheet.getByRole('radio', { name: 'Laying', exact: true }).check();
  await sheet.getByLabel('Her name').fill('Sedge');
  await button(page, 'Add the colony').click();
  await openColony(page, 'B2');
  await page
    .getByRole('link', { name: /^Sedge/ })
    .first()
    .click();
  await button(page, 'State her dam').click();
  const dams = sheet.getByLabel('Her dam');
  const title = await dams.locator('option', { hasText: dam }).textContent();
  await dams.selectOption({ label: title ?? '' });
  await sheet.getByRole('radio', { name: /^Certain/ }).check();
  await sheet.getByRole('radio', { name: 'Told by another keeper' }).check();
  await sheet.getByRole('button', { name: 'Save' }).click();
  await sheet.waitFor({ state: 'detached' });
}

const keepersOf = (path: string) =>
  new Set(
    (JSON.parse(readFileSync(path, 'utf8')) as { entries: { recordedBy: string }[] }).entries.map(
      ({ recordedBy }) => recordedBy,
    ),
  );

describe('two keepers over the fence', () => {
  it('hand out a pedigree, write of a daughter, and put it together again', async () => {
    const ours = await app.newKeeper({ desk: true });
    const theirs = await app.newKeeper();
    await lookAt(ours.page, RECORDS);
    await button(ours.page, /^Take in/).click();
    await ours.page.getByText('Say whose records these are').waitFor();
    await ours.page.getByRole('radio', { name: /^Mine/ }).check();
    await takeIn(ours.page);
    await ours.page.getByText('You go on writing as Wenna Oldfallow').waitFor();

    const pedigree = await handOut(ours.page, 'Sable');
    expect(readFileSync(pedigree, 'utf8')).not.toMatch(/Sallow Bank|High Fallow|Marl Pit/);
    await startOwn(theirs.page, 'Ada', 'Brookside');
    await lookAt(theirs.page, pedigree);
    await theirs.page.getByRole('article', { name: 'Pedigree card of Sable' }).waitFor();
    await theirs.page.getByText('Told by Wenna Oldfallow').waitFor();
    await takeIn(theirs.page);
    await goTo(theirs.page, '#/lines');
    await theirs.page.getByText('No queen in these yards').waitFor();
    await addDaughter(theirs.page, 'Brookside', 'Sable');
    await theirs.page
      .getByRole('main')
      .getByRole('link', { name: /^Slate/ })
      .first()
      .waitFor();
    await goTo(theirs.page, '#/exchange');
    const back = await save(theirs.page);
    expect(keepersOf(back).size).toBe(2);

    await lookAt(ours.page, back);
    await ours.page.getByText(/You wrote \d+ of them yourself/).waitFor();
    await takeIn(ours.page);
    await goTo(ours.page, '#/yards');
    await ours.page
      .getByRole('link', { name: /^Sedge/ })
      .first()
      .click();
    await ours.page.getByRole('heading', { level: 1, name: 'Sedge' }).waitFor();
    for (const dam of ['Sable', 'Slate', 'Rowan', 'Hazel'])
      await ours.page
        .getByRole('link', { name: new RegExp(`^${dam}`) })
        .first()
        .waitFor();

    await goTo(ours.page, '#/exchange');
    await ours.page.getByRole('radio', { name: 'All records' }).check();
    const whole = await save(ours.page);
    await lookAt(theirs.page, whole);
    await takeIn(theirs.page);
    await lookAt(theirs.page, whole);
    await theirs.page.getByText('There is nothing to take in').waitFor();
    expect([...ours.errors, ...theirs.errors]).toEqual([]);
    await theirs.close();
    await ours.close();
  });
});
