import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { type KeeperTest, testWithKeeper } from './support/keeper-test.ts';
import { goTo, openColony, openDemo, startOwn, tapper } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const withKeeper = (test: KeeperTest) => testWithKeeper(app, test);

const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true });
const history = (page: Page) => page.getByRole('region', { name: 'What happened' });

describe('an inspection at the hive', () => {
  it('is recorded in eight taps from the colony page, nothing typed', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      const { tap, count } = tapper();
      await tap(page.getByRole('link', { name: 'Record', exact: true }));
      await tap(radio(page, 'Marked'));
      await tap(page.getByRole('button', { name: 'All three' }));
      await tap(radio(page, 'Frames of bees: 10'));
      await tap(radio(page, 'Gentle: 3'));
      await tap(radio(page, 'Calm on the comb: 4'));
      await tap(radio(page, 'Swarming: 4'));
      await tap(save(page));
      expect(count()).toBeLessThanOrEqual(8);
      const first = history(page).getByRole('listitem').first();
      await first.getByText('10 frames of bees').waitFor();
      expect(await first.textContent()).toContain('Marked queen seen. Eggs, young brood, capped brood.');
      expect(await first.textContent()).toContain('Gentle 3, calm 4, swarm tendency 4');
      await page.reload();
      await history(page).getByRole('listitem').first().getByText('calm 4').waitFor();
    }));

  it('never saves the last visit as seen: only what was tapped stands in the entry', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await page.getByRole('link', { name: 'Record', exact: true }).click();
      await page.getByText('last 10, ').waitFor();
      await radio(page, 'Not seen').click();
      await save(page).click();
      const first = history(page).getByRole('listitem').first();
      await first.getByText('Queen not seen.').waitFor();
      expect(await first.textContent()).not.toContain('frames');
    }));

  it('is still there after an interruption, and gone once saved', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await page.getByRole('link', { name: 'Record', exact: true }).click();
      await radio(page, 'Gentle: 2').click();
      await page.reload();
      await page.getByText('Taken up where you left it').waitFor();
      expect(await radio(page, 'Gentle: 2').isChecked()).toBe(true);
      await save(page).click();
      await history(page).waitFor();
      await page.getByRole('link', { name: 'Record', exact: true }).click();
      expect(await radio(page, 'Gentle: 2').isChecked()).toBe(false);
    }));

  it('leads to the next colony by one tap, and is taken back by one', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await page.getByRole('link', { name: 'Record', exact: true }).click();
      await radio(page, 'Virgin').click();
      await page.getByRole('button', { name: /^Save, next: / }).click();
      await page.getByRole('status').getByText('Written: Inspection of S9').waitFor();
      expect(page.url()).toContain('/record/');
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByRole('button', { name: 'Bring back' }).waitFor();
      await openColony(page, 'S9');
      const first = history(page).getByRole('listitem').first();
      expect(await first.textContent()).toContain('Taken back');
    }));

  it('keeps a photograph in the same store', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await page.getByRole('link', { name: 'Record', exact: true }).click();
      await radio(page, 'Marked').click();
      const picture = await page.screenshot({ clip: { x: 0, y: 0, width: 40, height: 40 } });
      await page
        .getByLabel('Photograph')
        .setInputFiles({ name: 'frame.png', mimeType: 'image/png', buffer: picture });
      await page.getByRole('img', { name: 'Photograph 1' }).waitFor();
      await save(page).click();
      await history(page).getByRole('img', { name: 'Photograph 1' }).waitFor();
      await page.reload();
      await history(page).getByRole('img', { name: 'Photograph 1' }).waitFor();
    }));
});

describe('what the records contradict', () => {
  it('is said before saving with the ways out, and saved with a reason that stays beside it', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await page.getByRole('link', { name: 'Queen', exact: true }).click();
      await radio(page, 'A queen put in').click();
      const queens = page.getByLabel('Which queen');
      const other = await queens.locator('option', { hasText: 'Tansy' }).getAttribute('value');
      await queens.selectOption(other);
      await save(page).click();
      await page.getByText('S9 already has a queen by the records.').waitFor();
      await page.getByLabel('It is so all the same, because').fill('mother and daughter lay side by side');
      await save(page).click();
      await history(page).getByText('It is so all the same: mother and daughter lay side by side').waitFor();
    }));
});

describe('a mite count', () => {
  it('shows its limits before it is saved, and beside the entry after', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await page.getByRole('link', { name: 'Mite count' }).click();
      await radio(page, 'Wash').click();
      await page.getByText('Alcohol burns easily').waitFor();
      await page.getByRole('textbox', { name: 'Bees in the sample' }).fill('300');
      await page.getByRole('textbox', { name: 'Mites counted' }).fill('0');
      // 0 of 300, two-sided 95 %: 1 - 0.025^(1/300) = 1.22 % (Clopper-Pearson).
      await page.getByText('below 1.2 %').first().waitFor();
      await save(page).click();
      await history(page).getByText('0 mites on 300 bees, below 1.2 %').first().waitFor();
    }));
});

describe('the winter walk', () => {
  it('records a whole yard in one list, and the lost colony is no longer among the living', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      for (const label of ['1', '2']) {
        await page.getByRole('button', { name: 'Add a colony' }).click();
        await page.getByLabel('Label on the box').fill(label);
        await page.getByLabel('How it began').selectOption('already-here');
        await page.getByRole('button', { name: 'Another day', exact: true }).click();
        await page.getByLabel('How exactly it is known').selectOption('year');
        await page.getByLabel('Since: year').fill(String(new Date().getFullYear() - 1));
        await page.getByRole('button', { name: 'Add the colony' }).click();
        await page.getByRole('link', { name: label, exact: true }).waitFor();
      }
      await page.getByRole('link', { name: /2 outcomes not written down yet/ }).click();
      await radio(page, 'Alive').first().click();
      await radio(page, 'Dead').last().click();
      await radio(page, 'Starved').click();
      await page.getByRole('button', { name: 'Save 2 outcomes' }).click();
      await page.getByText('1 of 2 came through').waitFor();
      await page.getByRole('heading', { name: 'No longer here' }).waitFor();
      expect(await page.getByText('starved').count()).toBe(1);
    }));
});

describe('every kind of entry', () => {
  it('has a form, though no screen of its own asks for it', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await goTo(page, '#/entry');
      await page.getByRole('heading', { name: 'Everything else' }).waitFor();
      const kinds = await page.getByRole('main').getByRole('link').all();
      const addresses = await Promise.all(kinds.map((each) => each.getAttribute('href')));
      expect(addresses.length).toBeGreaterThan(30);
      for (const address of addresses) {
        await goTo(page, address ?? '');
        await page.getByRole('button', { name: 'Save', exact: true }).waitFor();
        await page.getByRole('main').getByText('What is left empty stays unknown.').waitFor();
      }
    }));

  it('says under the field what is missing', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await goTo(page, '#/entry/mating');
      await save(page).click();
      expect(await page.getByText('Fill this in.').count()).toBe(2);
    }));
});
