import { describe, expect, it } from 'vitest';
import type { PlainDay } from '../../../../../src/journal/day.ts';
import {
  differingFields,
  settlingDrafts,
  versionsOf,
} from '../../../../../views/exchange/disagreements/settle.ts';
import { device, inspection, smallYard, unwrap } from '../../../../helpers/devices.ts';

const TODAY = '2026-06-01' as PlainDay;
const all = (store: { journal: { value: ReadonlyMap<unknown, unknown> } }) =>
  [...store.journal.value.values()] as never[];

/** Two keepers who corrected one inspection, gentle 2, each in their own way: 3 and 4. */
async function disagreeing() {
  const phone = device(1);
  const tablet = device(2);
  const mine = await phone.open();
  const theirs = await tablet.open();
  const yard = smallYard(phone.newId);
  unwrap(await mine.write(yard.drafts, 'Start'));
  const [entry] = unwrap(await mine.write([inspection(yard.colony, '2026-05-10', { gentle: 2 })], 'Mine'));
  unwrap(await theirs.unite(all(mine)));
  unwrap(await mine.correct(entry!.id, inspection(yard.colony, '2026-05-10', { gentle: 3 })));
  unwrap(await theirs.correct(entry!.id, inspection(yard.colony, '2026-05-10', { gentle: 4 })));
  unwrap(await mine.unite(all(theirs)));
  unwrap(await theirs.unite(all(mine)));
  const gentle = (store: typeof mine) =>
    store.registry.value.colonies.get(yard.colony)!.entries.find(({ kind }) => kind === 'inspection');
  return { mine, theirs, gentle };
}

describe('settling a disagreement', () => {
  it.each([3, 4])(
    'lets the version with gentle %i count, whether or not it counted before',
    async (chosen) => {
      const { mine, gentle } = await disagreeing();
      const [standing] = mine.disagreements.value;
      const version = versionsOf(standing!).find((each) => 'gentle' in each && each.gentle === chosen);
      unwrap(await mine.write([...settlingDrafts(standing!, version!, TODAY)], 'Settled'));
      expect(mine.disagreements.value).toEqual([]);
      expect(gentle(mine)).toMatchObject({ gentle: chosen });
    },
  );

  it('reaches the other keeper with the next file, and one undo opens it again', async () => {
    const { mine, theirs, gentle } = await disagreeing();
    const [standing] = mine.disagreements.value;
    const version = versionsOf(standing!).find((each) => 'gentle' in each && each.gentle === 3);
    unwrap(await mine.write([...settlingDrafts(standing!, version!, TODAY)], 'Settled'));
    unwrap(await theirs.unite(all(mine)));
    expect(theirs.disagreements.value).toEqual([]);
    expect(gentle(theirs)).toMatchObject({ gentle: 3 });
    unwrap(await mine.undo());
    expect(mine.disagreements.value).toHaveLength(1);
  });

  it('is a new disagreement when the two settle it each in their own way', async () => {
    const { mine, theirs } = await disagreeing();
    for (const [store, gentle] of [
      [mine, 3],
      [theirs, 4],
    ] as const) {
      const [standing] = store.disagreements.value;
      const version = versionsOf(standing!).find((each) => 'gentle' in each && each.gentle === gentle);
      unwrap(await store.write([...settlingDrafts(standing!, version!, TODAY)], 'Settled'));
    }
    unwrap(await mine.unite(all(theirs)));
    expect(mine.disagreements.value).toHaveLength(1);
  });
});

describe('versions', () => {
  it('are compared field by field, leaving out who wrote them and when', async () => {
    const { mine } = await disagreeing();
    expect(differingFields(versionsOf(mine.disagreements.value[0]!))).toEqual(['gentle']);
  });
});
