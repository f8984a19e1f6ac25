import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readJournalFile } from '../../src/exchange/journal-file/index.ts';
import { project } from '../../src/registry/project.ts';
import type { Colony, Queen, Registry } from '../../src/registry/state.ts';
import { type RunningApp, startApp } from './support/app.ts';
import {
  addColony,
  goTo,
  onDay,
  openColony,
  openDemo,
  savedJournal,
  startOwn,
  tapper,
} from './support/steps.ts';

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.close());

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true });
const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });
const link = (page: Page, name: string) => page.getByRole('link', { name, exact: true });
const box = (page: Page, label: string) => page.getByRole('region', { name: `New box ${label}` });

/** The stop of the round at a box. */
const stopAt = (page: Page, label: string) =>
  page.getByRole('listitem').filter({ has: link(page, label), hasNot: page.getByRole('listitem') });

const told = async (what: Locator) => (await what.textContent()) ?? '';

/** What the journal tells by now, projected outside the browser. */
async function registryOf(page: Page): Promise<Registry> {
  const file = readJournalFile(await savedJournal(page), 'the saved journal');
  if (!file.ok) throw new Error('The saved journal does not read.');
  return project(new Map(file.value.entries.map((entry) => [entry.id, entry])));
}

function colonyNamed(registry: Registry, label: string): Colony {
  const found = [...registry.colonies.values()].find((colony) => colony.label === label);
  if (!found) throw new Error(`No colony ${label}.`);
  return found;
}

/** Who heads a colony now. */
function headOf(registry: Registry, label: string): Queen | undefined {
  const tenure = colonyNamed(registry, label).tenures.find(({ to }) => to === undefined);
  return tenure && registry.queens.get(tenure.queen);
}

function queenNamed(registry: Registry, name: string): Queen {
  const found = [...registry.queens.values()].find((queen) => queen.name === name);
  if (!found) throw new Error(`No queen ${name}.`);
  return found;
}

describe('a three-way split, followed through six weeks and to autumn by taps alone', () => {
  it('tells each day what to look for, moves with each answer, and ends in a daughter and a supersedure', async () => {
    const { page, errors, close } = await app.newKeeper();
    page.setDefaultTimeout(10_000);
    const { tap, choose, count } = tapper();
    const rounds = () => tap(page.getByRole('navigation').getByRole('link', { name: 'Rounds' }));
    const answer = async (label: string, task: string, finding: string) => {
      await tap(stopAt(page, label).getByText(task, { exact: true }));
      await tap(stopAt(page, label).getByRole('button', { name: finding, exact: true }));
      await page.getByRole('status').getByText(`Written: ${label}: ${finding}`).waitFor();
    };

    await onDay(page, '2026-05-09');
    await startOwn(page, 'Tester', 'Home');
    await addColony(page, '1', 'Hazel', 2025);
    await addColony(page, '2', 'Rowan', 2025);

    // 10 May: the old queen into a new box, a frame of eggs into another; what stays raises its own.
    await onDay(page, '2026-05-10');
    await tap(link(page, '1').first());
    await tap(link(page, 'Split'));
    await tap(button(page, 'Lift the old queen, Hazel'));
    await tap(box(page, '3').getByRole('button', { name: 'Set down here' }));
    await tap(button(page, 'Add a part'));
    await tap(button(page, 'Take a frame of eggs and young brood'));
    await tap(box(page, '4').getByRole('button', { name: 'Set down here' }));
    await tap(button(page, 'Done with it'));
    await tap(button(page, 'Write the split down'));
    await page.getByRole('heading', { level: 1, name: '1', exact: true }).waitFor();
    expect(count()).toBe(9);
    const split = await registryOf(page);
    expect(headOf(split, '3')?.name).toBe('Hazel');
    for (const label of ['1', '4']) {
      const [expected] = colonyNamed(split, label).expected;
      const queen = expected && split.queens.get(expected);
      expect(queen?.parentage?.dams.map(({ queen: dam }) => dam)).toEqual([queenNamed(split, 'Hazel').id]);
    }

    // 16 May: the round asks for cells at the two queenless boxes. One tap on capped cells narrows what is to come.
    await onDay(page, '2026-05-16');
    await rounds();
    expect(await told(stopAt(page, '1'))).toContain('If there are no eggs by 24 June, take her for lost.');
    await answer('1', 'Look for queen cells', 'Capped cells');
    await stopAt(page, '1').waitFor({ state: 'detached' });
    await answer('4', 'Look for queen cells', 'No cells');
    await stopAt(page, '4').getByText('No queen, and none on the way.').waitFor();
    expect(await told(stopAt(page, '4'))).toMatch(/^4\s*No queen/);

    // The first way out: a frame with eggs, from the box that the old queen heads.
    await tap(stopAt(page, '4').getByText('Help: no queen on the way'));
    await tap(button(page, 'Give a frame with eggs and young larvae'));
    await tap(page.getByRole('dialog').getByRole('link', { name: '3', exact: true }));
    await page.getByText('From these eggs comes a daughter of Hazel').waitFor();
    await tap(button(page, 'Write it down'));
    await page.getByRole('heading', { level: 1, name: '4', exact: true }).waitFor();
    await page.getByText('If there are no eggs by 30 June, take her for lost.').waitFor();
    const given = await registryOf(page);
    const dams = colonyNamed(given, '4').expected.map((id) =>
      given.queens.get(id)?.parentage?.dams.map(({ queen }) => given.queens.get(queen)?.name),
    );
    expect(dams).toEqual([['Hazel'], ['Hazel']]);

    // 21 May: box 1 stays shut while her daughter emerges. Box 4 fails again, and is joined with its neighbour.
    await onDay(page, '2026-05-21');
    await rounds();
    const shut = page.getByRole('listitem').filter({ has: link(page, '1') });
    expect(await told(shut)).toContain('between 17 May and 3 June');
    await answer('4', 'Look for queen cells', 'No cells');
    await tap(stopAt(page, '4').getByText('Help: no queen on the way'));
    await tap(button(page, 'Join with a neighbour'));
    await choose(page.getByLabel('4 went into'), '2');
    await tap(radio(page, 'That of 2'));
    await tap(button(page, 'Save the joining'));
    await stopAt(page, '4').waitFor({ state: 'detached' });
    const joined = await registryOf(page);
    expect(colonyNamed(joined, '4').ended?.cause).toBe('joined');
    expect(colonyNamed(joined, '4').expected).toEqual([]);
    expect(headOf(joined, '2')?.name).toBe('Rowan');

    // 6 June: eggs are due at 1, two days sooner than on the day of the split, and are there.
    await onDay(page, '2026-06-06');
    await rounds();
    expect(await told(stopAt(page, '1'))).toContain('If there are no eggs by 22 June, take her for lost.');
    await answer('1', 'Look for eggs', 'Eggs');
    const laying = await registryOf(page);
    expect(headOf(laying, '1')?.state.is).toBe('laying');
    expect(headOf(laying, '1')?.parentage?.evidence).toBe('eggs-named');

    // 21 June, six weeks on: her brood is worker brood; she is found and marked in the colour of her year.
    await onDay(page, '2026-06-21');
    await rounds();
    await answer('1', 'Look at her brood', 'Capped worker brood');
    await tap(stopAt(page, '1').getByText('Mark her', { exact: true }));
    await tap(stopAt(page, '1').getByRole('button', { name: 'Write it down' }));
    await tap(radio(page, 'Marked'));
    await tap(radio(page, 'White'));
    await tap(button(page, 'Save'));
    await page
      .getByRole('status')
      .getByText(/^Written: .* marked/)
      .waitFor();
    expect(headOf(await registryOf(page), '1')?.mark?.colour).toBe('white');

    // 28 August: an unmarked queen where Hazel bore a mark. Probably her daughter; nobody saw the change.
    await onDay(page, '2026-08-28');
    await openColony(page, '3');
    await tap(link(page, 'Record'));
    await tap(radio(page, 'Unmarked'));
    await tap(button(page, 'All three'));
    await tap(radio(page, 'Another queen'));
    await tap(button(page, 'Save'));
    await page.getByText('dam probable').first().waitFor({ state: 'attached' });
    const late = await registryOf(page);
    const hazel = queenNamed(late, 'Hazel');
    const daughter = headOf(late, '3');
    expect(hazel.state).toMatchObject({ is: 'gone', cause: 'superseded' });
    expect(daughter?.parentage?.evidence).toBe('unmarked-queen-found');
    expect(daughter?.parentage?.dams[0]?.queen).toBe(hazel.id);
    expect(daughter?.parentage?.dams[0]?.probability).toBeLessThan(1);
    expect(late.contradictions).toEqual([]);

    // Nine taps for the split, 34 for all that followed until the end of August; nothing was typed.
    expect(count()).toBe(43);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('boxes that are not one colony each', () => {
  it('are recorded as they stand: a divided box, brood above an excluder, a part that is joined back', async () => {
    const { page, errors, close } = await app.newKeeper();
    page.setDefaultTimeout(10_000);
    await onDay(page, '2026-05-10');
    await startOwn(page, 'Tester', 'Home');
    await addColony(page, '1', 'Hazel', 2025);
    await addColony(page, '2', 'Rowan', 2025);

    // Two parts of the divided box, each with its own entrance; the old queen in one of them.
    await openColony(page, '1');
    await link(page, 'Split').click();
    await button(page, 'Lift the old queen, Hazel').click();
    await box(page, '3').getByRole('button', { name: 'Set down here' }).click();
    await box(page, '3').getByText('Queen and place').click();
    await box(page, '3').getByText('Divided box: under one roof with the source').click();
    await box(page, '3')
      .getByRole('button', { name: /^Entrance/ })
      .click();
    await button(page, 'Write the split down').click();
    await page.getByRole('heading', { level: 1, name: '1', exact: true }).waitFor();
    await page.getByText('Under one roof with 3').waitFor();

    // Brood of the queenless part hangs above an excluder on 2, and emerges into the bees there.
    await link(page, 'Carry frames').click();
    await button(page, 'Take a frame of capped brood').click();
    await page.getByRole('region', { name: '2', exact: true }).getByRole('button').click();
    await page.getByText('Hung above an excluder: it emerges into the box below').click();
    await button(page, 'Write it down').click();
    await page.getByText('above an excluder').waitFor();
    expect(await told(page.getByRole('region', { name: 'What happened' }))).toContain(
      '1 frame of capped brood from 1 to 2, above an excluder.',
    );

    // No queen came of it: the part with the old queen is joined back, and nothing is awaited any more.
    await onDay(page, '2026-06-26');
    await openColony(page, '3');
    await button(page, 'Join with another').click();
    await page.getByLabel('3 went into').selectOption({ label: '1' });
    await radio(page, 'That of 3').click();
    await button(page, 'Save the joining').click();
    await page.getByText('joined with another, went into 1').waitFor();
    await openColony(page, '1');
    await page.getByText('Headed by').waitFor();
    expect(await page.getByText('Eggs are overdue').count()).toBe(0);

    const registry = await registryOf(page);
    expect(headOf(registry, '1')?.name).toBe('Hazel');
    expect(colonyNamed(registry, '1').expected).toEqual([]);
    expect(colonyNamed(registry, '3').stays[0]?.place).toMatchObject({
      underRoofWith: colonyNamed(registry, '1').id,
      entrance: 'N',
    });
    expect(registry.entries.find(({ kind }) => kind === 'frames-moved')).toMatchObject({
      aboveExcluder: true,
    });
    expect(registry.contradictions).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});

/** The calendar file that the rounds save. */
async function calendarFile(page: Page): Promise<string> {
  const saving = page.waitForEvent('download');
  await button(page, 'Calendar file').click();
  return readFileSync(await (await saving).path(), 'utf8').replaceAll('\r\n ', '');
}

function eventIn(text: string, title: string): string {
  return text.split('BEGIN:VEVENT').find((each) => each.includes(`SUMMARY:${title}`)) ?? '';
}

describe('the round of the day', () => {
  it('is saved as a calendar file of whole days', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    await goTo(page, '#/rounds');
    const text = await calendarFile(page);
    // Overdue since 10 June, it stands up to the day of writing, 11 June; DTEND is the day after (RFC 5545, 3.6.1).
    expect(eventIn(text, 'H11: Look for eggs')).toContain('DTEND;VALUE=DATE:20260612');
    expect(text).not.toContain('STATUS:CANCELLED');
    await close();
  });

  it('is saved anew with what was settled since taken out of the calendar, also after a reload', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    await goTo(page, '#/rounds');
    const uid = /UID:(.*)/.exec(eventIn(await calendarFile(page), 'H11: Look for eggs'))?.[1];
    await page.reload();
    await stopAt(page, 'H11').getByText('Look for eggs', { exact: true }).click();
    await stopAt(page, 'H11').getByRole('button', { name: 'Set this aside' }).click();
    await page.getByRole('status').getByText('Written: H11: Look for eggs set aside').waitFor();
    const again = await calendarFile(page);
    const taken = eventIn(again, 'H11: Look for eggs');
    expect(taken).toContain('STATUS:CANCELLED');
    expect(taken).toContain(`UID:${uid}`);
    expect(again.match(/STATUS:CANCELLED/g)).toHaveLength(1);
    await close();
  });

  it('goes on one page of paper, with what is folded on the screen', async () => {
    const { page, close } = await app.newKeeper();
    await openDemo(page);
    await goTo(page, '#/rounds');
    await page.getByText('Coming (9)').waitFor();
    const sheet = (await page.pdf({ format: 'A4' })).toString('latin1');
    expect(sheet.match(/\/Type \/Page\b/g)).toHaveLength(1);
    expect(await page.locator('details[open]').count()).toBe(0);
    await close();
  });
});

describe('every screen of the season', () => {
  const hashes = [
    '#/rounds',
    '#/mites',
    '#/winters',
    '#/winters?show=lines',
    '#/winters?show=ready',
    '#/split',
  ];

  /** Opens each of the screens in turn, the rounds with a task open and the planner with a plan worked out. */
  async function onEach(page: Page, examine: (where: string) => Promise<void>): Promise<void> {
    await openDemo(page);
    for (const hash of hashes) {
      await goTo(page, hash);
      await page.waitForTimeout(400);
      if (hash === '#/rounds') await stopAt(page, 'H11').getByText('Look for eggs', { exact: true }).click();
      await examine(hash);
    }
    await page.getByRole('link', { name: 'Plan a split of H9' }).click();
    await button(page, 'Propose the parts').click();
    await button(page, 'Lay it on the bench').waitFor();
    await examine('the planner');
  }

  it.each([
    { desk: false, dark: false },
    { desk: true, dark: true },
  ])('passes the rules of accessibility, on a phone or a desk, light or dark: %o', async (look) => {
    const { page, close } = await app.newKeeper(look);
    const found: string[] = [];
    await onEach(page, async (where) => {
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'best-practice'])
        .analyze();
      found.push(...violations.map(({ id, nodes }) => `${where} ${id}: ${nodes[0]?.html}`));
    });
    expect(found).toEqual([]);
    await close();
  });

  it('fits a phone without sliding sideways, all unfolded, and its end scrolls clear of what stands at the foot', async () => {
    const { page, close } = await app.newKeeper();
    await onEach(page, async (where) => {
      const { over, hidden } = await page.evaluate(() => {
        for (const folded of document.querySelectorAll('details')) folded.open = true;
        window.scrollTo(0, document.documentElement.scrollHeight);
        const foot = document.querySelector('nav')?.getBoundingClientRect();
        const end = document.querySelector('main')?.getBoundingClientRect();
        return {
          over: document.documentElement.scrollWidth - window.innerWidth,
          hidden: foot && end && foot.height > 0 ? end.bottom - foot.top : 0,
        };
      });
      expect(over, where).toBeLessThanOrEqual(0);
      expect(hidden, where).toBeLessThanOrEqual(0);
    });
    await close();
  });
});
