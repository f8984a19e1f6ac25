import { describe, expect, it } from 'vitest';
import { device, inspection, smallYard, unwrap } from '../../helpers/devices.ts';

async function startedYard() {
  const phone = device();
  const store = await phone.open();
  const yard = smallYard(phone.newId);
  unwrap(await store.write(yard.drafts, 'Start of Box 1'));
  return { phone, store, yard };
}

describe('undo', () => {
  it('takes a whole action back and redo brings it back', async () => {
    const { store, yard } = await startedYard();
    unwrap(await store.undo());
    expect(store.registry.value.colonies.size).toBe(0);
    expect(store.lastAction.value).toBeUndefined();
    expect(store.lastUndone.value).toMatchObject({ title: 'Start of Box 1' });
    unwrap(await store.redo());
    expect(store.registry.value.queens.get(yard.queen)?.name).toBe('Birch');
    expect(store.lastAction.value).toMatchObject({ title: 'Start of Box 1' });
    expect(store.lastUndone.value).toBeUndefined();
  });

  it('goes on after a reload where it was', async () => {
    const { phone, store, yard } = await startedYard();
    for (const on of ['2026-05-10', '2026-05-11', '2026-05-12']) {
      unwrap(await store.write([inspection(yard.colony, on)], `Inspection ${on}`));
    }
    unwrap(await store.undo());
    unwrap(await store.undo());
    unwrap(await store.redo());
    const again = await phone.open();
    expect(again.lastAction.value?.title).toBe('Inspection 2026-05-11');
    expect(again.lastUndone.value?.title).toBe('Inspection 2026-05-12');
    unwrap(await again.redo());
    expect(again.lastAction.value?.title).toBe('Inspection 2026-05-12');
    for (let turn = 0; turn < 4; turn += 1) unwrap(await again.undo());
    expect(again.registry.value.entries).toEqual([]);
    expect(unwrap(await again.undo())).toEqual([]);
  });

  it('forgets what was undone once something new is written', async () => {
    const { store, yard } = await startedYard();
    unwrap(await store.write([inspection(yard.colony, '2026-05-10')], 'First'));
    unwrap(await store.undo());
    unwrap(await store.write([inspection(yard.colony, '2026-05-11')], 'Second'));
    expect(store.lastUndone.value).toBeUndefined();
    expect(unwrap(await store.redo())).toEqual([]);
  });

  it('undoes a withdrawal by the keeper: what was taken back counts again', async () => {
    const { store, yard } = await startedYard();
    const [entry] = unwrap(await store.write([inspection(yard.colony, '2026-05-10')], 'Inspection'));
    unwrap(await store.withdraw([entry!.id], 'wrong box'));
    const inspections = () => store.registry.value.entries.filter(({ kind }) => kind === 'inspection').length;
    expect(inspections()).toBe(0);
    unwrap(await store.undo());
    expect(inspections()).toBe(1);
    unwrap(await store.redo());
    expect(inspections()).toBe(0);
  });

  it('leaves alone what another keeper wrote', async () => {
    const { store } = await startedYard();
    const tablet = device(2);
    const other = await tablet.open();
    unwrap(await other.write(smallYard(tablet.newId).drafts, 'Theirs'));
    const theirs = [...other.journal.value.values()];
    unwrap(await store.unite(theirs));
    unwrap(await store.undo());
    expect(store.journal.value.size).toBe(3);
    unwrap(await store.undo());
    expect(store.registry.value.colonies.size).toBe(0);
    expect([...store.journal.value.values()].filter((e) => theirs.some(({ id }) => id === e.id))).toEqual([]);
  });
});
