import { describe, expect, it } from 'vitest';
import type { ColonyId } from '../../../src/journal/ids.ts';
import { device, inspection, smallYard, unwrap } from '../../helpers/devices.ts';

describe('the store', () => {
  it('keeps what was written through closing and opening again', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start of Box 1'));
    unwrap(
      await store.write([inspection(yard.colony, '2026-05-14', { gentle: 3.5 })], 'Inspection of Box 1'),
    );

    const again = await phone.open();
    expect([...again.journal.value]).toEqual([...store.journal.value]);
    expect(again.registry.value.queens.get(yard.queen)?.name).toBe('Birch');
    expect(again.keeper.value).toEqual(store.keeper.value);
    expect(again.lastAction.value?.title).toBe('Inspection of Box 1');
  });

  it('writes nothing of a list in which one draft is invalid, and names the field', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    const before = { journal: store.journal.value, registry: store.registry.value };
    const result = await store.write(
      [inspection(yard.colony, '2026-05-14'), inspection(yard.colony, '2026-05-14', { gentle: 7 })],
      'Two inspections',
    );
    expect(result).toMatchObject({ ok: false, problems: [{ field: 'gentle', found: '7' }] });
    expect(store.journal.value).toBe(before.journal);
    expect(store.registry.value).toBe(before.registry);
    expect((await phone.open()).journal.value.size).toBe(before.journal.size);
  });

  it('refuses what contradicts the journal, writes it with a reason, and check says so beforehand', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    const draft = inspection(phone.newId() as ColonyId, '2026-05-14');
    expect(store.check([draft]).map(({ code }) => code)).toEqual(['colony-not-started']);
    const refused = await store.write([draft], 'Inspection');
    expect(refused).toMatchObject({ ok: false, problems: [{ code: 'colony-not-started' }] });
    expect(store.journal.value.size).toBe(3);
    const overruled = {
      ...draft,
      overruled: [{ rule: 'colony-not-started', reason: 'Its start was never written.' }],
    };
    unwrap(await store.write([overruled], 'Inspection'));
    expect(store.journal.value.size).toBe(4);
  });

  it('refuses a day that has not come yet', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    const result = await store.write([inspection(yard.colony, '2026-06-02')], 'Inspection');
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'day-in-future', found: '2026-06-02' }] });
  });

  it('corrects an entry: the new version counts, the old one stays readable', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    const [first] = unwrap(
      await store.write([inspection(yard.colony, '2026-05-14', { gentle: 2 })], 'Inspection'),
    );
    unwrap(await store.correct(first!.id, inspection(yard.colony, '2026-05-14', { gentle: 3 })));
    const entries = store.registry.value.colonies.get(yard.colony)!.entries;
    expect(entries.filter(({ kind }) => kind === 'inspection')).toMatchObject([{ gentle: 3 }]);
    expect(store.journal.value.get(first!.id)).toMatchObject({ gentle: 2 });
    unwrap(await store.undo());
    const back = store.registry.value.colonies.get(yard.colony)!.entries;
    expect(back.filter(({ kind }) => kind === 'inspection')).toMatchObject([{ gentle: 2 }]);
  });

  it('keeps demo records apart from the own', async () => {
    const phone = device();
    const store = await phone.open();
    const yard = smallYard(phone.newId);
    unwrap(await store.write(yard.drafts, 'Start'));
    await store.open('demo');
    expect(store.journal.value.size).toBe(0);
    unwrap(
      await store.write(
        [{ kind: 'keeper-named', day: '2026-01-01' as never, keeper: store.keeper.value.id, name: 'Demo' }],
        'Name',
      ),
    );
    await store.open('own');
    expect(store.journal.value.size).toBe(3);
    expect(store.keeper.value.name).toBe('');
  });

  it('keeps settings and photographs', async () => {
    const phone = device();
    const store = await phone.open();
    await store.changeSettings({ theme: 'dark', traitWeights: { gentle: 2 } });
    const id = unwrap(await store.savePhoto(new Blob(['comb'], { type: 'image/jpeg' })));
    const again = await phone.open();
    expect(again.settings.value).toMatchObject({
      theme: 'dark',
      traitWeights: { gentle: 2 },
      washEveryDays: 30,
    });
    const photo = await again.photo(id);
    expect(photo?.type).toBe('image/jpeg');
    expect(await photo?.text()).toBe('comb');
  });

  it('wipes everything, and who wrote it', async () => {
    const phone = device();
    const store = await phone.open();
    const keeper = store.keeper.value.id;
    await store.nameKeeper('Ida');
    unwrap(await store.write(smallYard(phone.newId).drafts, 'Start'));
    await store.wipe();
    const again = await phone.open();
    for (const each of [store, again]) {
      expect(each.journal.value.size).toBe(0);
      expect(each.registry.value.queens.size).toBe(0);
      expect(each.lastAction.value).toBeUndefined();
      expect(each.keeper.value.name).toBe('');
      expect(each.keeper.value.id).not.toBe(keeper);
    }
  });
});
