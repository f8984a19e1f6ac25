import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readJournalFile } from '../../src/exchange/journal-file/index.ts';
import { type RunningApp, startApp } from './support/app.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

describe('records that a newer page has written', () => {
  it('stay shut, are not taken for none, and can be saved as they stand', async () => {
    const keeper = await app.newKeeper();
    const { page } = keeper;
    await page.getByRole('button', { name: 'Start my own records' }).click();
    await page.getByLabel('Your name').fill('Ida');
    await page.getByLabel('Your first yard').fill('Mill');
    await page.getByRole('button', { name: 'Open the yard' }).click();
    await page.getByRole('heading', { level: 1, name: 'Mill' }).waitFor();
    await page.evaluate(async () => {
      const known = (await indexedDB.databases()).find(({ name }) => name === 'damline');
      await new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('damline', (known?.version ?? 1) + 1);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
        opening.onerror = () => reject(opening.error);
      });
    });
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Your records are shut.' }).waitFor();
    await page.getByText('This page is older than the records').waitFor();
    expect(await page.getByRole('button', { name: 'Start my own records' }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Put aside' }).count()).toBe(0);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save what can be read' }).click(),
    ]);
    const read = readJournalFile(readFileSync(await download.path(), 'utf8'), download.suggestedFilename());
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value.entries.map(({ kind }) => kind)).toContain('yard-opened');
    await page.getByText('Handed to the browser').waitFor();
    await keeper.close();
  });
});
