import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { type KeeperTest, testWithKeeper } from './support/keeper-test.ts';
import { goTo, openColony, openDemo, startOwn } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const withKeeper = (test: KeeperTest) => testWithKeeper(app, test);

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const link = (page: Page, name: string) => page.getByRole('link', { name, exact: true });
const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });
const box = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

/** What lies on top at the middle of each control in sight, where that is not the control itself. */
function covered(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const own = (each: Element, top: Element | null) =>
      top !== null && (each.contains(top) || top.contains(each));
    return [...document.querySelectorAll('main a, main button, main input, main select, main textarea')]
      .filter((each) => each.checkVisibility())
      .map((each) => ({ each, at: each.getBoundingClientRect() }))
      .filter(({ at }) => at.width > 1 && at.bottom <= window.innerHeight && at.top >= 0)
      .flatMap(({ each, at }) => {
        const top = document.elementFromPoint(at.left + at.width / 2, at.top + at.height / 2);
        return own(each, top) || top?.closest('label')?.contains(each) ? [] : [each.outerHTML.slice(0, 90)];
      });
  });
}

async function toTheFoot(page: Page): Promise<void> {
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
  await page.waitForTimeout(200);
}

async function addColony(page: Page, label: string, queen: string): Promise<void> {
  await button(page, 'Add a colony').click();
  await page.getByLabel('Label on the box').fill(label);
  await page.getByLabel('How it began').selectOption('already-here');
  await radio(page, 'Laying').click();
  await page.getByLabel('Her name').fill(queen);
  await button(page, 'Add the colony').click();
  await link(page, label).waitFor();
}

describe('the foot of a phone', () => {
  it('covers no control at the end of a page, with the strip that undoes and without', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      const colony = page.url().split('/').at(-1);
      for (const hash of [
        '#/yards',
        `#/colony/${colony}`,
        `#/split/${colony}`,
        `#/carry/${colony}`,
        '#/settings',
      ]) {
        await goTo(page, hash);
        await page.getByRole('heading', { level: 1 }).waitFor();
        await toTheFoot(page);
        expect(await covered(page), hash).toEqual([]);
      }
      await goTo(page, `#/record/${colony}/note`);
      await page.getByRole('textbox', { name: 'Note' }).fill('Quiet');
      await button(page, 'Save').click();
      await page.getByRole('status').getByText('Written: Note on S9').waitFor();
      await toTheFoot(page);
      expect(await covered(page), 'with the strip').toEqual([]);
      await goTo(page, `#/record/${colony}/inspection`);
      await page.getByText('Tap what you saw').waitFor();
      await toTheFoot(page);
      expect(await covered(page), 'while recording').toEqual([]);
    }));

  it('keeps every place in reach when the type is twice as large', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      for (const place of ['Rounds', 'Yards', 'Lines', 'Choose', 'Exchange', 'Record']) {
        const at = await page
          .getByRole('navigation', { name: 'Places' })
          .getByRole('link', { name: place })
          .boundingBox();
        expect(at && at.x >= 0 && at.x + at.width <= 390, place).toBe(true);
      }
      await openColony(page, 'S9');
      await link(page, 'Inspection').click();
      const five = await radio(page, 'Frames of bees: 10').boundingBox();
      expect(five?.width).toBeGreaterThanOrEqual(44);
    }));
});

describe('the line of the day', () => {
  it('is one row on a small phone, in the demo too', () =>
    withKeeper(async (page) => {
      await page.setViewportSize({ width: 360, height: 740 });
      await openDemo(page);
      const line = page.getByRole('banner');
      const day = await line.getByRole('button', { name: /look at another day/ }).boundingBox();
      const settings = await line.getByRole('link', { name: 'Settings' }).boundingBox();
      expect(settings?.y).toBe(day?.y);
      expect((settings?.x ?? 0) + (settings?.width ?? 999)).toBeLessThanOrEqual(360);
    }));
});

describe('an interruption', () => {
  it('loses nothing of a split laid out on the bench', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await link(page, 'Split').click();
      await button(page, 'Lift the old queen, Ford').click();
      await box(page, 'New box').getByRole('button', { name: 'Set down here' }).click();
      await page.getByLabel('Label on the new box').fill('S9 nucleus');
      await page.reload();
      await page.getByText('Taken up where you left it').waitFor();
      await box(page, 'New box S9 nucleus').getByText('Has the old queen, Ford.').waitFor();
      await button(page, 'Write the split down').click();
      await page.getByRole('status').getByText('Written: Split of S9').waitFor();
      await link(page, 'Split').click();
      await page.getByText('Nobody known heads this colony.').waitFor();
      expect(await page.getByText('Taken up where you left it').count()).toBe(0);
    }));

  it('loses nothing of a colony being entered', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await button(page, 'Add a colony').click();
      await page.getByLabel('Label on the box').fill('7');
      await page.reload();
      await button(page, 'Add a colony').click();
      await page.getByText('Taken up where you left it').waitFor();
      expect(await page.getByLabel('Label on the box').inputValue()).toBe('7');
    }));
});

describe('a queen event being told', () => {
  it('is still there after an interruption, and gone once saved', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await link(page, 'Record').click();
      await link(page, 'Queen').click();
      await radio(page, 'Marked').click();
      await radio(page, 'Green').click();
      await page.getByLabel('Number on the mark').fill('17');
      await page.reload();
      await page.getByText('Taken up where you left it').waitFor();
      expect(await radio(page, 'Marked').isChecked()).toBe(true);
      expect(await radio(page, 'Green').isChecked()).toBe(true);
      expect(await page.getByLabel('Number on the mark').inputValue()).toBe('17');
      await button(page, 'Save').click();
      await page
        .getByRole('status')
        .getByText(/^Written: Ford of S9 marked/)
        .waitFor();
      await link(page, 'Record').click();
      await link(page, 'Queen').click();
      await radio(page, 'Marked').waitFor();
      expect(await page.getByText('Taken up where you left it').count()).toBe(0);
      expect(await radio(page, 'Marked').isChecked()).toBe(false);
    }));

  it('of one kind leaves nothing behind in another', () =>
    withKeeper(async (page) => {
      await openDemo(page);
      await openColony(page, 'S9');
      await link(page, 'Record').click();
      await link(page, 'Queen').click();
      await radio(page, 'Named').click();
      await page.getByLabel('Her name').fill('Not hers');
      await radio(page, 'Another queen found').click();
      expect(await page.getByLabel('Her name').inputValue()).toBe('');
      await button(page, 'Save').waitFor();
    }));
});

describe('a row of hives', () => {
  it('is entered one after the other, the next number offered', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await button(page, 'Add a colony').click();
      await page.getByLabel('Label on the box').fill('1');
      await page.getByLabel('How it began').selectOption('already-here');
      await button(page, 'Add, then the next').click();
      await page.getByRole('status').getByText('Written: Colony 1').waitFor({ state: 'attached' });
      expect(await page.getByLabel('Label on the box').inputValue()).toBe('2');
      expect(await page.getByLabel('How it began').inputValue()).toBe('already-here');
      await button(page, 'Add the colony').click();
      await page.getByText('2 living colonies.').waitFor();
    }));

  it('never loses a year that cannot be read', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await button(page, 'Add a colony').click();
      await page.getByLabel('Label on the box').fill('1');
      await page.getByLabel('How it began').selectOption('already-here');
      await radio(page, 'Laying').click();
      await page.getByLabel('When she emerged').fill('24');
      await button(page, 'Add the colony').click();
      await page.getByText('Write a year, a month or a day').waitFor();
      await page.getByLabel('When she emerged').fill('2024');
      await button(page, 'Add the colony').click();
      await link(page, '1').click();
      await page.getByText('emerged 2024').waitFor();
    }));
});

describe('what stands against saving', () => {
  it('goes once the frame is taken back out, and a reason for it goes with it', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await addColony(page, '1', 'Alma');
      await addColony(page, '2', 'Birk');
      await openColony(page, '1');
      await link(page, 'Carry frames').click();
      await page.getByText('Nothing is in another box yet.').waitFor();
      await button(page, 'Take a frame of queen cells').click();
      await box(page, '2').getByRole('button', { name: 'Set down here' }).click();
      await button(page, 'Write it down').click();
      await page.getByText('2 already has a queen by the records.').waitFor();
      await page.getByLabel('It is so all the same, because').fill('trying');
      await button(page, 'Take a frame of queen cells back out').click();
      await page.getByText('2 already has a queen by the records.').waitFor({ state: 'detached' });
      await button(page, 'Take a frame of queen cells').click();
      await box(page, '2').getByRole('button', { name: 'Set down here' }).click();
      await button(page, 'Write it down').click();
      await page.getByText('2 already has a queen by the records.').waitFor();
      expect(await page.getByLabel('It is so all the same, because').inputValue()).toBe('');
    }));

  it('tells which box a queen leaves, and that an ended colony has ended', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await addColony(page, '1', 'Alma');
      await addColony(page, '2', 'Birk');
      await openColony(page, '2');
      await link(page, 'Queen').click();
      await radio(page, 'A queen put in').click();
      await page.getByLabel('Which queen').selectOption({ label: 'Alma, in 1' });
      await page.getByText('By the records she heads 1, which is then without a queen.').waitFor();
      await openColony(page, '1');
      const ended = page.url().split('/').at(-1);
      await button(page, 'It has ended').click();
      await radio(page, 'Starved').click();
      await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      for (const hash of [`#/split/${ended}`, `#/record/${ended}`]) {
        await goTo(page, hash);
        await page.getByRole('main').getByText('starved.').waitFor();
        await page.getByRole('main').getByRole('link', { name: 'If that is wrong, take it back' }).waitFor();
      }
    }));
});

describe('two queens expected in one box', () => {
  it('are told apart by what they come from', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await addColony(page, '1', 'Alma');
      await openColony(page, '1');
      await link(page, 'Split').click();
      await button(page, 'Take a frame of eggs and young brood').click();
      await box(page, 'New box 2').getByRole('button', { name: 'Set down here' }).click();
      await button(page, 'Write the split down').click();
      await page.getByRole('status').getByText('Written: Split of 1').waitFor();
      await link(page, 'Carry frames').click();
      await button(page, 'Take a frame of queen cells').click();
      await box(page, '2').getByRole('button', { name: 'Set down here' }).click();
      await button(page, 'Write it down').click();
      await page.getByRole('status').getByText('Written: Frames carried from 1').waitFor();
      await openColony(page, '2');
      await link(page, 'Queen').click();
      await page.getByText('Raised in a split, ').waitFor();
      await page.getByText('From cells carried over, ').waitFor();
    }));
});

describe('a wait before honey', () => {
  it('that has not begun is said where honey is written down', () =>
    withKeeper(async (page) => {
      await startOwn(page, 'Tester', 'Home');
      await addColony(page, '1', 'Alma');
      await openColony(page, '1');
      const colony = page.url().split('/').at(-1);
      await link(page, 'Treatment').click();
      await page.getByLabel('Active ingredient or measure').selectOption('thymol');
      await page.getByRole('textbox', { name: 'Wait before honey' }).fill('14');
      await button(page, 'Save').click();
      await page.getByRole('status').getByText('Written: Treatment of 1').waitFor();
      await goTo(page, `#/record/${colony}/harvest`);
      await page.getByText('Thymol is still in; its wait of 14 days begins when it is out.').waitFor();
    }));
});
