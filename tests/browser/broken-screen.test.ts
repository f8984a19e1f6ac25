import { afterAll, beforeAll, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, openColony, openDemo } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

it('a screen that breaks says so, leaves the others as they are, and stands again once it can', async () => {
  const { page, errors, close } = await app.newKeeper();
  await openDemo(page);
  // Whatever measures its own width breaks on this device: the drawing of the lines does, the yards do not.
  await page.evaluate(() => {
    Object.assign(window, { measured: window.ResizeObserver });
    window.ResizeObserver = class {
      constructor() {
        throw new Error('no measuring here');
      }
    } as unknown as typeof ResizeObserver;
  });
  await goTo(page, '#/lines');
  await page.getByText('This page broke. Your records are untouched.').waitFor();
  await page.getByText('no measuring here').waitFor();
  expect(errors.join()).toContain('no measuring here');

  await page.getByRole('link', { name: 'To the yards' }).click();
  await page.getByRole('heading', { level: 1, name: 'Yards' }).waitFor();
  expect(await page.getByText('This page broke').count()).toBe(0);
  await page.evaluate(() => {
    window.ResizeObserver = (window as unknown as { measured: typeof ResizeObserver }).measured;
  });
  await openColony(page, 'S9');
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await page.getByRole('radio', { name: 'Gentle: 2', exact: true }).click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page
    .getByRole('status')
    .getByText(/^Written: /)
    .waitFor();

  await goTo(page, '#/lines');
  await page.getByRole('heading', { level: 1, name: 'Lines' }).waitFor();
  expect(await page.getByText('This page broke').count()).toBe(0);
  await close();
});
