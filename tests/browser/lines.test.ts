import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, openDemo } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const drawing = (page: Page) => page.getByRole('application');

/** The name of a queen in the drawing; the label of her box may stand behind it. */
const nameOf = (page: Page, name: string) =>
  drawing(page)
    .locator('text')
    .filter({ hasText: new RegExp(`^${name}`) })
    .first();

/** Between name and label of a text there is nothing to hit: the tap goes to the first letter. */
const choose = (page: Page, name: string) => nameOf(page, name).click({ position: { x: 6, y: 10 } });

async function openLines(page: Page): Promise<void> {
  await openDemo(page);
  await goTo(page, '#/lines');
  await drawing(page).locator('svg').waitFor();
}

describe('the lines of the demo yard', () => {
  it('tell at a glance which are alive and on how many queens each hangs', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await openLines(page);
    await page.getByText('4 lines are alive').waitFor();
    expect(await page.getByText('Hangs on one queen').count()).toBe(2);
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('tell on demand which genes are left, winter by winter, and what is left of each founder in a queen', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await openLines(page);
    await page.getByText(/^Worth \d\.\d equal lines/).click();
    const carried = page.getByRole('table', { name: 'Carried into each winter' });
    await carried.getByRole('rowheader', { name: 'now', exact: true }).waitFor({ timeout: 30_000 });
    await page
      .getByText(/^The 11 queens who lay now carry .+ different sex alleles .+ of 22 at most\.$/)
      .waitFor();
    await goTo(page, '#/yards');
    await page.getByRole('link', { name: /Brook/ }).first().click();
    await page.getByText('What is left of each founder in her').click();
    await page.getByText('drones or dams not on record').waitFor();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('are walked by arrow keys from the founder to a daughter and back, and Enter opens her page', async () => {
    const keeper = await app.newKeeper({ desk: true });
    const { page } = keeper;
    await openLines(page);
    await drawing(page).focus();
    await page.keyboard.press('ArrowDown');
    await page.getByRole('link', { name: /^Hazel/ }).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.getByText(/^Lays in \w+; daughter of Hazel/).waitFor();
    await page.keyboard.press('ArrowLeft');
    await page.getByText(/; dam unknown\. Crossed winters/).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /Hazel/ }).waitFor();
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('say how two queens are related, in words and as a kinship', async () => {
    const keeper = await app.newKeeper({ desk: true });
    const { page } = keeper;
    await openLines(page);
    await choose(page, 'Norther');
    await page.getByRole('button', { name: 'Compare' }).click();
    await choose(page, 'Gale');
    await page.getByText('Norther and Gale are sisters, daughters of Hazel').waitFor();
    await page.getByText(/Kinship 0\.\d{3}/).waitFor();
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('fade all but the kin asked for, and the choice is still there after a reload', async () => {
    const keeper = await app.newKeeper({ desk: true });
    const { page } = keeper;
    await openLines(page);
    await choose(page, 'Norther');
    await page.getByRole('button', { name: 'Ancestors' }).click();
    const opacity = () => nameOf(page, 'Brook').evaluate((name) => Number(getComputedStyle(name).opacity));
    expect(await opacity()).toBeLessThan(0.5);
    await page.reload();
    await drawing(page).locator('svg').waitFor();
    expect(await opacity()).toBeLessThan(0.5);
    await page.getByRole('button', { name: 'Choose nobody' }).waitFor();
    await keeper.close();
  });

  it('find a queen by her name and bring her into sight, on a phone above the panel', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await openLines(page);
    await page.getByLabel('Find a queen').fill('vetc');
    await page.getByLabel('Find a queen').press('Enter');
    await page.getByText(/^Lays in \w+; daughter of Draught/).waitFor();
    const place = await nameOf(page, 'Vetch').evaluate((name) => name.getBoundingClientRect().bottom);
    expect(place).toBeGreaterThan(0);
    expect(place).toBeLessThan(844 / 2);
    await goTo(page, '#/yards');
    await page.goBack();
    await drawing(page).locator('svg').waitFor();
    await expect
      .poll(() => nameOf(page, 'Vetch').evaluate((name) => name.getBoundingClientRect().bottom))
      .toBeLessThan(844 / 2);
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('stand below as nested lists with every queen under her dam', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await openLines(page);
    await page.locator('summary', { hasText: 'Vagrant' }).click();
    const founder = page.locator('details[open] > ul > li');
    expect(await founder.count()).toBe(1);
    await founder
      .locator('ul')
      .getByRole('link', { name: /Draught/ })
      .waitFor();
    await founder.locator('ul ul').getByRole('link', { name: /Vetch/ }).waitFor();
    await keeper.close();
  });

  it('scroll with the page under a finger that moves up', async () => {
    const keeper = await app.newKeeper();
    const { page, context } = keeper;
    await openLines(page);
    await drawing(page).evaluate((node) => node.scrollIntoView());
    const before = await page.evaluate(() => window.scrollY);
    const device = await context.newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', y?: number) =>
      device.send('Input.dispatchTouchEvent', { type, touchPoints: y === undefined ? [] : [{ x: 150, y }] });
    await touch('touchStart', 600);
    for (let y = 580; y >= 400; y -= 20) await touch('touchMove', y);
    await touch('touchEnd');
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(before + 80);
    await keeper.close();
  });
});

describe('the page of a queen', () => {
  it('asks for a name where there is none, and undo takes it back', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await openLines(page);
    await choose(page, 'Norther');
    await page.getByRole('link', { name: 'Her page' }).click();
    await page
      .getByRole('link', { name: /expected queen of 2026/ })
      .first()
      .click();
    await page.getByLabel('She has no name yet').fill('Whinchat');
    await page.getByRole('button', { name: 'Name her', exact: true }).first().click();
    await page.getByRole('heading', { level: 1, name: /Whinchat/ }).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByLabel('She has no name yet').waitFor();
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('keeps counts made under a treatment in sight, set aside with the reason', async () => {
    const keeper = await app.newKeeper({ desk: true });
    const { page } = keeper;
    await openLines(page);
    await choose(page, 'Norther');
    await page.getByRole('link', { name: 'Her page' }).click();
    await page.getByRole('heading', { name: 'Her colonies beside their neighbours' }).waitFor();
    await page
      .getByText(/set aside: Counted \d+ days after formic acid ended/)
      .first()
      .waitFor();
    await page
      .getByText(/too few to tell the line from luck/)
      .first()
      .waitFor();
    await page.getByText(/of \d+ living queens/).waitFor({ timeout: 60_000 });
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });
});
