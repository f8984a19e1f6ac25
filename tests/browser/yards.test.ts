import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, openColony, openDemo, startOwn } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

describe('the first page', () => {
  it('offers three ways in, and keeps the demo apart from the keeper’s own records', async () => {
    const { page, errors, close } = await app.newKeeper();
    await openDemo(page);
    await page.getByText('Demo yard').waitFor();
    await page.getByRole('button', { name: 'Leave' }).click();
    await startOwn(page, 'Tester', 'Home');
    await page.getByText('No living colony yet.').waitFor();
    expect(await page.getByText('Demo yard').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  it('asks for a name and a yard, under the field that lacks it', async () => {
    const { page, close } = await app.newKeeper();
    await page.getByRole('button', { name: 'Start my own records' }).click();
    await page.getByRole('button', { name: 'Open the yard' }).click();
    await page.getByText('Give the yard a name.').waitFor();
    await close();
  });
});

describe('looking back', () => {
  it('shows the yards as they stood, and says so until the keeper comes back to today', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    const now = await page.getByText(/\d+ living colonies in/).textContent();
    await page.getByRole('button', { name: /look at another day/ }).click();
    await page.getByLabel('Day', { exact: true }).fill('2021-06-01');
    await page.getByText('As it stood on Tue 1 June 2021').waitFor();
    const then = await page.getByText(/\d+ living colonies in/).textContent();
    expect(then).not.toBe(now);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByText(now ?? '').waitFor();
    await close();
  });
});

describe('a box of a colony', () => {
  it('is relabelled, moved and ended, each step in its history', async () => {
    const { page, errors, close } = await app.newKeeper();
    await openDemo(page);
    await openColony(page, 'P2');
    await page.getByRole('button', { name: 'New label' }).click();
    await page.getByLabel('New label on the box').fill('P2 red');
    await page.getByRole('button', { name: 'Save the label' }).click();
    await page.getByRole('heading', { level: 1, name: 'P2 red' }).waitFor();
    await page.getByRole('button', { name: 'Move it' }).click();
    await page.getByLabel('To yard').selectOption({ label: 'Sallow Bank' });
    await page.getByRole('button', { name: 'Save the move' }).click();
    await page.getByText('Moved to Sallow Bank').first().waitFor();
    await page.getByRole('button', { name: 'It has ended' }).click();
    await page.getByRole('radio', { name: 'Robbed out' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
    await page.getByText('robbed out').first().waitFor();
    expect(errors).toEqual([]);
    await close();
  });

  it('lets an entry be corrected and taken back, both readable afterwards', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    await openColony(page, 'S9');
    await page.getByRole('link', { name: 'More' }).click();
    await page.getByRole('link', { name: 'Harvest', exact: true }).first().click();
    await page.getByRole('textbox', { name: 'Honey' }).fill('90');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('90 kg of honey taken.').waitFor();
    await page.getByRole('region', { name: 'What happened' }).getByRole('link').first().click();
    await page.getByRole('button', { name: 'Correct it' }).click();
    await page.getByRole('textbox', { name: 'Honey (kg)' }).fill('9');
    await page.getByRole('button', { name: 'Save the correction' }).click();
    await openColony(page, 'S9');
    await page.getByText('Corrected. Before: 90 kg of honey taken.').waitFor();
    await page.getByRole('region', { name: 'What happened' }).getByRole('link').first().click();
    await page.getByLabel('Why take it back').fill('from another box');
    await page.getByRole('button', { name: 'Take it back' }).click();
    await page.getByRole('button', { name: 'Bring it back' }).waitFor();
    await openColony(page, 'S9');
    await page.getByText('Taken back: from another box.').waitFor();
    await close();
  });
});

describe('every screen of the hive', () => {
  const hashes = ['#/yards', '#/record', '#/entry/inspection', '#/settings'];

  it.each([
    { desk: false, dark: false },
    { desk: true, dark: true },
  ])('passes the rules of accessibility, on a phone or a desk, light or dark: %o', async (look) => {
    const { page, close } = await app.newKeeper(look);
    await openDemo(page);
    const found: string[] = [];
    const examine = async () => {
      await page.waitForTimeout(300);
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'best-practice'])
        .analyze();
      found.push(...violations.map(({ id, nodes }) => `${page.url()} ${id}: ${nodes[0]?.html}`));
    };
    for (const hash of hashes) {
      await goTo(page, hash);
      await examine();
    }
    await openColony(page, 'S5');
    await examine();
    await page.getByRole('link', { name: 'Inspection', exact: true }).click();
    await examine();
    expect(found).toEqual([]);
    await close();
  });

  it('has no target smaller than 44 pixels where hands wear gloves', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    await openColony(page, 'S9');
    await page.getByRole('link', { name: 'Record', exact: true }).click();
    await page.getByRole('radio', { name: 'Marked', exact: true }).waitFor();
    const small = await page.getByRole('main').evaluate((main) =>
      [...main.querySelectorAll('a, button, input, select, textarea')]
        .map((each) => ({ box: each.getBoundingClientRect(), html: each.outerHTML.slice(0, 80) }))
        .filter(
          ({ box, html }) => box.width > 0 && (box.width < 44 || box.height < 44) && !html.includes('file'),
        )
        .map(({ box, html }) => `${Math.round(box.width)} x ${Math.round(box.height)}: ${html}`),
    );
    expect(small).toEqual([]);
    await close();
  });

  it('fits a phone without sliding sideways', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    for (const hash of [...hashes, '#/rounds']) {
      await goTo(page, hash);
      await page.waitForTimeout(200);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(over, hash).toBeLessThanOrEqual(0);
    }
    await close();
  });
});
