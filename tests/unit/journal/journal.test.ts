import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/journal/entry.ts';
import type { ColonyId, KeeperId } from '../../../src/journal/ids.ts';
import { type Journal, liveEntries } from '../../../src/journal/journal.ts';
import { readEntry, type Scribe, writeEntries } from '../../../src/journal/write.ts';
import { countingIds, day, inspection, unwrap } from '../../helpers/devices.ts';

const newId = countingIds();
const colony = newId() as ColonyId;
const hand = (minute: number): Scribe => ({
  keeper: newId() as KeeperId,
  now: () => new Date(Date.UTC(2026, 5, 1, 12, minute)),
  newId,
});
const ida = hand(0);
const jon = hand(5);
const one = (scribe: Scribe, draft: Parameters<typeof writeEntries>[0][number]): Entry =>
  unwrap(writeEntries([draft], scribe))[0]!;
const journal = (...entries: Entry[]): Journal => new Map(entries.map((entry) => [entry.id, entry]));

describe('entries', () => {
  it('of one confirmation share an action, and all or none are written', () => {
    const [a, b] = unwrap(
      writeEntries([inspection(colony, '2026-05-01'), inspection(colony, '2026-05-02')], ida),
    );
    expect(a!.action).toBe(b!.action);
    const bad = writeEntries(
      [
        inspection(colony, '2026-05-01'),
        inspection(colony, '2026-05-32'),
        {
          kind: 'mite-count',
          day: day('2026-05-01'),
          colony,
          sample: { method: 'wash', mites: -1, bees: 0.5 },
        },
      ],
      ida,
    );
    if (bad.ok) throw new Error('written');
    expect(bad.problems.map(({ field }) => field)).toEqual(['day', 'sample.mites', 'sample.bees']);
    for (const { because, remedy, where } of bad.problems) {
      expect(because.length).toBeGreaterThan(5);
      expect(remedy.length).toBeGreaterThan(5);
      expect(where.length).toBeGreaterThan(5);
    }
  });

  it.each([null, 7, 'text', [], {}, { kind: 'inspection' }, { kind: 'no such kind' }])(
    'are not made of %j',
    (value) => {
      expect(readEntry(value, 'somewhere')).toMatchObject({ ok: false });
    },
  );
});

describe('what counts', () => {
  const first = one(ida, inspection(colony, '2026-05-01', { gentle: 1 }));
  const correction = one(ida, { ...inspection(colony, '2026-05-01', { gentle: 2 }), supersedes: first.id });

  it('is the latest version that no standing withdrawal names', () => {
    expect(liveEntries(journal(correction, first)).live).toEqual([correction]);
    const taken = one(ida, { kind: 'withdrawal', day: day('2026-05-02'), withdraws: [correction.id] });
    expect(liveEntries(journal(first, correction, taken)).live).toEqual([first]);
    const restored = one(ida, { kind: 'withdrawal', day: day('2026-05-03'), withdraws: [taken.id] });
    expect(liveEntries(journal(first, correction, taken, restored)).live).toEqual([correction]);
  });

  it('is disagreed on when two hands corrected the same version, and both stay visible', () => {
    const other = one(jon, { ...inspection(colony, '2026-05-01', { gentle: 4 }), supersedes: first.id });
    const { live, disagreements } = liveEntries(journal(first, correction, other));
    expect(live).toEqual([other]);
    expect(disagreements).toEqual([{ about: first.id, counts: other, against: [correction] }]);
  });

  it('is not disagreed on when one correction builds on the other', () => {
    const onTop = one(jon, { ...inspection(colony, '2026-05-01', { gentle: 4 }), supersedes: correction.id });
    expect(liveEntries(journal(first, correction, onTop)).disagreements).toEqual([]);
  });

  it('is the correction of a correction, also where the clock was set back in between', () => {
    const early = { ...ida, now: () => new Date(Date.UTC(2026, 5, 1, 8)) };
    const onTop = one(early, {
      ...inspection(colony, '2026-05-01', { gentle: 3 }),
      supersedes: correction.id,
    });
    const { live, disagreements } = liveEntries(journal(onTop, first, correction));
    expect(live).toEqual([onTop]);
    expect(disagreements).toEqual([]);
  });

  it('survives a ring of corrections in a damaged file', () => {
    const a = { ...first, supersedes: correction.id };
    expect(() => liveEntries(journal(a, correction))).not.toThrow();
  });

  it('comes in the order in which it happened, rough days by their first day', () => {
    const year = one(ida, inspection(colony, '2026'));
    const month = one(ida, inspection(colony, '2026-05'));
    const exact = one(ida, inspection(colony, '2026-04-30'));
    expect(liveEntries(journal(month, exact, year)).live).toEqual([year, exact, month]);
  });
});
