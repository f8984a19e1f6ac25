import { afterEach, describe, expect, it, vi } from 'vitest';
import { device, inspection, smallYard, unwrap } from '../../helpers/devices.ts';

async function twoTabs() {
  const laptop = device();
  const left = await laptop.open({ tabs: true });
  const right = await laptop.open({ tabs: true });
  const yard = smallYard(laptop.newId);
  return { laptop, left, right, yard };
}

describe('two tabs of one device', () => {
  it('show the same records, actions and settings after either writes', async () => {
    const { left, right, yard } = await twoTabs();
    unwrap(await left.write(yard.drafts, 'Start'));
    await vi.waitFor(() => expect(right.journal.value.size).toBe(3));
    unwrap(await right.write([inspection(yard.colony, '2026-05-10')], 'Inspection'));
    await vi.waitFor(() => expect(left.journal.value.size).toBe(4));
    expect(new Map(left.journal.value)).toEqual(new Map(right.journal.value));
    expect(left.registry.value.entries).toEqual(right.registry.value.entries);
    expect(left.lastAction.value).toEqual(right.lastAction.value);
    expect(left.lastAction.value?.title).toBe('Inspection');
    await left.changeSettings({ theme: 'dark' });
    await vi.waitFor(() => expect(right.settings.value.theme).toBe('dark'));
  });

  it('undo in one what the other wrote, and wipe both', async () => {
    const { left, right, yard } = await twoTabs();
    unwrap(await left.write(yard.drafts, 'Start'));
    await vi.waitFor(() => expect(right.journal.value.size).toBe(3));
    unwrap(await right.undo());
    await vi.waitFor(() => expect(left.registry.value.colonies.size).toBe(0));
    expect(left.lastUndone.value?.title).toBe('Start');
    await left.wipe();
    await vi.waitFor(() => expect(right.journal.value.size).toBe(0));
    expect(right.lastUndone.value).toBeUndefined();
  });

  it('lose nothing when both write in the same moment', async () => {
    const { laptop, left, right, yard } = await twoTabs();
    unwrap(await left.write(yard.drafts, 'Start'));
    await vi.waitFor(() => expect(right.journal.value.size).toBe(3));
    await Promise.all([
      left.write([inspection(yard.colony, '2026-05-10', { gentle: 3 })], 'Left'),
      right.write([inspection(yard.colony, '2026-05-11', { gentle: 4 })], 'Right'),
    ]);
    await vi.waitFor(() => {
      expect(left.journal.value.size).toBe(5);
      expect(right.journal.value.size).toBe(5);
    });
    expect(left.registry.value.entries).toEqual(right.registry.value.entries);
    expect((await laptop.open()).registry.value.entries).toEqual(left.registry.value.entries);
  });
});

describe('a page that is shown again', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('reads what it missed and turns to the new day', async () => {
    const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
    vi.stubGlobal('document', page);
    let now = new Date(2026, 5, 1, 23);
    const laptop = device();
    const sleeper = await laptop.open({ now: () => now });
    const writer = await laptop.open();
    unwrap(await writer.write(smallYard(laptop.newId).drafts, 'Start'));
    expect(sleeper.journal.value.size).toBe(0);
    now = new Date(2026, 5, 2, 7);
    page.dispatchEvent(new Event('visibilitychange'));
    await vi.waitFor(() => expect(sleeper.journal.value.size).toBe(3));
    expect(sleeper.on.value).toBe('2026-06-02');
  });

  it('stays on another day that the keeper looks at', async () => {
    const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
    vi.stubGlobal('document', page);
    let now = new Date(2026, 5, 1, 23);
    const store = await device().open({ now: () => now });
    store.on.value = '2025-04-01' as never;
    now = new Date(2026, 5, 2, 7);
    page.dispatchEvent(new Event('visibilitychange'));
    await store.changeSettings({});
    expect(store.on.value).toBe('2025-04-01');
  });
});
