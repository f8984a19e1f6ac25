import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { chooseInDemo, openQuestion, order, overflow, planned, rowOf, whom } from './support/choose.ts';
import { goTo } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

/** Long enough for a shared machine; a test that needs less does not wait. */
const SLOW = 90_000;

const weight = (page: Page, trait: string): Locator => page.getByRole('slider', { name: trait, exact: true });

/** Leaves out every trait but one. */
async function weighOnly(page: Page, trait: string): Promise<void> {
  for (const slider of await page.getByRole('slider', { name: /^(?!Place on the curve)/ }).all()) {
    await slider.fill('0');
  }
  await weight(page, trait).fill('5');
}

describe('whom to breed from', () => {
  it('follows the weights at once, and comes back to the order suggested', async () => {
    const { page, errors, close } = await chooseInDemo(app, { desk: true });
    const suggested = await order(page);
    expect(suggested[0]).toBe('Brook');
    await weighOnly(page, 'Calm on the comb');
    // Ford and Tansy are the calm ones of the demo: `npm run -s damline -- rank samples/demo-yard.json`, column calm.
    await expect
      .poll(() => order(page).then((names) => names.slice(0, 2)), { timeout: SLOW })
      .toEqual(['Ford', 'Tansy']);
    await page.getByText('For her: calm on the comb.').first().waitFor();
    await weight(page, 'Calm on the comb').fill('0');
    await page.getByText('Every trait is left out, so nothing ranks the queens.').first().waitFor();
    await page.getByRole('button', { name: 'As suggested' }).click();
    await expect.poll(() => order(page), { timeout: SLOW }).toEqual(suggested);
    expect(errors).toEqual([]);
    await close();
  });

  it('keeps the weights that were moved on a phone, with the order in sight above them', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    await page.getByRole('button', { name: 'What counts' }).click();
    const sheet = page.getByRole('dialog');
    const first = sheet.getByRole('list', { name: 'Best first' }).getByRole('listitem').first();
    await expect.poll(() => first.textContent()).toContain('Brook');
    await weighOnly(page, 'Calm on the comb');
    await expect.poll(() => first.textContent()).toContain('Ford');
    await sheet.getByRole('button', { name: 'Close' }).click();
    // Leaving the screen writes what a hand at rest would have written a moment later.
    await goTo(page, '#/yards');
    await page.getByRole('heading', { level: 1, name: 'Yards' }).waitFor();
    await page.waitForTimeout(1000);
    await goTo(page, '#/choose');
    await page.reload();
    await expect.poll(() => order(page).then(([name]) => name), { timeout: SLOW }).toBe('Ford');
    expect(errors).toEqual([]);
    await close();
  });

  it('says who cannot be ranked, because she was compared with too few', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    await page.getByRole('heading', { name: /^Not ranked: no record of theirs/ }).waitFor();
    expect((await order(page)).slice(-2)).toEqual(['Sable', 'Umber']);
    await rowOf(page, 'Umber').locator('> summary').click();
    await page.getByText('She is not ranked: no record of hers stands in').waitFor();
    expect(errors).toEqual([]);
    await close();
  });

  it('opens a score into its traits, their records beside their neighbours, the formula and its source', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    const gale = rowOf(page, 'Gale');
    await gale.locator('> summary').click();
    await gale.getByText(/truly among the best 3 of 11 is \d\sin\s10/).waitFor();
    await gale.getByText('Came through winter').click();
    await gale.getByText(/\+\d+ winters survived in 100/).waitFor();
    await gale.getByText(/8 of 13 came through/).waitFor();
    const winter = gale.locator('li > details').filter({ hasText: /^Came through winter/ });
    await winter.getByText('How it is worked out').click();
    await winter.getByText(/record = group \+ workers’ part/).waitFor();
    await winter.getByText(/^Assumed shares of it, scaled to the spread of your own records/).waitFor();
    expect(await overflow(page)).toBe(0);
    await gale.getByText('Leave her out of the choice').click();
    await gale.locator('> summary').getByText('left out by you').waitFor();
    expect(errors).toEqual([]);
    await close();
  });
});

describe('how many daughters, flown where', () => {
  it('shares out as many as are wanted, and more dams come in along the curve', async () => {
    const { page, errors, close } = await chooseInDemo(app, { desk: true });
    const question = await openQuestion(page, 'How many daughters from whom?');
    await question.getByText('12 daughters from 5 queens; 2 of 4 living lines go on.').waitFor();
    await question.getByRole('button', { name: 'Daughters wanted: more' }).click();
    await question.getByText(/^13 daughters from/).waitFor({ timeout: SLOW });
    const curve = question.getByRole('slider', { name: /^Place on the curve/ });
    await curve.fill('0');
    await question.getByText(/; 4 of 4 living lines go on\.$/).waitFor({ timeout: SLOW });
    await question.getByText('No line is left without a daughter.').waitFor();
    await question.getByText('The curve as a table').click();
    expect(await question.getByRole('row').count()).toBeGreaterThan(10);
    expect(errors).toEqual([]);
    await close();
  });

  it('refuses a limit that no choice can keep, and says by how much', async () => {
    const { page, errors, close } = await chooseInDemo(app, { desk: true });
    const question = await openQuestion(page, 'How many daughters from whom?');
    await question.getByRole('spinbutton', { name: /^Inbreeding of their brood, at most/ }).fill('0');
    await page.keyboard.press('Enter');
    await question.getByText('No choice meets these limits', { exact: true }).waitFor({ timeout: SLOW });
    await question.getByRole('button', { name: 'no limit' }).click();
    await planned(page);
    expect(errors).toEqual([]);
    await close();
  });

  it('keeps the dams under a limit of kinship, and shows the rest of the curve as over it', async () => {
    const { page, errors, close } = await chooseInDemo(app, { desk: true });
    const question = await openQuestion(page, 'How many daughters from whom?');
    await planned(page);
    const curve = question.getByRole('slider', { name: /^Place on the curve/ });
    const gain = question.getByRole('button', { name: 'more gain ›' });
    const kinship = async () =>
      Number(/kinship (\d+)/.exec((await curve.getAttribute('aria-valuetext')) ?? '')?.[1]);
    await curve.fill((await curve.getAttribute('max')) ?? '');
    await expect.poll(kinship, { timeout: SLOW }).toBeGreaterThan(20);
    await question.getByRole('spinbutton', { name: /^Kinship between their dams, at most/ }).fill('17');
    await page.keyboard.press('Enter');
    await expect.poll(kinship, { timeout: SLOW }).toBe(17);
    expect(await gain.isDisabled()).toBe(true);
    await question.getByText('The curve as a table').click();
    await question
      .getByText(/, over your limit$/)
      .first()
      .waitFor();
    await question.getByRole('spinbutton', { name: /^Kinship between their dams, at most/ }).fill('2');
    await page.keyboard.press('Enter');
    await question
      .getByRole('alert')
      .getByText(/^The limit of 2\s% kinship between the dams cannot be met/)
      .waitFor({ timeout: SLOW });
    expect(errors).toEqual([]);
    await close();
  });

  it('names the yard where daughters would meet their brothers', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    const question = await openQuestion(page, 'Do the virgins meet their own brothers?');
    await question
      .getByText('Close kin would meet: daughters of Brook, Beck and Bora at High Fallow.')
      .waitFor();
    const bora = question.getByRole('row').filter({ has: page.getByRole('rowheader', { name: /Bora/ }) });
    await bora.getByText('brothers 1 in 4').waitFor();
    expect(await overflow(page)).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('what if', () => {
  it('tells inbreeding, living brood and merit of a mating, and keeps it beside the next', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    const question = await openQuestion(page, 'What if?');
    await question.getByText(/Her brood is expected/).waitFor({ timeout: SLOW });
    await question.getByText('A daughter of Brook flown at Sallow Bank').waitFor();
    await question
      .getByText(/^\+\d\.\d$/)
      .first()
      .waitFor();
    await question.getByRole('button', { name: 'Keep it in sight' }).click();

    await question.getByLabel('Bora', { exact: true }).check();
    await question
      .getByText(/^A daughter of Brook flown at Sallow Bank, with drones of Bora moved in$/)
      .waitFor();
    await question.getByText(/Her brood is expected/).waitFor({ timeout: SLOW });

    await question.getByLabel('by insemination').check();
    await question.getByText('Choose whose drones give the semen.').waitFor();
    await question.getByLabel('Brook', { exact: true }).check();
    // A daughter and her brothers: a quarter and what the parents add (Crow & Roberts 1950, from memory).
    await question.getByText(/^(2[5-9]|3\d)\s% inbred$/).waitFor({ timeout: SLOW });
    await question.getByText(/^A daughter of Brook flown at Sallow Bank$/).waitFor();
    expect(await overflow(page)).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('where it leads', () => {
  it('plays a way of breeding out into bands, with the figures as a table', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    const question = await openQuestion(page, 'Where does it lead?');
    await question
      .getByText(/^To start with, each to the nearest five percent: of \d+ queens raised/)
      .waitFor();
    await question.getByLabel('Seasons', { exact: true }).fill('3');
    await question.getByRole('button', { name: 'Play it out' }).click();
    await question
      .getByText(/^After 3 seasons: gain .+ inbreeding .+ sex alleles .+ lines/)
      .waitFor({ timeout: SLOW });
    await question.getByText('The figures as a table').click();
    expect(await question.getByRole('row').count()).toBe(5);
    expect(await overflow(page)).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  it('runs beside the page, stops when told, and says what is too much to play', async () => {
    const { page, errors, close } = await chooseInDemo(app, { desk: true });
    const question = await openQuestion(page, 'Where does it lead?');
    await question.getByLabel('Seasons', { exact: true }).fill('30');
    await question.getByLabel('Colonies kept', { exact: true }).fill('95');
    // A stock that large, bred from so many, plays for half a minute or more.
    await question.getByLabel('Queens bred from each season', { exact: true }).fill('90');
    await question.getByRole('button', { name: 'Play it out' }).click();
    await question.getByRole('progressbar', { name: 'Histories played' }).waitFor();
    expect(page.workers().length).toBe(1);
    // The page answers while it plays: a weight moves the list.
    await weighOnly(page, 'Calm on the comb');
    await expect.poll(() => order(page).then(([name]) => name), { timeout: SLOW }).toBe('Ford');
    await question.getByRole('button', { name: 'Stop' }).click();
    await question.getByRole('progressbar').waitFor({ state: 'detached' });
    await question.getByText('Gain, inbreeding, sex alleles and lines will stand here.').waitFor();

    await question.getByLabel('Colonies kept', { exact: true }).fill('200');
    await question.getByRole('button', { name: 'Play it out' }).click();
    await question.getByText('These settings cannot be played').waitFor({ timeout: SLOW });
    await question.getByText(/^Colonies kept: 200\. With 30 seasons that is more than 6000/).waitFor();
    expect(errors).toEqual([]);
    await close();
  });
});

describe('what it rests on', () => {
  it('shows what was set aside and why, and that the records are too few for variances of their own', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    const question = await openQuestion(page, 'What does it rest on?');
    const mites = question.locator('li > details').filter({ hasText: /^Few mites/ });
    await mites.locator('> summary').click();
    await mites.getByText(/^Published shares of it, scaled to the spread of your own records/).waitFor();
    await mites.getByText(/^\d+ set aside: counted while a treatment acted$/).click();
    await question
      .getByRole('link', { name: /\d{4}$/ })
      .first()
      .waitFor();
    await question.getByRole('button', { name: 'Estimate from my records' }).click();
    await question
      .getByText(/^Too few records to tell: of at least 60 queens, 150 records/)
      .waitFor({ timeout: SLOW });
    expect(await overflow(page)).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('why her and not the other', () => {
  it('stands three queens side by side, and says whom the records cannot tell apart', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    await page.getByRole('button', { name: 'Compare' }).click();
    await page.getByRole('dialog').getByLabel('Ford', { exact: true }).check();
    await page.getByRole('button', { name: 'Side by side' }).click();
    await page.getByRole('heading', { level: 1, name: 'Side by side' }).waitFor();
    await page
      .getByText('Brook, Gale and Ford cannot be told apart on these records.')
      .waitFor({ timeout: SLOW });
    const kinship = page
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: 'Kinship with the others' }) });
    expect(await kinship.getByRole('cell').count()).toBe(3);
    expect(await overflow(page)).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('the sheet to take along', () => {
  it('says on one page whom, how many, where, why and what would be lost', async () => {
    const { page, errors, close } = await chooseInDemo(app);
    await page.getByRole('link', { name: 'On one page' }).click();
    await page.getByRole('heading', { level: 1, name: 'Daughters to raise, 11 June 2026' }).waitFor();
    const sheet = page.getByRole('article');
    expect(await sheet.getByRole('listitem').count()).toBe(5);
    await sheet
      .getByText(/^Fly at Sallow Bank: brood \d+\s% inbred/)
      .first()
      .waitFor();
    await sheet.getByText('Without a daughter: the lines of Linden and Vagrant.').waitFor();
    expect(await overflow(page)).toBe(0);
    await page.emulateMedia({ media: 'print' });
    await sheet.getByText('Notes', { exact: true }).waitFor();
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('for everybody', () => {
  it('is reached by keyboard alone: a score opened, a weight moved, the curve walked', async () => {
    const { page, errors, close } = await chooseInDemo(app, { desk: true });
    await rowOf(page, 'Brook').locator('> summary').focus();
    await page.keyboard.press('Enter');
    await rowOf(page, 'Brook').getByRole('link', { name: 'Her page' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('details')?.open)).toBe(true);

    const hygienic = weight(page, 'Hygienic');
    await hygienic.focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => hygienic.getAttribute('aria-valuetext')).toBe('1½ of 5');

    await planned(page);
    const curve = page.getByRole('slider', { name: /^Place on the curve/ });
    const before = await curve.getAttribute('aria-valuetext');
    await curve.focus();
    await page.keyboard.press('Home');
    await expect.poll(() => curve.getAttribute('aria-valuetext'), { timeout: SLOW }).not.toBe(before);
    expect(await curve.getAttribute('aria-valuetext')).toMatch(/^gain .+, kinship \d+\s%: \d+ from /);
    expect(errors).toEqual([]);
    await close();
  });

  for (const look of [
    { desk: false, dark: true },
    { desk: true, dark: false },
  ]) {
    it(`has no fault that can be told by rule, all opened, ${look.desk ? 'at a desk' : 'on a phone in the dark'}`, async () => {
      const { page, errors, close } = await chooseInDemo(app, look);
      await rowOf(page, 'Norther').locator('> summary').click();
      await whom(page).getByText('Came through winter').first().click();
      for (const title of [
        'How many daughters from whom?',
        'Do the virgins meet their own brothers?',
        'What if?',
        'Where does it lead?',
        'What does it rest on?',
      ]) {
        await openQuestion(page, title);
      }
      await page.getByText(/Her brood is expected/).waitFor({ timeout: SLOW });
      await page.getByRole('button', { name: 'Play it out' }).click();
      await page.getByText(/^After 10 seasons/).waitFor({ timeout: SLOW });
      expect(await overflow(page)).toBe(0);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
      expect(errors).toEqual([]);
      await close();
    });
  }
});
