import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningApp, startApp } from './support/app.ts';
import { goTo, openColony, openDemo } from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

describe('without a network', () => {
  it('the demo yard opens, an entry is saved, and a reload keeps it', async () => {
    const keeper = await app.newKeeper();
    const { page, context } = keeper;
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.reload();
    await context.setOffline(true);
    await openDemo(page);
    await openColony(page, 'S9');
    await page.getByRole('link', { name: 'Record', exact: true }).click();
    await page.getByRole('radio', { name: 'Gentle: 2', exact: true }).click();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const history = page.getByRole('region', { name: 'What happened' });
    await history.getByRole('listitem').first().getByText('Gentle 2').waitFor();
    await page.reload();
    await history.getByRole('listitem').first().getByText('Gentle 2').waitFor();
    for (const [hash, heading] of [
      ['#/rounds', /2026/],
      ['#/lines', 'Lines'],
      ['#/choose', /./],
      ['#/exchange', 'Exchange'],
    ] as const) {
      await goTo(page, hash);
      await page.getByRole('heading', { level: 1, name: heading }).waitFor();
    }
    expect(keeper.errors).toEqual([]);
    await keeper.close();
  });

  it('nothing is asked of any other place than the one the app came from', async () => {
    const keeper = await app.newKeeper();
    const asked: string[] = [];
    keeper.context.on('request', (request) => asked.push(request.url()));
    await keeper.page.reload();
    await openDemo(keeper.page);
    for (const hash of ['#/rounds', '#/lines', '#/choose', '#/exchange', '#/settings']) {
      await goTo(keeper.page, hash);
      await keeper.page.waitForTimeout(500);
    }
    const elsewhere = asked.filter((url) => !url.startsWith(app.url) && !/^(blob|data):/.test(url));
    expect(elsewhere).toEqual([]);
    // The page's own policy has to refuse, not a machine that happens to have no network.
    const refused = await keeper.page.evaluate(
      () =>
        new Promise<string>((tell) => {
          addEventListener('securitypolicyviolation', (event) =>
            tell(`${event.effectiveDirective} ${event.blockedURI}`),
          );
          void fetch('https://example.org/').then(
            () => tell('sent'),
            () => undefined,
          );
        }),
    );
    expect(refused).toBe('connect-src https://example.org/');
    await keeper.close();
  });
});
