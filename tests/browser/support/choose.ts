import type { Locator, Page } from 'playwright-core';
import type { Keeper, RunningApp } from './app.ts';
import { goTo, openDemo } from './steps.ts';

/** Steps on the screen that says whom to breed from. */

/** The evaluation of the demo and its first curve, on a slow machine. */
const WORKED_OUT = 90_000;

export const whom = (page: Page): Locator => page.getByRole('region', { name: 'Whom to breed from' });

/** A fresh keeper in the demo yard, before the choice, with the daughters planned. */
export async function chooseInDemo(
  app: RunningApp,
  options: Parameters<RunningApp['newKeeper']>[0] = {},
): Promise<Keeper> {
  const keeper = await app.newKeeper(options);
  await openDemo(keeper.page);
  await goTo(keeper.page, '#/choose');
  await planned(keeper.page);
  return keeper;
}

/** Waits until the daughters are shared out. */
export async function planned(page: Page): Promise<void> {
  await page
    .getByText(/^\d+ daughters from \d+ queens;/)
    .first()
    .waitFor({ timeout: WORKED_OUT });
}

/** The queens of the list from the top, by name. */
export async function order(page: Page): Promise<readonly string[]> {
  return whom(page)
    .locator('ul > li > details > summary')
    .evaluateAll((rows) => rows.map((row) => row.querySelector('i')?.textContent?.trim() ?? ''));
}

/** A queen's row. */
export const rowOf = (page: Page, name: string): Locator =>
  whom(page)
    .locator('li > details')
    .filter({ has: page.locator('summary i').getByText(name, { exact: true }) })
    .first();

/** A question of the screen, opened if it is not. */
export async function openQuestion(page: Page, title: string): Promise<Locator> {
  const heading = page.getByRole('heading', { level: 2, name: title, exact: true });
  const question = page.locator('details').filter({ has: heading });
  if (!(await question.evaluate((element) => element.hasAttribute('open')))) await heading.click();
  return question;
}

/** Pixels by which the page is wider than the window. */
export async function overflow(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}
