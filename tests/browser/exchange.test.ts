import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, openDemo } from './support/steps.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const SHEET = join(ROOT, 'samples/spreadsheets/winters-and-scores.csv');
/** The demo yard is a file of records like any other; here a keeper takes it in as their own. */
const RECORDS = join(ROOT, 'samples/demo-yard.json');

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const chooseFile = (page: Page, path: string) => page.locator('input[type=file]').setInputFiles(path);

/** Takes a file in. On a device on which nothing was written yet, the app asks whose it is. */
async function takeIn(page: Page, path: string, asked?: 'mine' | 'theirs'): Promise<void> {
  await goTo(page, '#/exchange');
  await chooseFile(page, path);
  if (asked) await page.getByRole('radio', { name: asked === 'mine' ? /^Mine/ : /^Of another/ }).check();
  await button(page, /^Take in [\d,]+ entr/).click();
  await page.getByText('Undo takes all of it back').waitFor();
}

async function saveRecords(page: Page): Promise<string> {
  await goTo(page, '#/exchange');
  const saving = page.waitForEvent('download');
  await button(page, 'Save the file').click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/^records-\d{4}-\d\d-\d\d\.damline\.json$/);
  return readFileSync(await download.path(), 'utf8');
}

interface Told {
  readonly id: string;
  readonly kind: string;
  readonly [field: string]: unknown;
}
interface ToldFile {
  readonly entries: readonly Told[];
  readonly photos?: readonly unknown[];
}

const told = (text: string) => JSON.parse(text) as ToldFile & Record<string, unknown>;
const records = () => told(readFileSync(RECORDS, 'utf8'));

/** Writes a file beside the tests' own, each entry on a line of its own, and says where. */
function fileOf(name: string, file: ToldFile & Record<string, unknown>): string {
  const path = join(tmpdir(), `exchange-test-${process.pid}-${name}.damline.json`);
  const { entries, ...head } = file;
  const lines = entries.map((entry) => JSON.stringify(entry)).join(',\n');
  writeFileSync(path, `${JSON.stringify(head).slice(0, -1)},"entries":[\n${lines}\n]}\n`);
  return path;
}

describe('all records as a file', () => {
  it('bring the same records back after everything was deleted, photographs too', async () => {
    const { page, errors, close } = await app.newKeeper();
    const photo = {
      id: '019f0000-0000-7000-8000-0000000000f0',
      type: 'image/png',
      base64: 'iVBORw0KGgo=',
    };
    const base = records();
    const notes = base.entries.map((entry) =>
      entry.kind === 'note' ? { ...entry, photos: [photo.id] } : entry,
    );
    await takeIn(page, fileOf('photo', { ...base, entries: notes, photos: [photo] }), 'mine');
    const first = told(await saveRecords(page));
    expect(first.entries).toHaveLength(base.entries.length);
    expect(first.photos).toEqual([photo]);
    await page.getByText('all of it was saved to a file').waitFor();

    await page.getByLabel(/^With 1 photograph/).uncheck();
    expect(told(await saveRecords(page)).photos).toBeUndefined();

    await button(page, 'Delete all records here').click();
    const deletes = button(page, /^Delete [\d,]+ entries/);
    expect(await deletes.isDisabled()).toBe(true);
    await page.getByLabel('Write delete to go on').fill('delete');
    await deletes.click();
    await page.getByText('Bring in what you have').waitFor();
    await takeIn(page, fileOf('again', first), 'mine');
    const again = told(await saveRecords(page));
    expect(again.entries).toEqual(first.entries);
    expect(again.photos).toEqual(first.photos);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('a messy table', () => {
  it('is looked through, put right and taken in as one action that one undo takes back', async () => {
    const { page, errors, close } = await app.newKeeper({ desk: true });
    await goTo(page, '#/exchange');
    await page.getByLabel('Or paste cells of a spreadsheet').fill(readFileSync(SHEET, 'utf8'));
    await button(page, 'Read this').click();
    const row = (line: number) => page.getByRole('row', { name: new RegExp(`^Row ${line}\\b`) });
    await row(7).getByText('There is no such day').waitFor();
    await row(7).getByText('31.4.26').last().waitFor();
    await row(4).getByText('A percentage says nothing').waitFor();

    await page.getByLabel(/Honig kg/).selectOption({ label: 'Leave out' });
    await row(3).getByText('kg of honey').waitFor({ state: 'detached' });
    await page.getByLabel('At which yard do the boxes of this table stand?').fill('Hill');
    await page.getByLabel('At which yard do the boxes of this table stand?').blur();
    await page.getByLabel('Leave row 9 out').check();
    await row(9).getByText('Left out by you').waitFor();
    await page.getByLabel('Row 7, column M anew').fill('30.4.26');
    await page.getByLabel('Row 7, column M anew').blur();
    await row(7).getByText('Column M was changed here.').waitFor();

    await button(page, /^Take in 6 rows/).click();
    await page.getByText('Write a name; initials will do.').waitFor();
    await page.getByLabel('Your name').fill('Ada');
    await button(page, /^Take in 6 rows/).click();
    await page.getByText('Undo takes all of it back').waitFor();

    await goTo(page, '#/yards');
    await page.getByRole('heading', { name: 'Hill' }).waitFor();
    await page.getByRole('link', { name: 'A4', exact: true }).waitFor();
    await button(page, 'Undo').click();
    await page.getByRole('link', { name: 'A4', exact: true }).waitFor({ state: 'detached' });
    expect(errors).toEqual([]);
    await close();
  });
});

describe('a file that is not as it was written', () => {
  it('is refused whole, with the line of the entry that breaks its rules', async () => {
    const { page, errors, close } = await app.newKeeper();
    const base = records();
    const at = base.entries.findIndex((entry) => entry.kind === 'inspection' && entry.gentle !== undefined);
    const entries = base.entries.map((entry, index) => (index === at ? { ...entry, gentle: 9 } : entry));
    await goTo(page, '#/exchange');
    await chooseFile(page, fileOf('rules', { ...base, entries }));
    await page.getByRole('heading', { name: 'This cannot be taken in' }).waitFor();
    // The head of the file stands on its first line, so entry 0 stands on line 2.
    await page.getByText(new RegExp(`line ${at + 2}, field gentle`)).waitFor();
    await button(page, 'Put it away').click();
    await page.getByText('Bring in what you have').waitFor();
    expect(errors).toEqual([]);
    await close();
  });

  it('leaves out, with its line, an entry that tells otherwise than ours, and ours stands', async () => {
    const { page, errors, close } = await app.newKeeper();
    await takeIn(page, RECORDS, 'theirs');
    const before = told(await saveRecords(page)).entries;
    const base = records();
    const at = base.entries.findIndex((entry) => entry.kind === 'inspection' && entry.gentle === 4);
    const entries = base.entries.map((entry, index) => (index === at ? { ...entry, gentle: 1 } : entry));
    await chooseFile(page, fileOf('altered', { ...base, entries }));
    await page.getByText('1 entry was altered and stays out').waitFor();
    await page.getByText(new RegExp(`line ${at + 2}$`)).waitFor();
    await button(page, 'Put the file away').click();
    expect(told(await saveRecords(page)).entries).toEqual(before);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('two corrections of one entry', () => {
  it('are shown side by side and settled by the keeper', async () => {
    const { page, errors, close } = await app.newKeeper({ desk: true });
    const base = records();
    const told2 = base.entries.filter((entry) => entry.kind === 'keeper-named');
    const [one, two] = told2.map((entry) => entry.keeper as string);
    const entry = base.entries.findLast(
      (each) => each.kind === 'inspection' && each.framesOfBees !== undefined,
    );
    const correction = (last: string, by: string | undefined, framesOfBees: number) => ({
      ...entry,
      id: `019f0000-0000-7000-8000-0000000000${last}`,
      action: `019f0000-0000-7000-8000-0000000001${last}`,
      kind: 'inspection',
      recordedBy: by,
      recordedAt: `2026-06-12T1${framesOfBees - 10}:00:00.000Z`,
      supersedes: entry?.id,
      framesOfBees,
    });
    await takeIn(
      page,
      fileOf('mine', { ...base, entries: [...base.entries, correction('01', one, 11)] }),
      'mine',
    );
    await chooseFile(page, fileOf('theirs', { ...base, entries: [correction('02', two, 12)] }));
    await page.getByText('You disagree on 1 entry.').waitFor();
    await page.getByText('Counts now: written last').waitFor();
    await button(page, 'Take in 1 entry').click();
    await page.getByRole('heading', { name: 'What you disagree on' }).waitFor();
    const mine = page.getByRole('listitem').filter({ hasText: '11 frames of bees' });
    await mine.getByRole('button', { name: 'This one counts' }).click();
    await page.getByRole('heading', { name: 'What you disagree on' }).waitFor({ state: 'detached' });
    const saved = told(await saveRecords(page)).entries;
    // Ours as it was written, and the correction that settles it.
    const eleven = saved.filter((each) => each.framesOfBees === 11 && each.supersedes !== undefined);
    expect(eleven).toHaveLength(2);
    await button(page, 'Undo').click();
    await page.getByRole('heading', { name: 'What you disagree on' }).waitFor();
    expect(errors).toEqual([]);
    await close();
  });
});

describe('the pedigree of a queen', () => {
  it('is shown as a card, and leaves as a file that another keeper takes in', async () => {
    const { page, errors, close } = await app.newKeeper();
    await openDemo(page);
    await goTo(page, '#/exchange');
    await page.getByRole('radio', { name: 'One queen' }).check();
    await page.getByLabel('Which queen').fill('sab');
    await button(page, /Sable/).click();
    const card = page.getByRole('article', { name: 'Pedigree card of Sable' });
    await card.getByText('All 3 steps of her dam line are firm.').waitFor();
    await page.getByRole('radio', { name: 'File of records' }).check();
    const saving = page.waitForEvent('download');
    await button(page, 'Save the file').click();
    const download = await saving;
    expect(download.suggestedFilename()).toMatch(/^queen-sable-/);
    const path = await download.path();
    const other = await app.newKeeper();
    await takeIn(other.page, path);
    const { scope } = told(readFileSync(path, 'utf8')) as unknown as { scope: { queen: string } };
    await goTo(other.page, `#/queen/${scope.queen}`);
    await other.page.getByRole('heading', { level: 1, name: 'Sable' }).waitFor();
    for (const dam of ['Slate', 'Rowan', 'Hazel'])
      await other.page
        .getByRole('link', { name: new RegExp(`^${dam}`) })
        .first()
        .waitFor();
    expect([...errors, ...other.errors]).toEqual([]);
    await other.close();
    await close();
  });
});

describe('Exchange for those who do not see it', () => {
  it.each([
    ['light', false],
    ['dark', true],
  ])('has no faults that a checker finds, in %s', async (_name, dark) => {
    const { page, close } = await app.newKeeper({ dark });
    await openDemo(page);
    const check = async () => {
      const { violations } = await new AxeBuilder({ page }).include('main').analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    };
    await goTo(page, '#/exchange');
    await page.getByRole('heading', { level: 1, name: 'Exchange' }).waitFor();
    await check();
    await page.getByRole('radio', { name: 'One queen' }).check();
    await check();
    await page.getByLabel('Which queen').fill('norther');
    await button(page, /Norther/).click();
    await page.getByRole('article').waitFor();
    await check();
    await chooseFile(page, SHEET);
    await page.getByRole('heading', { name: /What each row would write/ }).waitFor();
    await check();
    await close();
  });
});
