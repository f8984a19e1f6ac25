import { describe, expect, it } from 'vitest';
import { device, inspection, smallYard, unwrap } from '../../helpers/devices.ts';

async function twoKeepers() {
  const phone = device(1);
  const tablet = device(2);
  const mine = await phone.open();
  const theirs = await tablet.open();
  const yard = smallYard(phone.newId);
  unwrap(await mine.write(yard.drafts, 'Start'));
  const theirYard = smallYard(tablet.newId);
  unwrap(await theirs.write(theirYard.drafts, 'Start'));
  return { phone, tablet, mine, theirs, yard, theirYard };
}

const all = (store: { journal: { value: ReadonlyMap<unknown, unknown> } }) =>
  [...store.journal.value.values()] as never[];
const sorted = (store: { journal: { value: ReadonlyMap<string, unknown> } }) =>
  [...store.journal.value].sort(([a], [b]) => (a < b ? -1 : 1));

describe('a union', () => {
  it('shows what is new, same and disagreed before anything is written', async () => {
    const { mine, theirs, yard } = await twoKeepers();
    unwrap(await theirs.unite(all(mine)));
    const [entry] = unwrap(await mine.write([inspection(yard.colony, '2026-05-10', { gentle: 2 })], 'Mine'));
    unwrap(await theirs.unite(all(mine)));
    unwrap(await mine.correct(entry!.id, inspection(yard.colony, '2026-05-10', { gentle: 3 })));
    unwrap(await theirs.correct(entry!.id, inspection(yard.colony, '2026-05-10', { gentle: 4 })));
    const before = mine.journal.value;
    const preview = mine.previewUnion(all(theirs));
    expect(preview.same).toBe(4);
    expect(preview.added).toHaveLength(4);
    expect(preview.disagreements).toMatchObject([{ about: entry!.id }]);
    expect(preview.altered).toEqual([]);
    expect(mine.journal.value).toBe(before);
  });

  it('gives both keepers the same records, whoever starts, and a second time changes nothing', async () => {
    const { mine, theirs } = await twoKeepers();
    const fromMine = all(mine);
    unwrap(await mine.unite(all(theirs)));
    unwrap(await theirs.unite(fromMine));
    expect(sorted(mine)).toEqual(sorted(theirs));
    const once = mine.journal.value;
    expect(unwrap(await mine.unite(all(theirs)))).toMatchObject({ added: [], same: 6 });
    expect(mine.journal.value).toBe(once);
  });

  it('reports an entry with other contents under a known id and keeps the same one on both sides', async () => {
    const { mine, theirs } = await twoKeepers();
    unwrap(await theirs.unite(all(mine)));
    const [first] = all(mine) as { id: string; name?: string }[];
    const damaged = { ...first, name: 'Zzz' } as never;
    const preview = unwrap(await mine.unite([damaged]));
    expect(preview.altered).toHaveLength(1);
    unwrap(await theirs.unite([damaged]));
    expect(theirs.journal.value.get(first!.id as never)).toEqual(mine.journal.value.get(first!.id as never));
    expect(mine.journal.value.get(first!.id as never)).toMatchObject({ name: 'Zzz' });
    unwrap(await mine.undo());
    expect(mine.journal.value.get(first!.id as never)).toEqual(first);
  });

  it('is undone by taking the entries out again, and redone, across a reload', async () => {
    const { phone, mine, theirs } = await twoKeepers();
    const before = sorted(mine);
    unwrap(await mine.unite(all(theirs)));
    expect(mine.lastAction.value?.title).toBe('Records of a file');
    const after = sorted(mine);
    unwrap(await mine.undo());
    expect(sorted(mine)).toEqual(before);
    const again = await phone.open();
    expect(sorted(again)).toEqual(before);
    expect(again.lastUndone.value?.title).toBe('Records of a file');
    unwrap(await again.redo());
    expect(sorted(again)).toEqual(after);
    expect(sorted(await phone.open())).toEqual(after);
  });
});

describe("a keeper's own file on another device", () => {
  const restored = async () => {
    const { phone, tablet, mine } = await twoKeepers();
    const clean = device(3);
    const store = await clean.open();
    return { phone, tablet, mine, clean, store };
  };

  it('leaves the device writing under its own id unless the keeper says that it is theirs', async () => {
    const { mine, store } = await restored();
    const before = store.keeper.value.id;
    unwrap(await store.unite(all(mine)));
    expect(store.keeper.value.id).toBe(before);
    expect(store.keeper.value.id).not.toBe(mine.keeper.value.id);
  });

  it('makes the keeper the same person again, after a reload too, and undo gives the device back', async () => {
    const { mine, clean, store } = await restored();
    const before = store.keeper.value.id;
    unwrap(await store.unite(all(mine), [], mine.keeper.value.id));
    expect(store.keeper.value).toEqual(mine.keeper.value);
    const again = await clean.open();
    expect(again.keeper.value).toEqual(mine.keeper.value);
    unwrap(await again.undo());
    expect(again.keeper.value.id).toBe(before);
    expect(again.journal.value.size).toBe(0);
    unwrap(await again.redo());
    expect(again.keeper.value).toEqual(mine.keeper.value);
    expect(sorted(again)).toEqual(sorted(mine));
  });
});
